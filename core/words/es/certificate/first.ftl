### El certificado: la primera página y lo que lleva cada página.

## derive/answers.rs

cert-answers-accepted = ACEPTADO
cert-answers-rejected = RECHAZADO
cert-answers-rehearsal = PRÁCTICA
cert-answers-unrepaired = SIN REPARAR
cert-answers-by_the_foreman = por el encargado
cert-answers-practice_patch_accepted = parche de práctica aceptado
cert-answers-practice_patch_rejected = parche de práctica rechazado
cert-answers-practice_patch_left_in_the = parche de práctica dejado en la tubería
cert-answers-closed_without_a_practice_patch = cerrada sin parche de práctica
cert-answers-no_sewer_was_repaired = no se reparó ningún colector; { $how }
cert-answers-closed_by_the_foreman_a = cerrada por el encargado, quedó un parche en la tubería
cert-answers-a_patch_was_left_in = quedó un parche en la tubería, sin cerrar
cert-answers-closed_by_the_foreman_without = cerrada por el encargado sin parche
cert-answers-nothing_waived = Ninguna desviación
cert-answers-off_the_rules = Fuera de las reglas
cert-answers-why_rejected = Por qué se rechazó
cert-answers-why_unrepaired = Por qué no se reparó
cert-answers-what_this_is = Qué es esto
cert-answers-practice_it_can_never_become = Práctica. Nunca puede ser un certificado.
cert-answers-the_record_is_marked_as = El registro está marcado como práctica desde su primera entrada y se numera aparte. { $also }
cert-answers-no_reason_was_written = no se escribió ningún motivo
cert-answers-of_the_hold_not_witnessed = { $time } del tiempo a presión sin vigilar
cert-answers-nothing_else_on_the_record = Nada más en el registro
cert-answers-also_on_the_record = También en el registro: { $list }
cert-answers-pipe_without_a_key_of = tubería sin código del titular
cert-answers-of_unknown_material = de material desconocido
cert-answers-what_it_carries_is_not = lo que conduce no consta
cert-answers-which_pipe = Qué tubería
cert-answers-between_node_centres_flows_to = { $pipe }, { $carries }, { $length } entre centros de nodo, fluye hacia { $to }
cert-answers-street_not_recorded = La calle no consta
cert-answers-patch_centre = Centro del parche
cert-answers-defect_centre = Centro del defecto
cert-answers-from_upstream_from_downstream = { $what } a { $at } de { $upstream } (aguas arriba) = { $rest } de { $downstream } (aguas abajo)
cert-answers-where = Dónde
cert-answers-what_was_mended = Qué se reparó
cert-answers-what_was_tried = Qué se intentó
cert-answers-what_was_practised = Qué se practicó
cert-answers-what_is_not_mended = Qué no se reparó
cert-answers-defect = Defecto { $extent }
cert-answers-patch_long_all_round_both = parche de { $length }, en toda la vuelta, { $lies }, ambos desde { $upstream }
cert-answers-from = desde { $upstream }; { $why }
cert-answers-also = además { $what }, { $around }, { $at }
cert-answers-looking_downstream = { $around } mirando aguas abajo
cert-answers-clock_position_not_recorded = la posición horaria no consta
cert-answers-each_by_pin = Cada uno con PIN.
cert-answers-not_authenticated = Sin autenticar.
cert-answers-who_signs = Quién firma
cert-answers-practice_signatures_only = Solo firmas de práctica
cert-answers-with_technician_for = Con { $name }, técnico, por { $firm }
cert-answers-no_technician_has_signed_for = No ha firmado ningún técnico, por { $firm }
cert-answers-the_owner_accepts_separately = { $technician }. { $known } El titular acepta aparte.

## derive/attempts.rs

