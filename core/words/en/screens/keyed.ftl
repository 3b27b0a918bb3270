### What was written on paper and is keyed in later.

keyed-title = Key in from paper
keyed-about = what was written by hand, with the times on the sheet
keyed-lead = Set the day and the time that stand on the sheet. Then go through the screens as always. Each entry is marked “from paper” and keeps both times: when it happened and when you keyed it in.
keyed-rule = In the crew’s favour.
keyed-rule_text = Target pressure and readings of the hold from paper count only when the foreman answers for them. It is printed.
keyed-day = Day on the sheet
keyed-time = Time on the sheet
keyed-on = Keying in from paper?
keyed-act = Go to the stage
keyed-act_on = Entries get the time on the sheet
keyed-act_off = Entries get the time of day
keyed-strip = From paper
keyed-wants = Set day and time first. Until then entries get the time of day.
keyed-end = Stop keying in
keyed-mark = from paper
off-paper = From paper
off-paper_text =
  { $n ->
    [one] 1 entry was
   *[other] { $n } entries were
  } keyed in later.
off-paper_entry = { $what } { $at }, keyed in { $keyed }
