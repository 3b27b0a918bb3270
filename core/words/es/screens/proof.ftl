### Pruebas: el PIN de una clave, los números de los certificados.

certificate-supersedes = Ocupa el lugar de { $number }.
certificate-went_on = La reparación siguió después.
certificate-void = Anular este certificado
certificate-void_note = Deja de contar, y su número no se vuelve a usar. Corrija lo que estaba mal; después firme y emita de nuevo: el siguiente nombra a este y el motivo.
certificate-void_why = Por qué no cuenta
certificate-void_act = Anular { $number }
numbers-title = Números de este equipo
numbers-note = cada certificado y qué fue de él
numbers-all = Certificados
numbers-none = Aquí aún no se ha emitido ningún certificado.
numbers-none_text = Cada uno toma el número siguiente de este equipo.
numbers-issued = Emitido
numbers-superseded = Sustituido por { $number }
numbers-voided = Anulado, y aún sin otro en su lugar
numbers-taken = Dado: { $at }.
numbers-why = Anulado por { $by }, { $at }: { $reason }
key-change = Cambiar el PIN
key-old_pin = PIN anterior
key-change_act = Usar el PIN nuevo
check-originals = Las fotos originales
check-originals_what =
  { $n ->
    [one] El registro nombra 1 foto por su SHA-256. Elija el original para ver si es el mismo, byte por byte.
   *[other] El registro nombra { $n } fotos por su SHA-256. Elija los originales para ver si son los mismos, byte por byte.
  }
check-originals_files = Fotos originales, cuantas quiera
check-originals_more = Más fotos originales
check-originals_act = Compararlas
check-original_found = está, byte por byte:
check-original_missing = no está entre los archivos traídos
check-originals_sum = De { $of } fotos, { $found } están byte por byte, { $changed } cambiadas, { $missing } aún no traídas. Una foto no traída no dice nada del certificado.
check-original_changed = cambiada: el archivo lleva su nombre y contiene otra cosa:
check-original_other = no figura en el registro
check-original_unread = no se pudo leer
check-original_ask = pregunte por qué
