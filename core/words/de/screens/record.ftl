### Kontrolle, Durchsicht, Unterschriften, Nachweis und das Prüfen eines Protokolls.

verify-recorded = erfasst
verify-open = offen
verify-fill = Offenes nachtragen
verify-fill_note = { $n } aus früheren Phasen
verify-earlier =
  { $n ->
    [one] 1 Punkt einer früheren Phase ist offen
   *[other] { $n } Punkte früherer Phasen sind offen
  }
verify-earlier_note = jetzt ausgefüllt, gilt als nachgetragen
verify-edge = { $edge }, { $at }
verify-limit = Grenze { $n }
verify-inside = innerhalb
verify-too_high = über der Grenze
verify-no_value = nichts eingegeben
verify-scale = { $value } gegen die Grenze von { $most }
verify-limit_from = Grenze: { $source }.
verify-laterals = Anschlüsse
verify-laterals_count = überdeckt { $covered }, geöffnet { $opened }
verify-lateral = { $at }, { $hour } Uhr
verify-closed_until = Gesperrt bis { $at }. Vorher geöffnet ist eine Abweichung für den Polier.
verify-may_open = Vollständig ausgehärtet.
verify-say_opened = Er wurde geöffnet
verify-opened = Um { $at } zu { $pct } % geöffnet, Ausschnitt heraus.
verify-opened_no_coupon = Um { $at } zu { $pct } % geöffnet, Ausschnitt nicht gefunden.
verify-photos = Fotos
verify-of = { $n } von { $of }
verify-site = Baustelle
verify-if_asked = wo es verlangt ist
verify-note = Notiz schreiben
verify-photo = Weiteres Foto behalten
verify-photos_all = Bisheriges Protokoll speichern, { $n ->
    [one] 1 Foto
   *[other] { $n } Fotos
  }
verify-record_so_far = jeder Eintrag mit seinem Hash
verify-stop = diesen Versuch beenden oder melden, was geschah
verified-cured = Ausgehärtet seit { $at }
verified-cure_from = Ausgehärtet ab { $at }
verified-cure_tape = { $gone } von { $all } vergangen
verified-joined = Mischbeginn { $at }
verified-target_pressure = Solldruck { $at }
verified-reached = erreicht
verified-to_go = noch { $span }
verified-fold = Falte, { $n }
verified-fold_at = Falte, { $n }, { $hour } Uhr
verified-lift = steht ab
verified-lateral = Anschluss, { $hour } Uhr, überdeckt
verified-lateral_open = Anschluss, { $hour } Uhr, geöffnet
verified-drawing = Kurzliner von { $from } bis { $to } mit dem, was gefunden wurde
verified-caption = Wie vorgefunden. Breiten maßstäblich, Höhen nicht.
review-title =
  { $n ->
    [0] Nichts lief
    [1] Ein Punkt lief
    [2] Zwei Punkte liefen
    [3] Drei Punkte liefen
    [4] Vier Punkte liefen
    [5] Fünf Punkte liefen
    [6] Sechs Punkte liefen
    [7] Sieben Punkte liefen
    [8] Acht Punkte liefen
    [9] Neun Punkte liefen
    [10] Zehn Punkte liefen
   *[other] { $n } Punkte liefen
  } nicht nach Plan{ $open ->
    [0] {""}
    [one] , einer braucht Sie
    [2] , zwei brauchen Sie
    [3] , drei brauchen Sie
   *[other] , { $open } brauchen Sie
  }
review-nothing = Alles lief nach Plan
review-nothing_text = Jede Regel eingehalten, jede Minute belegt, nichts berichtigt.
review-me = { $name }, { $role }
review-go = Zur Durchsicht durch den Polier
review-go_note =
  { $n ->
    [one] 1 Abweichung wartet
   *[other] { $n } Abweichungen warten
  }
review-doubtful = Dieser Versuch ist fraglich.
review-doubtful_text = Der Kurzliner kann sich von der Wand gelöst haben. Vor der Entscheidung die Fotos vom 360°-Schwenk ansehen.
review-doubt = macht ihn fraglich
review-line = Zeitachse von { $n ->
    [one] einem Versuch
   *[other] { $n } Versuchen
  } mit { $marks ->
    [one] 1 Marke
   *[other] { $marks } Marken
  }
