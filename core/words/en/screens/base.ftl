### What every screen uses.

app-name = Mendline
app-loading = Opening
# Twelve months from January and seven days from Sunday, short, parted by spaces (CLDR).
date-months = Jan Feb Mar Apr May Jun Jul Aug Sept Oct Nov Dec
date-weekdays = Sun Mon Tue Wed Thu Fri Sat
date-day = { $day } { $month }
rehearsal-word = REHEARSAL
rehearsal-not_a_record = not a record
stages-label = Stage { $n } of { $of }: { $name }
stage-planned = Planned
stage-staging = Staging
stage-test_push = Test push
stage-sleeve_change = Sleeve change
stage-wet_out = Wet-out
stage-placement = Placement
stage-inflation = Inflation
stage-hold = Hold
stage-deflation = Deflation
stage-verification = Verification
stage-complete = Complete
deck-stop = Stop
deck-photo = Photo
deck-note = Note
deck-ago = { $n } min ago
hold-keep = Keep holding
hold-holding = until the bar is full
hold-press_again = { $label }: press once more within 5 seconds to confirm.
hold-not_confirmed = Not confirmed.
hold-let_go = Let go too early. Hold for 2 seconds.
hold-of = of { $n } min
hold-tape =
  { $counted } of { $needed } minutes counted{ $pending ->
    [0] {""}
   *[other] , { $pending } more wait for the next reading
  }
cure-full = full cure
cure-from = from
cure-caution = Don’t cut or test before.
entry-less = { $label } less by { $step } { $unit }
entry-more = { $label } more by { $step } { $unit }
pair-yes = Yes
pair-no = No
task-done = Done
task-not_applicable = Does not apply
task-because = because
condition-met = Met:
condition-open = Open:
condition-waived = Does not apply:
condition-closed = Closed:
condition-failed = Failed:
condition-rehearsal = Rehearsal:
clock-left = { $span } left
clock-gone = { $span } gone
budget-label = { $needed } needed of { $total } working time
budget-ends = working time ends, { $at }
budget-short = Short of { $total } by
budget-left = Left of { $total }
others-label = Other clocks
others-what = reading
others-mixed = mixed,
others-more = { $n } more
others-late = late { $by }
light-label = Light
light-day = Day
light-sun = Sun
light-night = Night
problems-title =
  { $n ->
    [one] 1 thing to put right
   *[other] { $n } things to put right
  }
problem-number = { $label }: a number, please.
problem-pick = { $label } Please choose.
problem-below = { $label }: at least { $min }.
problem-above = { $label }: at most { $max }.
refusal-title = Not yet
refusal-way_out = Way out:
banner-label = Before anything else
dialog-close = Close
unit-hour = o’clock
line-read_here = read here
line-hose = hose
line-rope = rope
detail-patch = patch { $n }
detail-packer = packer { $n }
detail-defect = defect { $n }
detail-cover_left = cover { $n }
detail-cover_right = { $n } cover
cover-asked = asked { $n }
face-downstream = Seen looking downstream
face-upstream = Seen looking upstream
face-crown = crown
face-invert = invert
hold-upper = { $bar } upper limit
hold-lower = { $bar } lower limit
hold-gap = { $n } min
hold-release = release
edge-upstream = upstream edge
edge-downstream = downstream edge
place-table = On the table
place-in_pipe = In the pipe, not expanded
place-at_wall = Touching the wall
place-stuck = Stuck
chain-head = head
today-title = Today
broken-title = This screen can’t be drawn
broken-text = A fault of the program. What is recorded is safe, and the other screens are there.
broken-away = It did not come. What is recorded and what was typed is safe.
broken-again = Try again
lost-title = Nothing here
lost-text = No screen stands behind { $path }.
lost-back = Back to today
unreachable-title = The record does not answer
unreachable-text = Nothing typed is lost. It is asked again every few seconds.
recorded = Recorded.
saved = Saved: { $name }
saved-not = Not saved.
saved-download = Downloaded: { $name }
problem-file = Choose a file first.
step-value = { $value } { $unit }
hold-started = Holding.
error-title = That did not work
error-kept = The record is as it was before.
waiting =
  { $n ->
    [one] 1 report waits to be recorded. It is kept on this device.
   *[other] { $n } reports wait to be recorded. They are kept on this device.
  }