cert-attempts-not_begun = sin empezar
cert-attempts-not_ended = sin acabar
cert-attempts-the_parts_were_never_joined = A y B no se juntaron nunca.
cert-attempts-working_time_over = , fin del tiempo de trabajo { $at }
cert-attempts-target_pressure = , presión objetivo { $at }
cert-attempts-parts_joined = A y B juntos { $at }{ $over }{ $target }.
cert-attempts-not_recorded = no consta
cert-attempts-of_resin_as_planned = { $mass } de resina según el plan
cert-attempts-of_resin = { $mass } de resina
cert-attempts-patch_lot_and_lots_thrown = Parche (lote { $patch }) y { $resin } (lotes { $a }, { $b }) desechados.
cert-attempts-the_resin = la resina
cert-attempts-on_the_table_not_yet = En la mesa, aún fuera de la tubería
cert-attempts-in_the_pipe_not_expanded = En la tubería, sin expandir
cert-attempts-touching_the_wall = Tocando la pared
cert-attempts-stuck = Atascado
cert-attempts-not_asked_the_parts_were = No se preguntó: A y B no se juntaron
cert-attempts-nobody_said = Nadie lo dijo
cert-attempts-not_ended_2 = Sin acabar
cert-attempts-attempt = {" "}(intento { $n })

## derive/cautions.rs

cert-cautions-not_a_design = No es un cálculo
cert-cautions-wall_thickness_and_pressure_figures = Las cifras de espesor y presión son comprobaciones para un ingeniero habilitado, no un cálculo estructural.
cert-cautions-not_a_product_test = No es un ensayo
cert-cautions-it_does_not_say_that = No dice que la resina, el parche o el packer sirvan para esta tubería. Eso lo dicen la ficha técnica y el fabricante.
cert-cautions-not_an_acceptance = No es una recepción
cert-cautions-the_owner_accepts_by_a = El titular acepta en un acto aparte. El resultado es el del contratista, medido con los límites impresos aquí.
cert-cautions-hand_readings = Lecturas a mano
cert-cautions-are_statements_of_the_person = son declaraciones de la persona nombrada. Los minutos que nadie vio no se cuentan y se muestran.
cert-cautions-before_going_near = Antes de acercarse
cert-cautions-confined_space_traffic_compressed_air = Espacio confinado, tráfico, aire comprimido, resina sin curar o caliente, estireno y aguas residuales pueden matar. Mandan el permiso, la ficha técnica, la ficha de datos de seguridad, las normas locales y los profesionales habilitados.
cert-cautions-to_check_this_file = Para comprobarlo
cert-cautions-the_record = El registro
cert-cautions-to_keep_it = Para conservarlo
cert-cautions-each_who_signed_opened_a = Cada firmante abrió una clave propia con un PIN. De quién es la clave lo sabe el titular por el contratista, no por esta página.
cert-cautions-whose_key = De quién es la clave
cert-cautions-names_were_picked_from_a = Los nombres se eligieron de una lista; ningún PIN ni clave dice quién tenía el equipo. Una línea dibujada sola no prueba nada.
cert-cautions-not_authenticated = Sin autenticar
cert-cautions-not_a_repair = No reparado
cert-cautions-nothing_was_mended_the_pipe = No se reparó nada. La tubería es de práctica.
cert-cautions-not_a_length = No es todo el tramo
cert-cautions-of_was_mended_the_rest = Se repararon { $mended } de { $all }. El resto del tramo sigue como estaba.
cert-cautions-a_patch_lies_in_the = Hay un parche en la tubería; el defecto no está reparado.
cert-cautions-the_defect_is_not_mended = El defecto no está reparado: { $why }.
cert-cautions-mendline_verify_file_answers_3 = «mendline verify ARCHIVO» responde 3 para una práctica correcta que firmaron sus claves: no es un registro.
cert-cautions-mendline_verify_file_tells_whether = «mendline verify ARCHIVO» dice si lo firmó una clave y si fue modificado, sin red.
cert-cautions-it_may_be_kept_for = Se puede guardar para formación, aparte de los registros de reparaciones.
cert-cautions-keep_the_pdf_whole_and = Guarde el PDF entero y, junto a él, las fotos originales que entrega el contratista. Una impresión es una copia; su cabeza aún nombra el registro.
cert-cautions-lies_whole_inside_this_file = está entero dentro de este archivo como record.json: cada entrada tal como se calculó su hash. Cualquier lector de PDF lo guarda.
cert-cautions-is_not_inside_this_file = no está dentro de este archivo: el contrato { $contract } no admite adjuntos. El contratista lo entrega aparte.

## derive/departures.rs

