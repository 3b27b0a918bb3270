### Lo que se escribió en papel y se introduce después.

keyed-title = Introducir desde el papel
keyed-about = lo que se escribió a mano, con las horas de la hoja
keyed-lead = Ponga el día y la hora que están en la hoja. Luego recorra las pantallas como siempre. Cada entrada lleva la marca «del papel» y guarda ambas horas: cuándo ocurrió y cuándo la introdujo.
keyed-rule = A favor de la cuadrilla.
keyed-rule_text = La presión objetivo y las lecturas del tiempo a presión tomadas del papel solo cuentan si el encargado responde de ellas. Se imprime.
keyed-day = Día de la hoja
keyed-time = Hora de la hoja
keyed-on = ¿Introducir desde el papel?
keyed-act = Ir a la etapa
keyed-act_on = Las entradas llevan la hora de la hoja
keyed-act_off = Las entradas llevan la hora actual
keyed-strip = Del papel
keyed-wants = Ponga primero el día y la hora. Hasta entonces las entradas llevan la hora actual.
keyed-end = Dejar de introducir
keyed-mark = del papel
off-paper = Del papel
off-paper_text =
  { $n ->
    [one] 1 entrada se introdujo
   *[other] { $n } entradas se introdujeron
  } después.
off-paper_entry = { $what } { $at }, introducido { $keyed }
