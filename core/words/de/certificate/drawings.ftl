### Der Nachweis: die Zeichnungen.

## derive/place.rs

cert-place-not_measured = nicht gemessen
cert-place-no_patch_was_set = kein Kurzliner wurde gesetzt
cert-place-nobody_recorded_where_the_patch = niemand hat erfasst, wo der Kurzliner zu liegen kam
cert-place-defect = Schaden
cert-place-entered_by_hand = von Hand eingegeben
cert-place-defect_2 = Schaden
cert-place-fold = Falte

## layout/drawings/clock.rs

cert-clock-clock_face = Zifferblatt
cert-clock-looking_downstream = Blick in Fließrichtung
cert-clock-patch_all_round = Kurzliner rundum
cert-clock-no_patch = kein Kurzliner: { $why }
cert-clock-clock_face_looking_downstream = Zifferblatt, Blick in Fließrichtung: { $seen }, { $patch }{ $laterals }
cert-clock-dashed = { $label }, gestrichelt
cert-clock-lateral = Anschluss

## layout/drawings/line.rs

cert-line-the_line_to_scale = Die Haltung im Maßstab
cert-line-patch_at = Kurzliner bei { $stretch }
cert-line-the_line_to_scale_left = Die Haltung im Maßstab, { $upstream } links, Fließrichtung nach rechts; { $patch }; { $laterals }
cert-line-no_lateral = kein Anschluss
cert-line-opened_to = , zu { $percent } % geöffnet
cert-line-dn_oclock = { $at } { $unit } (DN { $dn }, { $hour } Uhr{ $opened })
cert-line-laterals_at = Anschlüsse bei { $each }
cert-line-laterals_dn = Anschlüsse DN { $dn }
cert-line-dn_of_a_lateral_in = DN eines Anschlusses in Klammern
cert-line-of_them_without_their_figures = ; { $hidden } davon ohne ihre Zahlen, die in den Vermerken stehen
cert-line-1_seen_from_above_flow = 1 : { $scale }, von oben gesehen, Fließrichtung nach rechts; { $laterals }{ $hidden }
cert-line-defect_no_patch = Schaden, kein Kurzliner
cert-line-0_from = 0 { $unit } ab { $name }

## layout/drawings/mod.rs

cert-mod-no_drawing = Keine Zeichnung

## layout/drawings/patch.rs

cert-patch-patch_and_defect = Kurzliner und Schaden
cert-patch-1_along_the_pipe_wall = 1 : { $scale } längs; Wand abgewickelt, Schnitt bei 6 Uhr; { $unit } ab { $upstream }
cert-patch-patch_to = Kurzliner { $from } bis { $to } { $unit }
cert-patch-to = ; { $code } { $from } bis { $to } { $unit }, { $around }
cert-patch-cover_left_upstream_and_downstream = ; Überdeckung übrig { $upstream } oberhalb und { $downstream } unterhalb
cert-patch-the_wall_unrolled = Die Wand abgewickelt: { $patch }{ $seen }{ $cover }

## layout/drawings/patch_labels.rs

cert-patch-lateral_dn = Anschluss DN { $dn }, { $station }
cert-patch-dn = DN { $dn }, { $station }
cert-patch-and_more_not_drawn = und { $more } weitere, nicht gezeichnet
cert-patch-cover_of_the_defect = Überdeckung,
cert-patch-less_errors_of = abzüglich Fehler { $length }
cert-patch-upstream = { $length } oberhalb
cert-patch-downstream = { $length } unterhalb
cert-patch-required = verlangt { $length }
cert-patch-none_required = keine verlangt: { $why }
cert-patch-no_cover = Keine Überdeckung:

## More

cert-clock-at = bei { $hour }
cert-clock-from_to = { $from_hour } bis { $to_hour }
cert-clock-no_patch_set_1 = kein Kurzliner
cert-clock-no_patch_set_2 = gesetzt
