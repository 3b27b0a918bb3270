### Was jeder Bildschirm braucht.

app-name = Mendline
app-loading = Wird geöffnet
# Twelve months from January and seven days from Sunday, short, parted by spaces (CLDR).
date-months = Jan. Feb. März Apr. Mai Juni Juli Aug. Sept. Okt. Nov. Dez.
date-weekdays = So. Mo. Di. Mi. Do. Fr. Sa.
date-day = { $day }. { $month }
rehearsal-word = ÜBUNG
rehearsal-not_a_record = kein Nachweis
stages-label = Phase { $n } von { $of }: { $name }
stage-planned = Geplant
stage-staging = Vorbereitung
stage-test_push = Probefahrt
stage-sleeve_change = Folienwechsel
stage-wet_out = Tränkung
stage-placement = Positionieren
stage-inflation = Aufblasen
stage-hold = Haltezeit
stage-deflation = Ablassen
stage-verification = Kontrolle
stage-complete = Fertig
deck-stop = Stopp
deck-photo = Foto
deck-note = Notiz
deck-ago = vor { $n } min
hold-keep = Weiter drücken
hold-holding = bis der Balken voll ist
hold-press_again = { $label }: Zum Bestätigen innerhalb von 5 Sekunden noch einmal drücken.
hold-not_confirmed = Nicht bestätigt.
hold-let_go = Zu früh losgelassen. 2 Sekunden drücken.
hold-of = von { $n } min
hold-tape =
  { $counted } von { $needed } Minuten gezählt{ $pending ->
    [0] {""}
   *[other] , { $pending } weitere mit der nächsten Ablesung
  }
cure-full = ausgehärtet
cure-from = ab
cure-caution = Vorher nicht fräsen und nicht prüfen.
entry-less = { $label } um { $step } { $unit } weniger
entry-more = { $label } um { $step } { $unit } mehr
pair-yes = Ja
pair-no = Nein
task-done = Erledigt
task-not_applicable = Entfällt
task-because = Grund
condition-met = Erfüllt:
condition-open = Offen:
condition-waived = Entfällt:
condition-closed = Gesperrt:
condition-failed = Nicht erfüllt:
condition-rehearsal = Übung:
clock-left = noch { $span }
clock-gone = { $span } vergangen
budget-label = { $needed } nötig von { $total } Verarbeitungszeit
budget-ends = Verarbeitungszeit endet, { $at }
budget-short = Es fehlen von { $total }
budget-left = Übrig von { $total }
others-label = Andere Uhren
others-what = Ablesung
others-mixed = gemischt,
others-more = { $n } weitere
others-late = { $by } überfällig
light-label = Licht
light-day = Tag
light-sun = Sonne
light-night = Nacht
problems-title =
  { $n ->
    [one] 1 Punkt zu berichtigen
   *[other] { $n } Punkte zu berichtigen
  }
problem-number = { $label }: bitte eine Zahl.
problem-pick = { $label } Bitte auswählen.
problem-below = { $label }: mindestens { $min }.
problem-above = { $label }: höchstens { $max }.
refusal-title = Noch nicht
refusal-way_out = Abhilfe:
banner-label = Vor allem anderen
dialog-close = Schließen
unit-hour = Uhr
line-read_here = hier ablesen
line-hose = Schlauch
line-rope = Seil
detail-patch = Kurzliner { $n }
detail-packer = Packer { $n }
detail-defect = Schaden { $n }
detail-cover_left = Überdeckung { $n }
detail-cover_right = { $n } Überdeckung
cover-asked = verlangt { $n }
face-downstream = Blick in Fließrichtung
face-upstream = Blick gegen die Fließrichtung
face-crown = Scheitel
face-invert = Sohle
hold-upper = { $bar } obere Grenze
hold-lower = { $bar } untere Grenze
hold-gap = { $n } min
hold-release = Ablassen
edge-upstream = Rand oberhalb
edge-downstream = Rand unterhalb
place-table = Auf dem Tisch
place-in_pipe = Im Rohr, nicht aufgeweitet
place-at_wall = An der Rohrwand
place-stuck = Steckt fest
chain-head = Kettenkopf
today-title = Heute
broken-title = Dieser Bildschirm lässt sich nicht zeigen
broken-text = Ein Fehler des Programms. Das Erfasste ist sicher, die anderen Bildschirme sind da.
broken-away = Er ist nicht angekommen. Das Erfasste und das Eingetippte sind sicher.
broken-again = Noch einmal versuchen
lost-title = Hier ist nichts
lost-text = Hinter { $path } steht kein Bildschirm.
lost-back = Zurück zu „Heute“
unreachable-title = Das Protokoll antwortet nicht
unreachable-text = Nichts Getipptes geht verloren. Alle paar Sekunden wird neu gefragt.
recorded = Erfasst.
saved = Gespeichert: { $name }
saved-not = Nicht gespeichert.
saved-download = Heruntergeladen: { $name }
problem-file = Zuerst eine Datei auswählen.
step-value = { $value } { $unit }
hold-started = Wird gedrückt.
error-title = Das hat nicht geklappt
error-kept = Das Protokoll ist wie vorher.
waiting =
  { $n ->
    [one] 1 Meldung wartet auf das Erfassen. Sie bleibt auf diesem Gerät.
   *[other] { $n } Meldungen warten auf das Erfassen. Sie bleiben auf diesem Gerät.
  }
