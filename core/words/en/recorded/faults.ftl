### Faults and refused files, said again for a reader of another language.

## Faults of the journal and its disk
again-fault-the_disk_is_full_nothing_of = The disk is full. Nothing of this was written; what was recorded before is safe. Free some space, then try again.
again-fault-another_program_is_writing_to_this = Another program is writing to this folder. Nothing of this was written. Try again in a moment.
again-fault-the_journal_can_only_be_read = The journal can only be read here. Nothing of this was written. Use the original folder to record.
again-fault-this_user_may_not_read_it = This user may not read { $path }. It was left as it is, and what is in it is safe. Ask the owner of the folder for permission to read and write it.
again-fault-the_last_entries_stand_in_wal = The last entries stand in { $path }-wal, which can't be read where nothing can be written. Both files were left as they are, and what is in them is safe. Copy the whole folder to a disk that can be written, and open the copy.
again-fault-is_not_a_mendline_journal_it = { $path } is not a Mendline journal. It was left as it is. Choose another data folder.
again-fault-the_journal_file_itself_is_damaged = The journal file itself is damaged ({ $what }). It was left as it is, and nothing more is written to it. Copy the whole data folder before anything else, export the records that can still be read, then restore a backup.
again-fault-found_while_it_was_read = found while it was read
again-fault-this_repair_can_be_read_and = { $damage } This repair can be read and exported, but takes no more entries. Nothing was changed or repaired.
again-fault-repair_entry_of_device = Repair { $repair }, entry { $seq } of device { $device }: { $flaw }.
again-fault-nothing_was_taken_in = { $damage } Nothing was taken in.
again-fault-it_was_not_taken_in_what = { $damage } It was not taken in; what is stored here is safe. Ask for the bundle again.
again-fault-this_folder_was_written_by_a = This folder was written by a newer Mendline (form { $found }; this one knows { $known }). It was left as it is. Update this program.
again-fault-repair_has_moved_on_since_this = Repair { $repair } has moved on since this was decided. Nothing of this was written. Look again, then decide.
again-fault-request_id_was_already_used_for = Request id { $request } was already used for something else. Nothing of this was written. Send it with a new id.
again-fault-the_journal_could_not_be_read = The journal could not be read or written ({ $what }). Nothing of this was written; what was recorded before is safe. Check the disk, then try again.
again-fault-an_entry_of_this_repair_is = An entry of this repair is not text.
again-fault-a_repair_with_entries_of_devices = a repair with entries of { $devices } devices; { $most } are allowed

## Photos and labels
again-fault-the_disk_is_full_the_photo = The disk is full. The photo was not kept; what was recorded before is safe. Free some space, then take it again.
again-fault-photo_is_not_in_this_folder = Photo { $sha256 } is not in this folder. The journal is safe. Take in the bundle that carries it, or restore a backup.
again-fault-photo_was_changed_on_the_disk = Photo { $sha256 } was changed on the disk after it was kept. It was left as it is. Take in the bundle that carries it, or restore a backup.
again-fault-the_photo_could_not_be_read = The photo could not be read or written ({ $what }). What was recorded before is safe. Check the disk, then try again.
again-fault-the_picture_cant_be_read_take = The picture can't be read ({ $why }). Take it again, as JPEG or PNG.
again-fault-this_repair_has_no_such_photo = This repair has no such photo. Open its photos and mark one of them.
again-fault-the_product_number_has_a_wrong = The product number { $number } has a wrong check digit: { $printed } stands there, { $computed } is right. Photograph the label again; if it stays so, type what is printed and tell the supplier.
again-fault-the_code_gives_as_a_date = The code gives “{ $value }” as a date, which is none. Type what is printed.
again-fault-the_code_ends_within_application_identifier = The code ends within application identifier ({ $identifier }). Photograph the label again.
again-fault-the_code_has_where_application_identifier = The code has “{ $value }” where application identifier ({ $identifier }) asks for something else. Type what is printed.
again-fault-the_picture_shows_two_labels_and = The picture shows two labels: “{ $one }” and “{ $other }”. Photograph one of them alone.
again-fault-the_code_says_neither_product_lot = The code says neither product, lot nor last good day. Look for another code on the label, or type what is printed.
again-fault-no_code_was_found_in_the = No code was found in the picture. Go closer until the code fills half of it, hold still, keep light off its surface; or type what is printed.
again-fault-the_code_is_no_gs1_code = The code is no GS1 code: it says “{ $says }”. Look for another code on the label, or type what is printed.
again-fault-the_clock_of_this_device_shows = The clock of this device shows no date. Set it first.

