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
apart-kept = Nichts geht verloren: Was nicht gewählt wird, bleibt im Protokoll und wird als zurückgestellt gedruckt.
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
