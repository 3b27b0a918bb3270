### Der Nachweis: die erste Seite, und was jede Seite trägt.

## derive/answers.rs

cert-answers-accepted = ANERKANNT
cert-answers-rejected = ABGELEHNT
cert-answers-rehearsal = ÜBUNG
cert-answers-unrepaired = NICHT REPARIERT
cert-answers-by_the_foreman = durch den Polier
cert-answers-practice_patch_accepted = Übungs-Kurzliner anerkannt
cert-answers-practice_patch_rejected = Übungs-Kurzliner abgelehnt
cert-answers-practice_patch_left_in_the = Übungs-Kurzliner im Rohr geblieben
cert-answers-closed_without_a_practice_patch = ohne Übungs-Kurzliner geschlossen
cert-answers-no_sewer_was_repaired = kein Kanal wurde repariert; { $how }
cert-answers-closed_by_the_foreman_a = vom Polier geschlossen, ein Kurzliner blieb im Rohr
cert-answers-a_patch_was_left_in = ein Kurzliner blieb im Rohr, nicht geschlossen
cert-answers-closed_by_the_foreman_without = vom Polier ohne Kurzliner geschlossen
cert-answers-nothing_waived = Keine Ausnahme zugelassen
cert-answers-off_the_rules = Nicht nach Regel
cert-answers-why_rejected = Warum abgelehnt
cert-answers-why_unrepaired = Warum nicht repariert
cert-answers-what_this_is = Was dies ist
cert-answers-practice_it_can_never_become = Übung. Daraus kann nie ein Nachweis werden.
cert-answers-the_record_is_marked_as = Das Protokoll ist vom ersten Eintrag an als Übung gekennzeichnet und wird getrennt nummeriert. { $also }
cert-answers-no_reason_was_written = kein Grund wurde aufgeschrieben
cert-answers-of_the_hold_not_witnessed = { $time } der Haltezeit nicht belegt
cert-answers-nothing_else_on_the_record = Sonst nichts im Protokoll
cert-answers-also_on_the_record = Außerdem im Protokoll: { $list }
cert-answers-pipe_without_a_key_of = Rohr ohne Kennung des Auftraggebers
cert-answers-of_unknown_material = aus unbekanntem Werkstoff
cert-answers-what_it_carries_is_not = was es ableitet, ist nicht erfasst
cert-answers-which_pipe = Welches Rohr
cert-answers-between_node_centres_flows_to = { $pipe }, { $carries }, { $length } zwischen den Knotenmitten, fließt nach { $to }
cert-answers-street_not_recorded = Straße nicht erfasst
cert-answers-patch_centre = Mitte des Kurzliners
cert-answers-defect_centre = Mitte des Schadens
cert-answers-from_upstream_from_downstream = { $what } { $at } ab { $upstream } (oberhalb) = { $rest } ab { $downstream } (unterhalb)
cert-answers-where = Wo
cert-answers-what_was_mended = Was repariert wurde
cert-answers-what_was_tried = Was versucht wurde
cert-answers-what_was_practised = Was geübt wurde
cert-answers-what_is_not_mended = Was offen bleibt
cert-answers-defect = Schaden { $extent }
cert-answers-patch_long_all_round_both = Kurzliner { $length } lang, rundum, { $lies }, beides ab { $upstream }
cert-answers-from = ab { $upstream }; { $why }
cert-answers-also = auch { $what }, { $around }, { $at }
cert-answers-looking_downstream = { $around }, Blick in Fließrichtung
cert-answers-clock_position_not_recorded = Uhrzeitlage nicht erfasst
cert-answers-each_by_pin = Jeder mit PIN.
cert-answers-not_authenticated = Identität nicht geprüft.
cert-answers-who_signs = Wer unterschreibt
cert-answers-practice_signatures_only = Nur Übungsunterschriften
cert-answers-with_technician_for = Mit { $name }, Techniker, für { $firm }
cert-answers-no_technician_has_signed_for = Kein Techniker hat unterschrieben, für { $firm }
cert-answers-the_owner_accepts_separately = { $technician }. { $known } Der Auftraggeber nimmt gesondert ab.

