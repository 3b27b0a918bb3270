### What travels between devices: branches, bundles, hand-over, backup.

apart-title = Two devices, one repair
apart-way = { $n } devices went on with this repair
apart-way_note = This one shows its own. The foreman chooses which counts.
apart-none = All devices agree
apart-none_text = There is one way in which this repair went on. Nothing is to be chosen.
apart-same = The same on all
apart-same_text =
  { $n ->
    [one] 1 entry, the opening, is the same.
   *[other] { $n } entries are the same.
  }
apart-same_until = The last of them is of { $at }.
apart-kept = Nothing is lost: what is not chosen stays in the record and is printed as set aside.
apart-own = This device
apart-other = Another device
apart-device = device { $id }
apart-count =
  { $n ->
    [one] 1 more thing
   *[other] { $n } more things
  }
apart-earlier =
  { $n ->
    [one] 1 earlier thing
   *[other] { $n } earlier things
  }
apart-nobody = nobody picked
apart-choose = Which of them counts?
apart-pick = { $who }, until { $at }
apart-reason = Reason
apart-act = Let the picked one count
apart-act_note = recorded with reason and name
apart-step-opened = Opened: { $detail }
apart-step-plan_accepted = Plan accepted
apart-step-attempt_begun = Attempt { $detail } begun
apart-step-stage_begun = Stage: { $detail }
apart-step-answered = Answered: { $detail }
apart-step-go = Go
apart-step-happened = Reported: { $detail }
apart-step-doubted = Doubtful: { $detail }
apart-step-broke = Broken: { $detail }
apart-step-waived = Waived: { $detail }
apart-step-corrected = Corrected: { $detail }
apart-step-worked_out = A check was worked out
apart-step-noted = Note: { $detail }
apart-step-photo_kept = Photo: { $detail }
apart-step-clock_set = Clock was set by { $detail }
apart-step-attempt_ended = Attempt ended: { $detail }
apart-step-unrepaired = Closed without a patch: { $detail }
apart-step-signed = Signed: { $detail }
apart-step-issued = Certificate { $detail }
apart-step-sealed = Key signed: { $detail }
apart-step-branch_chosen = Chosen: { $detail }
apart-step-voided = Certificate voided: { $detail }

handing-title = Hand the hold over
handing-note = To another phone; the minutes run on there
handing-text = The other phone goes on with this hold: the same minutes, the same window, the last reading. What is recorded here stays here too.
handing-to = To whom (may stay empty)
handing-together = Have both phones beside you until the other one shows the hold.
handing-act = Hand it over
handing-act_note = recorded with both clocks of this phone
given-title = Handed over
given-way_note = Another phone reminds of the readings now
given-at = Handed over at { $at }.
given-to = Handed over at { $at } to { $to }.
given-file = 1. Give it the file
given-file_text = Make it now, so that every reading is in it. The other phone takes it in.
given-code = 2. Show it this code
given-code_text = The other phone photographs it, and knows what this clock shows. So no minute is lost or gained. Without the file, it follows the clock by this code alone.
given-code_label = Code of this hold, made for this moment
given-clock = This clock shows { $at }. It can be typed instead.
given-then = Until it shows the hold
given-watch = This phone no longer reminds of readings. What you still tap here is kept, but on a branch of its own.
given-restarted = This phone was started anew since, so its clock no longer tells. Take the hold back, then hand it over once more.
given-back = Take it back
given-back_note = This phone goes on with the hold
given-look = Look at the hold
given-look_note = Its readings and its window
given-taken = Phone { $phone } has taken the hold over.
given-taken_text = Readings and release are tapped there. What you tap here is kept, but on a branch of its own.
offer-title = Take the hold over
offer-way_note = Another phone handed it over and waits
offer-from = Phone { $phone } handed this hold over at { $at } by its clock.
offer-counted = { $n } of { $of } min counted there.
offer-code = Photograph its code
offer-code_text = It stands on the screen of the other phone.
offer-act = Take it over
offer-act_note = by the code in the picture
offer-act_tied = by the code photographed at { $at }
offer-clock = Or type its clock
offer-clock_field = It shows (such as 14:05:30)
offer-clock_act = Take it over by this clock
offer-clock_note = If that adds minutes, the foreman answers for them
offer-without = The other phone is not here
offer-without_text = Then only the clocks on the wall tell how long it has been. The minutes since its last reading are not witnessed.
offer-without_act = Take it over without it
offer-without_note = Those minutes do not count
follow-title = Follow a hold by its code
follow-note = Another phone shows it; its file is not here
follow-no_file = Without its file
follow-text = The phone with the hold shows the code: “Hand the hold over”. Photograph it here before that phone is dark.
follow-clock = Only the clock comes over.
follow-clock_text = The record stays on the other phone. Take its file in as soon as you can.
follow-before = Is it dark already? A picture of the code that this phone took before serves too.
follow-act = Follow the hold
follow-act_note = by the code in the picture
followed-title = Hold on another phone
followed-record = The record is on the other phone.
followed-paper = Write readings on paper until its file is here.
followed-counted = counted there until { $at }
followed-tape =
  { $counted } of { $needed } minutes counted there{ $pending ->
    [0] {""}
   *[other] , { $pending } more hang on the readings on paper
  }
followed-pending = { $n } more if the paper is good
followed-every = { $at }, then every { $n } min
followed-earliest = Earliest release
followed-not_before = No release before { $at }
followed-may_be = Release may be possible since { $at }
followed-if = If every reading is good
followed-code = What its code says
followed-phone = Phone
followed-key_unknown = That phone is not known here.
followed-key_unknown_text = Nobody has checked who made the code.
followed-key_false = Don’t go by this clock.
followed-key_false_text = That phone is known here by now, and did not make the code.
followed-restarted = This phone was started anew since.
followed-restarted_text = The minutes go by the time of day, which somebody may have set.
followed-anew = Photograph its code again
followed-anew_note = After a reading that was tapped there
followed-off = Take it off the list
followed-off_note = Its clock is no longer shown here
followed-take = Take its file in
followed-take_note = then take the hold over
followed-gone = Not followed here any more
followed-gone_text = Its file is here, it was taken off the list, or it was over long ago.
apart-step-handed_over = Hold handed over: { $detail }
apart-step-taken_over = Hold taken over