cert-departures-entered_by = , anotado por { $name }
cert-departures-waived_by_foreman = Autorizado por { $foreman }, encargado, { $at }{ $by }.
cert-departures-contract = contrato { $clause }

## derive/identity.rs

cert-identity-no_key = sin código
cert-identity-owner = Titular
cert-identity-contract = Contrato
cert-identity-contractor = Contratista
cert-identity-repair = Reparación
cert-identity-inspection = Inspección
cert-identity-working_time = T. de trabajo
cert-identity-position = Posición
cert-identity-measured_id = DI medido
cert-identity-video = Vídeo
cert-identity-hold = A presión
cert-identity-full_cure = Curado
cert-identity-without_a_number = sin número
cert-identity-no_attempt = ningún intento
cert-identity-attempt_of = intento { $n } de { $count }
cert-identity-none_read_in_the_defect = ninguna leída: el defecto se anotó a mano
cert-identity-without_a_date = sin fecha
cert-identity-used_of = { $used } usados de { $allowed }
cert-identity-target_pressure_never_reached_allowed = nunca se alcanzó la presión objetivo; { $allowed } permitidos
cert-identity-none_target_pressure_never_reached = ninguno: nunca se alcanzó la presión objetivo
cert-identity-required_page = { $counted }, { $required } exigidos (página @<{ $page }>)
cert-identity-nominal_dn = { $why }; nominal DN { $dn }
cert-identity-to = , hasta { $at }
cert-identity-not_said_how = no se dijo cómo
cert-identity-after_not_recorded = después: no consta
cert-identity-after_confirmed = después: confirmado { $at }
cert-identity-before = antes { $before }; { $after }
cert-identity-its_clock_never_ran = su reloj nunca corrió
cert-identity-lateral_cut = acometida cortada { $at }
cert-identity-tested = ensayado { $at }
cert-identity-flow_restored = caudal restablecido { $at }
cert-identity-no_entry = sin entrada
cert-identity-no_position = sin posición: { $why }
cert-identity-no_position_the_source_gave = sin posición: la fuente dio 0, 0, que no es ninguna
cert-identity-the_source_gave_0_0 = la fuente dio 0, 0, que no es ninguna
cert-identity-the_device_was_not_asked = no se preguntó al equipo
cert-identity-the_device_may_not_tell = el equipo no puede decirla
cert-identity-the_device_could_not_find = el equipo no pudo hallarla
cert-identity-the_device_had_not_found = el equipo aún no la había hallado
cert-identity-accuracy_not_stated = precisión no indicada
cert-identity-receiver = receptor
cert-identity-browser = navegador
cert-identity-typed = tecleada
cert-identity-old_device_at = { $radius }, de hace { $age }, { $source }, equipo { $device } a las { $at }

## derive/notes.rs

