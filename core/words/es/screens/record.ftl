### Verification, review, signatures, certificate, and the check of a record.

verify-recorded = registrado
verify-open = pendiente
verify-fill = Completar lo pendiente
verify-fill_note = { $n } de etapas anteriores
verify-earlier =
  { $n ->
    [one] Queda 1 cosa pendiente de una etapa anterior
   *[other] Quedan { $n } cosas pendientes de etapas anteriores
  }
verify-earlier_note = se anotan ahora, como tardías
verify-edge = { $edge }, { $at }
verify-limit = límite { $n }
verify-inside = dentro
verify-too_high = sobre el límite
verify-no_value = nada anotado
verify-scale = { $value } frente al límite de { $most }
verify-limit_from = Límite: { $source }.
verify-laterals = Acometidas
verify-laterals_count = tapadas { $covered }, abiertas { $opened }
verify-lateral = { $at }, { $hour } h
verify-closed_until = Bloqueado hasta las { $at }. Si se abre antes, es una desviación para el encargado.
verify-may_open = El curado está completo.
verify-say_opened = Ya está abierta
verify-opened = Abierta a las { $at } al { $pct } %, recorte fuera.
verify-opened_no_coupon = Abierta a las { $at } al { $pct } %, recorte sin encontrar.
verify-photos = Fotos
verify-of = { $n } de { $of }
verify-site = Obra
verify-if_asked = donde se pide
verify-note = Escribir una nota
verify-photo = Guardar otra foto
verify-photos_all = Guardar el registro hasta ahora, { $n ->
    [one] 1 foto
   *[other] { $n } fotos
  }
verify-record_so_far = cada entrada con su huella
verify-stop = termine este intento o diga qué pasó
verified-cured = Curado completo desde las { $at }
verified-cure_from = Curado completo a partir de las { $at }
verified-cure_tape = han pasado { $gone } de { $all }
verified-joined = A y B juntos { $at }
verified-target_pressure = a presión { $at }
verified-reached = cumplido
verified-to_go = faltan { $span }
verified-fold = pliegue, { $n }
verified-fold_at = pliegue, { $n }, { $hour } h
verified-lift = despegado
verified-lateral = acometida, { $hour } h, tapada
verified-lateral_open = acometida, { $hour } h, abierta
verified-drawing = Parche de { $from } a { $to } con lo encontrado
verified-caption = Tal como se encontró. Anchuras a escala; alturas, no.
review-title =
  { $n ->
    [0] Nada se apartó del plan
    [1] Una cosa se apartó del plan
    [2] Dos cosas se apartaron del plan
    [3] Tres cosas se apartaron del plan
    [4] Cuatro cosas se apartaron del plan
    [5] Cinco cosas se apartaron del plan
    [6] Seis cosas se apartaron del plan
    [7] Siete cosas se apartaron del plan
    [8] Ocho cosas se apartaron del plan
    [9] Nueve cosas se apartaron del plan
    [10] Diez cosas se apartaron del plan
   *[other] { $n } cosas se apartaron del plan
  }{ $open ->
    [0] {""}
    [one] , una le espera a usted
    [2] , dos le esperan a usted
    [3] , tres le esperan a usted
   *[other] , { $open } le esperan a usted
  }
review-nothing = Nada se apartó del plan
review-nothing_text = Se cumplió cada regla, se vigiló cada minuto y no se corrigió nada.
review-me = { $name }, { $role }
review-go = A la revisión del encargado
review-go_note =
  { $n ->
    [one] 1 desviación espera
   *[other] { $n } desviaciones esperan
  }
review-doubtful = Este intento es dudoso.
review-doubtful_text = El parche puede haberse separado de la pared. Mire las fotos de la vuelta completa antes de decidir.
review-doubt = lo hace dudoso
review-line = Línea de tiempo { $n ->
    [one] del intento
   *[other] de { $n } intentos
  } con { $marks ->
    [one] 1 marca
   *[other] { $marks } marcas
  }
review-caption = Desviaciones, correcciones, huecos e intentos
review-mark = Marca
review-what = Qué
review-evidence = Evidencia
review-decision = Decisión
review-decision_on = Decisión sobre { $what }
review-yes = Aceptar
review-no = No aceptar
review-reason = Motivo, se imprime
review-found = lo encontró la regla
review-printed = Se imprime.
review-both_printed = Se imprimen lo viejo y lo nuevo.
review-gap_printed = Se imprime. { $counted } de { $of } min sin él.
review-outside_printed = Se imprime. Los minutos de al lado no cuentan.
review-said = { $who } lo aceptó a las { $at }: «{ $why }»
review-never = No se puede autorizar.
review-decide = Decida sobre { $which }
review-accept_one = Aceptar { $n }
review-accept_one_note = lo hace el encargado, con el motivo
review-reject = O rechazarlo
review-reject_why = Qué tiene de malo
review-reject_act = Rechazar este intento
review-reject_note = el parche queda registrado como rechazado
review-back = Volver
review-to_verification = Volver a la verificación
review-accept = Aceptar la reparación
review-accept_note =
  { $n ->
    [0] la acepta el encargado
    [one] la acepta el encargado, con 1 desviación
   *[other] la acepta el encargado, con { $n } desviaciones
  }
