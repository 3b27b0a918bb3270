### Formulas and sources of the named checks, said again for a reader of another language. Titles of standards stay.

## Formulas
again-worked-formula-ovality = C = ((1 − q)/(1 + q)²)³, q ovalización como fracción
again-worked-formula-wall = pandeo t = D/((2·K·E_L·C/(P·N·(1 − ν²)))^⅓ + 1); flexión 1.5·q·(1 + q)·DR² − 0.5·(1 + q)·DR = σ/(P·N); rigidez E/(12·DR³) ≥ 0.093 psi; deterioro total q_t = (1/N)·√(32·R_w·B'·E'_s·C·E_L·t³/(12·D³)), 07a con C delante de la raíz
again-worked-formula-air_f1417 = T = 0.085·D·K/Q para 1.0 psi, la mitad para 0.5 psi; K = max(1, 0.000419·D·L); s, in, ft; presión inicial + 0.43 psi/ft de agua freática sobre la tubería (City Code of Eldridge, Iowa)
again-worked-formula-air_en1610 = t = (1/K_p)·ln(p0/(p0 − Δp)); K_p = 12/DN, hormigón seco 16/DN, como máximo 0.058
again-worked-formula-water_en1610 = V = w·π·DN·L; w 0.15, 0.20 o 0.40 l/m²
again-worked-formula-laminate = t = n·m_A/(ρ_f·V_f); m = ρ_r·(t − n·m_A/ρ_f)·ancho·largo
again-worked-formula-working_time = ln t en línea recta frente a 1/T entre dos filas
again-worked-formula-geodesic = camino más corto sobre el elipsoide
again-worked-formula-station = punto a esa distancia por el camino más corto
again-worked-formula-atmosphere = oxígeno dentro de sus límites; los demás por debajo de los suyos
again-worked-formula-partial_flow = v = R^⅔·√S/n; Q = v·A; segmento circular
again-worked-formula-surcharge = V = ∫ A(calado − S·x) dx; t = V/caudal entrante
again-worked-formula-decay = p' = (p + p_atm)·T₁/T − p_atm; pendiente de la recta de mínimos cuadrados ± t(0.975; n − 2)·s

## Sources
again-worked-source-ovality = ASTM F1216, X1.2.1, leída con su tabla en M. Najafi, Trenchless Technology Piping (2010), apart. 2.7
again-worked-source-wall = ASTM F1216, apéndice X1 (edición indicada en el resultado), fórmulas leídas en M. Najafi, Trenchless Technology Piping (2010), apart. 2.7; constantes en pulgadas y libras, convertidas según NIST SP 811 (2008)
again-worked-source-air_f1417 = ASTM F1417, tabla 2 y su fórmula, Q = 0.0015 ft³/(min·ft²)
again-worked-source-air_en1610 = EN 1610, método L, leído en la directriz federal alemana BFR Abwasser, anexo A-2.5.2; 16/DN para hormigón seco, de memoria
again-worked-source-water_en1610 = EN 1610, método W, 30 ± 1 min, leído según lo cita un fabricante de tubos de gres
again-worked-source-resin_wall = geometría de un cilindro; exceso por contracción y migración como pide ASTM F1216, 7.2 (de memoria), su valor es el de la ficha
again-worked-source-laminate = fracción de volumen de fibra por definición (regla de mezclas), práctica común
again-worked-source-working_time = ley de Arrhenius: ln t en línea recta frente a 1/T entre dos puntos, nunca fuera (regla propia)
again-worked-source-equivalent_age = ASTM C1074, edad equivalente en su forma de Arrhenius, 273.15 K para 0 °C; aplicada a la resina por analogía
again-worked-source-gas = gas ideal a volumen constante, p/T constante con presión absoluta y kelvin
again-worked-source-net = presión del manómetro menos agua dulce, 0.0980665 bar/m (NIST SP 811, 2008, B.8)
again-worked-source-end_thrust = estática, presión × área; un número para la zona de peligro, nunca una aprobación
again-worked-source-geodesy = C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013), WGS 84, con la biblioteca geographiclib-rs
again-worked-source-atmosphere = 29 CFR 1910.146(b) para oxígeno e inflamables, su Appendix E para las alarmas
again-worked-source-as_given = límites según lo indicado
again-worked-source-left_out = { $given }; lo que omite: { $source }
again-worked-source-manning = ecuación de Manning en unidades SI con la geometría de un segmento circular, práctica común
again-worked-source-storage = geometría: volumen de una tubería circular bajo una superficie horizontal, forma cerrada (cuña cilíndrica)
again-worked-source-decay = recta de mínimos cuadrados por lecturas llevadas a la primera temperatura con la ley de los gases, 95 % según la t de Student; 5 lecturas y 0.02 bar/h son reglas propias de este programa