review-caption = Abweichungen, Berichtigungen, Lücken und Versuche
review-mark = Marke
review-what = Was
review-evidence = Beleg
review-decision = Entscheidung
review-decision_on = Entscheidung zu { $what }
review-yes = Zulassen
review-no = Nicht zulassen
review-reason = Begründung, wird gedruckt
review-found = durch die Regel gefunden
review-printed = Wird gedruckt.
review-both_printed = Alt und neu werden gedruckt.
review-gap_printed = Wird gedruckt. Ohne sie { $counted } von { $of } min.
review-outside_printed = Wird gedruckt. Minuten außerhalb zählen nicht.
review-said = { $who } hat um { $at } zugelassen: „{ $why }“
review-never = Hier gibt es keine Ausnahme.
review-decide = Über { $which } entscheiden
review-accept_one = { $n } zulassen
review-accept_one_note = durch den Polier, mit der Begründung
review-reject = Oder ablehnen
review-reject_why = Was daran nicht stimmt
review-reject_act = Diesen Versuch ablehnen
review-reject_note = der Kurzliner bleibt als abgelehnt im Protokoll
review-back = Zurück
review-to_verification = Zurück zur Kontrolle
review-accept = Reparatur anerkennen
review-accept_note =
  { $n ->
    [0] durch den Polier
    [one] durch den Polier, mit 1 Abweichung
   *[other] durch den Polier, mit { $n } Abweichungen
  }
review-correct = Wert berichtigen
review-signs = Zu den Unterschriften
review-signs_note = Techniker und Polier
review-again = Was nicht nach Plan lief
review-again_note = wie durchgesehen
correct-title = Wert berichtigen
correct-reading = Ablesung { $n }
correct-gauge = Druck
correct-pipe = Rohrwand
correct-water = Wasser
correct-was = erfasst: { $n }
correct-why = Warum er falsch war
correct-kept = Alt und neu bleiben stehen.
correct-kept_text = Eine Berichtigung nennt, was sie berichtigt, den alten Wert, den neuen und die Begründung. Alles wird gedruckt.
correct-nothing = nichts wird geändert
correct-act = Berichtigung erfassen
off-attempt = Versuch { $n }.
off-accepted = Vom Polier anerkannt
off-rejected = Versuch abgelehnt
off-discarded = Kurzliner verworfen
off-left_in_pipe = Kurzliner im Rohr geblieben
off-abandoned = Versuch abgebrochen
off-correction = Berichtigung
off-at = um { $at }
off-gap = Nicht belegt
off-gap_text = { $span } der Haltezeit, { $from } – { $to }. Zählt nicht.
off-outside = Außerhalb des Bereichs
off-outside_text = { $span } der Haltezeit, { $from } – { $to }. Zählt nicht.
off-late = Nachgetragen
off-late_text =
  { $n ->
    [one] 1 Antwort
   *[other] { $n } Antworten
  } nach dem Ende der Phase.
off-which = Welche
off-clock = Uhr wurde verstellt
off-clock_text = Um { $by }, { $at }.
off-clock_restarted = Um { $by }, { $at }, während das Gerät aus war.
signs-title = Zwei unterschreiben
signs-of = { $n } von { $of }
signs-who = { $name }, { $role }
signs-hold = { $counted } von { $of } min
signs-photos = Fotos
signs-photos_n =
  { $n ->
    [0] keine
   *[other] { $n }, jedes mit seinem Hash
  }
signs-means = Wer unterschreibt, hat { $n ->
    [0] dieses Protokoll
    [one] diesen einen Punkt
   *[other] diese { $n } Punkte
  } gelesen und steht dafür ein. Jede spätere Änderung macht die Unterschrift ungültig. Die Abnahme durch den Auftraggeber ist ein eigener Vorgang.