cert-notes-written = Escrito
cert-notes-devices_had_gone_on_apart = { $of } equipos habían seguido por separado. { $by } eligió a las { $at } cuál cuenta: { $reason } El registro guarda ambos.
cert-notes-chosen = Elegido
cert-notes-this_is_patch_of_a = Este es el parche { $this } de una serie de { $all }: el defecto solo queda cubierto por todos juntos, cada uno una reparación propia.
cert-notes-series = Serie
cert-notes-excursion = Desvío de presión
cert-notes-a_note_the_attempt_is = { $what } { $net }: una nota, el intento no es dudoso por ello. No se cuenta (página @<{ $page }>).
cert-notes-still_pressed_to_the_wall = Siguió apretado a la pared
cert-notes-net_stayed_at_or_above = La presión neta { $net } se mantuvo en o sobre la mínima de la ficha, { $least_words }
cert-notes-net_fell_below_the_sheets = La presión neta { $net } bajó de la mínima de la ficha, { $least_words }, pero ya cumplido el tiempo a presión exigido
cert-notes-the_whole_gap_is_lost = se pierde todo el hueco
cert-notes-what_is_beyond_interval_and = se pierde lo que pasa de intervalo y tolerancia
cert-notes-nobody_wrote_why = nadie escribió por qué
cert-notes-of_the_hold_to_gap = { $time } del tiempo a presión, { $from } a { $to }: { $why }. Regla de huecos: { $lost } ({ $source }; página @<{ $page }>).
cert-notes-not_witnessed = Sin vigilar
cert-notes-nobody_said_whether_anything_of = Nadie dijo si queda algo en la tubería.
cert-notes-in_the_pipe = En la tubería: «{ $what }», { $by }.
cert-notes-page = { $outcome } { $at }: { $why }. { $pipe } (Página @<{ $page }>.)
cert-notes-attempt = Intento { $n }
cert-notes-back = atrás
cert-notes-forward = adelante
cert-notes-the_device_was_started_anew = El equipo se reinició entre medias, así que solo la hora del equipo dice cuánto; no se cuenta nada del tiempo a presión durante el reinicio.
cert-notes-the_clock_since_the_start = El reloj desde el arranque del equipo siguió: mide las etapas y el tiempo a presión, y no se ganó ni perdió ningún minuto.
cert-notes-clock = Reloj
cert-notes-the_clock_of_device_was = El reloj del equipo { $device } se puso { $by } hacia { $way }, visto a las { $at }. { $then }
cert-notes-correction = Corrección
cert-notes-corrected_to_page = { $label }: { $old } corregido a { $new } (página @<{ $page }>).
cert-notes-filled_in_late = Anotado tarde
cert-notes-after_their_stage = Después de su etapa: { $filled }.
cert-notes-keyed_in = { $what } { $happened } (anotado { $tapped })
cert-notes-from_paper = Del papel
cert-notes-written_on_paper_and_keyed = Escrito en papel y anotado por { $by }, se guardan ambas horas: { $text }.
cert-notes-a_reading = una lectura
cert-notes-tapped_later_by_both_times = { $what } { $happened }, pulsado { $late } después por { $by }: se guardan ambas horas.
cert-notes-tapped_late = Pulsado tarde
cert-notes-test_push_begun = prueba de paso empezada
cert-notes-packer_at_the_mark_in = packer en la marca en la prueba de paso
cert-notes-packer_back_from_the_test = packer de vuelta de la prueba de paso
cert-notes-parts_joined = A y B juntos
cert-notes-insertion_begun = inserción empezada
cert-notes-packer_at_the_mark = packer en la marca
cert-notes-air_line_joined = manguera de aire conectada
cert-notes-target_pressure_reached = presión objetivo alcanzada
cert-notes-at = { $what } a las { $at }
cert-notes-answered_again = Respondido otra vez
cert-notes-before_last_by = { $label }: antes, { $earlier }; lo último por { $now }.
cert-notes-the_foremans_decision = {" "}La decisión del encargado: { $label }.
cert-notes-reported = Comunicado
cert-notes-nobody_recorded_where_round_the = Nadie anotó en qué parte de la vuelta está el defecto; se dibuja en toda la vuelta.
cert-notes-clock_position = Posición horaria

## derive/reasons.rs

cert-reasons-no_sewer_was_repaired_and = No se reparó ningún colector ni afecta a ningún titular. Horas, lecturas y fotos de estas páginas se hicieron en una práctica.
cert-reasons-not_final = No es definitivo
cert-reasons-a_rehearsal_cant_be_turned = Una práctica no puede volverse certificado. Para una reparación se empieza un registro nuevo.
cert-reasons-not_mended = Sin reparar
cert-reasons-the_defect_is_not_mended = El defecto no está reparado. Nadie puede tomar este registro por un certificado.
cert-reasons-voided_by = {" "}Anulado por { $name }, { $at }.
cert-reasons-supersedes = Sustituye
cert-reasons-this_paper_takes_the_place = Este documento sustituye a { $number } de { $day }, que ya no cuenta. { $why }{ $by }
cert-reasons-doubtful = Dudoso
cert-reasons-net_fell_below_the_sheets = { $what } La presión neta { $net } bajó de la mínima de la ficha, { $least }, antes de cumplir el tiempo a presión: el intento es dudoso (página @<{ $page }>).
cert-reasons-recorded_by_the_attempt_is = { $says } Registrado por { $by }: el intento es dudoso.
cert-reasons-the_foremans_decision = { $what } La decisión del encargado: { $label }.
cert-reasons-below = bajo
cert-reasons-above = sobre
cert-reasons-for_and_perhaps_longer = durante { $lasted } y quizá más
cert-reasons-for_at_most = durante { $lasted } como máximo
cert-reasons-at_the_window_resin_old = { $pressure } a las { $at }, { $depth } { $side } el rango, { $lasted }, resina de { $age }: { $why }
cert-reasons-attempt = Intento { $n }, { $by }.
cert-reasons-in_the_pipe = En la tubería: «{ $what }».
cert-reasons-accepted = Aceptado
cert-reasons-rejected = Rechazado
cert-reasons-discarded = Desechado
cert-reasons-left_in_pipe = Dejado en tubería
cert-reasons-abandoned = Abandonado
cert-reasons-closed = Cerrada
cert-reasons-next = Sigue
cert-reasons-the_repair_is_not_closed = La reparación no está cerrada: intento { $n }, o cerrarla sin reparar con un motivo.

