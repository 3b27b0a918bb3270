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
