### The estimate of a leak, and what is drawn beside places.

pad-keys = By keyboard: the arrow keys move the pen, space puts it down and lifts it.
pad-typed = A typed name is no signature.
pad-down = Pen down.
pad-up = Pen up.
drawn-asked = Ruled at { $at } from the centre of { $node }. Lengths to scale, heights are not.
places-clock = Arc or dot: the defect. Stub: a lateral under the patch. Bar: the seam.
hand-drawn = Lengths to scale from the centre of { $node }; small clocks seen looking downstream. Heights are not.
hand-drawing = Line from { $from } to { $to } with what is entered so far
hand-here = defect
reading-act_5 = Record the five
leak-title = Does it leak?
leak-of =
  { $n ->
    [one] { $n } reading since { $at }
   *[other] { $n } readings since { $at }
  }
leak-outside_missing = Not known yet
leak-outside_missing_note = Air outside was not read. Without it, cooling can’t be told from a leak.
leak-too_few_readings = Too few readings
leak-too_few_readings_note = It takes 5 with a wall temperature and no air added in between; { $n } more.
leak-steady = No leak to be seen
leak-steady_note = In an hour it changes by less than the readings can tell.
leak-cooling_only = Only cooling
leak-cooling_only_note = The pressure falls because the air in the packer grows cold. No leak to be seen.
leak-leaking = The packer leaks
leak-leaking_note = The cooling is taken out. Look at fittings, hose and valve; raise slowly, inside the window.
leak-per_hour = Lost in an hour
leak-between = between { $low } and { $high }, 95 %
leak-limit = Lower limit in
leak-limit_at = about { $at }, if it goes on
leak-limit_after = about { $at }, after the earliest release
leak-limit_now = now
leak-enter = Enter the air outside
leak-enter_note = once, with the next reading
reading-outside_pa = Air pressure outside, absolute
reading-outside_once = once, for the leak
reading-outside_note = From a barometer here, or the weather service’s value for this height, not for the sea. About 1 bar; a gauge shows 0.
remind-leak = { $node }: the packer leaks. About five minutes to the lower limit.
