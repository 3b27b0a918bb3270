### Le certificat : les dessins.

## derive/place.rs

cert-place-not_measured = non mesuré
cert-place-no_patch_was_set = aucune manchette posée
cert-place-nobody_recorded_where_the_patch = personne n’a noté où la manchette s’est arrêtée
cert-place-defect = Défaut
cert-place-entered_by_hand = saisi à la main
cert-place-defect_2 = défaut
cert-place-fold = pli

## layout/drawings/clock.rs

cert-clock-clock_face = Cadran
cert-clock-looking_downstream = vu vers l’aval
cert-clock-patch_all_round = manchette sur tout le tour
cert-clock-no_patch = pas de manchette : { $why }
cert-clock-clock_face_looking_downstream = Cadran vu vers l’aval : { $seen }, { $patch }{ $laterals }
cert-clock-dashed = { $label }, tirets
cert-clock-lateral = branchement

## layout/drawings/line.rs

cert-line-the_line_to_scale = Le tronçon à l’échelle
cert-line-patch_at = manchette à { $stretch }
cert-line-the_line_to_scale_left = Le tronçon à l’échelle, { $upstream } à gauche, écoulement vers la droite ; { $patch } ; { $laterals }
cert-line-no_lateral = aucun branchement
cert-line-opened_to = , ouvert à { $percent } %
cert-line-dn_oclock = { $at } { $unit } (DN { $dn }, { $hour } h{ $opened })
cert-line-laterals_at = branchements à { $each }
cert-line-laterals_dn = branchements DN { $dn }
cert-line-dn_of_a_lateral_in = DN d’un branchement entre parenthèses
cert-line-of_them_without_their_figures = ; { $hidden } d’entre eux sans leurs chiffres, qui sont dans les notes
cert-line-1_seen_from_above_flow = 1 : { $scale }, vu de dessus, écoulement de gauche à droite ; { $laterals }{ $hidden }
cert-line-defect_no_patch = défaut, sans manchette
cert-line-0_from = 0 { $unit } depuis { $name }

## layout/drawings/mod.rs

cert-mod-no_drawing = Pas de dessin

## layout/drawings/patch.rs

cert-patch-patch_and_defect = Manchette et défaut
cert-patch-1_along_the_pipe_wall = 1 : { $scale } en long ; paroi déroulée, coupée à 6 h ; { $unit } depuis { $upstream }
cert-patch-patch_to = manchette { $from } à { $to } { $unit }
cert-patch-to = ; { $code } { $from } à { $to } { $unit }, { $around }
cert-patch-cover_left_upstream_and_downstream = ; débord restant { $upstream } amont et { $downstream } aval
cert-patch-the_wall_unrolled = La paroi déroulée : { $patch }{ $seen }{ $cover }

## layout/drawings/patch_labels.rs

cert-patch-lateral_dn = branchement DN { $dn }, { $station }
cert-patch-dn = DN { $dn }, { $station }
cert-patch-and_more_not_drawn = et { $more ->
    [one] { $more } autre, non dessiné
   *[other] { $more } autres, non dessinés
  }
cert-patch-cover_of_the_defect = Débord,
cert-patch-less_errors_of = moins erreurs de { $length }
cert-patch-upstream = { $length } amont
cert-patch-downstream = { $length } aval
cert-patch-required = exigé { $length }
cert-patch-none_required = non exigé : { $why }
cert-patch-no_cover = Pas de débord :

## More

cert-clock-at = à { $hour } h
cert-clock-from_to = { $from_hour } h à { $to_hour } h
cert-clock-no_patch_set_1 = manchette
cert-clock-no_patch_set_2 = non posée