## Keys and signatures
again-fault-the_device_gave_no_random_numbers = The device gave no random numbers. No key was made. Start the device again.
again-fault-the_pdf_cant_be_signed = The PDF can't be signed: { $what }.
again-fault-the_certificate_in_this_file_is = The certificate in this file is not valid today. Ask who gave it out for a new one.
again-fault-the_key_of_this_person_is = The key of this person is on another device, and is used there.
again-fault-the_key_could_not_be_read = The key could not be read or written: { $why }. What was recorded is safe.
again-fault-is_damaged_restore_it_from_a = { $path } is damaged: restore it from a backup.
again-fault-next_comes_the_key_of_the = Next comes the key of the { $role }: { $name }, who drew the line.
again-fault-the_certificate_could_not_be_made = The certificate could not be made. { $problem }
again-fault-the_certificate_could_not_be_kept = The certificate could not be kept: { $why }. It is not signed. Check the disk.
again-fault-in_this_folder_it_is = { $whole } In this folder it is superseded by { $later }: { $why }
again-fault-in_this_folder_it_is_voided = { $whole } In this folder it is voided: { $why }

## Files that come and go
again-fault-the_top_of_this_record_does = The top of this record does not say what its entries say. Nothing was taken in; ask for the file again.
again-fault-the_request_has_no_id_or = The request has no id, or one that is too long.
again-fault-this_command_has_a_request_of = This command has a request of its own.
again-fault-this_request_does_not_open_a = This request does not open a repair.
again-fault-a_photo_is_asked_for_by = A photo is asked for by its SHA-256.
again-fault-the_file_did_not_arrive_whole = The file did not arrive whole: { $problem }.
again-fault-the_file_is_larger_than_16 = The file is larger than 16 GB. It was not taken in.
again-fault-the_piece_is_too_long_nothing = The piece is too long. Nothing of it was kept.
again-fault-only_of_bytes_are_here_choose = Only { $here } of { $of } bytes are here. Choose the file again.
again-fault-the_file_could_not_be_read = The file could not be read or written: { $why }. What was recorded is safe.
again-fault-this_is_not_a_file_of = This is not a file of sheets, or it did not arrive whole: { $problem }. Ask the office for it again.
again-fault-its_form_is_not_known_here = Its form is not known here. Use the same version of the program on both devices.
again-fault-it_holds_documents_ask_the_office = It holds { $count } documents. Ask the office for it again.
again-fault-nothing_was_taken_in_also = Nothing was taken in.
again-fault-the_method_statement_needs_a_task = The method statement needs a task of kind { $kind } in { $stage }: a gate asks for it.
again-fault-it_was_not_made_with_a = it was not made with a passphrase
again-fault-there_is_no_journal_in_it = there is no journal in it
again-fault-it_holds_which_is_nothing_of = it holds { $inside }, which is nothing of ours
again-fault-its_passphrase_asks_for_more_work = its passphrase asks for more work than any backup of ours
again-fault-it_did_not_arrive_whole_or = it did not arrive whole, or was changed: { $why }

