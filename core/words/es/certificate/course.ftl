### El certificado: la marcha del trabajo.

## derive/course.rs

cert-course-parts_joined = A y B juntos { $at }
cert-course-air_line_joined = manguera de aire conectada { $at }
cert-course-reached = { $pressure } alcanzados { $at }
cert-course-insertion_begun = inserción empezada { $at }
cert-course-reported_after_target_pressure = {" "}(comunicado tras la presión objetivo)
cert-course-by_counter = , { $counter } por contador
cert-course-at_the_mark = en la marca { $at }{ $late }{ $counter }
cert-course-mark_from_the_reading_point = marca a { $path } del punto de lectura
cert-course-on_the_mark = en la marca
cert-course-past_the_mark = { $length } pasada la marca
cert-course-short_of_the_mark = { $length } antes de la marca
cert-course-not_witnessed_hatched = { $lost } sin vigilar (rayado)
cert-course-required = { $counted }, { $required } exigidos
cert-course-emergency_release = DESINFLADO DE EMERGENCIA
cert-course-released = desinflado
cert-course-hard = dura
cert-course-soft = BLANDA
cert-course-sample_from_the_manhole = muestra del pozo { $felt } { $at }
cert-course-full_cure = curado completo { $at }
cert-course-coupon_out = recorte fuera
cert-course-coupon_not_out = RECORTE NO RECUPERADO
cert-course-lateral_cut = acometida cortada { $at }, { $coupon }
cert-course-tightness_test = ensayo de estanquidad { $at }
cert-course-by_counter_2 = {" "}({ $counter } por contador)
cert-course-at_the_mark_not_inflated = en la marca { $at }{ $counted }, sin inflar
cert-course-sound = en buen estado
cert-course-not_sound = EN MAL ESTADO
cert-course-back = de vuelta { $at }, { $how }

## derive/hold.rs

cert-hold-no_attempt_was_begun = no se empezó ningún intento
cert-hold-the_parts_were_never_joined = A y B no se juntaron nunca
cert-hold-target_pressure_was_never_reached = nunca se alcanzó la presión objetivo
cert-hold-the_readings_cant_be_put = las lecturas no se pueden ordenar
cert-hold-required_the_longest_of_the = { $required } exigidos, lo más largo de la ficha: { $at } es más frío que su tabla
cert-hold-required_at_the_coldest = { $required } exigidos a { $at }, la más fría
cert-hold-out_of_window_not_witnessed = { $outside } fuera del rango, { $lost } sin vigilar
cert-hold-counted_of_it_from_joining = { $all } contados, { $before } de ellos desde juntar A y B hasta la presión
cert-hold-counted = { $all } contados
cert-hold-the_device_was_started_anew = el equipo se reinició entre medias

## derive/said.rs

cert-said-does_not_apply_because = no procede, porque { $because }
cert-said-not_right_because = no está bien, porque { $because }
cert-said-cleaned = limpiada { $at }{ $how }
cert-said-viewed_again = vista otra vez { $at }{ $found }
cert-said-inside = interior { $range }{ $how }
cert-said-packer_test_held_for_drop = prueba del packer { $pressure }, mantenida { $time }, caída { $drop }
cert-said-bare_ends_front_rear = extremos libres { $front } delante, { $rear } detrás
cert-said-parts = componentes: { $how }{ $a }{ $b }
cert-said-mixed = mezclado { $time }
cert-said-seam_at = costura a las { $hour }
cert-said-pulled_by_sleeve_membrane_binding = sacado con { $by }; funda: { $sleeve }; membrana: { $membrane }; atado: { $binding }
cert-said-to = { $what }: { $mass }, a { $where }{ $ticket }
cert-said-below = abajo: { $who }
cert-said-somebody_below_nobody_says_who = alguien abajo, nadie dice quién
cert-said-nobody_below = nadie abajo
cert-said-permit = permiso { $number }, { $who }

## derive/stages.rs

cert-stages-the_other_attempt_on_page = ; el otro intento en la página @<{ $page }>
cert-stages-other_attempts_on_page = ; otros intentos en la página @<{ $page }>
cert-stages-times_attempt_of = { $date }, horas { $offset }, intento { $n } de { $count }{ $other }
cert-stages-begun_by_the_time_on = empezada según la hora del papel
cert-stages-no_tap_a_later_stage = sin toque: se comunicó antes una etapa posterior
cert-stages-not_reached = no alcanzada
cert-stages-not_known = no se sabe
cert-stages-in_attempt_still_valid = en el intento { $from }, sigue valiendo
cert-stages-no_tap_when_it_began = sin toque al empezar
cert-stages-in_attempt = En el intento { $from }: { $what }
cert-stages-waiting_for_full_cure = esperando el curado completo
cert-stages-test_push = prueba de paso
cert-stages-valid_from_attempt = Vale del intento { $n }: { $what }.
cert-stages-pipe_viewed_again = {" "}Tubería vista otra vez { $at }.
cert-stages-suitability = idoneidad
cert-stages-permit = permiso
cert-stages-flow_control = control del caudal
cert-stages-measured_id = diámetro interior medido
cert-stages-instruments = instrumentos

## derive/tasks.rs

