### Faults and refused files, said again for a reader of another language.

## Faults of the journal and its disk
again-fault-the_disk_is_full_nothing_of = Der Speicher ist voll. Nichts davon wurde geschrieben; was vorher erfasst wurde, ist sicher. Platz schaffen, dann nochmals versuchen.
again-fault-another_program_is_writing_to_this = Ein anderes Programm schreibt gerade in diesen Ordner. Nichts davon wurde geschrieben. Gleich nochmals versuchen.
again-fault-the_journal_can_only_be_read = Das Journal kann hier nur gelesen werden. Nichts davon wurde geschrieben. Zum Erfassen den ursprünglichen Ordner nehmen.
again-fault-this_user_may_not_read_it = Dieser Benutzer darf { $path } nicht lesen. Die Datei blieb, wie sie war; ihr Inhalt ist sicher. Den Eigentümer des Ordners um Lese- und Schreibrechte bitten.
again-fault-the_last_entries_stand_in_wal = Die letzten Einträge stehen in { $path }-wal, und das ist nicht lesbar, wo nichts geschrieben werden kann. Beide Dateien blieben, wie sie waren; ihr Inhalt ist sicher. Den ganzen Ordner auf einen beschreibbaren Datenträger kopieren und die Kopie öffnen.
again-fault-is_not_a_mendline_journal_it = { $path } ist kein Mendline-Journal. Die Datei blieb, wie sie war. Einen anderen Datenordner wählen.
again-fault-the_journal_file_itself_is_damaged = Die Journaldatei selbst ist beschädigt ({ $what }). Sie blieb, wie sie war, und es wird nichts mehr hineingeschrieben. Zuerst den ganzen Datenordner kopieren, dann die noch lesbaren Protokolle exportieren, dann eine Sicherung zurückholen.
again-fault-found_while_it_was_read = beim Lesen bemerkt
again-fault-this_repair_can_be_read_and = { $damage } Diese Reparatur kann gelesen und exportiert werden, nimmt aber keine Einträge mehr an. Nichts wurde geändert oder ausgebessert.
again-fault-repair_entry_of_device = Reparatur { $repair }, Eintrag { $seq } des Geräts { $device }: { $flaw }.
again-fault-nothing_was_taken_in = { $damage } Nichts wurde übernommen.
again-fault-it_was_not_taken_in_what = { $damage } Es wurde nicht übernommen; was hier liegt, ist sicher. Das Bündel nochmals anfordern.
again-fault-this_folder_was_written_by_a = Diesen Ordner hat ein neueres Mendline geschrieben (Form { $found }; dieses kennt { $known }). Er blieb, wie er war. Dieses Programm aktualisieren.
again-fault-repair_has_moved_on_since_this = Die Reparatur { $repair } ist weitergegangen, seit dies entschieden wurde. Nichts davon wurde geschrieben. Neu ansehen, dann entscheiden.
again-fault-request_id_was_already_used_for = Die Anfrage-Kennung { $request } wurde schon für etwas anderes benutzt. Nichts davon wurde geschrieben. Mit neuer Kennung senden.
again-fault-the_journal_could_not_be_read = Das Journal konnte nicht gelesen oder geschrieben werden ({ $what }). Nichts davon wurde geschrieben; was vorher erfasst wurde, ist sicher. Den Datenträger prüfen, dann nochmals versuchen.
again-fault-an_entry_of_this_repair_is = Ein Eintrag dieser Reparatur ist kein Text.
again-fault-a_repair_with_entries_of_devices = eine Reparatur mit Einträgen von { $devices } Geräten; { $most } sind erlaubt

