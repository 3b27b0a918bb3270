### Der Nachweis: der Gang der Arbeit.

## derive/course.rs

cert-course-parts_joined = Mischbeginn { $at }
cert-course-air_line_joined = Luftschlauch angeschlossen { $at }
cert-course-reached = { $pressure } erreicht { $at }
cert-course-insertion_begun = Einfahren begonnen { $at }
cert-course-reported_after_target_pressure = {" "}(nach Solldruck gemeldet)
cert-course-by_counter = , { $counter } laut Zählwerk
cert-course-at_the_mark = an der Marke { $at }{ $late }{ $counter }
cert-course-mark_from_the_reading_point = Marke { $path } ab Ablesepunkt
cert-course-on_the_mark = auf der Marke
cert-course-past_the_mark = { $length } hinter der Marke
cert-course-short_of_the_mark = { $length } vor der Marke
cert-course-not_witnessed_hatched = { $lost } nicht belegt (schraffiert)
cert-course-required = { $counted }, { $required } verlangt
cert-course-emergency_release = NOTABLASSEN
cert-course-released = abgelassen
cert-course-hard = hart
cert-course-soft = WEICH
cert-course-sample_from_the_manhole = Probe aus dem Schacht { $felt } { $at }
cert-course-full_cure = vollständige Aushärtung { $at }
cert-course-coupon_out = Ausschnitt geborgen
cert-course-coupon_not_out = AUSSCHNITT NICHT GEBORGEN
cert-course-lateral_cut = Anschluss gefräst { $at }, { $coupon }
cert-course-tightness_test = Dichtheitsprüfung { $at }
cert-course-by_counter_2 = {" "}({ $counter } laut Zählwerk)
cert-course-at_the_mark_not_inflated = an der Marke { $at }{ $counted }, nicht aufgeblasen
cert-course-sound = unversehrt
cert-course-not_sound = NICHT UNVERSEHRT
cert-course-back = zurück { $at }, { $how }

## derive/hold.rs

cert-hold-no_attempt_was_begun = kein Versuch wurde begonnen
cert-hold-the_parts_were_never_joined = kein Mischbeginn
cert-hold-target_pressure_was_never_reached = Solldruck wurde nie erreicht
cert-hold-the_readings_cant_be_put = die Ablesungen lassen sich nicht ordnen
cert-hold-required_the_longest_of_the = { $required } verlangt, die längste Zeit des Datenblatts: { $at } ist kälter als seine Tabelle
cert-hold-required_at_the_coldest = { $required } verlangt bei { $at }, dem kältesten Wert
cert-hold-out_of_window_not_witnessed = { $outside } außerhalb des Bereichs, { $lost } nicht belegt
cert-hold-counted_of_it_from_joining = { $all } gezählt, davon { $before } von Mischbeginn bis Druck
cert-hold-counted = { $all } gezählt
cert-hold-the_device_was_started_anew = das Gerät wurde dazwischen neu gestartet

## derive/said.rs

cert-said-does_not_apply_because = entfällt, weil { $because }
cert-said-not_right_because = nicht in Ordnung, weil { $because }
cert-said-cleaned = gereinigt { $at }{ $how }
cert-said-viewed_again = nochmals befahren { $at }{ $found }
cert-said-inside = innen { $range }{ $how }
cert-said-packer_test_held_for_drop = Packerprüfung { $pressure }, gehalten { $time }, Abfall { $drop }
cert-said-bare_ends_front_rear = freie Packerenden { $front } vorn, { $rear } hinten
cert-said-parts = Komponenten: { $how }{ $a }{ $b }
cert-said-mixed = gemischt { $time }
cert-said-seam_at = Naht bei { $hour }
cert-said-pulled_by_sleeve_membrane_binding = gezogen an: { $by }; Trennfolie: { $sleeve }; Membran: { $membrane }; Fixierung: { $binding }
cert-said-to = { $what }: { $mass }, nach { $where }{ $ticket }
cert-said-below = unten: { $who }
cert-said-somebody_below_nobody_says_who = jemand unten, niemand sagt wer
cert-said-nobody_below = niemand unten
cert-said-permit = Erlaubnisschein { $number }, { $who }

## derive/stages.rs

cert-stages-the_other_attempt_on_page = ; der andere Versuch auf Seite @<{ $page }>
cert-stages-other_attempts_on_page = ; weitere Versuche auf Seite @<{ $page }>
cert-stages-times_attempt_of = { $date }, Zeiten { $offset }, Versuch { $n } von { $count }{ $other }
cert-stages-begun_by_the_time_on = begonnen nach der Zeit auf dem Papier
cert-stages-no_tap_a_later_stage = nicht getippt: eine spätere Phase wurde zuerst gemeldet
cert-stages-not_reached = nicht erreicht
cert-stages-not_known = nicht bekannt
cert-stages-in_attempt_still_valid = in Versuch { $from }, gilt weiter
cert-stages-no_tap_when_it_began = Beginn nicht getippt
cert-stages-in_attempt = In Versuch { $from }: { $what }
cert-stages-waiting_for_full_cure = warten auf Aushärtung
cert-stages-test_push = Probefahrt
cert-stages-valid_from_attempt = Gültig aus Versuch { $n }: { $what }.
cert-stages-pipe_viewed_again = {" "}Rohr nochmals befahren { $at }.
cert-stages-suitability = Eignung
cert-stages-permit = Erlaubnisschein
cert-stages-flow_control = Wasserhaltung
cert-stages-measured_id = gemessener Innendurchmesser
cert-stages-instruments = Messgeräte

## derive/tasks.rs

