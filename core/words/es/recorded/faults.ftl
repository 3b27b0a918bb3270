### Faults and refused files, said again for a reader of another language.

## Faults of the journal and its disk
again-fault-the_disk_is_full_nothing_of = El almacenamiento está lleno. No se escribió nada de esto; lo registrado antes está a salvo. Libere espacio e inténtelo de nuevo.
again-fault-another_program_is_writing_to_this = Otro programa está escribiendo en esta carpeta. No se escribió nada de esto. Inténtelo de nuevo en un momento.
again-fault-the_journal_can_only_be_read = Aquí el diario solo se puede leer. No se escribió nada de esto. Use la carpeta original para registrar.
again-fault-this_user_may_not_read_it = Este usuario no puede leer { $path }. Quedó como está y su contenido está a salvo. Pida al dueño de la carpeta permiso de lectura y escritura.
again-fault-the_last_entries_stand_in_wal = Las últimas entradas están en { $path }-wal, que no se puede leer donde no se puede escribir. Ambos archivos quedaron como están y su contenido está a salvo. Copie toda la carpeta a un disco en el que se pueda escribir y abra la copia.
again-fault-is_not_a_mendline_journal_it = { $path } no es un diario de Mendline. Quedó como está. Elija otra carpeta de datos.
again-fault-the_journal_file_itself_is_damaged = El propio archivo del diario está dañado ({ $what }). Quedó como está y ya no se escribe nada en él. Primero copie toda la carpeta de datos, exporte los registros que aún se leen y después restaure una copia de seguridad.
again-fault-found_while_it_was_read = se vio al leerlo
again-fault-this_repair_can_be_read_and = { $damage } Esta reparación se puede leer y exportar, pero no admite más entradas. No se cambió ni se arregló nada.
again-fault-repair_entry_of_device = Reparación { $repair }, entrada { $seq } del equipo { $device }: { $flaw }.
again-fault-nothing_was_taken_in = { $damage } No se incorporó nada.
again-fault-it_was_not_taken_in_what = { $damage } No se incorporó; lo guardado aquí está a salvo. Pida el paquete de nuevo.
again-fault-this_folder_was_written_by_a = Esta carpeta la escribió un Mendline más nuevo (formato { $found }; este conoce el { $known }). Quedó como está. Actualice este programa.
again-fault-repair_has_moved_on_since_this = La reparación { $repair } avanzó desde que se decidió esto. No se escribió nada de esto. Mire de nuevo y decida.
again-fault-request_id_was_already_used_for = El identificador de solicitud { $request } ya se usó para otra cosa. No se escribió nada de esto. Envíelo con uno nuevo.
again-fault-the_journal_could_not_be_read = El diario no se pudo leer o escribir ({ $what }). No se escribió nada de esto; lo registrado antes está a salvo. Revise el disco e inténtelo de nuevo.
again-fault-an_entry_of_this_repair_is = Una entrada de esta reparación no es texto.
again-fault-a_repair_with_entries_of_devices = una reparación con entradas de { $devices } equipos; se permiten { $most }

## Photos and labels
again-fault-the_disk_is_full_the_photo = El almacenamiento está lleno. La foto no se guardó; lo registrado antes está a salvo. Libere espacio y tómela de nuevo.
again-fault-photo_is_not_in_this_folder = La foto { $sha256 } no está en esta carpeta. El diario está a salvo. Incorpore el paquete que la lleva o restaure una copia de seguridad.
again-fault-photo_was_changed_on_the_disk = La foto { $sha256 } se cambió en el disco después de guardarse. Quedó como está. Incorpore el paquete que la lleva o restaure una copia de seguridad.
again-fault-the_photo_could_not_be_read = La foto no se pudo leer o escribir ({ $what }). Lo registrado antes está a salvo. Revise el disco e inténtelo de nuevo.
again-fault-the_picture_cant_be_read_take = La imagen no se puede leer ({ $why }). Tómela de nuevo, en JPEG o PNG.
again-fault-this_repair_has_no_such_photo = Esta reparación no tiene esa foto. Abra sus fotos y marque una de ellas.
again-fault-the_product_number_has_a_wrong = El número de producto { $number } tiene un dígito de control incorrecto: pone { $printed }, lo correcto es { $computed }. Fotografíe la etiqueta otra vez; si sigue así, teclee lo impreso y avise al proveedor.
again-fault-the_code_gives_as_a_date = El código da «{ $value }» como fecha y no lo es. Teclee lo impreso.
again-fault-the_code_ends_within_application_identifier = El código termina dentro del identificador de aplicación ({ $identifier }). Fotografíe la etiqueta otra vez.
again-fault-the_code_has_where_application_identifier = El código tiene «{ $value }» donde el identificador de aplicación ({ $identifier }) pide otra cosa. Teclee lo impreso.
again-fault-the_picture_shows_two_labels_and = La imagen muestra dos etiquetas: «{ $one }» y «{ $other }». Fotografíe solo una.
again-fault-the_code_says_neither_product_lot = El código no dice ni producto, ni lote, ni último día válido. Busque otro código en la etiqueta o teclee lo impreso.
again-fault-no_code_was_found_in_the = No se encontró ningún código en la imagen. Acérquese hasta que llene la mitad, no se mueva, evite reflejos; o teclee lo impreso.
again-fault-the_code_is_no_gs1_code = No es un código GS1: dice «{ $says }». Busque otro código en la etiqueta o teclee lo impreso.
again-fault-the_clock_of_this_device_shows = El reloj de este equipo no muestra fecha. Póngalo en hora primero.

