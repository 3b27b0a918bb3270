### The certificate: the computed checks.

## derive/checks/mod.rs

cert-mod-fails_by = FAILS by { $text }
cert-mod-kn = { $force } ({ $inside }, { $pressure })
cert-mod-and_g_h_a_kn = , and ρ g h A = { $force } more from { $head } of water behind a packer that plugs the line
cert-mod-end_thrust_if_an_end = End thrust if an end lets go: π/4 × ID² × pressure = { $air }{ $water }; rounded up. A number for keeping away, not a pass mark.

## derive/checks/place.rs

cert-place-errors_at_the_defect = Errors at the defect
cert-place-none_counted = none counted
cert-place-patch_defect_2_offset_errors = (patch − defect) / 2 { $sign } offset − errors
cert-place-cover_upstream = Cover upstream
cert-place-cover_downstream = Cover downstream
cert-place-no_patch_was_set_or = no patch was set, or nobody said where
cert-place-patch_of_planned = patch { $this } of { $all }; planned { $planned } { $sign } { $off }
cert-place-no_patch_planned = no patch planned
cert-place-the_mouth_of_the_pipe = the mouth of the pipe
cert-place-the_cap_of_the_cleanout = the cap of the cleanout
cert-place-path = path { $length }
cert-place-rods_and_mark = Rods and mark
cert-place-whole_rods_path_rod_mark = whole rods = ⌊path / rod⌋, mark at the remainder; path from { $point } in { $node }
cert-place-rod = { $path }; rod { $length }
cert-place-rope = rope
cert-place-hose = hose
cert-place-mark_on_the_path_from = mark on the { $on } = path from { $point } in { $node } to the patch centre
cert-place-mark = Mark
cert-place-shorter_end_difference_of_both = shorter end; difference of both
cert-place-packer_fits = Packer fits
cert-place-packer = packer
cert-place-patch_fits = Patch fits
cert-place-patch = patch
cert-place-measured_id_inside_the_range = measured ID inside the range of the { $what }
cert-place-outside = outside
cert-place-inside = inside
cert-place-station_line_of_the_way = station / line of the way between both nodes on WGS 84
cert-place-station_of = station { $at } of { $length }
cert-place-no_position_of_the_phone = no position of the phone
cert-place-can_be = can be
cert-place-too_far_for_its_accuracy = too far for its accuracy
cert-place-accuracy_not_known = accuracy not known
cert-place-phone_from_the_node = phone { $distance } from the node: { $can_be }
cert-place-place_on_the_map = Place on the map
cert-place-viewed_again_cleaned = viewed again − cleaned
cert-place-clean_pipe = Clean pipe

## derive/checks/pressure.rs

cert-pressure-counted = counted { $pressure }
cert-pressure-min = min { $pressure }; { $inside }
cert-pressure-counted_2 = { $pressure } counted
cert-pressure-nothing_counted = nothing counted
cert-pressure-window_lower_limit = Window, lower limit
cert-pressure-window_upper_limit = Window, upper limit
cert-pressure-max = max { $pressure }
cert-pressure-packer_up_to = packer up to { $size }
cert-pressure-host_pipe = host pipe
cert-pressure-contract = contract
cert-pressure-net_pressure = Net pressure

## derive/checks/resin.rs

cert-resin-w_wet_out_push_loading = W − wet-out − push × loading factor − connect and inflate − margin
cert-resin-time_budget_at = Time budget at { $at }
cert-resin-joined_second_go = joined − second go
cert-resin-age_of_temperatures = Age of temperatures
cert-resin-no_second_go = no second go
cert-resin-ln_t_against_1_t = ln t against 1/T between sheet rows, at the warmest of resin, air, pipe
cert-resin-target_pressure_never_reached = target pressure never reached
cert-resin-ln_t_against_1_t_2 = ln t against 1/T between sheet rows, at the coldest reading of pipe and water
cert-resin-at = {" "}at { $at }
cert-resin-colder_than_the_table_its = { $cold }{ $at }: colder than the table, its longest time stands in
cert-resin-hold_counted = Hold counted
cert-resin-first_cut = first cut
cert-resin-test = test
cert-resin-joined = joined
cert-resin-first_cut_or_test_by = first cut or test − { $begins }, by the sheet at the coldest reading
cert-resin-nothing_cut_or_tested = nothing cut or tested
cert-resin-both_emptied = both emptied
cert-resin-not_recorded_as_emptied = not recorded as emptied
cert-resin-whole_containers_a_into_b = whole containers, A into B to the last drop
cert-resin-mass_a_mass_b = mass A / mass B
cert-resin-masses_not_recorded = masses not recorded
cert-resin-ratio_a_b = Ratio A : B
cert-resin-stopwatch = stopwatch
cert-resin-mixing_time = Mixing time

## derive/checks/verification.rs

cert-verification-fold_height = Fold height
cert-verification-lateral = Lateral { $at }
cert-verification-open_area_bore_by_eye = open area / bore, by eye on the camera
cert-verification-dn_oclock = DN { $dn }, { $hour } o’clock
cert-verification-to = { $least } to { $most } %
cert-verification-not_opened = not opened
cert-verification-fails_not_opened = FAILS: not opened

## derive/checks/worked.rs

cert-worked-see_the_inputs = see the inputs

## More

cert-pressure-over = −{ $pressure }, not counted
cert-pressure-lower = max(least gauge, least net + { $water } bar/m × head). { $source }
cert-pressure-net = lowest reading − { $water } bar/m × head above the invert. { $source }
cert-worked-no_design = A check for a licensed engineer, not a design.
cert-worked-local_codes = Local codes win.
cert-worked-never_shorten = May lengthen the hold, never shorten it.
cert-worked-gives = gives { $name } { $value }