review-correct = Corregir un valor
review-signs = A las firmas
review-signs_note = técnico y encargado
review-again = Lo que se apartó del plan
review-again_note = tal como se revisó
correct-title = Corregir un valor
correct-reading = Lectura { $n }
correct-gauge = Presión
correct-pipe = Pared de la tubería
correct-water = Agua
correct-was = registrado: { $n }
correct-why = Por qué estaba mal
correct-kept = Quedan lo viejo y lo nuevo.
correct-kept_text = Una corrección dice qué corrige, el valor viejo, el nuevo y el motivo. Todo se imprime.
correct-nothing = no se cambia nada
correct-act = Registrar la corrección
off-attempt = Intento { $n }.
off-accepted = Aceptado por el encargado
off-rejected = Intento rechazado
off-discarded = Intento desechado
off-left_in_pipe = Parche dejado en la tubería
off-abandoned = Intento abandonado
off-correction = Corrección
off-at = a las { $at }
off-gap = Sin vigilar
off-gap_text = { $span } del tiempo a presión, { $from } – { $to }. No cuentan.
off-outside = Fuera de rango
off-outside_text = { $span } del tiempo a presión, { $from } – { $to }. No cuentan.
off-late = Anotado después
off-late_text =
  { $n ->
    [one] 1 respuesta
   *[other] { $n } respuestas
  } después de acabar la etapa.
off-which = Cuáles
off-clock = Reloj cambiado
off-clock_text = Cambiado { $by } a las { $at }.
off-clock_restarted = Cambiado { $by } a las { $at }, con el equipo apagado.
signs-title = Firman dos
signs-of = { $n } de { $of }
signs-who = { $name }, { $role }
signs-hold = { $counted } de { $of } min
signs-photos = Fotos
signs-photos_n =
  { $n ->
    [0] ninguna
    [one] { $n }, con su huella
   *[other] { $n }, cada una con su huella
  }
signs-means = Quien firma ha leído { $n ->
    [0] este registro
    [one] esta única cosa
   *[other] estas { $n } cosas
  } y responde de ello. Un cambio posterior anula la firma. La aceptación del titular es otro acto.
signed-title = Qué se firma
signed-departures = Desviaciones
signed-no_departure = Ninguna.
signed-all = Y todo lo demás del registro: { $n } entradas, cada una encadenada a la anterior.
sign-next = Ahora firma: { $role }.
sign-next_text = Cada uno firma con su nombre. Elíjalo antes.
sign-honest = Qué prueba un trazo:
sign-honest_text = nada sobre quién lo hizo. Al emitirlo, su clave firma el PDF. Sin clave, un cambio no se nota.
sign-pick = Elegir al { $role }
sign-now = ahora usa el equipo { $name }
sign-to_certificate = Al certificado
sign-issued = El certificado está emitido. No se firma nada más.
sign-not_yet = Se firma cuando el encargado haya aceptado, rechazado o cerrado la reparación.
sign-back = Volver a la reparación
sign-back_note = lo que toca ahora
certificate-none = Sin emitir
certificate-issued = Emitido
certificate-pdf_note = PDF, para imprimir y archivar
certificate-means = Aceptado por el encargado.
certificate-means_text = La aceptación del titular es otro acto. Guarde el registro junto al PDF: cualquiera puede comprobarlo.
certificate-not_mended = El defecto no está reparado.
certificate-not_mended_text = El registro dice qué se intentó y por qué acabó. Guárdelo junto al PDF: cualquiera puede comprobarlo.
certificate-rehearsal = Una práctica.
certificate-rehearsal_text = No prueba nada sobre una tubería. Archívela aparte de los certificados.
done-sign = Firmar
done-issued = Certificado
ending-rejected = Registro: rechazado
ending-unrepaired = Registro: sin reparar
ending-null = Certificado
done-reason = Por qué no lleva parche
done-signed = { $at }, a trazo, sin autenticar
done-signed_pin = { $at }, a trazo, con PIN
done-not_signed = no ha firmado
done-draw = { $role }: dibuje su trazo
done-as = como { $name }, { $role }
done-pad = Campo para la firma dibujada
done-again = Dibujar de nuevo
done-sign_act = Firmar
done-issue = Emitir el certificado
done-issue_note = le da su número
done-issue_record = Emitir el registro
done-pdf = Guardar el certificado
done-pdf_record = Guardar el registro en PDF
done-record = Guardar el registro
done-record_note = cada entrada con su huella, para que cualquiera lo compruebe
done-today = Volver a hoy
statement-technician = He hecho esta reparación, la he registrado tal como ocurrió y he leído los valores marcados con H.
statement-foreman_rejected = He revisado este registro. No acepto esta reparación.
statement-foreman_unrepaired = He revisado este registro. El defecto no está reparado.
statement-foreman = He revisado este registro, respondo de las desviaciones indicadas y emito este certificado en nombre del contratista.
check-stays = nada sale de este equipo
check-file = Certificado o registro
check-other = Otro certificado o registro
check-what = El certificado en PDF, o el registro que se guardó con él.
check-act = Comprobarlo
check-act_note = sin red
check-valid = Sin cambios desde que se escribió
check-valid_lead = {""}
check-changed = Cambiado o incompleto
check-changed_lead = No se fíe de este archivo. Pida el completo al contratista.
check-photo_lead = El archivo mismo no fue cambiado. Pida la foto tal como se tomó.
check-unreadable = No es un registro
check-unreadable_lead = {""}
check-rehearsal = Una práctica correcta, no un registro
check-rehearsal_lead = No se hizo ninguna reparación; no prueba nada sobre una tubería.
check-chain = Cadena de { $n ->
    [one] 1 entrada
   *[other] { $n } entradas
  }
