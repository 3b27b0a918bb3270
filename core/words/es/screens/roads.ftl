### Repairs on their way to another device and from one.

send-title = Enviar reparaciones
send-note = A otro teléfono o a la oficina, en un archivo
send-one = Enviar esta reparación
send-one_note = En un archivo con sus fotos, a otro equipo
send-since = Solo lo cambiado desde (puede quedar vacío)
send-pick = Reparaciones
send-pick_note = sin marcar ninguna: todas
send-size = { $mb } MB
send-none = Aquí aún no hay reparaciones.
send-act = Crear el archivo
send-act_note = firmado por este equipo, con fotos
send-kept = Nada sale solo de este equipo. Guarde el archivo y entréguelo por cable, memoria USB, correo o como pueda.
send-half = ¿Se cortó la copia? Copie otra vez el mismo archivo; el otro equipo sigue donde se paró.
send-made = El archivo está creado
send-made_n =
  { $repairs ->
    [one] 1 reparación
   *[other] { $repairs } reparaciones
  }, { $photos ->
    [one] 1 foto
   *[other] { $photos } fotos
  }
send-missing =
  { $n ->
    [one] 1 foto no está aquí, o está cambiada, y no se incluyó.
   *[other] { $n } fotos no están aquí, o están cambiadas, y no se incluyeron.
  } La reparación se envía igualmente.
send-save_again = Guardarlo otra vez
send-broke_off = El archivo se cortó al guardarlo. Guárdelo otra vez.
send-saving = Guardando: { $done } de { $of } MB
send-key = La clave de este equipo
send-key_note = Dígasela a quien cargue el archivo, de palabra o en papel. Así sabrá que el archivo es suyo.
take-title = Recibir reparaciones
take-note = Un archivo de otro teléfono o de la oficina
take-file = El archivo (.mendline)
take-key = Clave del equipo que envía, si se la dijeron
take-key_note = Con una clave, solo se carga un archivo de ese equipo.
take-known =
  { $n ->
    [one] Ya se conoce 1 equipo, por su clave.
   *[other] Ya se conocen { $n } equipos, por sus claves.
  }
take-act = Cargar el archivo
take-act_note = todo o nada
take-bringing = Recibiendo: { $done } de { $of } MB
take-stopped = El archivo se paró a medio camino. Elíjalo otra vez: sigue donde se paró.
take-done = Recibido
take-nothing_new = Ya estaba todo aquí
take-from = Del equipo
take-its_key = Su clave
take-first = Este equipo aparece por primera vez.
take-first_text = Compare su clave con la que le diga su dueño. Desde ahora, solo esta clave habla por él.
take-photos = Fotos
take-fresh =
  { $n ->
    [0] ya estaba aquí
    [one] 1 entrada nueva
   *[other] { $n } entradas nuevas
  }
take-apart = Siguió en { $n } equipos. Se guarda todo; el encargado elige lo que cuenta.
