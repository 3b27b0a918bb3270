### Eine Sicherung, und was davon zurückkommt.

backup-title = Sichern
backup-last = Letzte Sicherung
backup-last_on = Zuletzt am { $on }
backup-never = Noch nie gesichert
backup-due = Es ist Zeit für eine neue.
backup-due_lead = Sichern.
backup-due_text = Was nur auf diesem Gerät liegt, geht mit dem Gerät verloren.
backup-free = Freier Platz
backup-free_n = { $free } frei
backup-low = Für Fotos ist bald kein Platz mehr. Sichern, dann auf dem Gerät Platz schaffen.
backup-low_lead = { $free } frei.
backup-mb = { $n } MB
backup-gb = { $n } GB
backup-word = Kennwort, 10 Zeichen oder mehr
backup-word_note = Vier Wörter sind gut. Aufschreiben und getrennt von der Datei aufbewahren: niemand kann es wiederherstellen.
backup-what = Alle Reparaturen, Fotos, Nachweise und Schlüssel kommen in eine verschlossene Datei. Jedes Programm, das das Format age liest, öffnet sie mit dem Kennwort.
backup-act = Sicherung anlegen
backup-act_note = mit dem Kennwort verschlossen
backup-made = Die Sicherung ist angelegt
backup-files =
  { $n ->
    [one] 1 Datei darin
   *[other] { $n } Dateien darin
  }
backup-away = Anderswo aufbewahren.
backup-away_text = Auf einem anderen Gerät, einem Stick oder im Büro. Neben dem Telefon geht sie mit dem Telefon verloren.
restore-title = Sicherung zurückholen
restore-note = Auf einem neuen oder leeren Gerät
restore-text = Alles aus der Sicherung kommt zurück: Reparaturen, Fotos, Nachweise, Schlüssel. Das Gerät muss leer sein.
restore-file = Die Sicherung (.tar.age)
restore-word = Ihr Kennwort
restore-device = Dies zählt als neues Gerät mit eigenem Schlüssel. Dem Büro sagen und die Schlüssel eines verlorenen Geräts widerrufen.
restore-act = Zurückholen
restore-act_note = alles oder nichts
restore-done = Alles ist zurück
restore-files = Dateien
restore-damaged =
  { $n ->
    [one] 1 Kette war
   *[other] { $n } Ketten waren
  } schon gebrochen, als gesichert wurde. Daran wurde nichts geändert.
restore-people = Erst wählen, wer tippt.