## Photos and labels
again-fault-the_disk_is_full_the_photo = Der Speicher ist voll. Das Foto wurde nicht behalten; was vorher erfasst wurde, ist sicher. Platz schaffen, dann nochmals aufnehmen.
again-fault-photo_is_not_in_this_folder = Das Foto { $sha256 } ist nicht in diesem Ordner. Das Journal ist sicher. Das Bündel übernehmen, das es enthält, oder eine Sicherung zurückholen.
again-fault-photo_was_changed_on_the_disk = Das Foto { $sha256 } wurde auf dem Datenträger geändert, nachdem es behalten wurde. Es blieb, wie es war. Das Bündel übernehmen, das es enthält, oder eine Sicherung zurückholen.
again-fault-the_photo_could_not_be_read = Das Foto konnte nicht gelesen oder geschrieben werden ({ $what }). Was vorher erfasst wurde, ist sicher. Den Datenträger prüfen, dann nochmals versuchen.
again-fault-the_picture_cant_be_read_take = Das Bild ist nicht lesbar ({ $why }). Nochmals aufnehmen, als JPEG oder PNG.
again-fault-this_repair_has_no_such_photo = Dieses Foto gibt es in der Reparatur nicht. Ihre Fotos öffnen und eines davon markieren.
again-fault-the_product_number_has_a_wrong = Die Artikelnummer { $number } hat eine falsche Prüfziffer: dort steht { $printed }, richtig ist { $computed }. Das Etikett nochmals fotografieren; bleibt es dabei, eintippen, was gedruckt ist, und es dem Lieferanten sagen.
again-fault-the_code_gives_as_a_date = Der Code nennt „{ $value }“ als Datum, das ist keines. Eintippen, was gedruckt ist.
again-fault-the_code_ends_within_application_identifier = Der Code endet mitten im Datenbezeichner ({ $identifier }). Das Etikett nochmals fotografieren.
again-fault-the_code_has_where_application_identifier = Im Code steht „{ $value }“, wo der Datenbezeichner ({ $identifier }) etwas anderes verlangt. Eintippen, was gedruckt ist.
again-fault-the_picture_shows_two_labels_and = Das Bild zeigt zwei Etiketten: „{ $one }“ und „{ $other }“. Nur eines davon fotografieren.
again-fault-the_code_says_neither_product_lot = Der Code nennt weder Produkt noch Charge noch Haltbarkeit. Einen anderen Code auf dem Etikett suchen oder eintippen, was gedruckt ist.
again-fault-no_code_was_found_in_the = Im Bild wurde kein Code gefunden. Näher gehen, bis der Code das halbe Bild füllt, ruhig halten, kein Licht darauf spiegeln lassen; oder eintippen, was gedruckt ist.
again-fault-the_code_is_no_gs1_code = Das ist kein GS1-Code: er sagt „{ $says }“. Einen anderen Code auf dem Etikett suchen oder eintippen, was gedruckt ist.
again-fault-the_clock_of_this_device_shows = Die Uhr dieses Geräts zeigt kein Datum. Zuerst stellen.

## Keys and signatures
again-fault-the_device_gave_no_random_numbers = Das Gerät gab keine Zufallszahlen. Es wurde kein Schlüssel gemacht. Das Gerät neu starten.
again-fault-the_pdf_cant_be_signed = Das PDF kann nicht signiert werden: { $what }.
again-fault-the_certificate_in_this_file_is = Das Zertifikat in dieser Datei gilt heute nicht. Bei der Ausgabestelle ein neues verlangen.
again-fault-the_key_of_this_person_is = Der Schlüssel dieser Person ist auf einem anderen Gerät und wird dort benutzt.
again-fault-the_key_could_not_be_read = Der Schlüssel konnte nicht gelesen oder geschrieben werden: { $why }. Das Erfasste ist sicher.
again-fault-is_damaged_restore_it_from_a = { $path } ist beschädigt: aus einer Sicherung zurückholen.
again-fault-next_comes_the_key_of_the = Als Nächstes kommt der Schlüssel ({ $role }): { $name }, dessen Unterschrift hier steht.
again-fault-the_certificate_could_not_be_made = Der Nachweis konnte nicht gemacht werden. { $problem }
again-fault-the_certificate_could_not_be_kept = Der Nachweis konnte nicht behalten werden: { $why }. Er ist nicht signiert. Den Datenträger prüfen.
again-fault-in_this_folder_it_is = { $whole } In diesem Ordner ist es ersetzt durch { $later }: { $why }
again-fault-in_this_folder_it_is_voided = { $whole } In diesem Ordner ist es zurückgezogen: { $why }

