### El certificado: materiales, valores, hallazgos, fotos.

## derive/findings.rs

cert-findings-folds = Pliegues
cert-findings-edges = Bordes
cert-findings-surface = Superficie
cert-findings-infiltration = Infiltración
cert-findings-all_back = Todo de vuelta
cert-findings-waste = Residuos
cert-findings-flow = Caudal
cert-findings-outside = FUERA: { $broken } { $found }
cert-findings-done = hecho
cert-findings-limit = ; límite { $limit }
cert-findings-none = ninguno{ $limit }
cert-findings-at_oclock = {" "}a las { $hour } h
cert-findings-highest = el mayor { $height }{ $hour }{ $place }{ $limit }
cert-findings-height_not_recorded = la altura no consta
cert-findings-both_bonded_all_round = ambos pegados en toda la vuelta
cert-findings-head_above_the_invert_as = ; agua sobre la solera { $head }, según el plan
cert-findings-sample = Muestra
cert-findings-nobody_felt_one = nadie la comprobó
cert-findings-from_the_manhole_soft_would = del pozo: { $felt }; blanda prohibiría desinflar, dura por sí sola no prueba nada
cert-findings-laterals = Acometidas
cert-findings-none_2 = ninguna
cert-findings-none_under_the_patch = ninguna bajo el parche
cert-findings-full_cure = ; curado completo { $at }
cert-findings-coupons = ; recortes: { $why }
cert-findings-coupons_recovered = ; recortes recuperados: { $count }
cert-findings-covered = { $count } tapadas: { $each }{ $coupons }{ $cure }
cert-findings-at_an_unknown_place = en un lugar desconocido
cert-findings-not_opened = { $station } SIN ABRIR
cert-findings-coupon_not_out = recorte NO recuperado
cert-findings-open_to_cut = { $station } abierta al { $percent } %, cortada { $at }, { $coupon }
cert-findings-air_or_water_test = Ensayo de aire o agua
cert-findings-tight = estanco
cert-findings-not_tight = NO estanco
cert-findings-by = { $result }, por { $method }{ $values }
cert-findings-a_method_that_nobody_named = un método que nadie nombró
cert-findings-none_because = ninguno, porque { $because }
cert-findings-none_though_the_contract_asks = ninguno, aunque el contrato lo pide
cert-findings-none_not_asked = ninguno: no se pide ({ $source })
cert-findings-no_photo = sin foto
cert-findings-photo = foto { $numbers }
cert-findings-photos = fotos { $numbers }

## derive/materials.rs

cert-materials-stored = guardado { $range }
cert-materials-storage_not_recorded = el almacenamiento no consta
cert-materials-resin_part_a = Componente A
cert-materials-resin_part_b = Componente B
cert-materials-weighed = { $mass } pesados
cert-materials-whole_containers = envases enteros, { $kit }
cert-materials-whole_containers_2 = envases enteros
cert-materials-mass_not_recorded = la masa no consta
cert-materials-seam_not_recorded = la costura no consta
cert-materials-seam_at_oclock = costura a las { $hour } h
cert-materials-patch = Parche
cert-materials-none_stated = ninguna indicada
cert-materials-strapped_down = { $pressure }, amarrado
cert-materials-no_drop = sin caída
cert-materials-drop = caída { $pressure }
cert-materials-in = { $drop } en { $time }
cert-materials-packer = Packer
cert-materials-no = { $name }, n.º { $serial }
cert-materials-tested = probado { $date }
cert-materials-membrane = membrana { $length }
cert-materials-no_membrane = sin membrana
cert-materials-sleeve_membrane = Funda, membrana
cert-materials-sleeve = funda; { $membrane }
cert-materials-sleeve_2 = funda { $length }
cert-materials-instruments = Instrumentos
cert-materials-instrument = Instrumento
cert-materials-not_in_the_plan = { $id } (no está en el plan)
cert-materials-pressure_gauge = Manómetro
cert-materials-thermometer = Termómetro
cert-materials-camera_counter = Contador de cámara
cert-materials-scale = Balanza
cert-materials-tape = Cinta métrica
cert-materials-gas_meter = Detector de gases
cert-materials-no_calibration_asked = no se pide calibración
cert-materials-calibrated_to = calibrado hasta { $date }

## derive/photos.rs

cert-photos-photo_without_a_title = Foto sin título
cert-photos-attempt = { $title } (intento { $n })
cert-photos-marked_up_copy_of_photo = copia con marcas de la foto { $number }
cert-photos-the_original_is_not_on = el original no está en este equipo
cert-photos-the_file_on_this_device = el archivo de este equipo no es el original: su SHA-256 es otro

## derive/sheets.rs

