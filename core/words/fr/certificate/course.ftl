### Le certificat : le déroulement du travail.

## derive/course.rs

cert-course-parts_joined = composants réunis { $at }
cert-course-air_line_joined = flexible d’air branché { $at }
cert-course-reached = { $pressure } atteints { $at }
cert-course-insertion_begun = introduction commencée { $at }
cert-course-reported_after_target_pressure = {" "}(signalé après la pression de consigne)
cert-course-by_counter = , { $counter } au compteur
cert-course-at_the_mark = au repère { $at }{ $late }{ $counter }
cert-course-mark_from_the_reading_point = repère à { $path } du point de lecture
cert-course-on_the_mark = sur le repère
cert-course-past_the_mark = { $length } après le repère
cert-course-short_of_the_mark = { $length } avant le repère
cert-course-not_witnessed_hatched = { $lost } non surveillées (hachuré)
cert-course-required = { $counted }, { $required } exigées
cert-course-emergency_release = DÉGONFLAGE D’URGENCE
cert-course-released = dégonflé
cert-course-hard = dur
cert-course-soft = MOU
cert-course-sample_from_the_manhole = échantillon du regard { $felt } { $at }
cert-course-full_cure = durcissement complet { $at }
cert-course-coupon_out = pastille sortie
cert-course-coupon_not_out = PASTILLE NON SORTIE
cert-course-lateral_cut = branchement fraisé { $at }, { $coupon }
cert-course-tightness_test = essai d’étanchéité { $at }
cert-course-by_counter_2 = {" "}({ $counter } au compteur)
cert-course-at_the_mark_not_inflated = au repère { $at }{ $counted }, non gonflé
cert-course-sound = intact
cert-course-not_sound = NON INTACT
cert-course-back = ressorti { $at }, { $how }

## derive/hold.rs

cert-hold-no_attempt_was_begun = aucune tentative commencée
cert-hold-the_parts_were_never_joined = les composants n’ont jamais été réunis
cert-hold-target_pressure_was_never_reached = la pression de consigne n’a jamais été atteinte
cert-hold-the_readings_cant_be_put = les relevés ne peuvent être mis en ordre
cert-hold-required_the_longest_of_the = { $required } exigées, le maximum de la fiche : { $at } est plus froid que son tableau
cert-hold-required_at_the_coldest = { $required } exigées à { $at }, la plus froide
cert-hold-out_of_window_not_witnessed = { $outside } hors plage, { $lost } non surveillées
cert-hold-counted_of_it_from_joining = { $all } comptées, dont { $before } de la réunion à la pression
cert-hold-counted = { $all } comptées
cert-hold-the_device_was_started_anew = l’appareil a redémarré entre-temps

## derive/said.rs

cert-said-does_not_apply_because = sans objet, parce que { $because }
cert-said-not_right_because = non conforme, parce que { $because }
cert-said-cleaned = curée { $at }{ $how }
cert-said-viewed_again = revue { $at }{ $found }
cert-said-inside = intérieur { $range }{ $how }
cert-said-packer_test_held_for_drop = essai du packer { $pressure }, tenu { $time }, chute { $drop }
cert-said-bare_ends_front_rear = bouts libres { $front } avant, { $rear } arrière
cert-said-parts = composants : { $how }{ $a }{ $b }
cert-said-mixed = mélangé { $time }
cert-said-seam_at = couture à { $hour }
cert-said-pulled_by_sleeve_membrane_binding = tiré par { $by } ; housse : { $sleeve } ; membrane : { $membrane } ; ligature : { $binding }
cert-said-to = { $what } : { $mass }, vers { $where }{ $ticket }
cert-said-below = en bas : { $who }
cert-said-somebody_below_nobody_says_who = quelqu’un en bas, sans dire qui
cert-said-nobody_below = personne en bas
cert-said-permit = permis { $number }, { $who }

## derive/stages.rs

cert-stages-the_other_attempt_on_page = ; l’autre tentative page @<{ $page }>
cert-stages-other_attempts_on_page = ; autres tentatives page @<{ $page }>
cert-stages-times_attempt_of = { $date }, heures { $offset }, tentative { $n } sur { $count }{ $other }
cert-stages-begun_by_the_time_on = commencée selon l’heure sur papier
cert-stages-no_tap_a_later_stage = pas de saisie : une étape suivante a été signalée avant
cert-stages-not_reached = non atteinte
cert-stages-not_known = inconnu
cert-stages-in_attempt_still_valid = lors de la tentative { $from }, encore valable
cert-stages-no_tap_when_it_began = pas de saisie au début
cert-stages-in_attempt = Lors de la tentative { $from } : { $what }
cert-stages-waiting_for_full_cure = attente du durcissement
cert-stages-test_push = passage à blanc
cert-stages-valid_from_attempt = Valable depuis la tentative { $n } : { $what }.
cert-stages-pipe_viewed_again = {" "}Conduite revue { $at }.
cert-stages-suitability = aptitude
cert-stages-permit = permis
cert-stages-flow_control = gestion des eaux
cert-stages-measured_id = diamètre intérieur mesuré
cert-stages-instruments = instruments

## derive/tasks.rs