## Files that come and go
again-fault-the_top_of_this_record_does = Die Kopfdaten dieses Protokolls sagen nicht, was seine Einträge sagen. Nichts wurde übernommen; die Datei nochmals anfordern.
again-fault-the_request_has_no_id_or = Die Anfrage hat keine Kennung oder eine zu lange.
again-fault-this_command_has_a_request_of = Dieser Befehl hat eine eigene Anfrage.
again-fault-this_request_does_not_open_a = Diese Anfrage legt keine Reparatur an.
again-fault-a_photo_is_asked_for_by = Ein Foto wird mit seinem SHA-256 verlangt.
again-fault-the_file_did_not_arrive_whole = Die Datei kam nicht ganz an: { $problem }.
again-fault-the_file_is_larger_than_16 = Die Datei ist größer als 16 GB. Sie wurde nicht übernommen.
again-fault-the_piece_is_too_long_nothing = Das Stück ist zu lang. Nichts davon wurde behalten.
again-fault-only_of_bytes_are_here_choose = Erst { $here } von { $of } Bytes sind da. Die Datei nochmals wählen.
again-fault-the_file_could_not_be_read = Die Datei konnte nicht gelesen oder geschrieben werden: { $why }. Das Erfasste ist sicher.
again-fault-this_is_not_a_file_of = Das ist keine Datei mit Blättern, oder sie kam nicht ganz an: { $problem }. Beim Büro nochmals anfordern.
again-fault-its_form_is_not_known_here = Ihre Form ist hier nicht bekannt. Auf beiden Geräten dieselbe Version des Programms benutzen.
again-fault-it_holds_documents_ask_the_office = Darin sind { $count } Dokumente. Beim Büro nochmals anfordern.
again-fault-nothing_was_taken_in_also = Nichts wurde übernommen.
again-fault-the_method_statement_needs_a_task = Die Arbeitsanweisung braucht eine Aufgabe der Art { $kind } in { $stage }: eine Sperre fragt danach.
again-fault-it_was_not_made_with_a = sie wurde nicht mit einem Kennwort gemacht
again-fault-there_is_no_journal_in_it = es ist kein Journal darin
again-fault-it_holds_which_is_nothing_of = sie enthält { $inside }, was nicht von uns ist
again-fault-its_passphrase_asks_for_more_work = ihr Kennwort verlangt mehr Rechenarbeit als jede unserer Sicherungen
again-fault-it_did_not_arrive_whole_or = sie kam nicht ganz an oder wurde geändert: { $why }

## Bundles
again-fault-there_is_no_repair_in_this = Die Reparatur { $repair } gibt es in diesem Ordner nicht. Es wurde nichts gemacht.
again-fault-these_are_too_many_repairs_for = Das sind zu viele Reparaturen für eine Datei. Weniger senden oder nur, was sich seit einem Tag geändert hat.
again-fault-the_bundle_could_not_be_written = Das Bündel konnte nicht geschrieben werden: { $why }. Das Erfasste ist sicher. Platz schaffen oder einen anderen Ort wählen, dann nochmals senden.
again-fault-this_is_not_a_bundle_of = Das ist kein Bündel von Mendline. Nichts wurde übernommen.
again-fault-this_bundle_was_made_by_a = Dieses Bündel hat ein neueres Mendline gemacht (Form { $found }; dieses kennt { $known }). Nichts wurde übernommen. Dieses Programm aktualisieren.
again-fault-the_bundle_did_not_arrive_whole = Das Bündel kam nicht ganz an: es ist bis Byte { $at } in Ordnung. Nichts wurde übernommen. Nochmals senden.
again-fault-at_byte_the_bundle_holds_what = Bei Byte { $at } enthält das Bündel Unlesbares: { $what }. Nichts wurde übernommen. Nochmals anfordern.
again-fault-at_byte_the_bundle_holds_a = Bei Byte { $at } enthält das Bündel einen Teil von { $bytes } Bytes; { $most } sind erlaubt. Nichts wurde übernommen.
again-fault-the_signature_of_the_bundle_is = Die Signatur des Bündels stimmt nicht: es wurde unterwegs geändert. Nichts wurde übernommen. Nochmals anfordern.
again-fault-device_is_known_here_by_another = Das Gerät { $device } ist hier mit einem anderen Schlüssel bekannt ({ $known }); dieses Bündel hat { $found }. Nichts wurde übernommen. Beim Absender nachfragen.
again-fault-the_bundle_is_not_signed_with = Das Bündel ist nicht mit dem genannten Schlüssel signiert, sondern mit { $found }. Nichts wurde übernommen.
again-fault-the_bundle_carries_a_photo_that = Das Bündel enthält ein Foto, das keiner seiner Einträge nennt ({ $sha256 }). Nichts wurde übernommen.
again-fault-the_bundle_cant_be_read_nothing = Das Bündel ist nicht lesbar: { $what }. Nichts wurde übernommen.

