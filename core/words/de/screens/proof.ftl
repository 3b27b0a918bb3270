### Beweise: die PIN eines Schlüssels, Nummern von Nachweisen.

certificate-supersedes = Ersetzt { $number }.
certificate-went_on = Danach ging die Reparatur weiter.
certificate-void = Diesen Nachweis zurückziehen
certificate-void_note = Er zählt dann nicht mehr, und seine Nummer wird nie wieder verwendet. Berichtigen, was falsch war, dann neu unterschreiben und ausstellen: Der nächste nennt diesen und den Grund.
certificate-void_why = Warum er nicht zählt
certificate-void_act = { $number } zurückziehen
numbers-title = Nummern dieses Geräts
numbers-note = jeder Nachweis, und was daraus wurde
numbers-all = Nachweise
numbers-none = Hier wurde noch kein Nachweis ausgestellt.
numbers-none_text = Jeder bekommt die nächste Nummer dieses Geräts.
numbers-issued = Ausgestellt
numbers-superseded = Ersetzt durch { $number }
numbers-voided = Zurückgezogen, noch ohne Ersatz
numbers-taken = Vergeben { $at }.
numbers-why = Zurückgezogen durch { $by }, { $at }: { $reason }
key-change = PIN ändern
key-old_pin = Alte PIN
key-change_act = Neue PIN verwenden
check-originals = Die Originalfotos
check-originals_what =
  { $n ->
    [one] Das Protokoll nennt 1 Foto mit seinem SHA-256. Das Original auswählen, um zu sehen, ob es Byte für Byte dasselbe ist.
   *[other] Das Protokoll nennt { $n } Fotos mit ihrem SHA-256. Die Originale auswählen, um zu sehen, ob sie Byte für Byte dieselben sind.
  }
check-originals_files = Originalfotos, so viele wie nötig
check-originals_more = Weitere Originalfotos
check-originals_act = Vergleichen
check-original_found = vorhanden, Byte für Byte:
check-original_missing = nicht unter den vorgelegten Dateien
check-originals_sum = Von { $of } Fotos: { $found } Byte für Byte da, { $changed } verändert, { $missing } noch nicht vorgelegt. Ein nicht vorgelegtes Foto sagt nichts über den Nachweis.
check-original_changed = verändert: Die Datei trägt seinen Namen und enthält etwas anderes:
check-original_other = im Protokoll nicht genannt
check-original_unread = nicht lesbar
check-original_ask = nachfragen
