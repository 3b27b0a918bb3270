### Was zwischen Geräten wandert: Zweige, Bündel, Übergabe, Sicherung.

apart-title = Zwei Geräte, eine Reparatur
apart-way = { $n } Geräte haben diese Reparatur weitergeführt
apart-way_note = Dieses zeigt sein eigenes. Der Polier wählt, welches gilt.
apart-none = Alle Geräte sind einig
apart-none_text = Diese Reparatur wurde nur auf eine Weise weitergeführt. Es gibt nichts zu wählen.
apart-same = Auf allen gleich
apart-same_text =
  { $n ->
    [one] 1 Eintrag, das Anlegen, ist gleich.
   *[other] { $n } Einträge sind gleich.
  }
apart-same_until = Der letzte davon ist von { $at }.
apart-kept = Nichts geht verloren: Was nicht gewählt wird, bleibt im Protokoll und wird als nicht gewählt gedruckt.
apart-own = Dieses Gerät
apart-other = Anderes Gerät
apart-device = Gerät { $id }
apart-count =
  { $n ->
    [one] 1 weiterer Punkt
   *[other] { $n } weitere Punkte
  }
apart-earlier =
  { $n ->
    [one] 1 früherer Punkt
   *[other] { $n } frühere Punkte
  }
apart-nobody = niemand ausgewählt
apart-choose = Welches davon gilt?
apart-pick = { $who }, bis { $at }
apart-reason = Begründung
apart-act = Ausgewähltes gelten lassen
apart-act_note = mit Begründung und Namen erfasst
apart-step-opened = Angelegt: { $detail }
apart-step-plan_accepted = Plan angenommen
apart-step-attempt_begun = Versuch { $detail } begonnen
apart-step-stage_begun = Phase: { $detail }
apart-step-answered = Beantwortet: { $detail }
apart-step-go = Freigabe
apart-step-happened = Gemeldet: { $detail }
apart-step-doubted = Fraglich: { $detail }
apart-step-broke = Verletzt: { $detail }
apart-step-waived = Ausnahme: { $detail }
apart-step-corrected = Berichtigt: { $detail }
apart-step-worked_out = Eine Prüfung wurde gerechnet
apart-step-noted = Notiz: { $detail }
apart-step-photo_kept = Foto: { $detail }
apart-step-clock_set = Uhr wurde um { $detail } verstellt
apart-step-attempt_ended = Versuch beendet: { $detail }
apart-step-unrepaired = Ohne Kurzliner geschlossen: { $detail }
apart-step-signed = Unterschrieben: { $detail }
apart-step-issued = Nachweis { $detail }
apart-step-sealed = Schlüssel hat signiert: { $detail }
apart-step-branch_chosen = Gewählt: { $detail }
apart-step-voided = Nachweis zurückgezogen: { $detail }