## Keys and signatures
again-fault-the_device_gave_no_random_numbers = El equipo no dio números aleatorios. No se hizo ninguna clave. Reinicie el equipo.
again-fault-the_pdf_cant_be_signed = El PDF no se puede firmar: { $what }.
again-fault-the_certificate_in_this_file_is = El certificado de este archivo no es válido hoy. Pida uno nuevo a quien lo emitió.
again-fault-the_key_of_this_person_is = La clave de esta persona está en otro equipo y se usa allí.
again-fault-the_key_could_not_be_read = La clave no se pudo leer o escribir: { $why }. Lo registrado está a salvo.
again-fault-is_damaged_restore_it_from_a = { $path } está dañado: restáurelo de una copia de seguridad.
again-fault-next_comes_the_key_of_the = Ahora toca la clave ({ $role }): { $name }, quien trazó la firma.
again-fault-the_certificate_could_not_be_made = El certificado no se pudo hacer. { $problem }
again-fault-the_certificate_could_not_be_kept = El certificado no se pudo guardar: { $why }. No está firmado. Revise el disco.
again-fault-in_this_folder_it_is = { $whole } En esta carpeta está sustituido por { $later }: { $why }
again-fault-in_this_folder_it_is_voided = { $whole } En esta carpeta está anulado: { $why }

## Files that come and go
again-fault-the_top_of_this_record_does = La cabecera de este registro no dice lo que dicen sus entradas. No se incorporó nada; pida el archivo de nuevo.
again-fault-the_request_has_no_id_or = La solicitud no tiene identificador o es demasiado largo.
again-fault-this_command_has_a_request_of = Esta orden tiene su propia solicitud.
again-fault-this_request_does_not_open_a = Esta solicitud no abre una reparación.
again-fault-a_photo_is_asked_for_by = Una foto se pide por su SHA-256.
again-fault-the_file_did_not_arrive_whole = El archivo no llegó entero: { $problem }.
again-fault-the_file_is_larger_than_16 = El archivo supera los 16 GB. No se incorporó.
again-fault-the_piece_is_too_long_nothing = El trozo es demasiado largo. No se guardó nada de él.
again-fault-only_of_bytes_are_here_choose = Solo han llegado { $here } de { $of } bytes. Elija el archivo de nuevo.
again-fault-the_file_could_not_be_read = El archivo no se pudo leer o escribir: { $why }. Lo registrado está a salvo.
again-fault-this_is_not_a_file_of = No es un archivo de fichas, o no llegó entero: { $problem }. Pídalo de nuevo a la oficina.
again-fault-its_form_is_not_known_here = Su formato no se conoce aquí. Use la misma versión del programa en ambos equipos.
again-fault-it_holds_documents_ask_the_office = Contiene { $count } documentos. Pídalo de nuevo a la oficina.
again-fault-nothing_was_taken_in_also = No se incorporó nada.
again-fault-the_method_statement_needs_a_task = El procedimiento necesita una tarea de tipo { $kind } en { $stage }: un paso la exige.
again-fault-it_was_not_made_with_a = no se hizo con una contraseña
again-fault-there_is_no_journal_in_it = no contiene ningún diario
again-fault-it_holds_which_is_nothing_of = contiene { $inside }, que no es nuestro
again-fault-its_passphrase_asks_for_more_work = su contraseña exige más cálculo que cualquier copia nuestra
again-fault-it_did_not_arrive_whole_or = no llegó entera o se cambió: { $why }

