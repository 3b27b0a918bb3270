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
