### The certificate: the drawings.

## derive/place.rs

cert-place-not_measured = not measured
cert-place-no_patch_was_set = no patch was set
cert-place-nobody_recorded_where_the_patch = nobody recorded where the patch came to rest
cert-place-defect = Defect
cert-place-entered_by_hand = entered by hand
cert-place-defect_2 = defect
cert-place-fold = fold

## layout/drawings/clock.rs

cert-clock-clock_face = Clock face
cert-clock-looking_downstream = looking downstream
cert-clock-patch_all_round = patch all round
cert-clock-no_patch = no patch: { $why }
cert-clock-clock_face_looking_downstream = Clock face looking downstream: { $seen }, { $patch }{ $laterals }
cert-clock-dashed = { $label }, dashed
cert-clock-lateral = lateral

## layout/drawings/line.rs

cert-line-the_line_to_scale = The line to scale
cert-line-patch_at = patch at { $stretch }
cert-line-the_line_to_scale_left = The line to scale, { $upstream } left, flow to the right; { $patch }; { $laterals }
cert-line-no_lateral = no lateral
cert-line-opened_to = , opened to { $percent } %
cert-line-dn_oclock = { $at } { $unit } (DN { $dn }, { $hour } o’clock{ $opened })
cert-line-laterals_at = laterals at { $each }
cert-line-laterals_dn = laterals DN { $dn }
cert-line-dn_of_a_lateral_in = DN of a lateral in brackets
cert-line-of_them_without_their_figures = ; { $hidden } of them without their figures, which stand in the notes
cert-line-1_seen_from_above_flow = 1 : { $scale }, seen from above, flow left to right; { $laterals }{ $hidden }
cert-line-defect_no_patch = defect, no patch
cert-line-0_from = 0 { $unit } from { $name }

## layout/drawings/mod.rs

cert-mod-no_drawing = No drawing

## layout/drawings/patch.rs

cert-patch-patch_and_defect = Patch and defect
cert-patch-1_along_the_pipe_wall = 1 : { $scale } along the pipe; wall unrolled, cut at 6 o’clock; { $unit } from { $upstream }
cert-patch-patch_to = patch { $from } to { $to } { $unit }
cert-patch-to = ; { $code } { $from } to { $to } { $unit }, { $around }
cert-patch-cover_left_upstream_and_downstream = ; cover left { $upstream } upstream and { $downstream } downstream
cert-patch-the_wall_unrolled = The wall unrolled: { $patch }{ $seen }{ $cover }

## layout/drawings/patch_labels.rs

cert-patch-lateral_dn = lateral DN { $dn }, { $station }
cert-patch-dn = DN { $dn }, { $station }
cert-patch-and_more_not_drawn = and { $more } more, not drawn
cert-patch-cover_of_the_defect = Cover of the defect,
cert-patch-less_errors_of = less errors of { $length }
cert-patch-upstream = { $length } upstream
cert-patch-downstream = { $length } downstream
cert-patch-required = required { $length }
cert-patch-none_required = none required: { $why }
cert-patch-no_cover = No cover:

## More

cert-clock-at = at { $hour }
cert-clock-from_to = { $from_hour } to { $to_hour }
cert-clock-no_patch_set_1 = no patch
cert-clock-no_patch_set_2 = set
