### El certificado: los dibujos.

## derive/place.rs

cert-place-not_measured = sin medir
cert-place-no_patch_was_set = no se colocó ningún parche
cert-place-nobody_recorded_where_the_patch = nadie anotó dónde quedó el parche
cert-place-defect = Defecto
cert-place-entered_by_hand = anotado a mano
cert-place-defect_2 = defecto
cert-place-fold = pliegue

## layout/drawings/clock.rs

cert-clock-clock_face = Esfera horaria
cert-clock-looking_downstream = mirando aguas abajo
cert-clock-patch_all_round = parche en toda la vuelta
cert-clock-no_patch = sin parche: { $why }
cert-clock-clock_face_looking_downstream = Esfera horaria mirando aguas abajo: { $seen }, { $patch }{ $laterals }
cert-clock-dashed = { $label }, a trazos
cert-clock-lateral = acometida

## layout/drawings/line.rs

cert-line-the_line_to_scale = El tramo a escala
cert-line-patch_at = parche en { $stretch }
cert-line-the_line_to_scale_left = El tramo a escala, { $upstream } a la izquierda, flujo hacia la derecha; { $patch }; { $laterals }
cert-line-no_lateral = ninguna acometida
cert-line-opened_to = , abierta al { $percent } %
cert-line-dn_oclock = { $at } { $unit } (DN { $dn }, { $hour } h{ $opened })
cert-line-laterals_at = acometidas en { $each }
cert-line-laterals_dn = acometidas DN { $dn }
cert-line-dn_of_a_lateral_in = DN de la acometida entre paréntesis
cert-line-of_them_without_their_figures = ; { $hidden } de ellas sin sus cifras, que están en las notas
cert-line-1_seen_from_above_flow = 1 : { $scale }, vista desde arriba, flujo de izquierda a derecha; { $laterals }{ $hidden }
cert-line-defect_no_patch = defecto, sin parche
cert-line-0_from = 0 { $unit } desde { $name }

## layout/drawings/mod.rs

cert-mod-no_drawing = Sin dibujo

## layout/drawings/patch.rs

cert-patch-patch_and_defect = Parche y defecto
cert-patch-1_along_the_pipe_wall = 1 : { $scale } a lo largo; pared desarrollada, corte a las 6 h; { $unit } desde { $upstream }
cert-patch-patch_to = parche { $from } a { $to } { $unit }
cert-patch-to = ; { $code } { $from } a { $to } { $unit }, { $around }
cert-patch-cover_left_upstream_and_downstream = ; cobertura restante { $upstream } aguas arriba y { $downstream } aguas abajo
cert-patch-the_wall_unrolled = La pared desarrollada: { $patch }{ $seen }{ $cover }

## layout/drawings/patch_labels.rs

cert-patch-lateral_dn = acometida DN { $dn }, { $station }
cert-patch-dn = DN { $dn }, { $station }
cert-patch-and_more_not_drawn = y { $more } más, sin dibujar
cert-patch-cover_of_the_defect = Cobertura,
cert-patch-less_errors_of = menos errores de { $length }
cert-patch-upstream = { $length } aguas arriba
cert-patch-downstream = { $length } aguas abajo
cert-patch-required = exigida { $length }
cert-patch-none_required = ninguna exigida: { $why }
cert-patch-no_cover = Sin cobertura:

## More

cert-clock-at = a las { $hour }
cert-clock-from_to = { $from_hour } a { $to_hour }
cert-clock-no_patch_set_1 = parche
cert-clock-no_patch_set_2 = no puesto