cert-tasks-from_paper = {" "}(vom Papier)
cert-tasks-does_not_apply_because = { $label }: entfällt, weil { $because }
cert-tasks-not_right_because = { $label }: NICHT IN ORDNUNG, weil { $because }
cert-tasks-the_method_statement = der Arbeitsanweisung
cert-tasks-air_read = Luft gemessen { $times }: { $words }
cert-tasks-temperatures = Temperaturen { $times }: { $words }
cert-tasks-full_turn_at_both_edges = 360°-Schwenk an beiden Rändern { $at }
cert-tasks-waste = Abfall { $at }

## derive/when.rs

cert-when-no_such_day = kein solcher Tag
cert-when-no_such_time = keine solche Zeit
cert-when-nobody_picked = niemand gewählt
cert-when-not_in_the_list = { $id } (nicht in der Liste)
cert-when-from_paper = , vom Papier

## derive/words.rs

cert-words-all_round = rundum
cert-words-at_oclock = bei { $hour } Uhr
cert-words-to_oclock = { $from_hour } bis { $to_hour } Uhr

## derive/working_time.rs

cert-working_time-no_row_of_the_sheet = keine Zeile des Datenblatts gilt
cert-working_time-outside_the_sheet_its_shortest = außerhalb des Datenblatts: seine kürzeste Zeit
cert-working_time-at_the_warmest = bei { $temperature } ({ $whose }, am wärmsten)
cert-working_time-outside_the_sheet_its_shortest_2 = außerhalb des Datenblatts: seine kürzeste Zeit gilt
cert-working_time-late_by = ; { $time } ZU SPÄT
cert-working_time-margin = ; Reserve { $time }
cert-working_time-mixed = gemischt
cert-working_time-soaked = getränkt
cert-working_time-at_the_mark = an der Marke
cert-working_time-air_joined = Luft an

## layout/readings.rs

cert-readings-the_only_reading = Die einzige Ablesung
cert-readings-all_readings = Alle { $count } Ablesungen
cert-readings-p_from_paper = , P vom Papier
cert-readings-h_read_by_hand_s = H von Hand, S Sensor{ $paper }; ein Strich vor einer Ablesung: die Minuten bis dahin zählen nicht
cert-readings-to = { $from } bis { $to }; { $key }
cert-readings-time = Zeit
cert-readings-pipe = Rohr { $degree }
cert-readings-patch = Liner { $degree }
cert-readings-h = H
cert-readings-s = S
cert-readings-p = P
cert-readings-low = tief
cert-readings-high = hoch
cert-readings-gap = leer

## layout/stages.rs

cert-stages-not_on_these_pages = Nicht auf diesen Seiten: { $why }.
cert-stages-the_stages = Die Phasen
cert-stages-on = Am { $date }. { $note }
cert-stages-not_begun = Nicht begonnen: { $why }. { $note }
cert-stages-no_end = Kein Ende: { $why }. { $note }
cert-stages-stage_continued = Phase (Forts.)
cert-stages-stage = Phase
cert-stages-begun = Beginn
cert-stages-lasted = Dauer

## layout/working_time.rs

cert-working_time-working_time_used_allowed = Verarbeitungszeit: genutzt { $used }, zulässig { $allowed }
cert-working_time-not_used = nicht genutzt
cert-working_time-allowed = erlaubt

## layout/hold_chart.rs

cert-chart-no_reading_was_taken = keine Ablesung gemacht
cert-chart-temperature_of_pipe_wall_and = Temperatur von Rohrwand und Linerende in { $degree } über der Tageszeit
cert-chart-pressure_in_against_time_of = Druck in { $unit } über der Tageszeit: { $count } Ablesungen; Bereich { $lower } bis { $upper } { $unit }; { $time } gezählt
cert-chart-counted = gezählt

## layout/hold_chart/pressure.rs

cert-pressure-pressure = Druck, { $unit }
cert-pressure-read_by_hand_sensor_outside = ●  von Hand     □  Sensor     ▼  außerhalb des Bereichs     schraffiert: nicht belegt
cert-pressure-upper_limit = obere Grenze
cert-pressure-lower_limit = untere Grenze
cert-pressure-least_net = mind. netto { $net }
cert-pressure-gauge = = { $value } { $unit } (ü)
cert-pressure-not_witnessed = nicht belegt
cert-pressure-at = { $value } { $unit } um { $at }

## layout/hold_chart/temperature.rs

cert-temperature-temperature = Temperatur, { $degree }
cert-temperature-not_read = nicht abgelesen
cert-temperature-patch_end = ◆ Linerende
cert-temperature-pipe_wall = ○ Rohrwand

## More

cert-course-go = Freigabe { $at } bei { $temperature }, { $spare } übrig
cert-course-second_go = zweite Freigabe { $at } bei { $temperature }, { $spare } übrig
cert-count-rods = { $count ->
    [one] { $count } Stange
   *[other] { $count } Stangen
  }
cert-count-readings = { $count ->
    [one] { $count } Ablesung
   *[other] { $count } Ablesungen
  }
cert-hold-counted_bare = { $all }, davon { $before } von Mischbeginn bis Druck
cert-said-ticket = , Begleitschein{" "}
cert-count-plugs_out = { $count ->
    [one] { $count } Absperrblase entfernt
   *[other] { $count } Absperrblasen entfernt
  }
cert-tasks-confirmed = { $count ->
    [one] { $count } weitere Aufgabe
   *[other] { $count } weitere Aufgaben
  } aus { $method } bestätigt
cert-working_time-used = { $used } genutzt von { $allowed }, zulässig { $by }{ $margin }
cert-working_time-never_reached = Solldruck wurde nie erreicht; { $allowed } zulässig { $by }{ $margin }
