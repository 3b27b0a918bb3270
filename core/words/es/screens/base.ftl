### What every screen uses.

app-name = Mendline
app-loading = Abriendo
# Twelve months from January and seven days from Sunday, short, parted by spaces (CLDR).
date-months = ene feb mar abr may jun jul ago sept oct nov dic
date-weekdays = dom lun mar mié jue vie sáb
date-day = { $day } { $month }
rehearsal-word = PRÁCTICA
rehearsal-not_a_record = no es un registro
stages-label = Etapa { $n } de { $of }: { $name }
stage-planned = Plan
stage-staging = Preparación
stage-test_push = Prueba de paso
stage-sleeve_change = Cambio de funda
stage-wet_out = Impregnación
stage-placement = Colocación
stage-inflation = Inflado
stage-hold = A presión
stage-deflation = Desinflado
stage-verification = Verificación
stage-complete = Completa
deck-stop = Parar
deck-photo = Foto
deck-note = Nota
deck-ago = Hace { $n } min
hold-keep = Siga pulsando
hold-holding = hasta llenar la barra
hold-press_again = { $label }: pulse otra vez antes de 5 segundos para confirmar.
hold-not_confirmed = Sin confirmar.
hold-let_go = Soltó demasiado pronto. Pulse durante 2 segundos.
hold-of = de { $n } min
hold-tape =
  { $counted } de { $needed } minutos contados{ $pending ->
    [0] {""}
   *[other] , { $pending } más a la espera de la próxima lectura
  }
cure-full = curado completo
cure-from = desde
cure-caution = No corte ni ensaye antes.
entry-less = { $label }: { $step } { $unit } menos
entry-more = { $label }: { $step } { $unit } más
pair-yes = Sí
pair-no = No
task-done = Hecho
task-not_applicable = No procede
task-because = porque
condition-met = Cumplido:
condition-open = Pendiente:
condition-waived = No procede:
condition-closed = Bloqueado:
condition-failed = Fallido:
condition-rehearsal = Práctica:
clock-left = quedan { $span }
clock-gone = han pasado { $span }
budget-label = hacen falta { $needed } de { $total } de tiempo de trabajo
budget-ends = acaba el tiempo de trabajo, { $at }
budget-short = Con { $total } faltan
budget-left = De { $total } quedan
others-label = Otros relojes
others-what = lectura
others-mixed = mezclada,
others-more = { $n } más
others-late = { $by } tarde
light-label = Luz
light-day = Día
light-sun = Sol
light-night = Noche
problems-title =
  { $n ->
    [one] 1 cosa por corregir
   *[other] { $n } cosas por corregir
  }
problem-number = { $label }: ponga un número.
problem-pick = { $label } Elija, por favor.
problem-below = { $label }: al menos { $min }.
problem-above = { $label }: como mucho { $max }.
refusal-title = Todavía no
refusal-way_out = Qué hacer:
banner-label = Antes de nada
dialog-close = Cerrar
unit-hour = h
line-read_here = se lee aquí
line-hose = manguera
line-rope = cuerda
detail-patch = parche { $n }
detail-packer = packer { $n }
detail-defect = defecto { $n }
detail-cover_left = cobertura { $n }
detail-cover_right = { $n } cobertura
cover-asked = se pide { $n }
face-downstream = Visto mirando aguas abajo
face-upstream = Visto mirando aguas arriba
face-crown = clave
face-invert = solera
hold-upper = { $bar } límite superior
hold-lower = { $bar } límite inferior
hold-gap = { $n } min
hold-release = desinflar
edge-upstream = borde aguas arriba
edge-downstream = borde aguas abajo
place-table = En la mesa
place-in_pipe = En la tubería, sin expandir
place-at_wall = Tocando la pared
place-stuck = Atascado
chain-head = cabeza
today-title = Hoy
broken-title = Esta pantalla no se puede mostrar
broken-text = Es un fallo del programa. Lo registrado está a salvo y las demás pantallas siguen ahí.
broken-away = No ha llegado. Lo registrado y lo escrito están a salvo.
broken-again = Intentarlo de nuevo
lost-title = Aquí no hay nada
lost-text = No hay ninguna pantalla en { $path }.
lost-back = Volver a hoy
unreachable-title = El registro no responde
unreachable-text = No se pierde nada de lo escrito. Se vuelve a preguntar cada pocos segundos.
recorded = Registrado.
saved = Guardado: { $name }
saved-not = Sin guardar.
saved-download = Descargado: { $name }
problem-file = Elija antes un archivo.
step-value = { $value } { $unit }
hold-started = Pulsando.
error-title = No ha salido bien
error-kept = El registro está como estaba.
waiting =
  { $n ->
    [one] 1 aviso por registrar. Está guardado en este equipo.
   *[other] { $n } avisos por registrar. Están guardados en este equipo.
  }
