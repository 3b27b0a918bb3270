### Reparaturen auf dem Weg zu einem anderen Gerät und von dort.

send-title = Reparaturen senden
send-note = An ein anderes Telefon oder ins Büro, als eine Datei
send-one = Diese Reparatur senden
send-one_note = Als eine Datei mit ihren Fotos, an ein anderes Gerät
send-since = Nur was sich geändert hat seit (darf leer bleiben)
send-pick = Reparaturen
send-pick_note = keine angekreuzt: alle
send-size = { $mb } MB
send-none = Hier gibt es noch keine Reparatur.
send-act = Datei erstellen
send-act_note = von diesem Gerät signiert, mit Fotos
send-kept = Von selbst verlässt nichts dieses Gerät. Die Datei speichern, dann weitergeben: per Kabel, Stick, E-Mail oder wie es geht.
send-half = Ist das Kopieren abgebrochen? Dieselbe Datei noch einmal kopieren; das andere Gerät macht weiter, wo es aufgehört hat.
send-made = Die Datei ist erstellt
send-made_n =
  { $repairs ->
    [one] 1 Reparatur
   *[other] { $repairs } Reparaturen
  }, { $photos ->
    [one] 1 Foto
   *[other] { $photos } Fotos
  }
send-missing =
  { $n ->
    [one] 1 Foto ist
   *[other] { $n } Fotos sind
  } nicht dabei: nicht hier oder verändert. Die Reparatur wird trotzdem gesendet.
send-save_again = Noch einmal speichern
send-broke_off = Die Datei brach beim Speichern ab. Noch einmal speichern.
send-saving = Wird gespeichert: { $done } von { $of } MB
send-key = Der Schlüssel dieses Geräts
send-key_note = Wer die Datei einliest, soll ihn erfahren, mündlich oder auf Papier. So steht fest, dass die Datei von Ihnen ist.
take-title = Reparaturen einlesen
take-note = Eine Datei von einem anderen Telefon oder aus dem Büro
take-file = Die Datei (.mendline)
take-key = Schlüssel des sendenden Geräts, falls genannt
take-key_note = Mit Schlüssel wird nur eine Datei von diesem Gerät eingelesen.
take-known =
  { $n ->
    [one] 1 Gerät ist schon bekannt, an seinem Schlüssel.
   *[other] { $n } Geräte sind schon bekannt, an ihren Schlüsseln.
  }
take-act = Datei einlesen
take-act_note = ganz oder gar nicht
take-bringing = Wird eingelesen: { $done } von { $of } MB
take-stopped = Die Datei blieb unterwegs stehen. Noch einmal auswählen: Sie macht weiter, wo sie aufgehört hat.
take-done = Eingelesen
take-nothing_new = Alles war schon hier
take-from = Von Gerät
take-its_key = Sein Schlüssel
take-first = Dieses Gerät ist zum ersten Mal hier.
take-first_text = Seinen Schlüssel mit dem vergleichen, was die Person an diesem Gerät nennt. Ab jetzt spricht nur dieser Schlüssel für das Gerät.
take-photos = Fotos
take-fresh =
  { $n ->
    [0] war schon hier
    [one] 1 neuer Eintrag
   *[other] { $n } neue Einträge
  }
take-apart = Sie wurde auf { $n } Geräten weitergeführt. Alles bleibt erhalten; der Polier wählt, was gilt.
