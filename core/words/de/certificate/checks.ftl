### Der Nachweis: die berechneten Prüfungen.

## derive/checks/mod.rs

cert-mod-fails_by = VERFEHLT um { $text }
cert-mod-kn = { $force } ({ $inside }, { $pressure })
cert-mod-and_g_h_a_kn = , und ρ g h A = { $force } mehr aus { $head } Wasser hinter einem Packer, der die Haltung verschließt
cert-mod-end_thrust_if_an_end = Axialschub, wenn ein Ende nachgibt: π/4 × ID² × Druck = { $air }{ $water }; aufgerundet. Eine Zahl zum Abstandhalten, keine Bestehensgrenze.

## derive/checks/place.rs

cert-place-errors_at_the_defect = Fehler am Schaden
cert-place-none_counted = keine gezählt
cert-place-patch_defect_2_offset_errors = (Kurzliner − Schaden) / 2 { $sign } Versatz − Fehler
cert-place-cover_upstream = Überdeckung oberhalb
cert-place-cover_downstream = Überdeckung unterhalb
cert-place-no_patch_was_set_or = kein Kurzliner gesetzt, oder niemand sagte wo
cert-place-patch_of_planned = Kurzliner { $this } von { $all }; geplant { $planned } { $sign } { $off }
cert-place-no_patch_planned = kein Kurzliner geplant
cert-place-the_mouth_of_the_pipe = der Rohrmündung
cert-place-the_cap_of_the_cleanout = dem Deckel der Reinigungsöffnung
cert-place-path = Weg { $length }
cert-place-rods_and_mark = Stangen und Marke
cert-place-whole_rods_path_rod_mark = ganze Stangen = ⌊Weg / Stange⌋, Marke beim Rest; Weg ab { $point } in { $node }
cert-place-rod = { $path }; Stange { $length }
cert-place-rope = Seil
cert-place-hose = Schlauch
cert-place-mark_on_the_path_from = Marke am { $on } = Weg ab { $point } in { $node } bis zur Mitte des Kurzliners
cert-place-mark = Marke
cert-place-shorter_end_difference_of_both = kürzeres Ende; Unterschied beider
cert-place-packer_fits = Packer passt
cert-place-packer = Packer
cert-place-patch_fits = Kurzliner passt
cert-place-patch = Kurzliner
cert-place-measured_id_inside_the_range = gemessener Innendurchmesser im Bereich für { $what }
cert-place-outside = außerhalb
cert-place-inside = innerhalb
cert-place-station_line_of_the_way = Station / Länge des Wegs zwischen beiden Knoten auf WGS 84
cert-place-station_of = Station { $at } von { $length }
cert-place-no_position_of_the_phone = keine Position des Telefons
cert-place-can_be = kann sein
cert-place-too_far_for_its_accuracy = zu weit für seine Genauigkeit
cert-place-accuracy_not_known = Genauigkeit nicht bekannt
cert-place-phone_from_the_node = Telefon { $distance } vom Knoten: { $can_be }
cert-place-place_on_the_map = Ort auf der Karte
cert-place-viewed_again_cleaned = nochmals befahren − gereinigt
cert-place-clean_pipe = Sauberes Rohr

## derive/checks/pressure.rs

cert-pressure-counted = gezählt { $pressure }
cert-pressure-min = min. { $pressure }; { $inside }
cert-pressure-counted_2 = { $pressure } gezählt
cert-pressure-nothing_counted = nichts gezählt
cert-pressure-window_lower_limit = Druckbereich, untere Grenze
cert-pressure-window_upper_limit = Druckbereich, obere Grenze
cert-pressure-max = max. { $pressure }
cert-pressure-packer_up_to = Packer bis { $size }
cert-pressure-host_pipe = Altrohr
cert-pressure-contract = Vertrag
cert-pressure-net_pressure = Nettodruck

## derive/checks/resin.rs

cert-resin-w_wet_out_push_loading = W − Tränkung − Einfahren × Faktor mit Kurzliner − Anschließen und Aufblasen − Reserve
cert-resin-time_budget_at = Zeitbudget um { $at }
cert-resin-joined_second_go = Mischbeginn − zweite Freigabe
cert-resin-age_of_temperatures = Alter der Temperaturen
cert-resin-no_second_go = keine zweite Freigabe
cert-resin-ln_t_against_1_t = ln t über 1/T zwischen den Zeilen des Datenblatts, beim Wärmsten von Harz, Luft, Rohr
cert-resin-target_pressure_never_reached = Solldruck nie erreicht
cert-resin-ln_t_against_1_t_2 = ln t über 1/T zwischen den Zeilen des Datenblatts, bei der kältesten Ablesung von Rohr und Wasser
cert-resin-at = {" "}um { $at }
cert-resin-colder_than_the_table_its = { $cold }{ $at }: kälter als die Tabelle, ihre längste Zeit gilt
cert-resin-hold_counted = Haltezeit gezählt
cert-resin-first_cut = erster Schnitt
cert-resin-test = Prüfung
cert-resin-joined = Mischbeginn
cert-resin-first_cut_or_test_by = erster Schnitt oder Prüfung − { $begins }, nach Datenblatt bei der kältesten Ablesung
cert-resin-nothing_cut_or_tested = nichts gefräst oder geprüft
cert-resin-both_emptied = beide entleert
cert-resin-not_recorded_as_emptied = Entleeren nicht erfasst
cert-resin-whole_containers_a_into_b = ganze Gebinde, A in B bis zum letzten Tropfen
cert-resin-mass_a_mass_b = Masse A / Masse B
cert-resin-masses_not_recorded = Massen nicht erfasst
cert-resin-ratio_a_b = Verhältnis A : B
cert-resin-stopwatch = Stoppuhr
cert-resin-mixing_time = Mischzeit

## derive/checks/verification.rs

cert-verification-fold_height = Faltenhöhe
cert-verification-lateral = Anschluss { $at }
cert-verification-open_area_bore_by_eye = offene Fläche / Weite, nach Augenmaß an der Kamera
cert-verification-dn_oclock = DN { $dn }, { $hour } Uhr
cert-verification-to = { $least } bis { $most } %
cert-verification-not_opened = nicht geöffnet
cert-verification-fails_not_opened = VERFEHLT: nicht geöffnet

## derive/checks/worked.rs

cert-worked-see_the_inputs = siehe Eingaben

## More

cert-pressure-over = −{ $pressure }, nicht gezählt
cert-pressure-lower = max(mind. Überdruck, mind. netto + { $water } bar/m × Wasserstand). { $source }
cert-pressure-net = tiefste Ablesung − { $water } bar/m × Wasserstand über der Sohle. { $source }
cert-worked-no_design = Eine Prüfung für einen zugelassenen Ingenieur, keine Bemessung.
cert-worked-local_codes = Örtliche Vorschriften gehen vor.
cert-worked-never_shorten = Darf die Haltezeit verlängern, nie verkürzen.
cert-worked-gives = ergibt { $name } { $value }
