### Die Schätzung eines Lecks, und was neben Orten gezeichnet wird.

pad-keys = Mit der Tastatur: Die Pfeiltasten bewegen den Stift, die Leertaste setzt ihn auf und hebt ihn ab.
pad-typed = Ein getippter Name ist keine Unterschrift.
pad-down = Stift aufgesetzt.
pad-up = Stift abgehoben.
drawn-asked = Strich bei { $at } ab Mitte { $node }. Längen maßstäblich, Höhen nicht.
places-clock = Bogen oder Punkt: der Schaden. Stummel: ein Anschluss unter dem Kurzliner. Balken: die Naht.
hand-drawn = Längen maßstäblich ab Mitte { $node }; kleine Uhren mit Blick in Fließrichtung. Höhen nicht.
hand-drawing = Haltung von { $from } bis { $to } mit dem, was bisher eingegeben ist
hand-here = Schaden
reading-act_5 = Alle fünf erfassen
leak-title = Ist er undicht?
leak-of =
  { $n ->
    [one] { $n } Ablesung seit { $at }
   *[other] { $n } Ablesungen seit { $at }
  }
leak-outside_missing = Noch nicht bekannt
leak-outside_missing_note = Der Luftdruck außen wurde nicht abgelesen. Ohne ihn lässt sich Abkühlung nicht von einem Leck unterscheiden.
leak-too_few_readings = Zu wenige Ablesungen
leak-too_few_readings_note = Nötig sind 5 mit Wandtemperatur, ohne dass dazwischen Luft nachgefüllt wird; noch { $n }.
leak-steady = Kein Leck zu erkennen
leak-steady_note = In einer Stunde ändert sich der Druck weniger, als die Ablesungen zeigen können.
leak-cooling_only = Nur Abkühlung
leak-cooling_only_note = Der Druck fällt, weil die Luft im Packer kalt wird. Kein Leck zu erkennen.
leak-leaking = Der Packer ist undicht
leak-leaking_note = Die Abkühlung ist herausgerechnet. Anschlüsse, Schlauch und Ventil ansehen; langsam erhöhen, innerhalb des Bereichs.
leak-per_hour = Verlust je Stunde
leak-between = zwischen { $low } und { $high }, 95 %
leak-limit = Untere Grenze in
leak-limit_at = etwa { $at }, wenn es so weitergeht
leak-limit_after = etwa { $at }, nach dem frühesten Ablassen
leak-limit_now = jetzt
leak-enter = Luftdruck außen eingeben
leak-enter_note = einmal, mit der nächsten Ablesung
reading-outside_pa = Luftdruck außen, absolut
reading-outside_once = einmal, für das Leck
reading-outside_note = Von einem Barometer vor Ort, oder der Wert des Wetterdienstes für diese Höhe, nicht für Meereshöhe. Etwa 1 bar; ein Manometer zeigt 0.
remind-leak = { $node }: Der Packer ist undicht. Noch etwa fünf Minuten bis zur unteren Grenze.
