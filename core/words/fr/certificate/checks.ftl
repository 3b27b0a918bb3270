### Le certificat : les vérifications calculées.

## derive/checks/mod.rs

cert-mod-fails_by = ÉCHEC de { $text }
cert-mod-kn = { $force } ({ $inside }, { $pressure })
cert-mod-and_g_h_a_kn = , et ρ g h A = { $force } de plus pour { $head } d’eau derrière un packer qui obture le tronçon
cert-mod-end_thrust_if_an_end = Poussée si un bout lâche : π/4 × DI² × pression = { $air }{ $water } ; arrondi par excès. Un chiffre pour se tenir à l’écart, pas un critère.

## derive/checks/place.rs

cert-place-errors_at_the_defect = Erreurs au défaut
cert-place-none_counted = aucune comptée
cert-place-patch_defect_2_offset_errors = (manchette − défaut) / 2 { $sign } décalage − erreurs
cert-place-cover_upstream = Débord amont
cert-place-cover_downstream = Débord aval
cert-place-no_patch_was_set_or = aucune manchette posée, ou personne n’a dit où
cert-place-patch_of_planned = manchette { $this } sur { $all } ; prévu { $planned } { $sign } { $off }
cert-place-no_patch_planned = aucune manchette prévue
cert-place-the_mouth_of_the_pipe = l’entrée de la conduite
cert-place-the_cap_of_the_cleanout = le bouchon du té de visite
cert-place-path = trajet { $length }
cert-place-rods_and_mark = Cannes et repère
cert-place-whole_rods_path_rod_mark = cannes entières = ⌊trajet / canne⌋, repère au reste ; trajet depuis { $point } à { $node }
cert-place-rod = { $path } ; canne { $length }
cert-place-rope = corde
cert-place-hose = flexible
cert-place-mark_on_the_path_from = repère sur { $on } = trajet depuis { $point } à { $node } au centre de la manchette
cert-place-mark = Repère
cert-place-shorter_end_difference_of_both = bout le plus court ; différence des deux
cert-place-packer_fits = Packer adapté
cert-place-packer = packer
cert-place-patch_fits = Manchette adaptée
cert-place-patch = manchette
cert-place-measured_id_inside_the_range = diamètre intérieur mesuré dans la plage : { $what }
cert-place-outside = hors plage
cert-place-inside = dans la plage
cert-place-station_line_of_the_way = abscisse / longueur du trajet entre les deux nœuds sur WGS 84
cert-place-station_of = abscisse { $at } sur { $length }
cert-place-no_position_of_the_phone = pas de position du téléphone
cert-place-can_be = possible
cert-place-too_far_for_its_accuracy = trop loin pour sa précision
cert-place-accuracy_not_known = précision inconnue
cert-place-phone_from_the_node = téléphone à { $distance } du nœud : { $can_be }
cert-place-place_on_the_map = Lieu sur la carte
cert-place-viewed_again_cleaned = revue − curée
cert-place-clean_pipe = Conduite propre

## derive/checks/pressure.rs

cert-pressure-counted = comptée { $pressure }
cert-pressure-min = min. { $pressure } ; { $inside }
cert-pressure-counted_2 = { $pressure } comptés
cert-pressure-nothing_counted = rien de compté
cert-pressure-window_lower_limit = Plage, limite basse
cert-pressure-window_upper_limit = Plage, limite haute
cert-pressure-max = max. { $pressure }
cert-pressure-packer_up_to = packer jusqu’à { $size }
cert-pressure-host_pipe = conduite
cert-pressure-contract = contrat
cert-pressure-net_pressure = Pression nette

## derive/checks/resin.rs

cert-resin-w_wet_out_push_loading = W − imprégnation − introduction × facteur de charge − brancher et gonfler − marge
cert-resin-time_budget_at = Budget temps à { $at }
cert-resin-joined_second_go = réunion − deuxième feu vert
cert-resin-age_of_temperatures = Âge des températures
cert-resin-no_second_go = pas de deuxième feu vert
cert-resin-ln_t_against_1_t = ln t selon 1/T entre lignes de la fiche, au plus chaud de résine, air, conduite
cert-resin-target_pressure_never_reached = pression de consigne jamais atteinte
cert-resin-ln_t_against_1_t_2 = ln t selon 1/T entre lignes de la fiche, au relevé le plus froid de conduite et eau
cert-resin-at = {" "}à { $at }
cert-resin-colder_than_the_table_its = { $cold }{ $at } : plus froid que le tableau, son temps le plus long s’applique
cert-resin-hold_counted = Maintien compté
cert-resin-first_cut = premier fraisage
cert-resin-test = essai
cert-resin-joined = réunion
cert-resin-first_cut_or_test_by = premier fraisage ou essai − { $begins }, selon la fiche au relevé le plus froid
cert-resin-nothing_cut_or_tested = rien de fraisé ni d’essayé
cert-resin-both_emptied = les deux vidés
cert-resin-not_recorded_as_emptied = vidage non noté
cert-resin-whole_containers_a_into_b = récipients entiers, A dans B jusqu’à la dernière goutte
cert-resin-mass_a_mass_b = masse A / masse B
cert-resin-masses_not_recorded = masses non notées
cert-resin-ratio_a_b = Rapport A : B
cert-resin-stopwatch = chronomètre
cert-resin-mixing_time = Temps de mélange

## derive/checks/verification.rs

cert-verification-fold_height = Hauteur du pli
cert-verification-lateral = Branchement { $at }
cert-verification-open_area_bore_by_eye = surface ouverte / section, à l’œil à la caméra
cert-verification-dn_oclock = DN { $dn }, { $hour } h
cert-verification-to = { $least } à { $most } %
cert-verification-not_opened = non rouvert
cert-verification-fails_not_opened = ÉCHEC : non rouvert

## derive/checks/worked.rs

cert-worked-see_the_inputs = voir les données

## More

cert-pressure-over = −{ $pressure }, non compté
cert-pressure-lower = max(min. relative, min. nette + { $water } bar/m × hauteur d’eau). { $source }
cert-pressure-net = relevé le plus bas − { $water } bar/m × eau au-dessus du radier. { $source }
cert-worked-no_design = Une vérification pour un ingénieur habilité, pas un dimensionnement.
cert-worked-local_codes = Les règles locales l’emportent.
cert-worked-never_shorten = Peut allonger le maintien, jamais le raccourcir.
cert-worked-gives = donne { $name } { $value }
