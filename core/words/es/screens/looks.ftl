### La estimación de una fuga, y lo que se dibuja junto a los lugares.

pad-keys = Con el teclado: las flechas mueven el lápiz, la barra espaciadora lo baja y lo sube.
pad-typed = Un nombre escrito no es una firma.
pad-down = Lápiz abajo.
pad-up = Lápiz arriba.
drawn-asked = Trazada a { $at } del centro de { $node }. Longitudes a escala; alturas, no.
places-clock = Arco o punto: el defecto. Tubo corto: una acometida bajo el parche. Barra: la costura.
hand-drawn = Longitudes a escala desde el centro de { $node }; relojes pequeños vistos mirando aguas abajo. Alturas, no.
hand-drawing = Tramo de { $from } a { $to } con lo anotado hasta ahora
hand-here = defecto
reading-act_5 = Registrar las cinco
leak-title = ¿Tiene fuga?
leak-of =
  { $n ->
    [one] { $n } lectura desde { $at }
   *[other] { $n } lecturas desde { $at }
  }
leak-outside_missing = Aún no se sabe
leak-outside_missing_note = No se leyó la presión del aire exterior. Sin ella no se distingue el enfriamiento de una fuga.
leak-too_few_readings = Muy pocas lecturas
leak-too_few_readings_note = Hacen falta 5 con temperatura de la pared y sin añadir aire entre ellas; faltan { $n }.
leak-steady = No se ve ninguna fuga
leak-steady_note = En una hora cambia menos de lo que las lecturas pueden mostrar.
leak-cooling_only = Solo se enfría
leak-cooling_only_note = La presión baja porque el aire del packer se enfría. No se ve ninguna fuga.
leak-leaking = El packer tiene fuga
leak-leaking_note = El enfriamiento está descontado. Revise racores, manguera y válvula; suba la presión despacio, dentro del rango.
leak-per_hour = Pérdida en una hora
leak-between = entre { $low } y { $high }, 95 %
leak-limit = Límite inferior en
leak-limit_at = hacia las { $at }, si sigue así
leak-limit_after = hacia las { $at }, después de la hora más temprana para desinflar
leak-limit_now = ahora
leak-enter = Anotar el aire exterior
leak-enter_note = una vez, con la próxima lectura
reading-outside_pa = Presión del aire exterior, absoluta
reading-outside_once = una vez, para la fuga
reading-outside_note = De un barómetro aquí, o el valor del servicio meteorológico para esta altura, no al nivel del mar. Cerca de 1 bar; un manómetro marca 0.
remind-leak = { $node }: el packer tiene fuga. Unos cinco minutos hasta el límite inferior.