## Bundles
again-fault-there_is_no_repair_in_this = There is no repair { $repair } in this folder. Nothing was made.
again-fault-these_are_too_many_repairs_for = These are too many repairs for one file. Send fewer, or only what changed since a day.
again-fault-the_bundle_could_not_be_written = The bundle could not be written: { $why }. What was recorded is safe. Make room or choose another place, then send it again.
again-fault-this_is_not_a_bundle_of = This is not a bundle of Mendline. Nothing was taken in.
again-fault-this_bundle_was_made_by_a = This bundle was made by a newer Mendline (form { $found }; this one knows { $known }). Nothing was taken in. Update this program.
again-fault-the_bundle_did_not_arrive_whole = The bundle did not arrive whole: it is sound up to byte { $at }. Nothing was taken in. Send it again.
again-fault-at_byte_the_bundle_holds_what = At byte { $at } the bundle holds what can't be read: { $what }. Nothing was taken in. Ask for it again.
again-fault-at_byte_the_bundle_holds_a = At byte { $at } the bundle holds a part of { $bytes } bytes; { $most } are allowed. Nothing was taken in.
again-fault-the_signature_of_the_bundle_is = The signature of the bundle is not right: it was changed on its way. Nothing was taken in. Ask for it again.
again-fault-device_is_known_here_by_another = Device { $device } is known here by another key ({ $known }); this bundle has { $found }. Nothing was taken in. Ask whoever sent it.
again-fault-the_bundle_is_not_signed_with = The bundle is not signed with the key that you named, but with { $found }. Nothing was taken in.
again-fault-the_bundle_carries_a_photo_that = The bundle carries a photo that none of its entries names ({ $sha256 }). Nothing was taken in.
again-fault-the_bundle_cant_be_read_nothing = The bundle can't be read: { $what }. Nothing was taken in.

## What was typed
again-fault-nothing_is_typed = nothing is typed
again-fault-is_not_a_number = { $typed } is not a number
again-fault-could_be_a_thousand_or_a = { $typed } could be a thousand or a decimal: write it without the comma, or with a point
again-fault-is_no_unit_of_this_field = { $unit } is no unit of this field: use { $known }
again-fault-is_too_large = { $typed } is too large
again-fault-m_from_the_upstream_node_is = { $far } m from the upstream node is not on the line of { $length } m.

## Inspection files
again-fault-was_not_taken_in = { $name } was not taken in.
again-fault-line_expected_found = line { $line }: expected { $expected }, found { $found }
again-fault-pick_at_least_one_observation = pick at least one observation
again-fault-the_observation_of_line_has_no = the observation of line { $line } has no station
again-fault-the_observation_of_line_is_one = the observation of line { $line } is one end of stretch { $number }: pick both ends
again-fault-the_file_says_its_bytes_say = the file says { $label }, its bytes say { $other }: read as { $as }
again-fault-the_character_set_is_not_known = the character set { $label } is not known: read as { $as }
again-fault-the_file_names_no_character_set = the file names no character set: read as { $as }
again-fault-no_start_node_aab_taken_from = no start node (AAB): taken from the observation BCD, { $node }
again-fault-direction_c_not_known_upstream_and = direction C (not known): upstream and downstream node are not known
again-fault-column_is_not_in_en_13508 = column { $name } is not in EN 13508-2: left out
again-fault-is_not_in_en_13508_2 = <{ $name }> is not in EN 13508-2: left out
again-fault-in_column_k_joint_is_not = { $text } in column K (joint) is not A: left out
again-fault-the_last_inspection_ends_without_z = the last inspection ends without #Z, but it reaches its end
again-fault-a_date_such_as_2026_09 = a date such as 2026-09-22 (ABF)
again-fault-a_time_such_as_09_05 = a time such as 09:05 (ABG)
again-fault-a_with_the_flow_or_b = A (with the flow) or B (against it) for AAK
again-fault-a_distance_in_m_0_or = a distance in m, 0 or more
again-fault-a_size_in_mm_0_or = a size in mm, 0 or more
again-fault-a_main_code_such_as_bab = a main code such as BAB (column A)
again-fault-a_clock_hour_from_1_to = a clock hour from 1 to 12
again-fault-the_closing_on_the_same_line = the closing { $quote } on the same line
again-fault-an_inspection_b01 = an inspection (#B01=)
again-fault-the_end_of_the_file = the end of the file
again-fault-the_field_separator = the field separator
again-fault-a1_of_the_text_form_or = #A1= of the text form or <DATA> of the XML form
again-fault-three_different_characters_in_a3_a4 = three different characters in #A3, #A4 and #A5
again-fault-at_most_cells = at most { $most } cells
again-fault-at_most_header_fields = at most { $most } header fields
again-fault-a_row_with_the_values_of = a row with the values of { $names }
again-fault-a_column_a_main_code = a column A (main code)
again-fault-a_file_without_a_document_type = a file without a document type
again-fault-the_root_element_data = the root element <DATA>