signed-title = Was unterschrieben wird
signed-departures = Abweichungen
signed-no_departure = Keine.
signed-all = Und alles andere im Protokoll: { $n } Einträge, jeder mit dem vorigen verkettet.
sign-next = Als Nächstes unterschreibt: { $role }.
sign-next_text = Jeder unterschreibt mit eigenem Namen. Zuerst auswählen.
sign-honest = Was ein gezeichneter Strich beweist:
sign-honest_text = nichts darüber, wer ihn gezeichnet hat. Nach dem Ausstellen signiert Ihr Schlüssel das PDF. Ohne Schlüssel fällt eine Änderung nicht auf.
sign-pick = Auswählen: { $role }
sign-now = { $name } ist jetzt ausgewählt
sign-to_certificate = Zum Nachweis
sign-issued = Der Nachweis ist ausgestellt. Es wird nichts mehr unterschrieben.
sign-not_yet = Unterschrieben wird, nachdem der Polier die Reparatur anerkannt, abgelehnt oder geschlossen hat.
sign-back = Zurück zur Reparatur
sign-back_note = was dort als Nächstes kommt
certificate-none = Noch nicht ausgestellt
certificate-issued = Ausgestellt
certificate-pdf_note = PDF, zum Drucken und Archivieren
certificate-means = Vom Polier anerkannt.
certificate-means_text = Die Abnahme durch den Auftraggeber ist ein eigener Vorgang. Das Protokoll neben dem PDF aufbewahren: Jeder kann es prüfen.
certificate-not_mended = Der Schaden ist nicht behoben.
certificate-not_mended_text = Das Protokoll sagt, was versucht wurde und warum es endete. Neben dem PDF aufbewahren: Jeder kann es prüfen.
certificate-rehearsal = Eine Übung.
certificate-rehearsal_text = Sie beweist nichts über ein Rohr. Getrennt von Nachweisen ablegen.
done-sign = Unterschreiben
done-issued = Nachweis
ending-rejected = Protokoll: abgelehnt
ending-unrepaired = Protokoll: nicht behoben
ending-null = Nachweis
done-reason = Warum kein Kurzliner
done-signed = { $at }, gezeichnet, Identität nicht geprüft
done-signed_pin = { $at }, gezeichnet, mit PIN
done-not_signed = hat nicht unterschrieben
done-draw = { $role }: hier unterschreiben
done-as = als { $name }, { $role }
done-pad = Feld für die gezeichnete Unterschrift
done-again = Neu zeichnen
done-sign_act = Unterschreiben
done-issue = Nachweis ausstellen
done-issue_note = gibt ihm seine Nummer
done-issue_record = Protokoll ausstellen
done-pdf = Nachweis speichern
done-pdf_record = Protokoll als PDF speichern
done-record = Protokoll speichern
done-record_note = jeder Eintrag mit seinem Hash, für jeden prüfbar
done-today = Zurück zu „Heute“
statement-technician = Ich habe diese Reparatur ausgeführt, sie so erfasst, wie sie ablief, und die mit H bezeichneten Werte abgelesen.
statement-foreman_rejected = Ich habe dieses Protokoll durchgesehen. Ich erkenne diese Reparatur nicht an.
statement-foreman_unrepaired = Ich habe dieses Protokoll durchgesehen. Der Schaden ist nicht behoben.
statement-foreman = Ich habe dieses Protokoll durchgesehen, stehe für die genannten Abweichungen ein und stelle diesen Nachweis für den Auftragnehmer aus.
check-stays = nichts verlässt dieses Gerät
check-file = Nachweis oder Protokoll
check-other = Anderer Nachweis oder anderes Protokoll
check-what = Der Nachweis als PDF oder das daneben gespeicherte Protokoll.
check-act = Prüfen
check-act_note = ohne Netz
check-valid = Seit dem Schreiben unverändert
check-valid_lead = {""}
check-changed = Verändert oder unvollständig
check-changed_lead = Auf diese Datei ist kein Verlass. Den Auftragnehmer um die vollständige bitten.
check-photo_lead = Die Datei selbst ist unverändert. Das Foto so verlangen, wie es aufgenommen wurde.
check-unreadable = Kein Protokoll
check-unreadable_lead = {""}
check-rehearsal = Eine unversehrte Übung, kein Nachweis
check-rehearsal_lead = Es wurde nichts repariert; sie beweist nichts über ein Rohr.
check-chain = Kette aus { $n ->
    [one] 1 Eintrag
   *[other] { $n } Einträgen
  }
