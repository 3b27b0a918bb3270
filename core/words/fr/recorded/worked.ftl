### Formulas and sources of the named checks, said again for a reader of another language. Titles of standards stay.

## Formulas
again-worked-formula-ovality = C = ((1 − q)/(1 + q)²)³, q ovalisation en fraction
again-worked-formula-wall = flambement t = D/((2·K·E_L·C/(P·N·(1 − ν²)))^⅓ + 1); flexion 1.5·q·(1 + q)·DR² − 0.5·(1 + q)·DR = σ/(P·N); rigidité E/(12·DR³) ≥ 0.093 psi; dégradation complète q_t = (1/N)·√(32·R_w·B'·E'_s·C·E_L·t³/(12·D³)), 07a avec C devant la racine
again-worked-formula-air_f1417 = T = 0.085·D·K/Q pour 1.0 psi, la moitié pour 0.5 psi; K = max(1, 0.000419·D·L); s, in, ft; pression de départ + 0.43 psi/ft de nappe au-dessus du tuyau (City Code of Eldridge, Iowa)
again-worked-formula-air_en1610 = t = (1/K_p)·ln(p0/(p0 − Δp)); K_p = 12/DN, béton sec 16/DN, au plus 0.058
again-worked-formula-water_en1610 = V = w·π·DN·L; w 0.15, 0.20 ou 0.40 l/m²
again-worked-formula-laminate = t = n·m_A/(ρ_f·V_f); m = ρ_r·(t − n·m_A/ρ_f)·largeur·longueur
again-worked-formula-working_time = ln t en droite selon 1/T entre deux lignes
again-worked-formula-geodesic = plus court chemin sur l’ellipsoïde
again-worked-formula-station = point à cette distance sur le plus court chemin
again-worked-formula-atmosphere = oxygène dans ses limites ; les autres sous les leurs
again-worked-formula-partial_flow = v = R^⅔·√S/n; Q = v·A; segment de cercle
again-worked-formula-surcharge = V = ∫ A(hauteur − S·x) dx; t = V/débit entrant
again-worked-formula-decay = p' = (p + p_atm)·T₁/T − p_atm; pente de la droite des moindres carrés ± t(0.975; n − 2)·s

## Sources
again-worked-source-ovality = ASTM F1216, X1.2.1, lue avec son tableau dans M. Najafi, Trenchless Technology Piping (2010), sect. 2.7
again-worked-source-wall = ASTM F1216, annexe X1 (édition citée dans le résultat), formules lues dans M. Najafi, Trenchless Technology Piping (2010), sect. 2.7 ; constantes en pouces et livres, converties selon NIST SP 811 (2008)
again-worked-source-air_f1417 = ASTM F1417, tableau 2 et sa formule, Q = 0.0015 ft³/(min·ft²)
again-worked-source-air_en1610 = EN 1610, méthode L, lue dans la directive fédérale allemande BFR Abwasser, annexe A-2.5.2 ; 16/DN pour béton sec, de mémoire
again-worked-source-water_en1610 = EN 1610, méthode W, 30 ± 1 min, lue telle que la cite un fabricant de tuyaux en grès
again-worked-source-resin_wall = géométrie d’un cylindre ; excédent pour retrait et migration comme le demande ASTM F1216, 7.2 (de mémoire), sa valeur est celle de la fiche
again-worked-source-laminate = taux volumique de fibres par définition (loi des mélanges), usage courant
again-worked-source-working_time = loi d’Arrhenius : ln t en droite selon 1/T entre deux points, jamais au-delà (règle propre)
again-worked-source-equivalent_age = ASTM C1074, âge équivalent sous sa forme d’Arrhenius, 273.15 K pour 0 °C ; appliqué à la résine par analogie
again-worked-source-gas = gaz parfait à volume constant, p/T constant en pression absolue et kelvin
again-worked-source-net = pression au manomètre moins l’eau douce, 0.0980665 bar/m (NIST SP 811, 2008, B.8)
again-worked-source-end_thrust = statique, pression × surface ; un chiffre pour la zone de danger, jamais un critère de réussite
again-worked-source-geodesy = C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013), WGS 84, par la bibliothèque geographiclib-rs
again-worked-source-atmosphere = 29 CFR 1910.146(b) pour l’oxygène et les gaz inflammables, son Appendix E pour les alarmes
again-worked-source-as_given = limites comme indiquées
again-worked-source-left_out = { $given } ; ce qui y manque : { $source }
again-worked-source-manning = équation de Manning en unités SI avec la géométrie d’un segment de cercle, usage courant
again-worked-source-storage = géométrie : volume d’un tuyau circulaire sous une surface horizontale, forme close (onglet cylindrique)
again-worked-source-decay = droite des moindres carrés par les relevés ramenés à la première température par la loi des gaz, 95 % selon le t de Student ; 5 relevés et 0.02 bar/h sont des règles propres à ce programme
