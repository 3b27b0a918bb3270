### Le plan : ce qui convient, ce qu’il faut savoir, et les issues avec leurs chiffres.

## Lieux de mesure

place-resin = résine
place-air = air
place-pipe = conduite
warmest-resin = { $at }, la résine
warmest-air = { $at }, l’air
warmest-pipe = { $at }, la conduite

## Ce que les fiches proposent

fits-pipe = pour { $least } à { $most } { $unit } ; conduite { $pipe } { $unit }
fits-range = { $least } à { $most }
fits-shorter = plus court que la manchette de { $by }
fits-ends = bouts libres { $bare } ; { $asked } exigés
fits-batch = { $batch } sur { $most } au plus
fits-works = { $working } à { $warmest }
fits-spare = { $works } ; { $spare } de reste
fits-short = { $works } ; il manque { $short }

## Issues

out-no_temperature = Aucune température de cette fiche ne suffit.
out-all_cooler = Résine, air et conduite tous à { $enough } ou moins : cela donne { $gives }.
out-one_cooler = Refroidir seulement { $place ->
    [resin] la résine
    [air] l’air
   *[pipe] la conduite
  } donne { $gives }, car { $warmest ->
    [resin] la résine
    [air] l’air
   *[pipe] la conduite
  } est à { $at } : il manque encore { $short }.
out-split = Mélanger en { $count } gâchées, l’une après l’autre.
out-longer = Une manchette de { $needed } ou plus, centrée sur le défaut.
out-centred = Centrée sur le défaut, elle déborde de { $cover }.
out-marked = Avec le repère posé caméra sur le défaut, au même passage, elle déborde de { $cover }.
out-series = { $count } manchettes de { $length } en série, chacune étant une réparation à part.
out-less_water = Nappe rabattue à { $head } au-dessus du radier, ou moins.
out-shelf-resin = Parmi vos fiches, une résine qui convient : { $names }.
out-shelf-patch = Parmi vos fiches, une manchette qui convient : { $names }.
out-shelf-packer = Parmi vos fiches, un packer qui convient : { $names }.

## Remarques

note-offset_missing = La distance de l’entrée de conduite au centre de { $node } n’est pas saisie : le repère compte depuis le centre.
note-diameter_nominal = Le diamètre intérieur reste nominal tant qu’il n’est pas mesuré au défaut.
note-seam_missing = La position de la couture n’est pas choisie.
note-host_pipe_unknown = Personne n’a dit quelle pression supporte la conduite existante : une question pour un ingénieur habilité.
note-series = Une manchette est trop courte : { $count } en série, à poser encore avec leurs centres à { $centres } de { $node }. Chacune est une réparation à part ; celle-ci est la première.
note-lateral_under = La manchette recouvre le branchement à { $at }, { $hour } h : à rouvrir après le durcissement complet.
note-lateral_near = Le branchement à { $at } est si proche que la manchette peut le recouvrir si les erreurs s’ajoutent.
note-lateral_bore_unknown = Le diamètre du branchement à { $at } n’est pas connu : il compte aussi large que la conduite.
note-packer_out = Le packer dépasserait de { $out } hors de la conduite à { $node }. Là où rien ne le tient, il peut éclater : il doit être dans la conduite sur toute sa longueur avant d’être gonflé. La fiche du packer prime.
note-containers = { $count } × { $kit }, vidés jusqu’à la dernière goutte : { $mass }.
note-batches = { $count } gâchées de { $mass } chacune ; le temps d’emploi court dès la première.
note-clock_same_hour = { $name } va de { $hour } à { $hour } h : tout le tour, ou un point ?
note-closure_ends = { $says } Ce serait le cas si les composants étaient réunis maintenant.