check-breaks = Eintrag { $n } passt nicht
check-looked = Was geprüft wurde
looked-chain = Kette ist ganz
looked-chain_wrong = Kette ist gebrochen
looked-chain_note =
  { $n ->
    [0] ein Eintrag folgt nicht auf den vorigen, oder sein Text ist nicht der geschriebene
   *[other] { $n } Einträge, Kettenkopf { $head }
  }
looked-head = Kettenkopf gehört zum letzten Eintrag
looked-head_wrong = Am Ende fehlen Einträge
looked-head_note = mit dem Kettenkopf auf dem Nachweis vergleichen: Nur dort zeigt sich, ob das Ganze gekürzt oder neu geschrieben wurde
looked-top = Nummer und Art stimmen mit den Einträgen überein
looked-top_wrong = Kopfdaten und Einträge widersprechen sich
looked-top_note = eine Übung kann nicht als Nachweis durchgehen
looked-complete = Vollständig, mit Nachweis
looked-complete_wrong = Nicht vollständig
looked-complete_note = anerkannt und ausgestellt, oder ohne Kurzliner geschlossen
looked-signatures = Beide haben unterschrieben
looked-signatures_wrong = Eine Unterschrift fehlt
looked-signatures_note = ein Strich beweist nichts darüber, wer ihn gezeichnet hat
looked-file = Seit dem Signieren unverändert
looked-file_wrong = Verändert, oder kein Schlüssel hat signiert
looked-file_note = ein Schlüssel deckt jedes Byte ab; nach dem letzten kam nichts dazu
looked-keys = Beide Schlüssel haben signiert
looked-keys_wrong = Ein Schlüssel fehlt, ist unbekannt, widerrufen oder zur Übung gemacht
looked-keys_note = die Zeit ist die, die die Uhr des Signierenden angab
looked-pages = Die Seiten sagen, was das Protokoll darin sagt
looked-pages_wrong = Seiten und Protokoll widersprechen sich
looked-pages_note = Kettenkopf, Nummern, Rohr, Knoten, wer unterschrieb
looked-originals = Kein Originalfoto wurde verändert
looked-originals_wrong = Ein Originalfoto wurde verändert
looked-originals_note = von den vorgelegten; ein fehlendes sagt nichts
check-keys = Wer signiert hat
check-holds = Die Signatur ist gültig.
check-broken = Die Signatur ist ungültig.
check-trust_not_asked = Zum Vergleich ist hier kein Schlüssel bekannt.
check-trust_trusted = Der Schlüssel steht in der Personenliste.
check-trust_unknown = Der Schlüssel steht nicht in der Personenliste.
check-trust_rehearsal = Ein Schlüssel nur zur Übung.
check-revoked = Widerrufen ab { $at }.
check-superseded = Ersetzt durch { $number }
check-superseded_text = Den Auftragnehmer darum bitten.
seal-title = Schlüssel
seal-signed = { $at }, mit Schlüssel
seal-open = der Schlüssel hat noch nicht signiert
seal-done = Beide Schlüssel haben signiert.
seal-done_text = Ab jetzt findet jeder, der prüft, jede Änderung am PDF.
seal-rehearsal = Die Schlüssel werden für diese Übung gemacht und weggeworfen.
seal-turn = Als Nächstes kommt der Schlüssel von { $name }.
seal-turn_text = Gerät übergeben oder den Namen auswählen.
seal-no_key = { $name } hat keinen Schlüssel.
seal-no_key_text = In der Personenliste einen anlegen. Ohne ihn ist das PDF nicht gegen Änderung geschützt.
seal-act = Mit meinem Schlüssel signieren
seal-act_rehearsal = Mit Übungsschlüsseln signieren
check-says = Was darin steht
check-repair = Reparatur
check-attempt = Versuch
check-attempt_of = { $n }, { $how }
check-none = keiner
check-head = Kettenkopf
check-certificate = Nachweis
check-proves = Die Kette beweist, dass seit dem Schreiben nichts geändert wurde, solange der Kettenkopf der auf dem Nachweis ist. Sie beweist nicht, wer geschrieben hat. Vom Polier anerkannt; die Abnahme durch den Auftraggeber ist ein eigener Vorgang.