## derive/attempts.rs

cert-attempts-not_begun = nicht begonnen
cert-attempts-not_ended = nicht beendet
cert-attempts-the_parts_were_never_joined = Kein Mischbeginn.
cert-attempts-working_time_over = , Verarbeitungszeit abgelaufen { $at }
cert-attempts-target_pressure = , Solldruck { $at }
cert-attempts-parts_joined = Mischbeginn { $at }{ $over }{ $target }.
cert-attempts-not_recorded = nicht erfasst
cert-attempts-of_resin_as_planned = { $mass } Harz wie geplant
cert-attempts-of_resin = { $mass } Harz
cert-attempts-patch_lot_and_lots_thrown = Kurzliner (Charge { $patch }) und { $resin } (Chargen { $a }, { $b }) verworfen.
cert-attempts-the_resin = das Harz
cert-attempts-on_the_table_not_yet = Auf dem Tisch, noch nicht im Rohr
cert-attempts-in_the_pipe_not_expanded = Im Rohr, nicht aufgeweitet
cert-attempts-touching_the_wall = An der Rohrwand
cert-attempts-stuck = Steckt fest
cert-attempts-not_asked_the_parts_were = Nicht gefragt: kein Mischbeginn
cert-attempts-nobody_said = Niemand hat es gesagt
cert-attempts-not_ended_2 = Nicht beendet
cert-attempts-attempt = {" "}(Versuch { $n })

## derive/cautions.rs

cert-cautions-not_a_design = Keine Bemessung
cert-cautions-wall_thickness_and_pressure_figures = Zahlen zu Wanddicke und Druck sind Prüfungen für einen zugelassenen Ingenieur, keine statische Bemessung.
cert-cautions-not_a_product_test = Keine Produktprüfung
cert-cautions-it_does_not_say_that = Er sagt nicht, dass Harz, Kurzliner oder Packer für dieses Rohr geeignet sind. Das sagen Datenblatt und Hersteller.
cert-cautions-not_an_acceptance = Keine Abnahme
cert-cautions-the_owner_accepts_by_a = Der Auftraggeber nimmt gesondert ab. Ein Ergebnis hier ist das des Auftragnehmers, an den hier gedruckten Grenzen gemessen.
cert-cautions-hand_readings = Ablesungen von Hand
cert-cautions-are_statements_of_the_person = sind Aussagen der genannten Person. Minuten, die niemand gesehen hat, sind nicht gezählt und werden gezeigt.
cert-cautions-before_going_near = Vor dem Herangehen
cert-cautions-confined_space_traffic_compressed_air = Umschlossene Räume, Verkehr, Druckluft, frisches oder heißes Harz, Styrol und Abwasser können töten. Erlaubnisschein, Datenblatt, Sicherheitsdatenblatt, örtliche Vorschriften und zugelassene Fachleute entscheiden.
cert-cautions-to_check_this_file = Diese Datei prüfen
cert-cautions-the_record = Das Protokoll
cert-cautions-to_keep_it = Aufbewahren
cert-cautions-each_who_signed_opened_a = Wer unterschrieben hat, öffnete einen eigenen Schlüssel mit einer PIN. Wessen Schlüssel es ist, erfährt der Auftraggeber vom Auftragnehmer, nicht von dieser Seite.
cert-cautions-whose_key = Wessen Schlüssel
cert-cautions-names_were_picked_from_a = Die Namen wurden aus einer Liste gewählt; keine PIN und kein Schlüssel sagt, wer das Gerät hielt. Eine gezeichnete Linie allein beweist nichts.
cert-cautions-not_authenticated = Person nicht geprüft
cert-cautions-not_a_repair = Keine Reparatur
cert-cautions-nothing_was_mended_the_pipe = Nichts wurde repariert. Das Rohr ist ein Übungsrohr.
cert-cautions-not_a_length = Keine ganze Haltung
cert-cautions-of_was_mended_the_rest = { $mended } von { $all } wurden repariert. Der Rest der Haltung ist wie vorher.
cert-cautions-a_patch_lies_in_the = Ein Kurzliner liegt im Rohr; der Schaden ist nicht behoben.
cert-cautions-the_defect_is_not_mended = Der Schaden ist nicht behoben: { $why }.
cert-cautions-mendline_verify_file_answers_3 = „mendline verify DATEI“ antwortet 3 für eine einwandfreie Übung, von ihren Schlüsseln signiert: kein Nachweis.
cert-cautions-mendline_verify_file_tells_whether = „mendline verify DATEI“ sagt, ob ein Schlüssel sie signiert hat und ob sie verändert wurde, ohne Netz.
cert-cautions-it_may_be_kept_for = Sie darf zur Schulung aufbewahrt werden, getrennt von den Protokollen der Reparaturen.
cert-cautions-keep_the_pdf_whole_and = Das PDF ganz aufbewahren, und daneben die Originalfotos, die der Auftragnehmer übergibt. Ein Ausdruck ist eine Kopie; sein Kettenkopf nennt noch das Protokoll.
cert-cautions-lies_whole_inside_this_file = liegt als record.json ganz in dieser Datei: jeder Eintrag so, wie sein Hash gebildet wurde. Jedes PDF-Programm speichert es.
cert-cautions-is_not_inside_this_file = liegt nicht in dieser Datei: Vertrag { $contract } lehnt Anlagen ab. Der Auftragnehmer übergibt es gesondert.