## Bundles
again-fault-there_is_no_repair_in_this = No hay ninguna reparación { $repair } en esta carpeta. No se hizo nada.
again-fault-these_are_too_many_repairs_for = Son demasiadas reparaciones para un archivo. Envíe menos, o solo lo cambiado desde un día.
again-fault-the_bundle_could_not_be_written = El paquete no se pudo escribir: { $why }. Lo registrado está a salvo. Libere espacio o elija otro lugar y envíelo otra vez.
again-fault-this_is_not_a_bundle_of = No es un paquete de Mendline. No se incorporó nada.
again-fault-this_bundle_was_made_by_a = Este paquete lo hizo un Mendline más nuevo (formato { $found }; este conoce el { $known }). No se incorporó nada. Actualice este programa.
again-fault-the_bundle_did_not_arrive_whole = El paquete no llegó entero: está bien hasta el byte { $at }. No se incorporó nada. Envíelo de nuevo.
again-fault-at_byte_the_bundle_holds_what = En el byte { $at } el paquete contiene algo ilegible: { $what }. No se incorporó nada. Pídalo de nuevo.
again-fault-at_byte_the_bundle_holds_a = En el byte { $at } el paquete contiene una parte de { $bytes } bytes; se permiten { $most }. No se incorporó nada.
again-fault-the_signature_of_the_bundle_is = La firma del paquete no es correcta: se cambió por el camino. No se incorporó nada. Pídalo de nuevo.
again-fault-device_is_known_here_by_another = El equipo { $device } se conoce aquí por otra clave ({ $known }); este paquete tiene { $found }. No se incorporó nada. Pregunte a quien lo envió.
again-fault-the_bundle_is_not_signed_with = El paquete no está firmado con la clave indicada, sino con { $found }. No se incorporó nada.
again-fault-the_bundle_carries_a_photo_that = El paquete lleva una foto que ninguna de sus entradas nombra ({ $sha256 }). No se incorporó nada.
again-fault-the_bundle_cant_be_read_nothing = El paquete no se puede leer: { $what }. No se incorporó nada.

## What was typed
again-fault-nothing_is_typed = no hay nada escrito
again-fault-is_not_a_number = { $typed } no es un número
again-fault-could_be_a_thousand_or_a = { $typed } podría ser un millar o un decimal: escríbalo sin coma o con punto
again-fault-is_no_unit_of_this_field = { $unit } no es una unidad de este campo: use { $known }
again-fault-is_too_large = { $typed } es demasiado grande
again-fault-m_from_the_upstream_node_is = A { $far } m del nodo aguas arriba no está en el tramo de { $length } m.

## Inspection files
again-fault-was_not_taken_in = { $name } no se incorporó.
again-fault-line_expected_found = línea { $line }: se esperaba { $expected }, hay { $found }
again-fault-pick_at_least_one_observation = elija al menos una observación
again-fault-the_observation_of_line_has_no = la observación de la línea { $line } no tiene distancia
again-fault-the_observation_of_line_is_one = la observación de la línea { $line } es un extremo del defecto continuo { $number }: elija ambos extremos
again-fault-the_file_says_its_bytes_say = el archivo dice { $label }, sus bytes dicen { $other }: leído como { $as }
again-fault-the_character_set_is_not_known = el juego de caracteres { $label } no se conoce: leído como { $as }
again-fault-the_file_names_no_character_set = el archivo no nombra juego de caracteres: leído como { $as }
again-fault-no_start_node_aab_taken_from = sin nodo inicial (AAB): tomado de la observación BCD, { $node }
again-fault-direction_c_not_known_upstream_and = dirección C (no conocida): no se conocen los nodos de aguas arriba y abajo
again-fault-column_is_not_in_en_13508 = la columna { $name } no está en EN 13508-2: se omite
again-fault-is_not_in_en_13508_2 = <{ $name }> no está en EN 13508-2: se omite
again-fault-in_column_k_joint_is_not = { $text } en la columna K (junta) no es A: se omite
again-fault-the_last_inspection_ends_without_z = la última inspección termina sin #Z, pero llega a su fin
again-fault-a_date_such_as_2026_09 = una fecha como 2026-09-22 (ABF)
again-fault-a_time_such_as_09_05 = una hora como 09:05 (ABG)
again-fault-a_with_the_flow_or_b = A (a favor del flujo) o B (en contra) para AAK
again-fault-a_distance_in_m_0_or = una distancia en m, 0 o más
again-fault-a_size_in_mm_0_or = una medida en mm, 0 o más
again-fault-a_main_code_such_as_bab = un código principal como BAB (columna A)
again-fault-a_clock_hour_from_1_to = una posición horaria de 1 a 12
again-fault-the_closing_on_the_same_line = la { $quote } de cierre en la misma línea
again-fault-an_inspection_b01 = una inspección (#B01=)
again-fault-the_end_of_the_file = el final del archivo
again-fault-the_field_separator = el separador de campos
again-fault-a1_of_the_text_form_or = #A1= del formato de texto o <DATA> del formato XML
again-fault-three_different_characters_in_a3_a4 = tres caracteres distintos en #A3, #A4 y #A5
again-fault-at_most_cells = como mucho { $most } celdas
again-fault-at_most_header_fields = como mucho { $most } campos de cabecera
again-fault-a_row_with_the_values_of = una fila con los valores de { $names }
again-fault-a_column_a_main_code = una columna A (código principal)
again-fault-a_file_without_a_document_type = un archivo sin tipo de documento
again-fault-the_root_element_data = el elemento raíz <DATA>