## derive/signatures.rs

cert-signatures-nobody_has_put_a_name = nadie ha puesto su nombre a este registro
cert-signatures-practice_signature_drawn_proves_nothing = Firma de práctica, dibujada: no prueba nada sobre una tubería.
cert-signatures-picked_as = { $name }, elegido como { $tapped }
cert-signatures-device = equipo { $device }

## layout/answers.rs

cert-answers-result = Resultado
cert-answers-a_tick_in_a_black = Una marca de visto en un disco negro: aceptado
cert-answers-a_cross_in_a_white = Una cruz en un cuadrado blanco: rechazado
cert-answers-an_r_in_a_lozenge = Una R en un rombo: práctica
cert-answers-a_bar_in_a_white = Una barra en un cuadrado blanco: cerrada sin reparar

## layout/departures.rs

cert-departures-more_notes_each_in_full = Más notas, cada una completa: página @<{ $page }>.
cert-departures-page = página @<{ $page }>
cert-departures-each_with_reason_name_and = Cada una con motivo, nombre y hora: { $page }.
cert-departures-each_in_full = { $names }. Cada una completa: { $page }.
cert-departures-and_more = y { $count } más
cert-departures-each_in_full_2 = Cada una completa: { $page }.

## layout/head.rs

cert-head-qr_code_with_what_the = Código QR con lo que dice la página: número, reparación, resultado, fecha, entradas y cabeza del registro
cert-head-head_of_the_practice = Cabeza de la práctica
cert-head-entries_each_marked_as_a = { $digits }{"\u000A"}{ $entries }, cada una marcada como práctica. Sin código que leer: este registro no es para consultarlo.
cert-head-what_it_shows = Qué muestra
cert-head-that_nothing_changed_since_these = que nada cambió desde que firmaron estas claves de práctica, { $when }. Las claves se hicieron para esta práctica y se tiraron; «mendline verify» dice: una práctica correcta, no un registro.
cert-head-nothing_no_key_signed_it = nada: no firmó ninguna clave, y una línea dibujada no prueba nada.
cert-head-what_it_is_not = Qué no es
cert-head-a_record_of_a_repair = un registro de una reparación. Se puede guardar para formación. Quien lo muestre como prueba de una reparación se equivoca.
cert-head-head_of_the_record = Cabeza del registro
cert-head-the_seal_proves = El sello prueba
cert-head-no_change_to_this_file = que este archivo no cambió desde que se selló, { $when }, con la clave { $key } …
cert-head-it_does_not_prove = No prueba
cert-head-who_held_the_phone_or = quién tenía el teléfono ni que una lectura a mano sea cierta. Una línea dibujada sola no prueba nada. De quién es la clave lo sabe el titular por el contratista, no por esta página.
cert-head-not_sealed_by_a_key = Sin sello de clave
cert-head-a_drawn_line_proves_nothing = Una línea dibujada no prueba nada, y este archivo se puede cambiar sin dejar rastro.
cert-head-what_can_be_checked = Qué se comprueba
cert-head-the_head_above_against_the = la cabeza de arriba contra el registro: nombra cada entrada, pero no esta página.

## layout/running.rs

cert-running-page_of = página { $page } de { $pages }

## layout/signatures.rs

cert-signatures-not_signed = { $role }, sin firmar: { $why }
cert-signatures-pin = , PIN
cert-signatures-no_line_drawn = , sin línea dibujada
cert-signatures-line_drawn_by = Línea dibujada por { $name }
cert-signatures-practice = PRÁCTICA

