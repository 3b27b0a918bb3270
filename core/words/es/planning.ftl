### The plan: what fits, what a reader should know, and the ways out with their numbers.

## Places of measurement

place-resin = resina
place-air = aire
place-pipe = tubería
warmest-resin = { $at }, la resina
warmest-air = { $at }, el aire
warmest-pipe = { $at }, la tubería

## Candidates of the shelf

fits-pipe = para { $least } a { $most } { $unit }; tubería { $pipe } { $unit }
fits-range = { $least } a { $most }
fits-shorter = { $by } más corto que el parche
fits-ends = extremos libres { $bare }; se piden { $asked }
fits-batch = { $batch } de { $most } como máximo
fits-works = { $working } a { $warmest }
fits-spare = { $works }; sobran { $spare }
fits-short = { $works }; faltan { $short }

## Ways out

out-no_temperature = Ninguna temperatura de esta ficha da tiempo.
out-all_cooler = Resina, aire y tubería a { $enough } o menos: eso da { $gives }.
out-one_cooler = Enfriar solo { $place ->
    [resin] la resina
    [air] el aire
   *[pipe] la tubería
  } da { $gives }, porque { $warmest ->
    [resin] la resina
    [air] el aire
   *[pipe] la tubería
  } está a { $at }: aún faltan { $short }.
out-split = Mézclela en { $count } veces, una detrás de otra.
out-longer = Un parche de { $needed } o más, centrado en el defecto.
out-centred = Centrado en el defecto, cubre { $cover }.
out-marked = Marcado con la cámara sobre el defecto en la misma pasada, cubre { $cover }.
out-series = { $count } parches de { $length } en serie, cada uno una reparación propia.
out-less_water = Agua freática rebajada a { $head } sobre la solera o menos.
out-shelf-resin = En la carpeta, una resina que sirve: { $names }.
out-shelf-patch = En la carpeta, un parche que sirve: { $names }.
out-shelf-packer = En la carpeta, un packer que sirve: { $names }.

## Notes

note-offset_missing = No está anotada la distancia de la boca de la tubería al centro de { $node }: la marca cuenta desde el centro.
note-diameter_nominal = El diámetro interior es nominal hasta que se mida en el defecto.
note-seam_missing = No está elegido dónde va la costura.
note-host_pipe_unknown = Nadie ha dicho cuánta presión aguanta la tubería existente: es una pregunta para un ingeniero habilitado.
note-series = Un parche es demasiado corto: { $count } en serie, por colocar con los centros a { $centres } de { $node }. Cada uno es una reparación propia; esta es la primera.
note-lateral_under = El parche tapa la acometida a { $at }, posición { $hour } h: hay que abrirla después del curado completo.
note-lateral_near = La acometida a { $at } está tan cerca que el parche puede taparla si se suman los errores.
note-lateral_bore_unknown = No se conoce el diámetro de la acometida a { $at }: se cuenta tan ancha como la tubería.
note-packer_out = El packer asomaría { $out } de la tubería en { $node }. Donde nada lo sujeta puede reventar: tiene que estar entero dentro de la tubería antes de inflarlo. Manda la ficha del packer.
note-containers = { $count } × { $kit }, vaciados hasta la última gota: { $mass }.
note-batches = { $count } mezclas de { $mass } cada una; el tiempo de trabajo corre desde la primera.
note-clock_same_hour = { $name } va de { $hour } a { $hour } h: ¿toda la vuelta o un punto?
note-closure_ends = { $says } Así sería si A y B se juntaran ahora.
