### The plan: what fits, what a reader should know, and the ways out with their numbers.

## Places of measurement

place-resin = resin
place-air = air
place-pipe = pipe
warmest-resin = { $at }, the resin
warmest-air = { $at }, the air
warmest-pipe = { $at }, the pipe

## Candidates of the shelf

fits-pipe = for { $least } to { $most } { $unit }; pipe { $pipe } { $unit }
fits-range = { $least } to { $most }
fits-shorter = shorter than the patch by { $by }
fits-ends = bare ends { $bare }; { $asked } asked
fits-batch = { $batch } of at most { $most }
fits-works = { $working } at { $warmest }
fits-spare = { $works }; { $spare } to spare
fits-short = { $works }; { $short } too short

## Ways out

out-no_temperature = No temperature on this sheet gives enough.
out-all_cooler = Resin, air and pipe all at { $enough } or colder: that gives { $gives }.
out-one_cooler = Cooling the { $place ->
    [resin] resin
    [air] air
   *[pipe] pipe
  } alone gives { $gives }, because the { $warmest ->
    [resin] resin
    [air] air
   *[pipe] pipe
  } is at { $at }: still { $short } short.
out-split = Mix it in { $count } batches, one after the other.
out-longer = A patch of { $needed } or more, centred on the defect.
out-centred = Centred on the defect it covers { $cover }.
out-marked = Marked with the camera on the defect in the same run it covers { $cover }.
out-series = { $count } patches of { $length } in series, each a repair of its own.
out-less_water = Groundwater lowered to { $head } above the invert or less.
out-shelf-resin = On the shelf, a resin that fits: { $names }.
out-shelf-patch = On the shelf, a patch that fits: { $names }.
out-shelf-packer = On the shelf, a packer that fits: { $names }.

## Notes

note-offset_missing = How far the mouth of the pipe is from the centre of { $node } is not entered: the mark counts from the centre.
note-diameter_nominal = The inside diameter is nominal until it is measured at the defect.
note-seam_missing = Where the seam goes is not chosen.
note-host_pipe_unknown = Nobody has said how much pressure the host pipe bears: a question for a licensed engineer.
note-series = One patch is too short: { $count } in series, still to place with their centres at { $centres } from { $node }. Each is a repair of its own; this one is the first of them.
note-lateral_under = The patch covers the lateral at { $at }, { $hour } o’clock: to be opened after full cure.
note-lateral_near = The lateral at { $at } is so near that the patch may cover it, if the errors add up.
note-lateral_bore_unknown = The bore of the lateral at { $at } is not known: it counts as wide as the pipe.
note-packer_out = The packer would stand { $out } out of the pipe at { $node }. Where nothing holds it, it can burst: it must lie in the pipe with its whole length before it is inflated. The packer’s sheet decides.
note-containers = { $count } × { $kit }, emptied to the last drop: { $mass }.
note-batches = { $count } batches of { $mass } each; the working time runs from the first one.
note-clock_same_hour = { $name } runs from { $hour } to { $hour } o’clock: all round, or one spot?
note-closure_ends = { $says } So it is if the parts were joined now.
