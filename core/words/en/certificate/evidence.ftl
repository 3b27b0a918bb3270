### The certificate: materials, sheets, findings, photos.

## derive/findings.rs

cert-findings-folds = Folds
cert-findings-edges = Edges
cert-findings-surface = Surface
cert-findings-infiltration = Infiltration
cert-findings-all_back = All back
cert-findings-waste = Waste
cert-findings-flow = Flow
cert-findings-outside = OUTSIDE: { $broken } { $found }
cert-findings-done = done
cert-findings-limit = ; limit { $limit }
cert-findings-none = none{ $limit }
cert-findings-at_oclock = {" "}at { $hour } o’clock
cert-findings-highest = highest { $height }{ $hour }{ $place }{ $limit }
cert-findings-height_not_recorded = height not recorded
cert-findings-both_bonded_all_round = both bonded all round
cert-findings-head_above_the_invert_as = ; head above the invert { $head }, as planned
cert-findings-sample = Sample
cert-findings-nobody_felt_one = nobody felt one
cert-findings-from_the_manhole_soft_would = from the manhole: { $felt }; soft would forbid release, hard alone proves nothing
cert-findings-laterals = Laterals
cert-findings-none_2 = none
cert-findings-none_under_the_patch = none under the patch
cert-findings-full_cure = ; full cure { $at }
cert-findings-coupons = ; coupons: { $why }
cert-findings-coupons_recovered = ; coupons recovered: { $count }
cert-findings-covered = { $count } covered: { $each }{ $coupons }{ $cure }
cert-findings-at_an_unknown_place = at an unknown place
cert-findings-not_opened = { $station } NOT OPENED
cert-findings-coupon_not_out = coupon NOT out
cert-findings-open_to_cut = { $station } open to { $percent } %, cut { $at }, { $coupon }
cert-findings-air_or_water_test = Air or water test
cert-findings-tight = tight
cert-findings-not_tight = NOT tight
cert-findings-by = { $result }, by { $method }{ $values }
cert-findings-a_method_that_nobody_named = a method that nobody named
cert-findings-none_because = none, because { $because }
cert-findings-none_though_the_contract_asks = none, though the contract asks for it
cert-findings-none_not_asked = none: not asked ({ $source })
cert-findings-no_photo = no photo
cert-findings-photo = photo { $numbers }
cert-findings-photos = photos { $numbers }

## derive/materials.rs

cert-materials-stored = stored { $range }
cert-materials-storage_not_recorded = storage not recorded
cert-materials-resin_part_a = Resin part A
cert-materials-resin_part_b = Resin part B
cert-materials-weighed = { $mass } weighed
cert-materials-whole_containers = whole containers, { $kit }
cert-materials-whole_containers_2 = whole containers
cert-materials-mass_not_recorded = mass not recorded
cert-materials-seam_not_recorded = seam not recorded
cert-materials-seam_at_oclock = seam at { $hour } o’clock
cert-materials-patch = Patch
cert-materials-none_stated = none stated
cert-materials-strapped_down = { $pressure }, strapped down
cert-materials-no_drop = no drop
cert-materials-drop = drop { $pressure }
cert-materials-in = { $drop } in { $time }
cert-materials-packer = Packer
cert-materials-no = { $name }, no. { $serial }
cert-materials-tested = tested { $date }
cert-materials-membrane = membrane { $length }
cert-materials-no_membrane = no membrane
cert-materials-sleeve_membrane = Sleeve, membrane
cert-materials-sleeve = sleeve; { $membrane }
cert-materials-sleeve_2 = sleeve { $length }
cert-materials-instruments = Instruments
cert-materials-instrument = Instrument
cert-materials-not_in_the_plan = { $id } (not in the plan)
cert-materials-pressure_gauge = Pressure gauge
cert-materials-thermometer = Thermometer
cert-materials-camera_counter = Camera counter
cert-materials-scale = Scale
cert-materials-tape = Tape
cert-materials-gas_meter = Gas meter
cert-materials-no_calibration_asked = no calibration asked
cert-materials-calibrated_to = calibrated to { $date }

## derive/photos.rs

cert-photos-photo_without_a_title = Photo without a title
cert-photos-attempt = { $title } (attempt { $n })
cert-photos-marked_up_copy_of_photo = marked-up copy of photo { $number }
cert-photos-the_original_is_not_on = the original is not on this device
cert-photos-the_file_on_this_device = the file on this device is not the original: its SHA-256 is another

## derive/sheets.rs