handing-title = Haltezeit übergeben
handing-note = An ein anderes Telefon; die Minuten laufen dort weiter
handing-text = Das andere Telefon macht mit dieser Haltezeit weiter: dieselben Minuten, derselbe Bereich, die letzte Ablesung. Was hier erfasst ist, bleibt auch hier.
handing-to = An wen (darf leer bleiben)
handing-together = Beide Telefone beisammen lassen, bis das andere die Haltezeit zeigt.
handing-act = Übergeben
handing-act_note = mit beiden Uhren dieses Telefons erfasst
given-title = Übergeben
given-way_note = Ein anderes Telefon erinnert jetzt an die Ablesungen
given-at = Übergeben um { $at }.
given-to = Übergeben um { $at } an { $to }.
given-file = 1. Die Datei geben
given-file_text = Jetzt erstellen, damit jede Ablesung darin ist. Das andere Telefon liest sie ein.
given-code = 2. Diesen Code zeigen
given-code_text = Das andere Telefon fotografiert ihn und weiß dann, was diese Uhr zeigt. So geht keine Minute verloren und keine kommt dazu. Ohne die Datei zeigt es allein nach diesem Code die Uhr der Haltezeit.
given-code_label = Code dieser Haltezeit, für diesen Augenblick
given-clock = Diese Uhr zeigt { $at }. Sie kann stattdessen eingetippt werden.
given-then = Bis das andere die Haltezeit zeigt
given-watch = Dieses Telefon erinnert nicht mehr an Ablesungen. Was hier noch getippt wird, bleibt erhalten, aber als eigener Zweig.
given-restarted = Dieses Telefon wurde seither neu gestartet, seine Uhr sagt nichts mehr. Die Haltezeit zurücknehmen, dann noch einmal übergeben.
given-back = Zurücknehmen
given-back_note = Dieses Telefon macht mit der Haltezeit weiter
given-look = Haltezeit ansehen
given-look_note = Ihre Ablesungen und ihr Bereich
given-taken = Telefon { $phone } hat die Haltezeit übernommen.
given-taken_text = Ablesungen und Ablassen werden dort getippt. Was hier getippt wird, bleibt erhalten, aber als eigener Zweig.
offer-title = Haltezeit übernehmen
offer-way_note = Ein anderes Telefon hat sie übergeben und wartet
offer-from = Telefon { $phone } hat diese Haltezeit um { $at } nach seiner Uhr übergeben.
offer-counted = { $n } von { $of } min dort gezählt.
offer-code = Seinen Code fotografieren
offer-code_text = Er steht auf dem Bildschirm des anderen Telefons.
offer-act = Übernehmen
offer-act_note = nach dem Code im Bild
offer-act_tied = nach dem um { $at } fotografierten Code
offer-clock = Oder seine Uhr eintippen
offer-clock_field = Sie zeigt (etwa 14:05:30)
offer-clock_act = Nach dieser Uhr übernehmen
offer-clock_note = Bringt das Minuten dazu, steht der Polier dafür ein
offer-without = Das andere Telefon ist nicht hier
offer-without_text = Dann sagt nur die Uhrzeit, wie lange es her ist. Die Minuten seit seiner letzten Ablesung sind nicht belegt.
offer-without_act = Ohne das Telefon übernehmen
offer-without_note = Diese Minuten zählen nicht
follow-title = Haltezeit nach ihrem Code verfolgen
follow-note = Ein anderes Telefon zeigt sie; ihre Datei ist nicht hier
follow-no_file = Ohne ihre Datei
follow-text = Das Telefon mit der Haltezeit zeigt den Code: „Haltezeit übergeben“. Hier fotografieren, bevor jenes Telefon dunkel ist.
follow-clock = Nur die Uhr kommt herüber.
follow-clock_text = Das Protokoll bleibt auf dem anderen Telefon. Seine Datei einlesen, sobald es geht.
follow-before = Schon dunkel? Ein Bild des Codes, das dieses Telefon vorher aufgenommen hat, dient auch.
follow-act = Haltezeit verfolgen
follow-act_note = nach dem Code im Bild
followed-title = Haltezeit auf anderem Telefon
followed-record = Das Protokoll ist auf dem anderen Telefon.
followed-paper = Ablesungen auf Papier schreiben, bis seine Datei hier ist.
followed-counted = dort gezählt bis { $at }
followed-tape =
  { $counted } von { $needed } Minuten dort gezählt{ $pending ->
    [0] {""}
   *[other] , { $pending } weitere nur mit den Ablesungen auf Papier
  }
followed-pending = { $n } weitere, wenn das Papier stimmt
followed-every = { $at }, dann alle { $n } min
followed-earliest = Ablassen frühestens
followed-not_before = Kein Ablassen vor { $at }
followed-may_be = Ablassen ist vielleicht seit { $at } möglich
followed-if = Wenn jede Ablesung gut ist
followed-code = Was sein Code sagt
followed-phone = Telefon
followed-key_unknown = Jenes Telefon ist hier nicht bekannt.
followed-key_unknown_text = Niemand hat geprüft, wer den Code gemacht hat.
followed-key_false = Nicht nach dieser Uhr gehen.
followed-key_false_text = Jenes Telefon ist hier inzwischen bekannt und hat den Code nicht gemacht.
followed-restarted = Dieses Telefon wurde seither neu gestartet.
followed-restarted_text = Die Minuten gehen nach der Uhrzeit, die jemand verstellt haben kann.
followed-anew = Seinen Code neu fotografieren
followed-anew_note = Nach einer Ablesung, die dort getippt wurde
followed-off = Von der Liste nehmen
followed-off_note = Ihre Uhr steht dann nicht mehr hier
followed-take = Seine Datei einlesen
followed-take_note = dann die Haltezeit übernehmen
followed-gone = Wird hier nicht mehr verfolgt
followed-gone_text = Ihre Datei ist hier, sie wurde von der Liste genommen, oder sie war längst vorbei.
apart-step-handed_over = Haltezeit übergeben: { $detail }
apart-step-taken_over = Haltezeit übernommen