## derive/departures.rs

cert-departures-entered_by = , eingegeben von { $name }
cert-departures-waived_by_foreman = Zugelassen von { $foreman }, Polier, { $at }{ $by }.
cert-departures-contract = Vertrag { $clause }

## derive/identity.rs

cert-identity-no_key = kein Schlüssel
cert-identity-owner = Auftraggeber
cert-identity-contract = Vertrag
cert-identity-contractor = Auftragnehmer
cert-identity-repair = Reparatur
cert-identity-inspection = Inspektion
cert-identity-working_time = Verarb.-Zeit
cert-identity-position = Position
cert-identity-measured_id = Gemess. ID
cert-identity-video = Video
cert-identity-hold = Haltezeit
cert-identity-full_cure = Aushärtung
cert-identity-without_a_number = ohne Nummer
cert-identity-no_attempt = kein Versuch
cert-identity-attempt_of = Versuch { $n } von { $count }
cert-identity-none_read_in_the_defect = keine eingelesen: der Schaden wurde von Hand eingegeben
cert-identity-without_a_date = ohne Datum
cert-identity-used_of = { $used } von { $allowed } genutzt
cert-identity-target_pressure_never_reached_allowed = Solldruck nie erreicht; { $allowed } zulässig
cert-identity-none_target_pressure_never_reached = keine: Solldruck nie erreicht
cert-identity-required_page = { $counted }, { $required } verlangt (Seite @<{ $page }>)
cert-identity-nominal_dn = { $why }; Nennweite DN { $dn }
cert-identity-to = , bis { $at }
cert-identity-not_said_how = nicht gesagt, wie
cert-identity-after_not_recorded = nachher: nicht erfasst
cert-identity-after_confirmed = nachher: bestätigt { $at }
cert-identity-before = vorher { $before }; { $after }
cert-identity-its_clock_never_ran = ihre Uhr lief nie
cert-identity-lateral_cut = Anschluss gefräst { $at }
cert-identity-tested = geprüft { $at }
cert-identity-flow_restored = Abfluss wieder frei { $at }
cert-identity-no_entry = kein Eintrag
cert-identity-no_position = keine Position: { $why }
cert-identity-no_position_the_source_gave = keine Position: die Quelle gab 0, 0 an, das ist keine
cert-identity-the_source_gave_0_0 = die Quelle gab 0, 0 an, das ist keine
cert-identity-the_device_was_not_asked = das Gerät wurde nicht gefragt
cert-identity-the_device_may_not_tell = das Gerät darf sie nicht nennen
cert-identity-the_device_could_not_find = das Gerät konnte sie nicht finden
cert-identity-the_device_had_not_found = das Gerät hatte sie noch nicht gefunden
cert-identity-accuracy_not_stated = Genauigkeit nicht angegeben
cert-identity-receiver = Empfänger
cert-identity-browser = Browser
cert-identity-typed = eingetippt
cert-identity-old_device_at = { $radius }, { $age } alt, { $source }, Gerät { $device } um { $at }