## layout/wording.rs

cert-wording-sectional_repair_certificate = Certificado de reparación puntual
cert-wording-repair_record_rejected = Registro de reparación: rechazada
cert-wording-rehearsal_record_not_a_certificate = Registro de práctica: no es un certificado
cert-wording-repair_record_closed_unrepaired = Registro de reparación: cerrada sin reparar
cert-wording-departures_and_what_else_went = Desviaciones y qué más salió de las reglas
cert-wording-why_rejected_and_what_went = Por qué se rechazó, y qué salió de las reglas
cert-wording-what_was_practised_and_what = Qué se practicó y qué no demuestra
cert-wording-why_closed_unrepaired_and_what = Por qué se cerró sin reparar, y qué salió de las reglas
cert-wording-practice_signatures = Firmas de práctica
cert-wording-signatures = Firmas
cert-wording-cautions_and_what_this_certificate = Advertencias, y lo que este certificado no es
cert-wording-cautions_and_what_this_record = Advertencias, y lo que este registro no es
cert-wording-end_of_the_certificate = Fin del certificado
cert-wording-end_of_the_record = Fin del registro
cert-wording-rehearsal_practice_not_a_certificate = PRÁCTICA. No es un certificado.
cert-wording-the_sealed_pdf_is_the = El PDF sellado es el original; una impresión es una copia.
cert-wording-not_sealed_by_a_key = Sin sello de clave: véase la página 1.

## More

cert-count-departures = { $count ->
    [one] { $count } desviación
   *[other] { $count } desviaciones
  }
cert-count-doubts = { $count ->
    [one] { $count } duda
   *[other] { $count } dudas
  }
cert-count-attempts = { $count ->
    [one] { $count } intento más
   *[other] { $count } intentos más
  }
cert-count-corrections = { $count ->
    [one] { $count } corrección
   *[other] { $count } correcciones
  }
cert-count-excursions = { $count ->
    [one] { $count } desvío de presión
   *[other] { $count } desvíos de presión
  }
cert-count-clock_changes = { $count ->
    [one] { $count } cambio de reloj
   *[other] { $count } cambios de reloj
  }
cert-answers-with_departures = con { $count ->
    [one] { $count } desviación
   *[other] { $count } desviaciones
  }
cert-answers-outside = por el encargado, { $count ->
    [one] { $count } hallazgo
   *[other] { $count } hallazgos
  } fuera de los límites
cert-signatures-technician = Técnico
cert-signatures-foreman = Encargado
cert-signatures-no_technician = Ningún técnico
cert-signatures-no_foreman = Ningún encargado
cert-signatures-no_technician_signed = no ha firmado ningún técnico
cert-signatures-no_foreman_signed = no ha firmado ningún encargado
cert-departures-value_not_kept = (valor no guardado)
cert-departures-articles = el la los las un una
cert-identity-north = N
cert-identity-south = S
cert-identity-east = E
cert-identity-west = O
cert-head-entries = { $entries } entradas
cert-head-chain = { $digits }{"\u000A"}{ $entries }, SHA-256, cada entrada contiene la anterior.
cert-head-chain_and_code = { $digits }{"\u000A"}{ $entries }, SHA-256, cada entrada contiene la anterior. El código lleva la misma cabeza.
cert-running-record_head = Cabeza { $hash }   { $made }
cert-heading-stages = Las nueve etapas
cert-heading-working_time = Tiempo de trabajo
cert-heading-hold = El tiempo a presión
cert-heading-materials = Materiales, herramientas y lotes
cert-heading-sheets = Valores de las fichas y del contrato
cert-heading-checks = Comprobaciones calculadas
cert-heading-findings = Hallazgos de la verificación
cert-heading-departures = Desviaciones completas
cert-heading-notes = Notas completas
cert-heading-attempts = Otros intentos
cert-heading-corrections = Correcciones
cert-heading-photos = Fotos
cert-form-technician = Firma del técnico
cert-form-foreman = Firma del encargado
cert-attachment-description = El registro de esta reparación: cada entrada de su cadena, para programas
cert-running-made_by = { $program }, sin red, equipo { $device }
cert-sealing-key = clave { $key }
cert-signatures-quoted = «{ $statement }»