## What was typed
again-fault-nothing_is_typed = es steht nichts da
again-fault-is_not_a_number = { $typed } ist keine Zahl
again-fault-could_be_a_thousand_or_a = { $typed } könnte ein Tausender oder eine Dezimalstelle sein: ohne Komma oder mit Punkt schreiben
again-fault-is_no_unit_of_this_field = { $unit } ist keine Einheit dieses Feldes; möglich: { $known }
again-fault-is_too_large = { $typed } ist zu groß
again-fault-m_from_the_upstream_node_is = { $far } m ab dem oberen Knoten liegt nicht auf der Haltung von { $length } m.

## Inspection files
again-fault-was_not_taken_in = { $name } wurde nicht übernommen.
again-fault-line_expected_found = Zeile { $line }: erwartet: { $expected }; gefunden: { $found }
again-fault-pick_at_least_one_observation = mindestens eine Feststellung wählen
again-fault-the_observation_of_line_has_no = die Feststellung der Zeile { $line } hat keine Station
again-fault-the_observation_of_line_is_one = die Feststellung der Zeile { $line } ist ein Ende des Streckenschadens { $number }: beide Enden wählen
again-fault-the_file_says_its_bytes_say = die Datei nennt { $label }, ihre Bytes sagen { $other }: als { $as } gelesen
again-fault-the_character_set_is_not_known = der Zeichensatz { $label } ist nicht bekannt: als { $as } gelesen
again-fault-the_file_names_no_character_set = die Datei nennt keinen Zeichensatz: als { $as } gelesen
again-fault-no_start_node_aab_taken_from = kein Anfangsknoten (AAB): aus der Feststellung BCD genommen, { $node }
again-fault-direction_c_not_known_upstream_and = Richtung C (nicht bekannt): oberer und unterer Knoten sind nicht bekannt
again-fault-column_is_not_in_en_13508 = die Spalte { $name } steht nicht in EN 13508-2: weggelassen
again-fault-is_not_in_en_13508_2 = <{ $name }> steht nicht in EN 13508-2: weggelassen
again-fault-in_column_k_joint_is_not = { $text } in Spalte K (Verbindung) ist nicht A: weggelassen
again-fault-the_last_inspection_ends_without_z = die letzte Inspektion endet ohne #Z, erreicht aber ihr Ende
again-fault-a_date_such_as_2026_09 = ein Datum wie 2026-09-22 (ABF)
again-fault-a_time_such_as_09_05 = eine Zeit wie 09:05 (ABG)
again-fault-a_with_the_flow_or_b = A (in Fließrichtung) oder B (dagegen) für AAK
again-fault-a_distance_in_m_0_or = eine Länge in m, 0 oder mehr
again-fault-a_size_in_mm_0_or = ein Maß in mm, 0 oder mehr
again-fault-a_main_code_such_as_bab = ein Hauptkode wie BAB (Spalte A)
again-fault-a_clock_hour_from_1_to = eine Uhrzeitlage von 1 bis 12
again-fault-the_closing_on_the_same_line = das schließende { $quote } in derselben Zeile
again-fault-an_inspection_b01 = eine Inspektion (#B01=)
again-fault-the_end_of_the_file = das Ende der Datei
again-fault-the_field_separator = das Feldtrennzeichen
again-fault-a1_of_the_text_form_or = #A1= der Textform oder <DATA> der XML-Form
again-fault-three_different_characters_in_a3_a4 = drei verschiedene Zeichen in #A3, #A4 und #A5
again-fault-at_most_cells = höchstens { $most } Zellen
again-fault-at_most_header_fields = höchstens { $most } Kopffelder
again-fault-a_row_with_the_values_of = eine Zeile mit den Werten von { $names }
again-fault-a_column_a_main_code = eine Spalte A (Hauptkode)
again-fault-a_file_without_a_document_type = eine Datei ohne Dokumenttyp
again-fault-the_root_element_data = das Wurzelelement <DATA>