cert-tasks-from_paper = {" "}(du papier)
cert-tasks-does_not_apply_because = { $label } : sans objet, parce que { $because }
cert-tasks-not_right_because = { $label } : NON CONFORME, parce que { $because }
cert-tasks-the_method_statement = le mode opératoire
cert-tasks-air_read = air mesuré { $times } : { $words }
cert-tasks-temperatures = températures { $times } : { $words }
cert-tasks-full_turn_at_both_edges = tour complet aux deux bords { $at }
cert-tasks-waste = déchets { $at }

## derive/when.rs

cert-when-no_such_day = jour inexistant
cert-when-no_such_time = heure inexistante
cert-when-nobody_picked = personne n’est choisi
cert-when-not_in_the_list = { $id } (absent de la liste)
cert-when-from_paper = , du papier

## derive/words.rs

cert-words-all_round = tout le tour
cert-words-at_oclock = à { $hour } h
cert-words-to_oclock = { $from_hour } h à { $to_hour } h

## derive/working_time.rs

cert-working_time-no_row_of_the_sheet = aucune ligne de la fiche ne s’applique
cert-working_time-outside_the_sheet_its_shortest = hors fiche : son temps le plus court
cert-working_time-at_the_warmest = à { $temperature } ({ $whose }, le plus chaud)
cert-working_time-outside_the_sheet_its_shortest_2 = hors fiche : son temps le plus court s’applique
cert-working_time-late_by = ; RETARD de { $time }
cert-working_time-margin = ; marge { $time }
cert-working_time-mixed = mélangé
cert-working_time-soaked = imprégné
cert-working_time-at_the_mark = au repère
cert-working_time-air_joined = air branché

## layout/readings.rs

cert-readings-the_only_reading = Le seul relevé
cert-readings-all_readings = Les { $count } relevés
cert-readings-p_from_paper = , P du papier
cert-readings-h_read_by_hand_s = H à la main, S capteur{ $paper } ; un tiret devant un relevé : les minutes jusqu’à lui ne comptent pas
cert-readings-to = { $from } à { $to } ; { $key }
cert-readings-time = Heure
cert-readings-pipe = paroi { $degree }
cert-readings-patch = manch. { $degree }
cert-readings-h = H
cert-readings-s = S
cert-readings-p = P
cert-readings-low = bas
cert-readings-high = haut
cert-readings-gap = trou

## layout/stages.rs

cert-stages-not_on_these_pages = Pas dans ces pages : { $why }.
cert-stages-the_stages = Les étapes
cert-stages-on = Le { $date }. { $note }
cert-stages-not_begun = Non commencée : { $why }. { $note }
cert-stages-no_end = Sans fin : { $why }. { $note }
cert-stages-stage_continued = Étape (suite)
cert-stages-stage = Étape
cert-stages-begun = Début
cert-stages-lasted = Durée

## layout/working_time.rs

cert-working_time-working_time_used_allowed = Temps d’emploi : utilisé { $used }, permis { $allowed }
cert-working_time-not_used = non utilisé
cert-working_time-allowed = permis

## layout/hold_chart.rs

cert-chart-no_reading_was_taken = aucun relevé n’a été pris
cert-chart-temperature_of_pipe_wall_and = Température de la paroi et du bout de la manchette en { $degree } selon l’heure
cert-chart-pressure_in_against_time_of = Pression en { $unit } selon l’heure : { $count } relevés ; plage { $lower } à { $upper } { $unit } ; { $time } comptées
cert-chart-counted = compté

## layout/hold_chart/pressure.rs

cert-pressure-pressure = Pression, { $unit }
cert-pressure-read_by_hand_sensor_outside = ●  à la main     □  capteur     ▼  hors plage     hachuré : non surveillé
cert-pressure-upper_limit = limite haute
cert-pressure-lower_limit = limite basse
cert-pressure-least_net = min. nette { $net }
cert-pressure-gauge = = { $value } { $unit } rel.
cert-pressure-not_witnessed = non surveillé
cert-pressure-at = { $value } { $unit } à { $at }

## layout/hold_chart/temperature.rs

cert-temperature-temperature = Température, { $degree }
cert-temperature-not_read = non relevée
cert-temperature-patch_end = ◆ bout manchette
cert-temperature-pipe_wall = ○ paroi

## More

cert-course-go = feu vert { $at } à { $temperature }, reste { $spare }
cert-course-second_go = deuxième feu vert { $at } à { $temperature }, reste { $spare }
cert-count-rods = { $count ->
    [one] { $count } canne
   *[other] { $count } cannes
  }
cert-count-readings = { $count ->
    [one] { $count } relevé
   *[other] { $count } relevés
  }
cert-hold-counted_bare = { $all }, dont { $before } de la réunion à la pression
cert-said-ticket = , bordereau{" "}
cert-count-plugs_out = { $count ->
    [one] { $count } obturateur retiré
   *[other] { $count } obturateurs retirés
  }
cert-tasks-confirmed = { $count ->
    [one] { $count } autre tâche confirmée
   *[other] { $count } autres tâches confirmées
  } ({ $method })
cert-working_time-used = { $used } utilisées sur { $allowed } permises { $by }{ $margin }
cert-working_time-never_reached = la pression de consigne n’a jamais été atteinte ; { $allowed } permises { $by }{ $margin }
