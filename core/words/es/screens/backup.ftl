### Una copia, y lo que vuelve de ella.

backup-title = Hacer una copia
backup-last = Última copia
backup-last_on = La última: { $on }
backup-never = Nunca se hizo copia
backup-due = Toca hacer otra.
backup-due_lead = Haga una copia.
backup-due_text = Lo que solo está en este equipo se pierde con el equipo.
backup-free = Espacio libre
backup-free_n = { $free } libres
backup-low = Pronto puede no haber sitio para fotos. Haga una copia y libere espacio en el equipo.
backup-low_lead = { $free } libres.
backup-mb = { $n } MB
backup-gb = { $n } GB
backup-word = Contraseña, 10 caracteres o más
backup-word_note = Cuatro palabras van bien. Apúntela y guárdela aparte del archivo: nadie puede recuperarla.
backup-what = Todas las reparaciones, fotos, certificados y claves van a un archivo cerrado. Cualquier programa que lea el formato age lo abre con la contraseña.
backup-act = Hacer la copia
backup-act_note = cerrada con la contraseña
backup-made = La copia está hecha
backup-files =
  { $n ->
    [one] 1 archivo dentro
   *[other] { $n } archivos dentro
  }
backup-away = Guárdela en otro sitio.
backup-away_text = En otro equipo, una memoria o la oficina. Junto al teléfono se pierde con él.
restore-title = Recuperar una copia
restore-note = En un equipo nuevo o vacío
restore-text = Vuelve todo lo de la copia: reparaciones, fotos, certificados, claves. El equipo debe estar vacío.
restore-file = La copia (.tar.age)
restore-word = Su contraseña
restore-device = Cuenta como un equipo nuevo con clave propia. Avise a la oficina y revoque las claves del equipo perdido.
restore-act = Recuperar
restore-act_note = todo o nada
restore-done = Todo está de vuelta
restore-files = Archivos
restore-damaged =
  { $n ->
    [one] 1 cadena estaba rota
   *[other] { $n } cadenas estaban rotas
  } cuando se hizo la copia. Siguen como estaban.
restore-people = Elija quién es usted antes de seguir.