cert-sheets-as_entered_the_program_ships = como se anotó; el programa no trae valores de proceso propios
cert-sheets-no_plan_was_accepted = no se aceptó ningún plan
cert-sheets-coordinates_of_the_node_as = coordenadas del nodo, como se leyeron
cert-sheets-no_inspection_was_read_in = no se leyó ninguna inspección
cert-sheets-lines = { $date }, líneas { $lines }
cert-sheets-not_kept = no guardadas
cert-sheets-from = { $table } desde { $from }
cert-sheets-1_by_mass = { $ratio } : 1 en masa, ± { $tolerance } %
cert-sheets-whole_containers = envases enteros: { $kit }, { $mass }
cert-sheets-for_up_to = { $table }, para un máximo de { $batch }
cert-sheets-parts_a_and_b = Componentes A y B
cert-sheets-mixing = Mezcla
cert-sheets-at_least = al menos { $value }
cert-sheets-resin_temperature = Temperatura de la resina
cert-sheets-storage = Almacenamiento
cert-sheets-joining = juntar A y B
cert-sheets-target_pressure = presión objetivo
cert-sheets-at = { $time } a { $temperature }
cert-sheets-least_gauge_least_net = mínima manométrica { $gauge }, mínima neta { $net }
cert-sheets-up_to = { $pressure } hasta { $size }
cert-sheets-not_stated = no indicado
cert-sheets-for = { $pressure } durante { $time }
cert-sheets-pressure = Presión
cert-sheets-most_packer = Máximo, packer
cert-sheets-most_patch = Máximo, parche
cert-sheets-most_host_pipe = Máximo, tubería existente
cert-sheets-most_contract = Máximo, contrato
cert-sheets-packer_test = Prueba del packer
cert-sheets-nobody_has_stated_one = nadie ha indicado ninguno
cert-sheets-at_least_equal_within = al menos { $least }, iguales en { $tolerance }
cert-sheets-bare_ends = Extremos libres
cert-sheets-packer_range = Gama del packer
cert-sheets-soaked_patch = Parche impregnado
cert-sheets-every_grace = cada { $interval }, tolerancia { $grace }
cert-sheets-a_longer_gap_is_lost = un hueco más largo se pierde entero
cert-sheets-of_a_longer_gap_the = de un hueco más largo se pierde el exceso
cert-sheets-open_to = abierta del { $least } al { $most } %
cert-sheets-the_foreman_decides_after_the = decide el encargado tras la cámara
cert-sheets-a_new_attempt = un intento nuevo
cert-sheets-asked_after_full_cure = se pide tras el curado completo
cert-sheets-not_asked = no se pide
cert-sheets-cover_each_side = Cobertura por lado
cert-sheets-readings = Lecturas
cert-sheets-gap_rule = Regla de huecos
cert-sheets-fold = Pliegue
cert-sheets-lateral = Acometida
cert-sheets-doubtful_hold = Intento dudoso
cert-sheets-second_go = Segundo visto bueno
cert-sheets-margin = Margen
cert-sheets-cleaning = Limpieza
cert-sheets-viewed_again_within = vista otra vez antes de { $time }
cert-sheets-temperatures_no_older_than = temperaturas de hace { $time } como máximo
cert-sheets-the_greater_of_of_dn = el mayor entre { $percent } % del DN y { $height }
cert-sheets-of_dn = { $percent } % del DN

## layout/evidence.rs

cert-evidence-item = Objeto
cert-evidence-kind_number = Tipo, número
cert-evidence-lot = Lote
cert-evidence-expiry_check = Caducidad, control
cert-evidence-amount_range = Cantidad, gama
cert-evidence-note = Nota
cert-evidence-value = Valor
cert-evidence-as_entered = Como se anotó
cert-evidence-source = Fuente
cert-evidence-check = Comprobación
cert-evidence-formula_and_source = Fórmula y fuente
cert-evidence-inputs = Datos
cert-evidence-limit = Límite
cert-evidence-what = Qué
cert-evidence-found = Hallado
cert-evidence-evidence = Prueba
cert-evidence-no = N.º
cert-evidence-rule_and_value = Regla y valor
cert-evidence-reason_who_when = Motivo, quién, cuándo
cert-evidence-what_happened = Qué pasó
cert-evidence-from_to = De, a
cert-evidence-what_happened_what_became_of = Qué pasó, qué fue del material
cert-evidence-where_was_the_patch = ¿Dónde el parche?
cert-evidence-anything_in_the_pipe = ¿Algo en la tubería?
cert-evidence-outcome_by_when = Fin, quién, cuándo
cert-evidence-old = Antes
cert-evidence-new = Ahora
cert-evidence-reason = Motivo
cert-evidence-by_when = Quién, cuándo
cert-evidence-result_against_limit_margin_is = resultado frente al límite; margen es lo que sobró
cert-evidence-danger_zone = Zona de peligro
cert-evidence-the_two_questions_were_asked = las dos preguntas se hicieron al acabar el tiempo de trabajo, y las respondieron las personas nombradas
cert-evidence-nothing_is_overwritten_the_old = nada se sobrescribe: queda el valor antiguo

## layout/photos.rs

cert-photos-the_copy_is_not_at = la copia no está a mano
cert-photos-the_copy_is_not_the = la copia no es la registrada: su hash es otro
cert-photos-the_copy_cant_be_shown = la copia no se puede mostrar: { $fault }
cert-photos-reduced_copies_the_originals_stay = copias reducidas; los originales quedan con el contratista, nombrados por su SHA-256; aquí abreviado, completo en el registro
cert-photos-in_bundle = , en el paquete { $bundle }
cert-photos-this_copy = esta copia { $hash }
cert-photos-no_copy = sin copia
cert-photos-original = original { $hash }{ $bundle }
cert-photos-photo = Foto { $title }
cert-photos-it_was_not_examined = no se examinó
cert-photos-no_picture = Sin imagen: { $why }.

## More

cert-count-layers = { $count ->
    [one] { $count } capa
   *[other] { $count } capas
  }
cert-tables-continued = { $title } (sigue)
cert-jpeg-not_jpeg = no es un archivo JPEG
cert-jpeg-cut_off = el archivo está cortado
cert-jpeg-no_size = no tiene tamaño de imagen
cert-jpeg-colour = está en CMYK o en otro color que una página no puede mostrar
cert-jpeg-coding = su tipo de JPEG (codificación aritmética, sin pérdida o 12 bits) no se puede mostrar
cert-photo_copy-unreadable = el original no es una imagen JPEG ni PNG, o está dañado ({ $why })
cert-photo_copy-unwritable = la copia no se pudo escribir ({ $why })
cert-sheets-full_cure = Curado completo