## derive/notes.rs

cert-notes-written = Geschrieben
cert-notes-devices_had_gone_on_apart = { $of } Geräte hatten getrennt weitergemacht. { $by } wählte um { $at }, was gilt: { $reason } Das Protokoll behält beides.
cert-notes-chosen = Gewählt
cert-notes-this_is_patch_of_a = Dies ist Kurzliner { $this } einer Reihe von { $all }: Der Schaden ist nur von allen zusammen überdeckt, jeder eine eigene Reparatur.
cert-notes-series = Reihe
cert-notes-excursion = Druckabweichung
cert-notes-a_note_the_attempt_is = { $what } { $net }: ein Vermerk, der Versuch ist dadurch nicht fraglich. Nicht gezählt (Seite @<{ $page }>).
cert-notes-still_pressed_to_the_wall = Weiter an die Wand gedrückt
cert-notes-net_stayed_at_or_above = Netto { $net } blieb auf oder über dem kleinsten Nettodruck des Datenblatts, { $least_words }
cert-notes-net_fell_below_the_sheets = Netto { $net } fiel unter den kleinsten Nettodruck des Datenblatts, { $least_words }, aber erst nach Erreichen der verlangten Haltezeit
cert-notes-the_whole_gap_is_lost = die ganze Lücke zählt nicht
cert-notes-what_is_beyond_interval_and = was über Abstand und Nachfrist hinausgeht, zählt nicht
cert-notes-nobody_wrote_why = niemand schrieb warum
cert-notes-of_the_hold_to_gap = { $time } der Haltezeit, { $from } bis { $to }: { $why }. Lückenregel: { $lost } ({ $source }; Seite @<{ $page }>).
cert-notes-not_witnessed = Nicht belegt
cert-notes-nobody_said_whether_anything_of = Niemand sagte, ob etwas davon im Rohr ist.
cert-notes-in_the_pipe = Im Rohr: „{ $what }“, { $by }.
cert-notes-page = { $outcome } { $at }: { $why }. { $pipe } (Seite @<{ $page }>.)
cert-notes-attempt = Versuch { $n }
cert-notes-back = zurück
cert-notes-forward = vor
cert-notes-the_device_was_started_anew = Das Gerät wurde dazwischen neu gestartet, darum sagt nur seine Wanduhr, wie lange; von der Haltezeit über den Neustart hinweg zählt nichts.
cert-notes-the_clock_since_the_start = Die Uhr seit dem Start des Geräts lief weiter: Sie misst Phasen und Haltezeit, und keine Minute ging verloren oder kam hinzu.
cert-notes-clock = Uhr
cert-notes-the_clock_of_device_was = Die Uhr von Gerät { $device } wurde um { $by } { $way }gestellt, bemerkt um { $at }. { $then }
cert-notes-correction = Berichtigung
cert-notes-corrected_to_page = { $label }: { $old } berichtigt in { $new } (Seite @<{ $page }>).
cert-notes-filled_in_late = Nachgetragen
cert-notes-after_their_stage = Nach ihrer Phase: { $filled }.
cert-notes-keyed_in = { $what } { $happened } (eingegeben { $tapped })
cert-notes-from_paper = Vom Papier
cert-notes-written_on_paper_and_keyed = Auf Papier geschrieben und eingegeben von { $by }, beide Zeiten sind bewahrt: { $text }.
cert-notes-a_reading = eine Ablesung
cert-notes-tapped_later_by_both_times = { $what } { $happened }, { $late } später getippt von { $by }: beide Zeiten sind bewahrt.
cert-notes-tapped_late = Spät getippt
cert-notes-test_push_begun = Probefahrt begonnen
cert-notes-packer_at_the_mark_in = Packer an der Marke in der Probefahrt
cert-notes-packer_back_from_the_test = Packer zurück von der Probefahrt
cert-notes-parts_joined = Mischbeginn
cert-notes-insertion_begun = Einfahren begonnen
cert-notes-packer_at_the_mark = Packer an der Marke
cert-notes-air_line_joined = Luftschlauch angeschlossen
cert-notes-target_pressure_reached = Solldruck erreicht
cert-notes-at = { $what } um { $at }
cert-notes-answered_again = Neu beantwortet
cert-notes-before_last_by = { $label }: vorher, { $earlier }; zuletzt von { $now }.
cert-notes-the_foremans_decision = {" "}Entscheidung des Poliers: { $label }.
cert-notes-reported = Gemeldet
cert-notes-nobody_recorded_where_round_the = Niemand hat erfasst, wo am Umfang der Schaden liegt; er ist rundum gezeichnet.
cert-notes-clock_position = Uhrzeitlage