cert-tasks-from_paper = {" "}(del papel)
cert-tasks-does_not_apply_because = { $label }: no procede, porque { $because }
cert-tasks-not_right_because = { $label }: NO ESTÁ BIEN, porque { $because }
cert-tasks-the_method_statement = el procedimiento de trabajo
cert-tasks-air_read = aire medido { $times }: { $words }
cert-tasks-temperatures = temperaturas { $times }: { $words }
cert-tasks-full_turn_at_both_edges = vuelta completa en ambos bordes { $at }
cert-tasks-waste = residuos { $at }

## derive/when.rs

cert-when-no_such_day = día inexistente
cert-when-no_such_time = hora inexistente
cert-when-nobody_picked = nadie elegido
cert-when-not_in_the_list = { $id } (no está en la lista)
cert-when-from_paper = , del papel

## derive/words.rs

cert-words-all_round = en toda la vuelta
cert-words-at_oclock = a las { $hour } h
cert-words-to_oclock = de { $from_hour } a { $to_hour } h

## derive/working_time.rs

cert-working_time-no_row_of_the_sheet = no vale ninguna fila de la ficha
cert-working_time-outside_the_sheet_its_shortest = fuera de la ficha: su tiempo más corto
cert-working_time-at_the_warmest = a { $temperature } ({ $whose }, lo más caliente)
cert-working_time-outside_the_sheet_its_shortest_2 = fuera de la ficha: vale su tiempo más corto
cert-working_time-late_by = ; { $time } TARDE
cert-working_time-margin = ; margen { $time }
cert-working_time-mixed = mezclado
cert-working_time-soaked = impregnado
cert-working_time-at_the_mark = en la marca
cert-working_time-air_joined = aire conectado

## layout/readings.rs

cert-readings-the_only_reading = La única lectura
cert-readings-all_readings = Las { $count } lecturas
cert-readings-p_from_paper = , P del papel
cert-readings-h_read_by_hand_s = H a mano, S sensor{ $paper }; una raya ante una lectura: los minutos hasta ella no cuentan
cert-readings-to = { $from } a { $to }; { $key }
cert-readings-time = Hora
cert-readings-pipe = tubo { $degree }
cert-readings-patch = parche { $degree }
cert-readings-h = H
cert-readings-s = S
cert-readings-p = P
cert-readings-low = baja
cert-readings-high = alta
cert-readings-gap = falta

## layout/stages.rs

cert-stages-not_on_these_pages = No está en estas páginas: { $why }.
cert-stages-the_stages = Las etapas
cert-stages-on = El { $date }. { $note }
cert-stages-not_begun = Sin empezar: { $why }. { $note }
cert-stages-no_end = Sin fin: { $why }. { $note }
cert-stages-stage_continued = Etapa (sigue)
cert-stages-stage = Etapa
cert-stages-begun = Inicio
cert-stages-lasted = Duración

## layout/working_time.rs

cert-working_time-working_time_used_allowed = Tiempo de trabajo: usados { $used }, permitidos { $allowed }
cert-working_time-not_used = sin usar
cert-working_time-allowed = límite

## layout/hold_chart.rs

cert-chart-no_reading_was_taken = no se tomó ninguna lectura
cert-chart-temperature_of_pipe_wall_and = Temperatura de la pared y del extremo del parche en { $degree } según la hora del día
cert-chart-pressure_in_against_time_of = Presión en { $unit } según la hora del día: { $count } lecturas; rango { $lower } a { $upper } { $unit }; { $time } contados
cert-chart-counted = contado

## layout/hold_chart/pressure.rs

cert-pressure-pressure = Presión, { $unit }
cert-pressure-read_by_hand_sensor_outside = ●  a mano     □  sensor     ▼  fuera del rango     rayado: sin vigilar
cert-pressure-upper_limit = límite superior
cert-pressure-lower_limit = límite inferior
cert-pressure-least_net = mín. neta { $net }
cert-pressure-gauge = = { $value } { $unit } man.
cert-pressure-not_witnessed = sin vigilar
cert-pressure-at = { $value } { $unit } a las { $at }

## layout/hold_chart/temperature.rs

cert-temperature-temperature = Temperatura, { $degree }
cert-temperature-not_read = sin leer
cert-temperature-patch_end = ◆ extremo parche
cert-temperature-pipe_wall = ○ pared del tubo

## More

cert-course-go = visto bueno { $at } a { $temperature }, sobran { $spare }
cert-course-second_go = segundo visto bueno { $at } a { $temperature }, sobran { $spare }
cert-count-rods = { $count ->
    [one] { $count } varilla
   *[other] { $count } varillas
  }
cert-count-readings = { $count ->
    [one] { $count } lectura
   *[other] { $count } lecturas
  }
cert-hold-counted_bare = { $all }, { $before } de ellos desde juntar A y B hasta la presión
cert-said-ticket = , albarán{" "}
cert-count-plugs_out = { $count ->
    [one] { $count } obturador retirado
   *[other] { $count } obturadores retirados
  }
cert-tasks-confirmed = { $count ->
    [one] { $count } tarea más confirmada
   *[other] { $count } tareas más confirmadas
  } ({ $method })
cert-working_time-used = usados { $used } de { $allowed } permitidos { $by }{ $margin }
cert-working_time-never_reached = nunca se alcanzó la presión objetivo; { $allowed } permitidos { $by }{ $margin }
