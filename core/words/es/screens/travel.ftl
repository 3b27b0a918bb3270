### What travels between devices: branches, bundles, hand-over, backup.

apart-title = Dos equipos, una reparación
apart-way = { $n } equipos siguieron esta reparación
apart-way_note = Este muestra lo suyo. El encargado elige lo que cuenta.
apart-none = Todos los equipos coinciden
apart-none_text = Esta reparación siguió un solo camino. No hay nada que elegir.
apart-same = Igual en todos
apart-same_text =
  { $n ->
    [one] 1 entrada, la de apertura, es igual.
   *[other] { $n } entradas son iguales.
  }
apart-same_until = La última es de { $at }.
apart-kept = No se pierde nada: lo no elegido queda en el registro y se imprime como apartado.
apart-own = Este equipo
apart-other = Otro equipo
apart-device = equipo { $id }
apart-count =
  { $n ->
    [one] 1 cosa más
   *[other] { $n } cosas más
  }
apart-earlier =
  { $n ->
    [one] 1 cosa anterior
   *[other] { $n } cosas anteriores
  }
apart-nobody = nadie elegido
apart-choose = ¿Cuál cuenta?
apart-pick = { $who }, hasta { $at }
apart-reason = Motivo
apart-act = Que cuente lo elegido
apart-act_note = se registra con motivo y nombre
apart-step-opened = Abierta: { $detail }
apart-step-plan_accepted = Plan aceptado
apart-step-attempt_begun = Empezado el intento { $detail }
apart-step-stage_begun = Etapa: { $detail }
apart-step-answered = Respondido: { $detail }
apart-step-go = Visto bueno
apart-step-happened = Avisado: { $detail }
apart-step-doubted = Dudoso: { $detail }
apart-step-broke = Incumplido: { $detail }
apart-step-waived = Autorizado: { $detail }
apart-step-corrected = Corregido: { $detail }
apart-step-worked_out = Se hizo un cálculo
apart-step-noted = Nota: { $detail }
apart-step-photo_kept = Foto: { $detail }
apart-step-clock_set = El reloj se cambió en { $detail }
apart-step-attempt_ended = Intento terminado: { $detail }
apart-step-unrepaired = Cerrada sin parche: { $detail }
apart-step-signed = Firmado: { $detail }
apart-step-issued = Certificado { $detail }
apart-step-sealed = Firmó la clave: { $detail }
apart-step-branch_chosen = Elegido: { $detail }
apart-step-voided = Certificado anulado: { $detail }

handing-title = Entregar la fase a presión
handing-note = A otro teléfono; los minutos siguen allí
handing-text = El otro teléfono sigue con esta fase a presión: los mismos minutos, el mismo rango, la última lectura. Lo registrado aquí también queda aquí.
handing-to = A quién (puede quedar vacío)
handing-together = Tenga los dos teléfonos juntos hasta que el otro muestre la fase.
handing-act = Entregarla
handing-act_note = registrada con los dos relojes de este teléfono
given-title = Entregada
given-way_note = Otro teléfono avisa ahora de las lecturas
given-at = Entregada a las { $at }.
given-to = Entregada a las { $at } a { $to }.
given-file = 1. Dele el archivo
given-file_text = Créelo ahora, para que estén todas las lecturas. El otro teléfono lo recibe.
given-code = 2. Muéstrele este código
given-code_text = El otro teléfono lo fotografía y sabe qué marca este reloj. Así no se pierde ni se gana ningún minuto. Sin el archivo, sigue el reloj solo por este código.
given-code_label = Código de esta fase, hecho para este momento
given-clock = Este reloj marca las { $at }. También se puede teclear.
given-then = Hasta que muestre la fase
given-watch = Este teléfono ya no avisa de las lecturas. Lo que aún se toque aquí se guarda, pero en una rama propia.
given-restarted = Este teléfono se reinició desde entonces y su reloj ya no dice nada. Recupere la fase y entréguela otra vez.
given-back = Recuperarla
given-back_note = Este teléfono sigue con la fase
given-look = Ver la fase a presión
given-look_note = Sus lecturas y su rango
given-taken = El teléfono { $phone } se hizo cargo de la fase a presión.
given-taken_text = Las lecturas y el desinflado se anotan allí. Lo que se toque aquí se guarda, pero en una rama propia.
offer-title = Hacerse cargo
offer-way_note = Otro teléfono la entregó y espera
offer-from = El teléfono { $phone } entregó esta fase a presión a las { $at } de su reloj.
offer-counted = { $n } de { $of } min contados allí.
offer-code = Fotografíe su código
offer-code_text = Está en la pantalla del otro teléfono.
offer-act = Hacerse cargo
offer-act_note = por el código de la foto
offer-act_tied = por el código fotografiado a las { $at }
offer-clock = O teclee su reloj
offer-clock_field = Marca (por ejemplo 14:05:30)
offer-clock_act = Hacerse cargo por este reloj
offer-clock_note = Si añade minutos, responde el encargado
offer-without = El otro teléfono no está aquí
offer-without_text = Entonces solo la hora dice cuánto ha pasado. Los minutos desde su última lectura quedan sin vigilar.
offer-without_act = Hacerse cargo sin él
offer-without_note = Esos minutos no cuentan
follow-title = Seguir una fase por su código
follow-note = Otro teléfono la muestra; su archivo no está aquí
follow-no_file = Sin su archivo
follow-text = El teléfono que tiene la fase muestra el código: «Entregar la fase a presión». Fotografíelo aquí antes de que aquel se apague.
follow-clock = Solo pasa el reloj.
follow-clock_text = El registro queda en el otro teléfono. Reciba su archivo en cuanto pueda.
follow-before = ¿Ya se apagó? También sirve una foto del código que este teléfono tomó antes.
follow-act = Seguir la fase
follow-act_note = por el código de la foto
followed-title = Fase en otro teléfono
followed-record = El registro está en el otro teléfono.
followed-paper = Escriba las lecturas en papel hasta que su archivo esté aquí.
followed-counted = contados allí hasta las { $at }
followed-tape =
  { $counted } de { $needed } minutos contados allí{ $pending ->
    [0] {""}
   *[other] , { $pending } más dependen de las lecturas en papel
  }
followed-pending = { $n } más si el papel vale
followed-every = a las { $at }, luego cada { $n } min
followed-earliest = Desinflar como pronto
followed-not_before = No desinflar antes de las { $at }
followed-may_be = Quizá se pueda desinflar desde las { $at }
followed-if = Si cada lectura es buena
followed-code = Lo que dice su código
followed-phone = Teléfono
followed-key_unknown = Aquel teléfono no se conoce aquí.
followed-key_unknown_text = Nadie ha comprobado quién hizo el código.
followed-key_false = No se guíe por este reloj.
followed-key_false_text = Aquel teléfono ya se conoce aquí, y no hizo el código.
followed-restarted = Este teléfono se reinició desde entonces.
followed-restarted_text = Los minutos van por la hora del día, que alguien pudo cambiar.
followed-anew = Fotografiar otra vez su código
followed-anew_note = Tras una lectura anotada allí
followed-off = Quitarla de la lista
followed-off_note = Su reloj ya no se muestra aquí
followed-take = Recibir su archivo
followed-take_note = luego hacerse cargo
followed-gone = Ya no se sigue aquí
followed-gone_text = Su archivo está aquí, se quitó de la lista, o terminó hace mucho.
apart-step-handed_over = Fase a presión entregada: { $detail }
apart-step-taken_over = Fase a presión asumida