## derive/reasons.rs

cert-reasons-no_sewer_was_repaired_and = Kein Kanal wurde repariert, kein Auftraggeber ist betroffen. Zeiten, Ablesungen und Fotos auf diesen Seiten stammen aus einer Übung.
cert-reasons-not_final = Nicht endgültig
cert-reasons-a_rehearsal_cant_be_turned = Aus einer Übung kann kein Nachweis werden. Für eine Reparatur wird ein neues Protokoll begonnen.
cert-reasons-not_mended = Nicht behoben
cert-reasons-the_defect_is_not_mended = Der Schaden ist nicht behoben. Niemand darf dieses Protokoll für einen Nachweis nehmen.
cert-reasons-voided_by = {" "}Zurückgezogen von { $name }, { $at }.
cert-reasons-supersedes = Ersetzt
cert-reasons-this_paper_takes_the_place = Dieses Papier tritt an die Stelle von { $number } vom { $day }, das nicht mehr gilt. { $why }{ $by }
cert-reasons-doubtful = Fraglich
cert-reasons-net_fell_below_the_sheets = { $what } Netto { $net } fiel unter den kleinsten Nettodruck des Datenblatts, { $least }, bevor die Haltezeit erreicht war: Der Versuch ist fraglich (Seite @<{ $page }>).
cert-reasons-recorded_by_the_attempt_is = { $says } Erfasst von { $by }: Der Versuch ist fraglich.
cert-reasons-the_foremans_decision = { $what } Entscheidung des Poliers: { $label }.
cert-reasons-below = unter
cert-reasons-above = über
cert-reasons-for_and_perhaps_longer = für { $lasted } und vielleicht länger
cert-reasons-for_at_most = für höchstens { $lasted }
cert-reasons-at_the_window_resin_old = { $pressure } um { $at }, { $depth } { $side } dem Bereich, { $lasted }, Harz { $age } alt: { $why }
cert-reasons-attempt = Versuch { $n }, { $by }.
cert-reasons-in_the_pipe = Im Rohr: „{ $what }“.
cert-reasons-accepted = Anerkannt
cert-reasons-rejected = Abgelehnt
cert-reasons-discarded = Verworfen
cert-reasons-left_in_pipe = Im Rohr geblieben
cert-reasons-abandoned = Abgebrochen
cert-reasons-closed = Geschlossen
cert-reasons-next = Weiter
cert-reasons-the_repair_is_not_closed = Die Reparatur ist nicht geschlossen: Versuch { $n }, oder unrepariert schließen mit Grund.

## derive/signatures.rs

cert-signatures-nobody_has_put_a_name = niemand steht mit Namen für dieses Protokoll ein
cert-signatures-practice_signature_drawn_proves_nothing = Übungsunterschrift, gezeichnet: beweist nichts über ein Rohr.
cert-signatures-picked_as = { $name }, gewählt als { $tapped }
cert-signatures-device = Gerät { $device }

## layout/answers.rs

