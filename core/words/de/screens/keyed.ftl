### Was auf Papier steht und später eingetippt wird.

keyed-title = Vom Papier eintippen
keyed-about = was von Hand geschrieben wurde, mit den Zeiten auf dem Blatt
keyed-lead = Tag und Uhrzeit vom Blatt einstellen. Dann wie immer durch die Bildschirme gehen. Jeder Eintrag trägt „vom Papier“ und behält beide Zeiten: wann es geschah und wann Sie es eingetippt haben.
keyed-rule = Zugunsten der Kolonne.
keyed-rule_text = Solldruck und Ablesungen der Haltezeit vom Papier zählen nur, wenn der Polier dafür einsteht. Das wird gedruckt.
keyed-day = Tag auf dem Blatt
keyed-time = Uhrzeit auf dem Blatt
keyed-on = Vom Papier eintippen?
keyed-act = Zur Phase
keyed-act_on = Einträge bekommen die Zeit auf dem Blatt
keyed-act_off = Einträge bekommen die Uhrzeit von jetzt
keyed-strip = Vom Papier
keyed-wants = Erst Tag und Uhrzeit einstellen. Bis dahin bekommen Einträge die Uhrzeit von jetzt.
keyed-end = Eintippen beenden
keyed-mark = vom Papier
off-paper = Vom Papier
off-paper_text =
  { $n ->
    [one] 1 Eintrag wurde
   *[other] { $n } Einträge wurden
  } später eingetippt.
off-paper_entry = { $what } { $at }, eingetippt { $keyed }