check-breaks = la entrada { $n } no encaja
check-looked = Qué se comprobó
looked-chain = La cadena está entera
looked-chain_wrong = La cadena está rota
looked-chain_note =
  { $n ->
    [0] una entrada no sigue a la anterior, o su texto no es el que se escribió
   *[other] { $n } entradas, cabeza { $head }
  }
looked-head = La cabeza es la de la última entrada
looked-head_wrong = Faltan entradas al final
looked-head_note = compárela con la cabeza impresa en el certificado: solo ahí se nota si se cortó el final o se reescribió todo
looked-top = Número y tipo son los de las entradas
looked-top_wrong = La cabecera y las entradas no coinciden
looked-top_note = una práctica no puede pasar por registro
looked-complete = Completo, con su certificado
looked-complete_wrong = Incompleto
looked-complete_note = aceptado y emitido, o cerrado sin parche
looked-signatures = Los dos han hecho su trazo
looked-signatures_wrong = Falta una firma
looked-signatures_note = un trazo no prueba nada sobre quién lo hizo
looked-file = Sin cambios desde que se firmó
looked-file_wrong = Cambiado, o ninguna clave lo ha firmado
looked-file_note = una clave cubre cada byte; no se añadió nada después de la última
looked-keys = Las dos claves han firmado
looked-keys_wrong = Falta una clave, o es desconocida, está revocada o es de práctica
looked-keys_note = la hora es la que marcaba el reloj de quien firmó
looked-pages = Las páginas dicen lo mismo que el registro de dentro
looked-pages_wrong = Las páginas y el registro no coinciden
looked-pages_note = cabeza de la cadena, números, tubería, nodos, quién firmó
looked-originals = Ninguna foto original fue cambiada
looked-originals_wrong = Una foto original fue cambiada
looked-originals_note = de las que se trajeron; una que falta no dice nada
check-keys = Quién firmó
check-holds = La firma es válida.
check-broken = La firma no es válida.
check-trust_not_asked = Aquí no se conoce ninguna clave para compararla.
check-trust_trusted = La clave está en la lista de personas.
check-trust_unknown = La clave no está en la lista de personas.
check-trust_rehearsal = Una clave de práctica.
check-revoked = Revocada desde { $at }.
check-superseded = Sustituido por { $number }
check-superseded_text = Pídaselo al contratista.
seal-title = Claves
seal-signed = { $at }, con clave
seal-open = la clave aún no ha firmado
seal-done = Las dos claves han firmado.
seal-done_text = Desde ahora, quien compruebe el PDF encontrará cualquier cambio.
seal-rehearsal = Las claves se crean para esta práctica y se tiran.
seal-turn = Ahora toca la clave de { $name }.
seal-turn_text = Pase el equipo o elija el nombre.
seal-no_key = { $name } no tiene clave.
seal-no_key_text = Cree una en la lista de personas. Sin ella, el PDF no está protegido contra cambios.
seal-act = Firmar con mi clave
seal-act_rehearsal = Firmar con claves de práctica
check-says = Qué dice
check-repair = Reparación
check-attempt = Intento
check-attempt_of = { $n }, { $how }
check-none = ninguno
check-head = Cabeza
check-certificate = Certificado
check-proves = La cadena prueba que no se cambió nada desde que se escribió, siempre que la cabeza sea la del certificado. No prueba quién lo escribió. Aceptado por el encargado; la aceptación del titular es otro acto.