cert-sheets-as_entered_the_program_ships = as entered; the program ships no process values of its own
cert-sheets-no_plan_was_accepted = no plan was accepted
cert-sheets-coordinates_of_the_node_as = coordinates of the node, as read in
cert-sheets-no_inspection_was_read_in = no inspection was read in
cert-sheets-lines = { $date }, lines { $lines }
cert-sheets-not_kept = not kept
cert-sheets-from = { $table } from { $from }
cert-sheets-1_by_mass = { $ratio } : 1 by mass, ± { $tolerance } %
cert-sheets-whole_containers = whole containers: { $kit }, { $mass }
cert-sheets-for_up_to = { $table }, for up to { $batch }
cert-sheets-parts_a_and_b = Parts A and B
cert-sheets-mixing = Mixing
cert-sheets-at_least = at least { $value }
cert-sheets-resin_temperature = Resin temperature
cert-sheets-storage = Storage
cert-sheets-joining = joining
cert-sheets-target_pressure = target pressure
cert-sheets-at = { $time } at { $temperature }
cert-sheets-least_gauge_least_net = least gauge { $gauge }, least net { $net }
cert-sheets-up_to = { $pressure } up to { $size }
cert-sheets-not_stated = not stated
cert-sheets-for = { $pressure } for { $time }
cert-sheets-pressure = Pressure
cert-sheets-most_packer = Most, packer
cert-sheets-most_patch = Most, patch
cert-sheets-most_host_pipe = Most, host pipe
cert-sheets-most_contract = Most, contract
cert-sheets-packer_test = Packer test
cert-sheets-nobody_has_stated_one = nobody has stated one
cert-sheets-at_least_equal_within = at least { $least }, equal within { $tolerance }
cert-sheets-bare_ends = Bare ends
cert-sheets-packer_range = Packer range
cert-sheets-soaked_patch = Soaked patch
cert-sheets-every_grace = every { $interval }, grace { $grace }
cert-sheets-a_longer_gap_is_lost = a longer gap is lost whole
cert-sheets-of_a_longer_gap_the = of a longer gap the excess is lost
cert-sheets-open_to = open { $least } to { $most } %
cert-sheets-the_foreman_decides_after_the = the foreman decides after the camera
cert-sheets-a_new_attempt = a new attempt
cert-sheets-asked_after_full_cure = asked after full cure
cert-sheets-not_asked = not asked
cert-sheets-cover_each_side = Cover each side
cert-sheets-readings = Readings
cert-sheets-gap_rule = Gap rule
cert-sheets-fold = Fold
cert-sheets-lateral = Lateral
cert-sheets-doubtful_hold = Doubtful hold
cert-sheets-second_go = Second go
cert-sheets-margin = Margin
cert-sheets-cleaning = Cleaning
cert-sheets-viewed_again_within = viewed again within { $time }
cert-sheets-temperatures_no_older_than = temperatures no older than { $time }
cert-sheets-the_greater_of_of_dn = the greater of { $percent } % of DN and { $height }
cert-sheets-of_dn = { $percent } % of DN

## layout/evidence.rs

cert-evidence-item = Item
cert-evidence-kind_number = Kind, number
cert-evidence-lot = Lot
cert-evidence-expiry_check = Expiry, check
cert-evidence-amount_range = Amount, range
cert-evidence-note = Note
cert-evidence-value = Value
cert-evidence-as_entered = As entered
cert-evidence-source = Source
cert-evidence-check = Check
cert-evidence-formula_and_source = Formula and source
cert-evidence-inputs = Inputs
cert-evidence-limit = Limit
cert-evidence-what = What
cert-evidence-found = Found
cert-evidence-evidence = Evidence
cert-evidence-no = No.
cert-evidence-rule_and_value = Rule and value
cert-evidence-reason_who_when = Reason, who, when
cert-evidence-what_happened = What happened
cert-evidence-from_to = From, to
cert-evidence-what_happened_what_became_of = What happened, what became of the material
cert-evidence-where_was_the_patch = Where was the patch?
cert-evidence-anything_in_the_pipe = Anything in the pipe?
cert-evidence-outcome_by_when = Outcome, by, when
cert-evidence-old = Old
cert-evidence-new = New
cert-evidence-reason = Reason
cert-evidence-by_when = By, when
cert-evidence-result_against_limit_margin_is = result against limit; margin is what was left
cert-evidence-danger_zone = Danger zone
cert-evidence-the_two_questions_were_asked = the two questions were asked when the working time ran out, and answered by the persons named
cert-evidence-nothing_is_overwritten_the_old = nothing is overwritten: the old value stays

## layout/photos.rs

cert-photos-the_copy_is_not_at = the copy is not at hand
cert-photos-the_copy_is_not_the = the copy is not the one that was recorded: its hash differs
cert-photos-the_copy_cant_be_shown = the copy can’t be shown: { $fault }
cert-photos-reduced_copies_the_originals_stay = reduced copies; the originals stay with the contractor, named by their SHA-256; shortened here, in full in the record
cert-photos-in_bundle = , in bundle { $bundle }
cert-photos-this_copy = this copy { $hash }
cert-photos-no_copy = no copy
cert-photos-original = original { $hash }{ $bundle }
cert-photos-photo = Photo { $title }
cert-photos-it_was_not_examined = it was not examined
cert-photos-no_picture = No picture: { $why }.

## More

cert-count-layers = { $count ->
    [one] { $count } layer
   *[other] { $count } layers
  }
cert-tables-continued = { $title } (continued)
cert-jpeg-not_jpeg = it is not a JPEG file
cert-jpeg-cut_off = the file is cut off
cert-jpeg-no_size = it has no picture size
cert-jpeg-colour = it is in CMYK or another kind of colour that a page can't show
cert-jpeg-coding = its kind of JPEG (arithmetic coding, lossless or 12 bit) can't be shown
cert-photo_copy-unreadable = the original is no JPEG or PNG picture, or it is damaged ({ $why })
cert-photo_copy-unwritable = the copy could not be written ({ $why })
cert-sheets-full_cure = Full cure
