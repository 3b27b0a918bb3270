### El certificado: las comprobaciones calculadas.

## derive/checks/mod.rs

cert-mod-fails_by = FALLA por { $text }
cert-mod-kn = { $force } ({ $inside }, { $pressure })
cert-mod-and_g_h_a_kn = , y ρ g h A = { $force } más por { $head } de agua tras un packer que obtura la línea
cert-mod-end_thrust_if_an_end = Empuje si cede un extremo: π/4 × DI² × presión = { $air }{ $water }; redondeado hacia arriba. Una cifra para guardar distancia, no para dar por bueno.

## derive/checks/place.rs

cert-place-errors_at_the_defect = Errores en el defecto
cert-place-none_counted = ninguno contado
cert-place-patch_defect_2_offset_errors = (parche − defecto) / 2 { $sign } desplazamiento − errores
cert-place-cover_upstream = Cobertura aguas arriba
cert-place-cover_downstream = Cobertura aguas abajo
cert-place-no_patch_was_set_or = no se colocó parche, o nadie dijo dónde
cert-place-patch_of_planned = parche { $this } de { $all }; previsto { $planned } { $sign } { $off }
cert-place-no_patch_planned = ningún parche previsto
cert-place-the_mouth_of_the_pipe = la boca de la tubería
cert-place-the_cap_of_the_cleanout = la tapa del registro de limpieza
cert-place-path = recorrido { $length }
cert-place-rods_and_mark = Varillas y marca
cert-place-whole_rods_path_rod_mark = varillas enteras = ⌊recorrido / varilla⌋, marca en el resto; recorrido desde { $point } en { $node }
cert-place-rod = { $path }; varilla { $length }
cert-place-rope = cuerda
cert-place-hose = manguera
cert-place-mark_on_the_path_from = marca en la { $on } = recorrido desde { $point } en { $node } al centro del parche
cert-place-mark = Marca
cert-place-shorter_end_difference_of_both = extremo más corto; diferencia entre ambos
cert-place-packer_fits = Packer adecuado
cert-place-packer = packer
cert-place-patch_fits = Parche adecuado
cert-place-patch = parche
cert-place-measured_id_inside_the_range = diámetro interior medido dentro de la gama del { $what }
cert-place-outside = fuera
cert-place-inside = dentro
cert-place-station_line_of_the_way = distancia / tramo × camino entre ambos nodos en WGS 84
cert-place-station_of = distancia { $at } de { $length }
cert-place-no_position_of_the_phone = sin posición del teléfono
cert-place-can_be = puede ser
cert-place-too_far_for_its_accuracy = demasiado lejos para su precisión
cert-place-accuracy_not_known = precisión desconocida
cert-place-phone_from_the_node = teléfono a { $distance } del nodo: { $can_be }
cert-place-place_on_the_map = Lugar en el mapa
cert-place-viewed_again_cleaned = vista otra vez − limpiada
cert-place-clean_pipe = Tubería limpia

## derive/checks/pressure.rs

cert-pressure-counted = contada { $pressure }
cert-pressure-min = mín. { $pressure }; { $inside }
cert-pressure-counted_2 = { $pressure } contados
cert-pressure-nothing_counted = nada contado
cert-pressure-window_lower_limit = Rango, límite inferior
cert-pressure-window_upper_limit = Rango, límite superior
cert-pressure-max = máx. { $pressure }
cert-pressure-packer_up_to = packer hasta { $size }
cert-pressure-host_pipe = tubería existente
cert-pressure-contract = contrato
cert-pressure-net_pressure = Presión neta

## derive/checks/resin.rs

cert-resin-w_wet_out_push_loading = W − impregnación − empuje × factor de carga − conectar e inflar − margen
cert-resin-time_budget_at = Tiempo sobrante, { $at }
cert-resin-joined_second_go = A y B juntos − segundo visto bueno
cert-resin-age_of_temperatures = Antigüedad de las temperaturas
cert-resin-no_second_go = sin segundo visto bueno
cert-resin-ln_t_against_1_t = ln t frente a 1/T entre filas de la ficha, con lo más caliente de resina, aire, tubería
cert-resin-target_pressure_never_reached = nunca se alcanzó la presión objetivo
cert-resin-ln_t_against_1_t_2 = ln t frente a 1/T entre filas de la ficha, con la lectura más fría de tubería y agua
cert-resin-at = {" "}a las { $at }
cert-resin-colder_than_the_table_its = { $cold }{ $at }: más fría que la tabla, vale su tiempo más largo
cert-resin-hold_counted = Tiempo a presión contado
cert-resin-first_cut = primer corte
cert-resin-test = ensayo
cert-resin-joined = A y B juntos
cert-resin-first_cut_or_test_by = primer corte o ensayo − { $begins }, según la ficha con la lectura más fría
cert-resin-nothing_cut_or_tested = nada cortado ni ensayado
cert-resin-both_emptied = ambos vaciados
cert-resin-not_recorded_as_emptied = no consta que se vaciaran
cert-resin-whole_containers_a_into_b = envases enteros, A en B hasta la última gota
cert-resin-mass_a_mass_b = masa A / masa B
cert-resin-masses_not_recorded = las masas no constan
cert-resin-ratio_a_b = Relación A : B
cert-resin-stopwatch = cronómetro
cert-resin-mixing_time = Tiempo de mezcla

## derive/checks/verification.rs

cert-verification-fold_height = Altura del pliegue
cert-verification-lateral = Acometida { $at }
cert-verification-open_area_bore_by_eye = área abierta / luz, a ojo con la cámara
cert-verification-dn_oclock = DN { $dn }, { $hour } h
cert-verification-to = { $least } a { $most } %
cert-verification-not_opened = sin abrir
cert-verification-fails_not_opened = FALLA: sin abrir

## derive/checks/worked.rs

cert-worked-see_the_inputs = véanse los datos

## More

cert-pressure-over = −{ $pressure }, no cuenta
cert-pressure-lower = max(mín. manométrica, mín. neta + { $water } bar/m × agua). { $source }
cert-pressure-net = lectura más baja − { $water } bar/m × agua sobre la solera. { $source }
cert-worked-no_design = Una comprobación para un ingeniero habilitado, no un cálculo.
cert-worked-local_codes = Mandan las normas locales.
cert-worked-never_shorten = Puede alargar el tiempo a presión, nunca acortarlo.
cert-worked-gives = da { $name } { $value }