cert-answers-result = Ergebnis
cert-answers-a_tick_in_a_black = Ein Haken in schwarzer Scheibe: anerkannt
cert-answers-a_cross_in_a_white = Ein Kreuz in weißem Quadrat: abgelehnt
cert-answers-an_r_in_a_lozenge = Ein R in einer Raute: Übung
cert-answers-a_bar_in_a_white = Ein Balken in weißem Quadrat: unrepariert geschlossen

## layout/departures.rs

cert-departures-more_notes_each_in_full = Weitere Vermerke, jeder vollständig: Seite @<{ $page }>.
cert-departures-page = Seite @<{ $page }>
cert-departures-each_with_reason_name_and = Jede mit Grund, Name und Zeit: { $page }.
cert-departures-each_in_full = { $names }. Jede vollständig: { $page }.
cert-departures-and_more = und { $count } weitere
cert-departures-each_in_full_2 = Jede vollständig: { $page }.

## layout/head.rs

cert-head-qr_code_with_what_the = QR-Code mit dem, was die Seite sagt: Nummer, Reparatur, Ergebnis, Datum, Einträge und Kettenkopf des Protokolls
cert-head-head_of_the_practice = Kettenkopf der Übung
cert-head-entries_each_marked_as_a = { $digits }{"\u000A"}{ $entries }, jeder als Übung gekennzeichnet. Kein Code zum Scannen: Dieses Protokoll soll niemand nachschlagen.
cert-head-what_it_shows = Was sie zeigt
cert-head-that_nothing_changed_since_these = dass sich nichts geändert hat, seit diese Übungsschlüssel signierten, { $when }. Die Schlüssel wurden für diese Übung gemacht und weggeworfen; „mendline verify“ sagt: eine einwandfreie Übung, kein Nachweis.
cert-head-nothing_no_key_signed_it = nichts: Kein Schlüssel hat signiert, und eine gezeichnete Linie beweist nichts.
cert-head-what_it_is_not = Was sie nicht ist
cert-head-a_record_of_a_repair = der Nachweis einer Reparatur. Sie darf zur Schulung aufbewahrt werden. Wer sie als Beleg einer Reparatur vorzeigt, hat unrecht.
cert-head-head_of_the_record = Kettenkopf
cert-head-the_seal_proves = Das Siegel beweist
cert-head-no_change_to_this_file = keine Änderung an dieser Datei seit dem Versiegeln, { $when }, mit Schlüssel { $key } …
cert-head-it_does_not_prove = Es beweist nicht
cert-head-who_held_the_phone_or = wer das Telefon hielt oder dass eine Ablesung von Hand stimmt. Eine gezeichnete Linie allein beweist nichts. Wessen Schlüssel es ist, erfährt der Auftraggeber vom Auftragnehmer, nicht von dieser Seite.
cert-head-not_sealed_by_a_key = Nicht versiegelt
cert-head-a_drawn_line_proves_nothing = Eine gezeichnete Linie beweist nichts, und diese Datei lässt sich spurlos ändern.
cert-head-what_can_be_checked = Was prüfbar ist
cert-head-the_head_above_against_the = der Kettenkopf oben gegen das Protokoll: Er nennt jeden Eintrag, aber nicht diese Seite.

## layout/running.rs

cert-running-page_of = Seite { $page } von { $pages }

## layout/signatures.rs

cert-signatures-not_signed = { $role }, nicht unterschrieben: { $why }
cert-signatures-pin = , PIN
cert-signatures-no_line_drawn = , keine Linie gezeichnet
cert-signatures-line_drawn_by = Linie gezeichnet von { $name }
cert-signatures-practice = ÜBUNG

## layout/wording.rs

cert-wording-sectional_repair_certificate = Nachweis einer partiellen Reparatur
cert-wording-repair_record_rejected = Reparaturprotokoll – abgelehnt
cert-wording-rehearsal_record_not_a_certificate = Übungsprotokoll – kein Nachweis
cert-wording-repair_record_closed_unrepaired = Reparaturprotokoll – unrepariert geschlossen
cert-wording-departures_and_what_else_went = Abweichungen und was sonst nicht nach Regel war
cert-wording-why_rejected_and_what_went = Warum abgelehnt, und was nicht nach Regel war
cert-wording-what_was_practised_and_what = Was geübt wurde und was es nicht zeigt
cert-wording-why_closed_unrepaired_and_what = Warum unrepariert geschlossen, und was nicht nach Regel war
cert-wording-practice_signatures = Übungsunterschriften
cert-wording-signatures = Unterschriften
cert-wording-cautions_and_what_this_certificate = Hinweise, und was dieser Nachweis nicht ist
cert-wording-cautions_and_what_this_record = Hinweise, und was dieses Protokoll nicht ist
cert-wording-end_of_the_certificate = Ende des Nachweises
cert-wording-end_of_the_record = Ende des Protokolls
cert-wording-rehearsal_practice_not_a_certificate = ÜBUNG. Kein Nachweis.
cert-wording-the_sealed_pdf_is_the = Das versiegelte PDF ist das Original; ein Ausdruck ist eine Kopie.
cert-wording-not_sealed_by_a_key = Nicht von einem Schlüssel versiegelt: siehe Seite 1.

## More

cert-count-departures = { $count ->
    [one] { $count } Abweichung
   *[other] { $count } Abweichungen
  }
cert-count-doubts = { $count ->
    [one] { $count } Zweifel
   *[other] { $count } Zweifel
  }
cert-count-attempts = { $count ->
    [one] { $count } weiterer Versuch
   *[other] { $count } weitere Versuche
  }
cert-count-corrections = { $count ->
    [one] { $count } Berichtigung
   *[other] { $count } Berichtigungen
  }
cert-count-excursions = { $count ->
    [one] { $count } Druckabweichung
   *[other] { $count } Druckabweichungen
  }
cert-count-clock_changes = { $count ->
    [one] { $count } Uhränderung
   *[other] { $count } Uhränderungen
  }
cert-answers-with_departures = mit { $count ->
    [one] { $count } Abweichung
   *[other] { $count } Abweichungen
  }
cert-answers-outside = durch den Polier, { $count ->
    [one] { $count } Befund
   *[other] { $count } Befunde
  } außerhalb der Grenzen
cert-signatures-technician = Techniker
cert-signatures-foreman = Polier
cert-signatures-no_technician = Kein Techniker
cert-signatures-no_foreman = Kein Polier
cert-signatures-no_technician_signed = kein Techniker hat unterschrieben
cert-signatures-no_foreman_signed = kein Polier hat unterschrieben
cert-departures-value_not_kept = (Wert nicht bewahrt)
cert-departures-articles = der die das
cert-identity-north = N
cert-identity-south = S
cert-identity-east = O
cert-identity-west = W
cert-head-entries = { $entries } Einträge
cert-head-chain = { $digits }{"\u000A"}{ $entries }, SHA-256, jeder Eintrag hält den vorigen.
cert-head-chain_and_code = { $digits }{"\u000A"}{ $entries }, SHA-256, jeder Eintrag hält den vorigen. Der Code enthält denselben Kettenkopf.
cert-running-record_head = Kettenkopf { $hash }   { $made }
cert-heading-stages = Die neun Phasen
cert-heading-working_time = Verarbeitungszeit
cert-heading-hold = Die Haltezeit
cert-heading-materials = Material, Werkzeug und Chargen
cert-heading-sheets = Werte aus den Datenblättern und dem Vertrag
cert-heading-checks = Berechnete Prüfungen
cert-heading-findings = Befunde der Kontrolle
cert-heading-departures = Abweichungen im Einzelnen
cert-heading-notes = Vermerke im Einzelnen
cert-heading-attempts = Weitere Versuche
cert-heading-corrections = Berichtigungen
cert-heading-photos = Fotos
cert-form-technician = Unterschrift des Technikers
cert-form-foreman = Unterschrift des Poliers
cert-attachment-description = Das Protokoll dieser Reparatur: jeder Eintrag seiner Kette, für Programme
cert-running-made_by = { $program }, offline, Gerät { $device }
cert-sealing-key = Schlüssel { $key }
cert-signatures-quoted = „{ $statement }“
