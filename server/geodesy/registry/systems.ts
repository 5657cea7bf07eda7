/**
 * The register of coordinate reference systems, one a line; built by build-systems.mjs, not written by hand.
 *
 * From epsg-index 2.0.0, Copyright (c) 2023, Jannis R, ISC licence: permission to use, copy, modify, and/or distribute
 * this software for any purpose with or without fee is granted, provided that the copyright notice and this permission
 * notice appear in all copies. It is provided "as is", without warranty of any kind. The parameters in it are those of
 * the EPSG Geodetic Parameter Dataset, owned by IOGP and used under its terms of use.
 */

/** name | south west north east */
export const AREAS = `
Anguilla - onshore.|18.11 -63.22 18.33 -62.92
Antigua island - onshore.|16.94 -61.95 17.22 -61.61
Dominica - onshore.|15.14 -61.55 15.69 -61.2
Grenada and southern Grenadine Islands - onshore.|11.94 -61.84 12.57 -61.35
Montserrat - onshore.|16.62 -62.29 16.87 -62.08
St Kitts and Nevis - onshore.|17.06 -62.92 17.46 -62.5
St Lucia - onshore.|13.66 -61.13 14.16 -60.82
St Vincent and the northern Grenadine Islands - onshore.|12.54 -61.52 13.44 -61.07
Canada - Quebec - east of 60°W.|50.2 -60 52.01 -57.1
Canada - Quebec - between 63°W and 60°W.|47.16 -63 52.01 -60
Canada - Quebec - between 66°W and 63°W.|47.95 -66 60.42 -63
Canada - Quebec - between 69°W and 66°W.|47.31 -69 59 -66
Canada - Quebec - between 72°W and 69°W.|45.01 -72 61.8 -69
Canada - Quebec - between 75°W and 72°W.|44.99 -75 62.53 -72
Canada - Quebec - between 78°W and 75°W.|45.37 -78 62.62 -75
Canada - Quebec - west of 78°W.|46.23 -79.85 62.45 -78
Canada - Ontario - east of 75°W.|44.98 -75 45.65 -74.35
Canada - Ontario - between 78°W and 75°W.|43.63 -78 46.25 -75
Canada - Ontario - between 81°W and 78°W: south of 46°N in area to west of 80°15'W, south of 47°N in area between 80°15'W and 79°30'W, entire province between 79°30'W and 78°W.|42.26 -81 47.33 -77.99
Canada - Ontario - south of 46°N and west of 81°W.|41.67 -83.6 46 -81
Canada - Ontario - between 82°30'W and 79°30'W: north of 46°N in area between 82°30'W and 80°15'W, north of 47°N in area between 80°15'W and 79°30'W.|46 -82.5 55.21 -79.5
Canada - Ontario - between 85°30'W and 82°30'W and north of 46°N.|46 -85.5 55.59 -82.5
Canada - Ontario - between 88°30'W and 85°30'W.|47.17 -88.5 56.7 -85.5
Canada - Ontario - between 91°30'W and 88°30'W.|47.97 -91.5 56.9 -88.5
Canada - Ontario - between 94°30'W and 91°30'W.|48.06 -94.5 55.2 -91.5
Canada - Ontario - west of 94°30'W.|48.69 -95.16 53.24 -94.5
Canada - Ontario - west of 90°W.|48.03 -95.16 56.2 -90
Canada - Ontario - between 90°W and 84°W.|46.11 -90 56.9 -84
Canada - Ontario - between 84°W and 78°W.|41.67 -84 55.37 -78
Canada - Ontario - east of 78°W.|43.63 -78 46.25 -74.35
Canada - Quebec - between 78°W and 72°W.|44.99 -78 62.62 -72
Canada - Quebec - between 72°W and 66°W.|45.01 -72 61.8 -66
Canada - Quebec - between 66°W and 60°W.|47.16 -66 60.42 -60
Israel - onshore; Palestine Territory - onshore.|29.45 34.17 33.28 35.69
Côte d'Ivoire (Ivory Coast) east of 6°W.|4.92 -6 10.46 -2.48
Côte d'Ivoire (Ivory Coast) west of 6°W.|4.29 -8.61 10.74 -6
Vietnam - onshore west of 108°E.|8.33 102.14 23.4 108
Vietnam - onshore east of 108°E.|10.43 108 21.56 109.53
Namibia - Walvis Bay.|-23.15 14.35 -22.68 14.6
South Africa - onshore west of 18°E.|-33.1 16.45 -28.03 18
South Africa - onshore between 18°E and 20°E.|-34.88 17.99 -28.38 20
South Africa - onshore between 20°E and 22°E.|-34.88 19.99 -24.76 22.01
South Africa - onshore between 22°E and 24°E.|-34.26 22 -25.26 24.01
South Africa - onshore between 24°E and 26°E.|-34.26 24 -24.71 26.01
Lesotho - west of 28°E. South Africa - onshore between 26°E and 28°E.|-33.83 26 -22.92 28
Lesotho - east of 28°E. South Africa - onshore between 28°E and 30°E.|-33.03 27.99 -22.13 30.01
South Africa - onshore between 30°E and 32°E. Eswatini (Swaziland).|-31.38 29.99 -22.22 32.02
South Africa - east of 32°E.|-28.94 31.95 -26.8 32.95
Liechtenstein; Switzerland.|45.82 5.96 47.81 10.49
Iran - Taheri refinery site.|27.39 52.5 27.61 52.71
Iran - west of 48°E.|30.99 44.03 39.78 48
Iran - onshore and offshore between 48°E and 54°E.|25.47 48 39.71 54
Iran - onshore between 54°E and 60°E, Gulf offshore between of 54°E and Strait of Hormuz.|25.32 54 38.29 60
Iran - onshore east of 60°E.|25.02 60 37.06 63.34
Spain - mainland onshore.|35.95 -9.37 43.82 3.39
Czechia; Slovakia.|47.73 12.09 51.06 22.56
Trinidad and Tobago - Tobago - onshore.|11.08 -60.9 11.41 -60.44
Trinidad and Tobago - Trinidad - onshore.|9.99 -61.98 10.9 -60.85
Libya - west of 10°E.|25.37 9.31 30.49 10.01
Libya - onshore between 10°E and 12°E.|23.51 10 33.23 12
Libya - onshore between 12°E and 14°E.|22.8 12 33.06 14
Libya - onshore between 14°E and 16°E.|22.61 14 32.79 16
Libya - onshore between 16°E and 18°E.|22.51 16 31.34 18.01
Libya - onshore between 18°E and 20°E.|21.54 18 32.17 20
Libya - onshore between 20°E and 22°E.|20.54 20 33 22
Libya - onshore between 22°E and 24°E.|19.5 22 32.97 24
Libya - onshore east of 24°E.|19.99 24 32.15 25.21
Libya - onshore west of 12°E.|23.51 9.31 33.23 12
Libya - onshore between 12°E and 18°E.|22.51 12 33.06 18.01
Libya - onshore between 18°E and 24°E.|19.5 17.99 33 24
Argentina - Mendoza and Neuquen provinces between 70°30'W and 67°30'W - Neuquen and Cuyo basins.|-43.41 -70.51 -31.91 -67.49
Argentina - Chibut province between 70°30'W and 67°30'W and south of approximately 42°30'S and Santa Cruz province between 70°30'W and 67°30'W and north of approximately 50°20'S.|-50.34 -70.5 -42.49 -67.49
Argentina - Tierra del Fuego onshore west of 67°30'W.|-54.9 -68.64 -52.59 -67.5
Argentina - Tierra del Fuego offshore Atlantic west of 66°W.|-54.61 -68.62 -51.65 -66
Libya - onshore west of 15°E.|22.61 9.31 33.23 15
Tunisia - offshore.|33.22 7.81 38.41 13.67
Yemen - between 42°E and 48°E, onshore and offshore.|11.57 42 17.95 48.01
Yemen - between 48°E and 54°E, onshore and offshore.|9.45 48 19 54.01
Vietnam - onshore Vung Tau area.|9.03 105.49 11.04 107.58
Vietnam - offshore - Cuu Long basin and northwestern part of Nam Con Son basin.|7.99 106.54 11.15 110
Guinea-Bissau - onshore.|10.87 -16.77 12.69 -13.64
Republic of Korea (South Korea) - onshore east of 128°E.|34.49 128 38.64 129.65
Republic of Korea (South Korea) - between 126°E and 128°E - mainland and nearshore.|33.96 126 38.33 128
Republic of Korea (South Korea) - onshore between 124°E and 126°E.|33.99 124.53 38.04 126
Qatar - onshore.|24.55 50.69 26.2 51.68
Greece - onshore.|34.88 19.57 41.75 28.3
Venezuela - Maracaibo area, onshore and offshore in lake.|10 -72.25 11 -71.5
Venezuela - Maracaibo area offshore blocks I, II and III.|10 -71.5 10.51 -71.17
New Zealand - North Island - Mount Eden meridional circuit area.|-39.01 171.99 -34.1 176.12
New Zealand - North Island - Bay of Plenty meridional circuit area.|-39.13 175.75 -37.22 177.23
New Zealand - North Island - Poverty Bay meridional circuit area.|-39.04 176.73 -37.49 178.63
New Zealand - North Island - Hawkes Bay meridional circuit and Napier vertical crs area.|-40.57 175.8 -38.87 178.07
New Zealand - North Island - Taranaki meridional circuit area.|-39.78 173.68 -38.4 175.44
New Zealand - North Island - Tuhirangi meridional circuit area.|-39.55 174.88 -38.87 176.33
New Zealand - North Island - Wanganui meridional circuit area.|-40.97 174.4 -39.46 176.27
New Zealand - North Island - Wairarapa meridional circuit area.|-41.67 175.01 -40.29 176.55
New Zealand - North Island - Wellington meridional circuit area.|-41.5 174.52 -40.91 175.36
New Zealand - South Island - Collingwood meridional circuit area.|-41.22 172.16 -40.44 173.13
New Zealand - South Island - Nelson meridional circuit area.|-42.18 172.4 -40.66 174.08
New Zealand - South Island - Karamea meridional circuit area.|-41.49 171.96 -40.75 172.7
New Zealand - South Island - Buller meridional circuit area.|-42.19 171.27 -41.42 172.41
New Zealand - South Island - Grey meridional circuit area.|-42.74 171.15 -41.5 172.75
New Zealand - South Island - Amuri meridional circuit area.|-42.95 171.88 -42.09 173.55
New Zealand - South Island - Marlborough meridional circuit area.|-42.65 172.95 -40.85 174.46
New Zealand - South Island - Hokitika meridional circuit area.|-43.23 170.39 -42.41 171.89
New Zealand - South Island - Okarito meridional circuit area.|-43.85 169.21 -43 170.89
New Zealand - South Island - Jacksons Bay meridional circuit area.|-44.4 168.02 -43.67 170.01
New Zealand - South Island - Mount Pleasant meridional circuit area.|-43.96 171.11 -42.69 173.38
New Zealand - South Island - Gawler meridional circuit area.|-44.25 170.68 -43.13 172.26
New Zealand - South Island - Timaru meridional circuit area.|-44.98 169.82 -43.35 171.55
New Zealand - South Island - Lindis Peak meridional circuit area.|-45.4 168.62 -43.71 170.24
New Zealand - South Island - Mount Nicholas meridional circuit area.|-45.58 167.72 -44.29 169.11
New Zealand - South Island - Mount York meridional circuit area.|-46.33 166.37 -44.53 168.21
New Zealand - South Island - Observation Point meridional circuit area.|-45.82 169.77 -44.61 171.24
New Zealand - South Island - North Taieri meridional circuit area.|-46.73 168.64 -45.23 170.87
New Zealand - Stewart Island; South Island - Bluff meridional circuit area.|-47.33 167.29 -45.33 168.97
New Zealand - offshore between 162°E and 168°E.|-55.89 162 -39.68 168
New Zealand - offshore between 168°E and 174°E.|-55.95 168 -30.78 174
New Zealand - offshore between 174°E and 180°E.|-54.32 174 -26.42 180
Ghana - onshore.|4.67 -3.25 11.16 1.23
Ghana - offshore.|1.4 -3.79 6.06 2.1
Canada - Quebec.|44.99 -79.85 62.62 -57.1
France - onshore and offshore, mainland and Corsica (France métropolitaine including Corsica).|41.15 -9.86 51.56 10.38
Ireland - onshore. United Kingdom (UK) - Northern Ireland (Ulster) - onshore.|51.39 -10.56 55.43 -5.34
Sierra Leone - Freetown Peninsula.|8.32 -13.34 8.55 -13.13
Sierra Leone - onshore west of 12°W.|7.15 -13.35 9.94 -12
Sierra Leone - onshore east of 12°W.|6.88 -12 10 -10.26
Côte d'Ivoire (Ivory Coast) - offshore.|1.02 -7.55 5.19 -3.11
Luxembourg.|49.44 5.73 50.19 6.53
Poland - northeast - onshore north of 51°20'N and east of 19°E.|51.33 19 54.51 23.95
Poland - northwest - onshore north of 52°10'N and west of 20°E.|52.16 14.14 54.89 20
Poland - southwest - south of 53°20'N and west of 19°05'E.|49.39 14.14 53.34 19.09
Poland - south central - between 49°20'N and 51°20'N, 18°20'E and 19°40'E.|49.39 18.33 51.34 19.67
Poland - onshore and offshore west of 16°30'E.|50.26 14.14 55.35 16.5
Poland - onshore and offshore between 16°30'E and 19°30'E.|49.39 16.5 55.93 19.5
Poland - onshore and offshore between 19°30'E and 22°30'E.|49.09 19.5 54.55 22.5
Poland - east of 22°30'E.|49 22.5 54.41 24.15
Poland - onshore and offshore.|49 14.14 55.93 24.15
Portugal - western Azores onshore - Flores, Corvo.|39.3 -31.34 39.77 -31.02
Portugal - central Azores onshore - Faial, Graciosa, Pico, Sao Jorge, Terceira.|38.32 -28.9 39.14 -26.97
Portugal - eastern Azores onshore - Sao Miguel, Santa Maria, Formigas.|36.87 -25.92 37.96 -24.72
New Zealand - North Island, South Island, Stewart Island - onshore.|-47.33 166.37 -34.1 178.63
American Samoa - Tutuila, Aunu'u, Ofu, Olesega, Ta'u and Rose islands.|-14.59 -170.88 -14.11 -168.09
Denmark - Jutland and Funen - onshore.|54.67 8 57.8 11.29
Denmark - Zealand and Lolland (onshore).|54.51 10.79 56.79 12.69
Denmark - Bornholm onshore.|54.94 14.59 55.38 15.25
Canada - New Brunswick.|44.56 -69.05 48.07 -63.7
Venezuela - west of 72°W.|7.02 -73.38 11.62 -71.99
Venezuela - between 72°W and 66°W, onshore and offshore.|0.73 -72 15.64 -66
Venezuela - east of 66°W, onshore and offshore.|0.64 -66 16.75 -58.95
United States (USA) - Tennessee|34.98 -90.31 36.68 -81.65
United States (USA) - Kentucky|37.71 -85.96 39.15 -82.47
Türkiye (Turkey) - west of 28°30'E, onshore.|36.5 25.62 42.11 28.5
Türkiye (Turkey) - between 28°30'E and 31°30'E, onshore.|36.06 28.5 41.46 31.5
Türkiye (Turkey) - between 31°30'E and 34°30'E, onshore.|35.97 31.5 42.07 34.5
Türkiye (Turkey) - between 34°30'E and 37°30'E, onshore.|35.81 34.5 42.15 37.5
Türkiye (Turkey) - between 37°30'E and 40°30'E, onshore.|36.66 37.5 41.19 40.5
Türkiye (Turkey) - between 40°30'E and 43°30'E, onshore.|37.02 40.5 41.6 43.5
Türkiye (Turkey) - east of 43°30'E.|36.97 43.5 41.02 44.83
Romania - offshore.|43.44 28.64 45.2 31.41
Cameroon - coastal area.|2.16 8.45 4.99 10.4
Greenland - southwest coast between 54°W and 48°W.|60.63 -54 73.05 -48
Greenland - southwest coast east of 48°W.|59.74 -48 62.05 -42.52
Greenland - east coast onshore - between 69°N and 72°N.|69 -29.69 72 -21.32
Canada - New Brunswick and Nova Scotia - west of 66°W.|43.64 -69 48.07 -66
Canada - New Brunswick and Nova Scotia east of 66°W; Prince Edward Island.|43.41 -66 47.98 -59.73
Greenland - east coast onshore - between 68°N and 69°N.|68.66 -26.99 69 -25.14
United States (USA) - Arizona - counties Apache; Cochise; Gila; Graham; Greenlee; Navajo.|31.33 -111.71 37.01 -109.04
United States (USA) - Arizona - counties Coconino; Maricopa; Pima; Pinal; Santa Cruz; Yavapai.|31.33 -113.35 37.01 -110.44
United States (USA) - Arizona - counties of La Paz; Mohave; Yuma.|32.05 -114.81 37 -112.52
United States (USA) - California - counties Del Norte; Humboldt; Lassen; Modoc; Plumas; Shasta; Siskiyou; Tehama; Trinity.|39.59 -124.45 42.01 -119.99
United States (USA) - California|38.02 -124.06 40.16 -119.54
United States (USA) - California|36.73 -123.02 38.71 -117.83
United States (USA) - California - counties Fresno; Inyo; Kings; Monterey; San Benito; Tulare.|35.78 -122.01 37.58 -115.62
United States (USA) - California - counties Kern; Los Angeles; San Bernardino; San Luis Obispo; Santa Barbara; Ventura.|32.76 -121.42 35.81 -114.12
United States (USA) - California - counties Imperial; Orange; Riverside; San Diego.|32.53 -118.15 34.08 -114.42
United States (USA) - Colorado|39.56 -109.06 41.01 -102.04
United States (USA) - Colorado|38.14 -109.06 40.09 -102.04
United States (USA) - Colorado|36.98 -109.06 38.68 -102.04
United States (USA) - Connecticut - counties of Fairfield; Hartford; Litchfield; Middlesex; New Haven; New London; Tolland; Windham.|40.98 -73.73 42.05 -71.78
United States (USA) - Delaware - counties of Kent; New Castle; Sussex.|38.44 -75.8 39.85 -74.97
United States (USA) - Florida|24.41 -82.33 30.83 -79.97
United States (USA) - Florida|26.27 -83.34 29.6 -81.13
United States (USA) - Florida|29.21 -87.63 31.01 -82.04
United States (USA) - Georgia|30.36 -83.47 34.68 -80.77
United States (USA) - Georgia|30.62 -85.61 35.01 -82.99
United States (USA) - Idaho|41.99 -113.24 44.75 -111.04
United States (USA) - Idaho - counties of Blaine; Butte; Camas; Cassia; Custer; Gooding; Jerome; Lemhi; Lincoln; Minidoka; Twin Falls.|41.99 -115.3 45.7 -112.67
United States (USA) - Idaho|41.99 -117.24 49.01 -114.32
United States (USA) - Kentucky|36.49 -89.57 38.17 -81.95
United States (USA) - Maryland|37.97 -79.49 39.73 -74.97
United States (USA) - Massachusetts onshore|41.46 -73.5 42.89 -69.86
United States (USA) - Massachusetts offshore - counties of Dukes; Nantucket.|41.19 -70.91 41.51 -69.89
United States (USA) - Michigan north of approximately 45°45'N|45.08 -90.42 48.32 -83.44
United States (USA) - Michigan|43.8 -87.06 45.92 -82.27
United States (USA) - Michigan|41.69 -87.2 44.22 -82.13
United States (USA) - Mississippi|30.01 -89.97 35.01 -88.09
United States (USA) - Mississippi|31 -91.65 35.01 -89.37
United States (USA) - Montana|44.35 -116.07 49.01 -104.04
United States (USA) - New Mexico - counties of Chaves; Colfax; Curry; De Baca; Eddy; Guadalupe; Harding; Lea; Mora; Quay; Roosevelt; San Miguel; Union.|32 -105.72 37 -102.99
United States (USA) - New Mexico - counties of Bernalillo; Dona Ana; Lincoln; Los Alamos; Otero; Rio Arriba; Sandoval; Santa Fe; Socorro; Taos; Torrance; Valencia.|31.78 -107.73 37 -104.84
United States (USA) - New Mexico - counties of Catron; Cibola; Grant; Hidalgo; Luna; McKinley; San Juan; Sierra.|31.33 -109.06 37 -106.32
United States (USA) - New York mainland|40.88 -75.87 45.02 -73.23
United States (USA) - New York|41.99 -77.75 44.41 -75.06
United States (USA) - New York - counties of Allegany; Cattaraugus; Chautauqua; Erie; Genesee; Livingston; Monroe; Niagara; Orleans; Wyoming.|41.99 -79.77 43.64 -77.36
United States (USA) - New York - counties of Bronx; Kings; Nassau; New York; Queens; Richmond; Suffolk.|40.47 -74.26 41.3 -71.8
United States (USA) - North Carolina|33.83 -84.33 36.59 -75.38
United States (USA) - North Dakota|47.15 -104.07 49.01 -96.83
United States (USA) - North Dakota|45.93 -104.05 47.83 -96.55
United States (USA) - Oklahoma|35.27 -103 37.01 -94.42
United States (USA) - Oklahoma|33.62 -100 35.57 -94.42
United States (USA) - Oregon|43.95 -124.17 46.26 -116.47
United States (USA) - Oregon - counties of Coos; Crook; Curry; Deschutes; Douglas; Harney; Jackson; Josephine; Klamath; Lake; Lane; Malheur.|41.98 -124.6 44.56 -116.9
United States (USA) - Pennsylvania|40.6 -80.53 42.53 -74.7
United States (USA) - Pennsylvania|39.71 -80.53 41.18 -74.72
United States (USA) - South Carolina|32.05 -83.36 35.21 -78.52
United States (USA) - Texas|34.3 -103.03 36.5 -99.99
United States (USA) - Texas|31.72 -103.07 34.58 -94
United States (USA) - Texas|29.78 -106.66 32.27 -93.5
United States (USA) - Texas|27.78 -105 30.67 -93.76
United States (USA) - Texas|25.83 -100.2 28.21 -96.85
United States (USA) - Utah - counties of Box Elder; Cache; Daggett; Davis; Morgan; Rich; Summit; Weber.|40.55 -114.04 42.01 -109.04
United States (USA) - Utah - counties of Carbon; Duchesne; Emery; Grand; Juab; Millard; Salt Lake; Sanpete; Sevier; Tooele; Uintah; Utah; Wasatch.|38.49 -114.05 41.08 -109.04
United States (USA) - Utah - counties of Beaver; Garfield; Iron; Kane; Piute; San Juan; Washington; Wayne.|36.99 -114.05 38.58 -109.04
United States (USA) - Virginia|37.77 -80.06 39.46 -76.51
United States (USA) - Virginia|36.54 -83.68 38.28 -75.31
United States (USA) - Washington|47.08 -124.79 49.05 -117.02
United States (USA) - Washington|45.54 -124.4 47.61 -116.91
United States (USA) - Wisconsin - counties of Ashland; Bayfield; Burnett; Douglas; Florence; Forest; Iron; Oneida; Price; Sawyer; Vilas; Washburn.|45.37 -92.89 47.31 -88.05
United States (USA) - Wisconsin|43.98 -92.89 45.8 -86.25
United States (USA) - Wisconsin|42.48 -91.43 44.33 -86.95
Canada - Prince Edward Island.|45.9 -64.49 47.09 -61.9
Canada - Nova Scotia - east of 63°W.|44.64 -63 47.08 -59.73
Canada - Nova Scotia - west of 63°W.|43.41 -66.28 46.02 -63
Greenland - Ammassalik area onshore.|65.52 -38.86 65.91 -36.81
Greenland - west coast onshore - between 78°N and 79°N.|78 -73.29 79 -65.24
Greenland - west coast - between 75°N and 78°N.|75 -72.79 78 -56.31
Greenland - west coast onshore - between 72°N and 75°N.|72 -58.21 75 -52.02
Greenland - west coast onshore - between 69°N and 72°N.|69 -56.06 72 -49.11
Greenland - west coast onshore - between 66°N and 69°N.|66 -54.09 69 -49.4
Greenland - west coast onshore - between 63°N and 66°N.|63 -53.7 66 -49.17
Greenland - onshore southwest coastal area south of 63°N.|59.74 -50.72 63 -42.52
Indonesia - southern Java Sea offshore northwest Java.|-6.89 105.77 -4.07 110.01
Indonesia - offshore Madura Strait and western Bali Sea.|-8.46 112.8 -6.8 117.01
Indonesia - West Papua (formerly Irian Jaya) - Tangguh.|-2.94 131.89 -1.97 133.82
Nigeria - offshore.|1.92 2.66 6.38 8.49
Cameroon - Garoua area.|8.92 12.9 9.87 14.19
Cameroon - N'Djamena area.|11.7 14.17 12.77 15.09
Trinidad and Tobago - Trinidad - onshore and offshore.|9.83 -62.09 11.51 -60
Argentina - Tierra del Fuego offshore Atlantic east of 66°W.|-54.93 -66 -51.36 -61.49
Venezuela - onshore.|0.64 -73.38 12.25 -59.8
Saudi Arabia - onshore.|16.37 34.51 32.16 55.67
China - Hong Kong - onshore and offshore.|22.13 113.76 22.58 114.51
China - west of 78°E.|35.42 73.62 41.07 78.01
China - between 78°E and 84°E.|29.16 77.98 47.23 84
China - between 84°E and 90°E.|27.32 84 49.18 90
China - between 90°E and 96°E.|27.71 90 47.9 96.01
China - between 96°E and 102°E.|21.13 96 43.18 102.01
China - onshore between 102°E and 108°E.|21.53 102 42.47 108
China - onshore between 108°E and 114°E.|18.11 108 45.11 114
China - onshore between 114°E and 120°E.|22.14 114 51.52 120
China - onshore between 120°E and 126°E.|26.34 120 53.56 126
China - onshore between 126°E and 132°E.|40.89 126 52.79 132
China - east of 132°E.|45.02 132 48.4 134.77
China - west of 76°30'E.|35.81 73.62 40.65 76.5
China - between 76°30'E and 79°30'E.|31.03 76.5 41.83 79.5
China - between 79°30'E and 82°30'E.|29.95 79.5 45.88 82.51
China - between 82°30'E and 85°30'E.|28.26 82.5 47.23 85.5
China - between 85°30'E and 88°30'E.|27.8 85.5 49.18 88.5
China - between 88°30'E and 91°30'E.|27.32 88.49 48.42 91.51
China - between 91°30'E and 94°30'E.|27.71 91.5 45.13 94.5
China - between 94°30'E and 97°30'E.|28.23 94.5 44.5 97.51
China - between 97°30'E and 100°30'E.|21.43 97.5 42.76 100.5
China - between 100°30'E and 103°30'E.|21.13 100.5 42.69 103.5
China - between 103°30'E and 106°30'E.|22.5 103.5 42.21 106.51
China - onshore between 106°30'E and 109°30'E.|18.19 106.5 42.47 109.51
China - onshore between 109°30'E and 112°30'E.|18.11 109.5 45.11 112.5
China - onshore between 112°30'E and 115°30'E.|21.52 112.5 45.45 115.5
China - onshore between 115°30'E and 118°30'E.|22.6 115.5 49.88 118.5
China - onshore between 118°30'E and 121°30'E.|24.43 118.5 53.33 121.5
China - onshore between 121°30'E and 124°30'E.|28.22 121.5 53.56 124.5
China - onshore between 124°30'E and 127°30'E.|40.19 124.5 53.2 127.5
China - between 127°30'E and 130°30'E.|41.37 127.5 50.25 130.5
China - between 130°30'E and 133°30'E.|42.42 130.5 48.88 133.5
China - east of 133°30'E.|45.85 133.5 48.4 134.77
Finland - onshore between 19°30'E and 22°30'E.|59.76 19.5 69.33 22.5
Finland - onshore between 22°30'E and 25°30'E.|59.75 22.5 68.9 25.5
Finland - onshore between 25°30'E and 28°30'E.|60.18 25.5 70.09 28.51
Finland - between 28°30'E and 31°30'E.|60.94 28.5 69.81 31.5
Yemen - South Yemen onshore mainland west of 48°E.|12.54 43.37 17.95 48.01
Yemen - South Yemen onshore mainland east of 48°E.|13.94 48 19 53.14
Germany - states of former East Germany - west of 10°30'E - Thuringen.|50.35 9.92 51.56 10.5
Czechia - west of 13°30'E. Germany - states of former East Germany onshore - between 10°30'E and 13°30'E - Brandenburg; Mecklenburg-Vorpommern; Sachsen; Sachsen-Anhalt; Thuringen.|48.97 10.5 54.74 13.5
Czechia - between 13°30'E and 16°30'E. Germany - states of former East Germany onshore east of 13°30'E - Brandenburg; Mecklenburg-Vorpommern; Sachsen. Hungary - west of 16°30'E.|46.54 13.5 54.72 16.5
Japan - onshore - Kyushu west of approximately 130°E - Nagasaki-ken; islands of Kagoshima-ken between 27°N and 32°N and between 128°18'E and 130°E (between 128°18'E and 30°13'E for Amami islands).|26.96 128.17 34.74 130.46
Japan - onshore - Kyushu east of approximately 130°E - Fukuoka-ken; Saga-ken; Kumamoto-ken; Oita-ken; Miyazaki-ken; Kagoshima-ken (except for area within Japan Plane Rectangular Coordinate System zone I).|30.18 129.76 33.99 132.05
Japan - onshore - Honshu west of approximately 133°15'E - Yamaguchi-ken; Shimane-ken; Hiroshima-ken.|33.72 130.81 36.38 133.49
Japan - onshore - Shikoku - Kagawa-ken; Ehime-ken; Tokushima-ken; Kochi-ken.|32.69 131.95 34.45 134.81
Japan - onshore - Honshu between approximately 133°15'E and 135°10'E - Hyogo-ken; Tottori-ken; Okayama-ken.|34.13 133.13 35.71 135.47
Japan - onshore - Honshu between approximately 135°10'E and 136°45'E - Kyoto-fu; Osaka-fu; Fukui-ken; Shiga-ken; Mie-ken; Nara-ken; Wakayama-ken.|33.4 134.86 36.33 136.99
Japan - onshore - Honshu between approximately 136°15'E and 137°45'E - Ishikawa-ken; Toyama-ken; Gifu-ken; Aichi-ken.|34.51 136.22 37.58 137.84
Japan - onshore - Honshu between approximately 137°45'E and 139°E - Niigata-ken; Nagano-ken; Yamanashi-ken; Shizuoka-ken.|34.54 137.32 38.58 139.91
Japan - onshore - Honshu - Tokyo-to. (Excludes offshore island areas of Tokyo-to covered by Japan Plane Rectangular Coordinate System zones XIV, XVIII and XIX).|29.31 138.4 37.98 141.11
Japan - onshore - Honshu north of 38°N approximately - Aomori-ken; Akita-ken; Yamagata-ken; Iwate-ken; Miyagi-ken.|37.73 139.49 41.58 142.14
Japan - onshore - Hokkaido west of approximately 141°E - Otaru city; Hakodate city; Date city; Usu-gun and Abuta-gun of Iburi-shicho; Hiyama-shicho; Shiribeshi-shicho; Oshima-shicho.|41.34 139.34 43.42 141.46
Japan - onshore - Hokkaido between approximately 141°E and 143°E - Sapporo city; Asahikawa city; Wakkanai city; Rumoi city; Bibai city; Yubari city; Iwamizawa city; Tomakomai city; Muroran city; Shibetsu city; Nayoro city; Ashibetsu city; Akabira city; Mikasa city; Takikawa city; Sunagawa city; Ebetsu city; Chitose city; Utashinai city; Fukagawa city; Monbetsu city; Furano city; Noboribetsu city; Eniwa city; Ishikari-shicho; Monbetsu-gun of Abashiri-shicho; Kamikawa-shicho; Soya-shicho; Hidaka-shicho; Iburi-shicho (except Usu-gun and Abuta-gun); Sorachi-shicho; Rumoi-shicho.|42.15 140.89 45.54 143.61
Japan - onshore - Hokkaido east of approximately 143°E - Kitami city; Obihiro city; Kushiro city; Abashiri city; Nemuro city; Nemuro-shicho; Kushiro-shicho; Abashiri-shicho (except Monbetsu-gun); Tokachi-shicho.|41.87 142.61 44.4 145.87
Japan - onshore - Tokyo-to south of 28°N and between 140°30'E and 143°E.|24.67 141.2 27.8 142.33
Japan - onshore - Okinawa-ken between 126°E and 130°E.|26.02 126.63 26.91 128.4
Japan - onshore - Okinawa-ken west of 126°E.|23.98 122.83 24.94 125.51
Japan - onshore Okinawa-ken east of 130°E.|24.4 131.12 26.01 131.38
Japan - onshore - Tokyo-to south of 28°N and west of 140°30'E.|20.37 136.02 20.48 136.16
Japan - onshore - Tokyo-to south of 28°N and east of 143°E - Minamitori-shima (Marcus Island).|24.22 153.91 24.35 154.05
Albania - onshore.|39.64 19.22 42.67 21.06
Russian Federation - onshore west of 24°E - Kaliningrad.|54.32 19.57 55.32 22.87
Russian Federation - onshore between 24°E and 30°E.|55.69 26.61 69.47 30
Russian Federation - onshore between 30°E and 36°E.|50.34 30 70.02 36
Russian Federation - onshore between 36°E and 42°E.|43.18 36 69.23 42.01
Russian Federation - onshore between 42°E and 48°E.|41.19 42 80.91 48
Russian Federation - onshore between 48°E and 54°E.|41.39 48 81.4 54
Russian Federation - onshore between 54°E and 60°E.|50.47 54 81.91 60
Russian Federation - onshore between 60°E and 66°E.|50.66 60 81.77 66
Russian Federation - onshore between 66°E and 72°E .|54.1 66 77.07 72
Russian Federation - onshore between 72°E and 78°E.|53.17 72 79.71 78
Russian Federation - onshore between 78°E and 84°E.|50.69 78 81.03 84
Russian Federation - onshore between 84°E and 90°E.|49.07 84 81.27 90
Russian Federation - onshore between 90°E and 96°E.|49.89 90 81.35 96
Russian Federation - onshore between 96°E and 102°E.|49.73 96 81.32 102
Russian Federation - onshore between 102°E and 108°E.|49.64 102 79.48 108
Russian Federation - onshore between 108°E and 114°E.|49.14 108 76.81 114
Russian Federation - onshore between 114°E and 120°E.|49.51 114 75.96 120
Russian Federation - onshore between 120°E and 126°E.|51.51 120 74 126
Russian Federation - onshore between 126°E and 132°E.|42.25 126 73.61 132
Russian Federation - onshore between 132°E and 138°E.|42.63 132 76.15 138
Russian Federation - onshore between 138°E and 144°E.|45.84 138 76.27 144
Russian Federation - onshore between 144°E and 150°E.|43.6 144 76.82 150
Russian Federation - onshore between 150°E and 156°E.|45.77 150 76.26 156
Russian Federation - onshore between 156°E and 162°E.|50.27 156 77.2 162
Russian Federation - onshore between 162°E and 168°E.|54.47 162 70.03 168
Russian Federation - onshore between 168°E and 174°E.|54.45 168 70.19 174
Russian Federation - onshore between 174°E and 180°E .|61.65 174 71.59 180
Russian Federation - onshore between 180°E and 174°W.|64.35 -180 71.65 -174
Russian Federation - onshore east of 174°W.|64.2 -174 67.18 -168.97
Belarus, Estonia, Latvia, Lithuania and Ukraine - onshore west of 24°E. Russian Federation - Kaliningrad onshore.|47.95 19.57 59.44 24
Estonia; Latvia and Lithuania - onshore east of 24°E; Belarus, Moldova, Russian Federation and Ukraine - onshore 24°E to 30°E.|45.18 24 69.47 30.01
Belarus and Moldova - east of 30°E; Russian Federation and Ukraine - onshore 30°E to 36°E.|44.32 30 70.02 36
Georgia - onshore west of 36°E; Russian Federation - onshore 36°E to 42°E; Ukraine - onshore east of 36°E.|41.43 36 69.23 42
Armenia - west of 48°E; Azerbaijan - west of 48°E; Georgia - east of 42°E; Kazakhstan - west of 48°E; Russian Federation - onshore 42°E to 48°E.|38.84 42 80.91 48.01
Azerbaijan - east of 48°E; Kazakhstan - 48°E to 54°E; Russian Federation - 48°E to 54°E; Turkmenistan - west of 54°E. Includes Caspian Sea (considered a lake rather than offshore).|37.34 48 81.4 54
Kazakhstan; Russian Federation - onshore; Turkmenistan - 54°E to 60°E; Uzbekistan - west of 60°E.|37.05 54 81.91 60
Kazakhstan; Russian Federation - onshore; Uzbekistan - 60°E to 66°E; Turkmenistan - east of 60°E.|35.14 60 81.77 66
Kazakhstan, Russian Federation onshore and Uzbekistan - 66°E to 72°E; Kyrgyzstan and Tajikistan - west of 72°E.|36.67 66 77.07 72
Kazakhstan; Kyrgyzstan; Russian Federation onshore - 72°E to 78°E; Tajikistan and Uzbekistan - east of 72°E.|36.79 72 79.71 78
Kazakhstan and Russian Federation onshore - 78°E to 84°E; Kyrgyzstan - east of 78°E.|41.04 78 81.03 84.01
Kazakhstan - east of 84°E; Russian Federation - onshore 84°E to 90°E.|46.82 84 81.27 90
Estonia, Latvia, Lithuania, Russian Federation (Kaliningrad) and Ukraine - onshore between 19°30'E and 22°30'E.|48.24 19.57 59.1 22.5
Belarus, Estonia, Latvia, Lithuania, Russian Federation (Kaliningrad) and Ukraine - onshore between 22°30'E and 25°30'E.|47.71 22.5 59.75 25.5
Belarus, Estonia, Latvia, Lithuania, Moldova, Russian Federation and Ukraine - onshore between 25°30'E and 28°30'E.|45.26 25.49 68.93 28.51
Belarus, Moldova, Russian Federation and Ukraine - onshore between 28°30'E and 31°30'E.|45.18 28.5 69.85 31.5
Belarus, Russian Federation and Ukraine - onshore between 31°30'E and 34°30'E.|44.32 31.5 70.02 34.5
Russian Federation and Ukraine - onshore between 34°30'E and 37°30'E.|44.61 34.5 69.39 37.5
Georgia, Russian Federation and Ukraine - onshore between 37°30'E and 40°30'E.|43.07 37.5 68.8 40.5
Georgia, Russian Federation - onshore between 40°30'E and 43°30'E.|41.01 40.5 68.74 43.51
Armenia, Azerbaijan, Georgia and Russian Federation onshore - between 43°30'E and 46°30'E.|38.84 43.5 80.8 46.5
Azerbaijan, Georgia, Kazakhstan and Russian Federation onshore - between 46°30'E and 49°30'E.|38.31 46.5 80.91 49.5
Azerbaijan, Kazakhstan and Russian Federation onshore - between 49°30'E and 52°30'E.|37.66 49.5 81.22 52.5
Kazakhstan, Russian Federation onshore and Turkmenistan - between 52°30'E and 55°30'E.|37.33 52.5 81.41 55.5
Kazakhstan, Russian Federation onshore, Turkmenistan and Uzbekistan - between 55°30'E and 58°30'E.|37.64 55.5 81.89 58.5
Kazakhstan, Russian Federation onshore, Turkmenistan and Uzbekistan - between 58°30'E and 61°30'E.|35.51 58.5 81.91 61.5
Kazakhstan, Russian Federation onshore, Turkmenistan and Uzbekistan - between 61°30'E and 64°30'E.|35.14 61.5 81.77 64.5
Kazakhstan, Russian Federation onshore, Tajikistan, Turkmenistan and Uzbekistan - between 64°30'E and 67°30'E.|36.27 64.5 81.25 67.5
Kazakhstan, Kyrgyzstan, Russian Federation onshore, Tajikistan and Uzbekistan - between 67°30'E and 70°30'E.|36.93 67.5 77.07 70.5
Kazakhstan, Kyrgyzstan, Russian Federation onshore, Tajikistan and Uzbekistan - between 70°30'E and 73°30'E.|36.67 70.5 73.57 73.5
Kazakhstan, Kyrgyzstan, Russian Federation onshore and Tajikistan - between 73°30'E and 76°30'E.|37.22 73.5 79.71 76.5
Kazakhstan, Kyrgyzstan and Russian Federation onshore - between 76°30'E and 79°30'E.|40.44 76.5 81.03 79.5
Kazakhstan, Kyrgyzstan and Russian Federation onshore - between 79°30'E and 82°30'E.|41.82 79.5 81.03 82.5
Kazakhstan and Russian Federation onshore - between 82°30'E and 85°30'E.|45.11 82.5 77.56 85.5
Kazakhstan and Russian Federation onshore - between 85°30'E and 88°30'E.|47.05 85.5 77.16 88.5
Russian Federation - onshore between 88°30'E and 91°30'E.|49.44 88.5 81.28 91.5
Russian Federation - onshore between 91°30'E and 94°30'E.|50.16 91.5 81.26 94.5
Russian Federation - onshore between 94°30'E and 97°30'E.|49.73 94.5 81.35 97.5
Russian Federation - onshore between 97°30'E and 100°30'E.|49.79 97.5 80.9 100.5
Russian Federation - onshore between 100°30'E and 103°30'E.|50.17 100.5 79.71 103.5
Russian Federation - onshore between 103°30'E and 106°30'E.|50.13 103.5 79.21 106.5
Russian Federation - onshore between 106°30'E and 109°30'E.|49.25 106.5 78.4 109.5
Russian Federation - onshore between 109°30'E and 112°30'E.|49.14 109.5 76.81 112.5
Russian Federation - onshore between 112°30'E and 115°30'E.|49.49 112.5 76.7 115.5
Russian Federation - onshore between 115°30'E and 118°30'E.|49.51 115.5 74.43 118.5
Russian Federation - onshore between 118°30'E and 121°30'E.|49.87 118.5 73.63 121.5
Russian Federation - onshore between 121°30'E and 124°30'E.|53.18 121.5 74 124.5
Russian Federation - onshore between 124°30'E and 127°30'E.|49.88 124.5 74 127.5
Russian Federation - onshore between 127°30'E and 130°30'E.|42.67 127.5 73.59 130.5
Russian Federation - onshore between 130°30'E and 133°30'E.|42.25 130.5 71.99 133.5
Russian Federation - onshore between 133°30'E and 136°30'E.|42.74 133.5 75.9 136.5
Russian Federation - onshore between 136°30'E and 139°30'E.|44.76 136.5 76.27 139.5
Russian Federation - onshore between 139°30'E and 142°30'E.|45.84 139.5 76.23 142.5
Russian Federation - onshore between 142°30'E and 145°30'E.|43.61 142.5 75.98 145.5
Russian Federation - onshore between 145°30'E and 148°30'E.|43.6 145.5 76.76 148.5
Russian Federation - onshore between 148°30'E and 151°30'E.|45.21 148.5 76.82 151.5
Russian Federation - onshore between 151°30'E and 154°30'E.|46.72 151.5 76.26 154.5
Russian Federation - onshore between 154°30'E and 157°30'E.|49.02 154.5 77.2 157.5
Russian Federation - onshore between 157°30'E and 160°30'E.|51.36 157.5 71.12 160.5
Russian Federation - onshore between 160°30'E and 163°30'E.|54.34 160.5 70.98 163.5
Russian Federation - onshore between 163°30'E and 166°30'E.|54.69 163.5 69.82 166.5
Russian Federation - onshore between 166°30'E and 169°30'E.|54.45 166.5 70.07 169.5
Russian Federation - onshore between 169°30'E and 172°30'E.|59.86 169.5 70.19 172.5
Russian Federation - onshore between 172°30'E and 175°30'E.|60.99 172.5 70.02 175.5
Russian Federation - onshore between 175°30'E and 178°30'E.|62.09 175.5 71.1 178.5
Russian Federation - onshore between 178°30'W and 175°30'W.|64.74 -178.5 71.61 -175.5
Russian Federation - onshore between 175°30'W and 172°30'W.|64.2 -175.5 67.78 -172.5
Russian Federation - onshore between 172°30'W and 169°30'W.|64.35 -172.5 67.06 -169.57
Russian Federation - onshore between 169°30'W and 166°30'W.|65.7 -169.22 65.86 -168.97
Russian Federation - onshore between 178°30'E and 178°30'W.|62.24 178.5 71.65 -178.5
Russian Federation - Kaliningrad - onshore between 19°30'E and 22°30'E.|54.32 19.57 55.32 22.5
Russian Federation - onshore between 22°30'E and 25°30'E - Kaliningrad.|54.34 22.5 55.07 22.87
Russian Federation - onshore between 25°30'E and 28°30'E.|56.05 26.61 68.93 28.51
Russian Federation - onshore between 28°30'E and 31°30'E.|52.85 28.5 69.85 31.5
Russian Federation - onshore between 31°30'E and 34°30'E.|51.24 31.5 70.02 34.5
Russian Federation - onshore between 34°30'E and 37°30'E.|44.61 34.5 69.39 37.51
Russian Federation - onshore between 37°30'E and 40°30'E.|43.33 37.5 68.8 40.5
Russian Federation - onshore between 40°30'E and 43°30'E.|42.87 40.5 68.74 43.5
Russian Federation - onshore between 43°30'E and 46°30'E.|41.89 43.5 80.8 46.5
Russian Federation - onshore between 46°30'E and 49°30'E.|41.19 46.5 80.91 49.5
Russian Federation - onshore between 49°30'E and 52°30'E.|42.36 49.5 81.22 52.5
Russian Federation - onshore between 52°30'E and 55°30'E.|50.52 52.5 81.41 55.5
Russian Federation - onshore between 55°30'E and 58°30'E.|50.53 55.5 81.89 58.5
Russian Federation - onshore between 58°30'E and 61°30'E.|50.47 58.5 81.91 61.5
Russian Federation - onshore between 61°30'E and 64°30'E.|51.03 61.5 81.77 64.5
Russian Federation - onshore between 64°30'E and 67°30'E.|54.31 64.5 81.25 67.5
Russian Federation - onshore between 67°30'E and 70°30'E.|54.85 67.5 77.07 70.5
Russian Federation - onshore between 70°30'E and 73°30'E.|53.43 70.5 73.57 73.5
Russian Federation - onshore between 73°30'E and 76°30'E.|53.47 73.5 79.71 76.5
Russian Federation - onshore between 76°30'E and 79°30'E.|51.49 76.5 81.03 79.5
Russian Federation - onshore between 79°30'E and 82°30'E.|50.7 79.5 81.03 82.5
Russian Federation - onshore between 82°30'E and 85°30'E.|49.58 82.5 77.56 85.5
Russian Federation - onshore between 85°30'E and 88°30'E.|49.07 85.5 77.16 88.5
Mozambique - onshore west of 36°E.|-26.87 30.21 -11.41 36
Mozambique - onshore east of 36°E.|-18.98 35.99 -10.42 40.9
United States (USA) - Alabama east of approximately 86°37'W|30.99 -86.79 35 -84.89
United States (USA) - Alabama west of approximately 86°37'W|30.14 -88.48 35.02 -86.3
United States (USA) - Arkansas|34.67 -94.62 36.5 -89.64
United States (USA) - Arkansas|33.01 -94.48 35.1 -90.4
United States (USA) - Hawaii - island of Hawaii - onshore.|18.87 -156.1 20.33 -154.74
United States (USA) - Hawaii - Maui; Kahoolawe; Lanai; Molokai - onshore.|20.45 -157.36 21.26 -155.93
United States (USA) - Hawaii - Oahu - onshore.|21.2 -158.33 21.75 -157.61
United States (USA) - Hawaii - Kauai - onshore.|21.81 -159.85 22.29 -159.23
United States (USA) - Hawaii - Niihau - onshore.|21.73 -160.3 22.07 -159.99
United States (USA) - Illinois|37.06 -89.28 42.5 -87.02
United States (USA) - Illinois|36.98 -91.52 42.51 -88.93
United States (USA) - Indiana|37.95 -86.59 41.77 -84.78
United States (USA) - Indiana|37.77 -88.06 41.77 -86.24
United States (USA) - Iowa|41.85 -96.65 43.51 -90.15
United States (USA) - Iowa|40.37 -96.14 42.04 -90.14
United States (USA) - Kansas|38.52 -102.06 40.01 -94.58
United States (USA) - Kansas|36.99 -102.05 38.88 -94.6
United States (USA) - Louisiana|30.85 -94.05 33.03 -90.86
United States (USA) - Louisiana|28.85 -93.94 31.07 -88.75
United States (USA) - Maine - counties of Aroostook; Hancock; Knox; Penobscot; Piscataquis; Waldo; Washington.|43.88 -70.03 47.47 -66.91
United States (USA) - Maine - counties of Androscoggin; Cumberland; Franklin; Kennebec; Lincoln; Oxford; Sagadahoc; Somerset; York.|43.04 -71.09 46.58 -69.26
United States (USA) - Minnesota|46.64 -97.22 49.38 -89.49
United States (USA) - Minnesota|45.28 -96.86 47.48 -92.29
United States (USA) - Minnesota|43.49 -96.85 45.59 -91.21
United States (USA) - Missouri|35.98 -91.97 40.61 -89.1
United States (USA) - Missouri|36.48 -93.79 40.61 -91.41
United States (USA) - Missouri|36.48 -95.77 40.59 -93.48
United States (USA) - Nebraska|39.99 -104.06 43.01 -95.3
United States (USA) - Nevada - counties of Clark; Elko; Eureka; Lincoln; White Pine.|34.99 -117.01 42 -114.03
United States (USA) - Nevada - counties of Lander; Nye.|36 -118.19 41 -114.99
United States (USA) - Nevada - counties of Churchill; Douglas; Esmeralda; Humboldt; Lyon; Mineral; Pershing; Storey; Washoe.|36.95 -120 42 -116.99
United States (USA) - New Hampshire - counties of Belknap; Carroll; Cheshire; Coos; Grafton; Hillsborough; Merrimack; Rockingham; Strafford; Sullivan.|42.69 -72.56 45.31 -70.63
United States (USA) - New Jersey|38.87 -75.6 41.36 -73.88
United States (USA) - Ohio|40.1 -84.81 42.33 -80.51
United States (USA) - Ohio|38.4 -84.83 40.36 -80.7
United States (USA) - Rhode Island - counties of Bristol; Kent; Newport; Providence; Washington.|41.13 -71.85 42.02 -71.08
United States (USA) - South Dakota|44.14 -104.07 45.95 -96.45
United States (USA) - South Dakota|42.48 -104.06 44.79 -96.43
United States (USA) - Vermont|42.72 -73.44 45.03 -71.5
United States (USA) - West Virginia|38.76 -81.76 40.64 -77.72
United States (USA) - West Virginia|37.2 -82.65 39.17 -79.05
United States (USA) - Wyoming - counties of Albany; Campbell; Converse; Crook; Goshen; Laramie; Niobrara; Platte; Weston.|40.99 -106.33 45.01 -104.05
United States (USA) - Wyoming - counties of Big Horn; Carbon; Johnson; Natrona; Sheridan; Washakie.|40.99 -108.63 45.01 -106
United States (USA) - Wyoming - counties of Fremont; Hot Springs; Park; Sweetwater.|40.99 -111.06 45.01 -107.5
United States (USA) - Wyoming - counties of Lincoln; Sublette; Teton; Uinta.|40.99 -111.06 44.67 -109.04
Puerto Rico and US Virgin Islands - onshore.|17.62 -67.97 18.57 -64.51
Niger - southeast|12.8 7.81 16.7 14.9
Indonesia - east Kalimantan - Mahakam delta coastal and offshore shelf areas.|-1.24 116.72 0 117.99
Armenia and Georgia onshore west of 43°02'E.|41.37 39.99 43.59 43.04
Armenia and Georgia between 43°02'E and 46°02'E; Azerbaijan west of 46°02'E.|38.87 43.03 43.05 46.04
Armenia and Georgia east of 46°02'E; Azerbaijan between 46°02' and 49°02'E.|38.38 46.03 42.1 49.04
Azerbaijan east of 49°02'E.|37.89 49.03 42.59 51.73
Kazakhstan between 49°16'E and 52°16'E.|41.15 49.26 51.77 52.27
Kazakhstan between 52°16'E and 55°16'E.|41.46 52.26 51.79 55.27
Kazakhstan between 55°16'E and 58°16'E.|41.26 55.26 51.14 58.27
Portugal - Madeira, Porto Santo and Desertas islands - onshore.|32.35 -17.31 33.15 -16.23
Portugal - Selvagens islands (Madeira province) - onshore.|29.98 -16.11 30.21 -15.79
Canada - Newfoundland and Labrador between 60°W and 57°30'W; Canada - Quebec east of 60°W.|47.5 -60 55.38 -57.1
Canada - Quebec and Labrador between 63°W and 60°W.|47.16 -63 58.92 -60
Canada - Quebec and Labrador between 66°W and 63°W.|47.95 -66 60.52 -63
Canada - Quebec and Labrador between 69°W and 66°W.|47.31 -69 59 -66
Canada - Quebec between 75°W and 72°W.; Canada - Ontario - east of 75°W.|44.98 -75 62.53 -72
Canada - Quebec and Ontario - between 78°W and 75°W.|43.63 -78 62.65 -75
Canada - Quebec west of 78°W; Canada - Ontario - between 79°30'W and 78°W in area to north of 47°N; between 80°15'W and 78°W in area between 46°N and 47°N; between 81°W and 78°W in area south of 46°N.|42.26 -81 62.45 -78
Canada between 120°W and 114°W onshore and offshore - Alberta, British Columbia, Northwest Territories, Nunavut.|48.99 -120 83.5 -114
Canada between 114°W and 108°W onshore and offshore - Alberta, Northwest Territories, Nunavut, Saskatchewan.|48.99 -114 84 -108
Canada between 108°W and 102°W onshore and offshore - Northwest Territories, Nunavut, Saskatchewan.|48.99 -108 84 -102
Canada between 84°W and 78°W, onshore and offshore south of 84°N - Nunavut, Ontario and Quebec.|41.67 -84 84 -78
Canada between 78°W and 72°W, onshore and offshore south of 84°N - Nunavut, Ontario and Quebec.|43.63 -78 84 -72
Canada between 72°W and 66°W onshore and offshore - New Brunswick, Labrador, Nova Scotia, Nunavut, Quebec.|40.8 -72 84 -66
Canada between 66°W and 60°W onshore and offshore - New Brunswick, Labrador, Nova Scotia, Nunavut, Prince Edward Island, Quebec.|40.04 -66 84 -60
Canada between 60°W and 54°W - Newfoundland and Labrador; Nunavut; Quebec.|38.56 -60 84 -54
Portugal - mainland - onshore.|36.95 -9.56 42.16 -6.19
United States (USA) - Alaska.|51.3 172.42 71.4 -129.99
Guadeloupe - onshore - St Martin and St Barthélemy islands.|17.82 -63.21 18.17 -62.73
Guadeloupe - onshore - Basse-Terre, Grande-Terre, La Desirade, Marie-Galante, Les Saintes.|15.8 -61.85 16.55 -60.97
French Guiana - coastal area east of 54°W.|3.43 -54 5.81 -51.61
French Guiana - east of 54°W, onshore and offshore.|2.17 -54 8.88 -49.45
Martinique - onshore.|14.35 -61.29 14.93 -60.76
Reunion - onshore and offshore - east of 54°E.|-24.72 54 -18.28 58.24
French Polynesia - Society Islands - Moorea and Tahiti.|-17.93 -150 -17.41 -149.09
French Polynesia - Society Islands - Bora Bora, Huahine, Raiatea and Tahaa.|-16.96 -151.91 -16.17 -150.89
French Polynesia - Marquesas Islands - Nuku Hiva, Ua Huka and Ua Pou.|-9.57 -140.31 -8.72 -139.44
Mayotte - onshore.|-13.05 44.98 -12.61 45.35
New Caledonia - Loyalty Islands - Lifou.|-21.24 166.98 -20.62 167.52
Antarctica - Adelie Land - Petrels island.|-66.78 139.44 -66.1 141.5
Antarctica - Adelie Land - coastal area between 136°E and 142°E.|-67.13 136 -65.61 142
St Pierre and Miquelon - onshore.|46.69 -56.48 47.19 -56.07
Wallis and Futuna - Wallis.|-13.41 -176.25 -13.16 -176.07
United States (USA) - Oregon.|41.98 -124.6 46.26 -116.47
New Caledonia - Loyalty Islands - Mare - west of 168°E.|-21.71 167.75 -21.32 168
New Caledonia - Ile des Pins.|-22.73 167.36 -22.49 167.61
New Caledonia - Belep.|-19.85 163.54 -19.5 163.75
New Caledonia - Grande Terre - Noumea district.|-22.37 166.35 -22.19 166.54
Comoros - Njazidja (Grande Comore).|-11.99 43.16 -11.31 43.55
Indonesia - Kalimantan - onshore east coastal area including Mahakam delta coastal and offshore shelf areas.|-4.24 114.55 4.29 119.06
Indonesia - onshore - Bali, Java and western Sumatra.|-8.91 95.16 5.97 115.77
Indonesia - south west Sulawesi.|-6.54 118.71 -1.88 120.78
Italy - onshore and offshore - west of 12°E.|36.53 5.93 47.04 12
Italy - onshore and offshore - east of 12°E including San Marino and Vatican City State.|34.76 12 47.1 18.99
Canada - British Columbia.|48.25 -139.04 60.01 -114.08
Sweden - onshore and offshore.|54.96 10.03 69.07 24.17
Sweden - communes west of approximately 12°45'E and south of approximately 60°N. See information source for map.|56.74 10.93 60.13 13.11
Sweden - communes between approximately 12°45'E and 14°15'E and south of approximately 62°10'N. See information source for map.|55.28 12.12 62.28 14.79
Sweden - communes between approximately 14°15'E and 15°45'E and south of approximately 61°30'N. See information source for map.|55.95 13.54 61.62 16.15
Sweden - communes between approximately 15°45'E and 17°15'E and south of approximately 62°20'N. See information source for map.|56.15 15.41 62.26 17.63
Sweden - communes east of approximately 17°15'E between approximately 60°40'N and 58°50'N. See information source for map.|58.66 17.08 60.7 19.61
Sweden - communes west of approximately 15°E and between approximately 61°35'N and 64°25'N. See information source for map.|61.55 11.93 64.39 15.55
Sweden - communes between approximately 15°E and 16°30'E and between approximately 60°30'N and 65°N. See information source for map.|60.44 13.66 65.13 17.01
Sweden - communes between approximately 14°20'E and 18°50'E and between approximately 67°10'N and 62°05'N. See information source for map.|62.12 14.31 67.19 19.04
Sweden - mainland communes between approximately 18°E and 19°30'E and between approximately 62°50'N and 66°N. Also Gotland. See information source for map.|56.86 17.18 66.17 20.22
Sweden - communes in Vaasterbotten east of approximately 19°30'E and (i) north of 63°30'N and (ii) south of approximately 65°05'N. Also Norbotten west of approximately 23°20'E. See information source for map.|63.45 16.08 69.07 23.28
Sweden - communes in Norbotten east of approximately 19°30'E and south of approximately 65°50'N. See information source for map.|65.01 19.63 66.43 22.91
Sweden - communes east of approximately 21°50'E. See information source for map.|65.49 21.85 68.14 24.17
Sweden - communes west of approximately 12°26'E. See information source for map.|57.29 10.93 59.73 12.91
Sweden - communes between approximately 12°26'E and 14°40'E. See information source for map.|55.28 11.81 64.39 15.44
Sweden - communes between approximately 14°40'E and 16°55'E. See information source for map.|55.95 13.66 67.18 17.73
Sweden - communes between approximately 16°55'E and 19°10'E; Gotland. See information source for map.|56.86 16.08 68.54 20.22
Sweden - communes between approximately 19°10'E and 21°25'E. See information source for map.|63.37 18.4 69.07 22.2
Sweden - east of approximately 21°26'E. See information source for map.|65.24 21.34 68.58 24.17
Antarctica.|-90 -180 -60 180
Antarctica between 45°E and 136°E and between 142°E and 160°E - Australian sector.|-90 45 -60 160
Antarctica - north of 80°S and between 45°E and 136°E and between 142°E and 160°E - Australian sector north of 80°S.|-80 45 -60 160
Europe - European Union (EU) countries and candidates. Europe - onshore and offshore: Albania; Andorra; Austria; Belgium; Bosnia and Herzegovina; Bulgaria; Croatia; Cyprus; Czechia; Denmark; Estonia; Faroe Islands; Finland; France; Germany; Gibraltar; Greece; Hungary; Iceland; Ireland; Italy; Kosovo; Latvia; Liechtenstein; Lithuania; Luxembourg; Malta; Monaco; Montenegro; Netherlands; North Macedonia; Norway including Svalbard and Jan Mayen; Poland; Portugal including Madeira and Azores; Romania; San Marino; Serbia; Slovakia; Slovenia; Spain including Canary Islands; Sweden; Switzerland; Türkiye (Turkey); United Kingdom (UK) including Channel Islands and Isle of Man; Vatican City State.|24.6 -35.58 84.73 44.83
Mozambique - west of 36°E, onshore and offshore.|-27.58 30.21 -11.41 36
Mozambique - between 36°E and 42°E, onshore and offshore.|-27.71 36 -10.09 42
Europe between 18°W and 12°W: Faroe Islands - offshore; Ireland - offshore; Jan Mayen - offshore; Portugal - offshore mainland; Spain - offshore mainland; United Kingdom (UKCS) - offshore.|34.93 -16.1 72.44 -11.99
Europe between 12°W and 6°W: Faroe Islands - onshore and offshore; Ireland - offshore; Jan Mayen - onshore and offshore; Portugal - onshore and offshore; Spain - onshore and offshore; United Kingdom - UKCS offshore.|34.91 -12 74.13 -6
Europe between 6°W and 0°W: Faroe Islands offshore; Ireland - offshore; Jan Mayen - offshore; Norway including Svalbard - offshore; Spain - onshore and offshore.|35.26 -6 80.49 0.01
Europe between 0°E and 6°E: Andorra; Belgium - onshore and offshore; Denmark - offshore; Germany - offshore; Jan Mayen - offshore; Norway including Svalbard - onshore and offshore; Spain - onshore and offshore.|37 0 82.45 6.01
Europe between 6°E and 12°E: Austria; Belgium; Denmark - onshore and offshore; Germany - onshore and offshore; Norway including - onshore and offshore; Spain - offshore.|38.76 6 84.33 12.01
Europe between 12°E and 18°E: Austria; Denmark - offshore and offshore; Germany - onshore and offshore; Norway including Svalbard - onshore and offshore.|46.4 12 84.42 18.01
Europe between 18°E and 24°E: Finland - onshore and offshore; Norway including Svalbard - onshore and offshore.|58.84 17.99 84.54 24.01
Europe between 24°E and 30°E: Finland - onshore and offshore; Norway including Svalbard - onshore and offshore.|59.64 24 84.73 30.01
Europe between 30°E and 36°E: Finland - onshore and offshore; Norway including Svalbard - onshore and offshore.|61.73 30 84.7 36.01
Europe between 36°E and 42°E: Norway including Svalbard - offshore.|72.99 36 79.07 38.01
Iceland - mainland.|63.34 -24.66 66.59 -13.38
Iceland - mainland west of 24°W.|64.71 -24.66 65.85 -24
Iceland - mainland between 24°W and 18°W.|63.34 -24 66.52 -18
Iceland - mainland east of 18°W.|63.45 -18 66.58 -13.38
Iceland - onshore and offshore.|59.96 -30.87 69.59 -5.55
Jan Mayen - onshore.|70.75 -9.17 71.24 -7.87
Latvia - onshore and offshore.|55.67 19.06 58.09 28.24
New Caledonia - Grande Terre.|-22.45 163.92 -20.03 167.09
Italy - onshore and offshore - between 12°E and 18°E including San Marino and Vatican City State.|34.79 12 47.1 18
Jordan.|29.18 34.88 33.38 39.31
Finland - onshore and offshore.|58.84 19.08 70.09 31.59
Germany - Berlin.|52.33 13.09 52.65 13.76
United States (USA) - Wisconsin.|42.48 -92.89 47.31 -86.25
United States (USA) - Maine east of approximately 68°25'W. The area is bounded by the following: Beginning at the point determined by the intersection of the Maine State line and the Fort Kent - Frenchville town line, thence continuing easterly and then southerly along the state line to the boundary of the State of Maine as determined by Maritime law, thence following the State boundary westerly to the intersection of the Knox and Hancock County line, thence northerly along the easterly boundary of the Maine 2000 Central Zone, as defined, to the point of beginning.|44.18 -68.58 47.37 -66.91
United States (USA) - Maine west of approximately 69°40'W. The area is bounded by the following: Beginning at the point determined by the intersection of the Maine State line and the County Line between Aroostook and Somerset Counties, thence following the Somerset County line Easterly to the Northwest corner of the Somerset and Piscataquis county line, thence Southerly along this county line to the northeast corner of the Athens town line, thence westerly along the town line between Brighton Plantation and Athens to the westerly corner of Athens, and continuing southerly to the southwest corner of the town of Athens where it meets the Cornville town line, thence westerly along the Cornville - Solon town line to the intersection of the Cornville - Madison town line, thence southerly and westerly following the Madison town line to the intersection of the Norridgewock - Skowhegan town line, thence southerly along the Skowhegan town line to the Fairfield town line, thence easterly along the Fairfield town line to the Clinton town line (being determined by the Kennebec River), thence southerly along the Kennebec River to the Augusta city line, thence easterly along the city line to the Windsor town line, thence southerly along the Augusta - Windsor town line to the northwest corner of the Lincoln County line, thence southerly along the westerly Lincoln county line to the boundary of the State of Maine as determined by Maritime law, thence following the State boundary on the westerly side of the state to the point of beginning.|43.07 -71.09 46.58 -69.6
United States (USA) - Michigan.|41.69 -90.42 48.32 -82.13
United States (USA) - Texas.|25.83 -106.66 36.5 -93.5
United States (USA) - Florida.|24.41 -87.63 31.01 -79.97
United States (USA) - Kentucky.|36.49 -89.57 39.15 -81.95
Japan - onshore west of 126°E.|23.98 123.62 24.94 125.51
Japan - onshore between 126°E and 132°E.|24.4 126.63 34.9 132
Japan - onshore between 132°E and 138°E.|20.37 132 37.58 138
Japan - onshore between 138°E and 144°E.|24.67 138 45.54 144
Japan - onshore east of 144°E.|42.84 144 44.4 145.87
Japan - west of 126°E, onshore and offshore.|21.1 122.38 29.71 126
Japan - between 126°E and 132°E, onshore and offshore.|21.12 126 38.63 132
Japan - between 132°E and 138°E, onshore and offshore.|17.09 132 43.55 138
Japan - between 138°E and 144°E, onshore and offshore.|17.63 138 46.05 144
Japan - east of 144°E, onshore and offshore.|23.03 144 45.65 147.86
American Samoa - Tutuila, Aunu'u, Ofu, Olesega and Ta'u islands.|-14.43 -170.88 -14.11 -169.38
Bangladesh - onshore.|20.52 88.01 26.64 92.67
Australia - South Australia.|-38.13 128.99 -25.99 141.01
Channel Islands - Guernsey, Alderney, Sark, Herm, Brecqhou, Jethou, Lihou - onshore and offshore.|49.11 -3.73 50.16 -2.02
Channel Islands - Jersey, Les Ecrehos and Les Minquiers - onshore and offshore.|48.77 -2.72 49.44 -1.81
Australia - Victoria.|-39.2 140.96 -33.98 150.04
Australia - Australian Capital Territory; New South Wales; Northern Territory; Queensland; South Australia; Tasmania; Western Australia; Victoria.|-43.7 112.85 -9.86 153.69
Australia - Brisbane and surrounding area. Also applicable in other local authorities in south-east Queensland (Gold Coast, Logan, Ipswich, Scenic Rim, Redland, Moreton Bay, Sunshine Coast, Noosa, eastern part of Gympie, eastern part of Fraser Coast) and north-east New South Wales (Tweed, Byron, Lismore, Kyogle, Ballina and Richmond Valley).|-29.36 152.37 -24.64 153.69
Colombia - mainland onshore west of 78°35'W of Greenwich (4°30' W of Bogota).|1.23 -79.1 2.48 -78.58
Colombia - onshore between 78°35'W and 75°35'W of Greenwich (4°30' W and 1°30' W of Bogota).|0.03 -78.59 10.21 -75.58
Colombia - onshore between 1°30'W and 1°30'E of Bogota (75°35'W and 72°35'W of Greenwich).|-2.51 -75.59 11.82 -72.58
Colombia - onshore between 1°30'E and 4°30'E of Bogota (72°35'W and 69°34'W of Greenwich).|-4.23 -72.59 12.52 -69.58
Colombia - east of 4°30'E of Bogota (69°34'51.3"W of Greenwich).|-2.25 -69.59 6.31 -66.87
Poland - southeast - south of 52°20'N and east of 18°E.|49 18 52.34 24.15
Philippines - west of 118°E onshore and offshore.|6.21 116.04 18.64 118
Philippines - approximately between 118°E and 120°E - Palawan; Calamian Islands - onshore and offshore.|3.02 118 20.42 120.07
Philippines - approximately between 120°E and 122°E, onshore and offshore. Luzon (west of 122°E); Mindoro.|3 119.7 21.62 122.21
Philippines - approximately between 122°E and 124°E onshore and offshore - southeast Luzon (east of 122°E); Tablas; Masbate; Panay; Cebu; Negros; west Mindanao (west of 122°E).|3.44 121.74 22.18 124.29
Philippines - approximately between 124°E and 126°E, onshore and offshore - east Mindanao (east of 124°E); Bohol; Samar.|4.76 123.73 21.97 126.65
Finland - onshore west of 19°30'E.|60.08 19.24 60.34 19.5
Finland - onshore between 19°30'E and 20°30'E.|59.92 19.5 60.48 20.5
Finland - onshore between 20°30'E and 21°30'E.|59.84 20.5 69.33 21.5
Finland - onshore between 21°30'E and 22°30'E.|59.76 21.5 69.31 22.5
Finland - onshore between 22°30'E and 23°30'E.|59.75 22.5 68.74 23.5
Finland - onshore between 23°30'E and 24°30'E.|59.86 23.5 68.84 24.5
Finland - onshore between 24°30'E and 25°30'E.|59.94 24.5 68.9 25.5
Finland - onshore between 25°30'E and 26°30'E.|60.18 25.5 69.94 26.5
Finland - onshore between 26°30'E and 27°30'E.|60.36 26.5 70.05 27.5
Finland - onshore between 27°30'E and 28°30'E.|60.42 27.5 70.09 28.5
Finland - between 28°30'E and 29°30'E.|60.94 28.5 69.81 29.5
Finland - between 29°30'E and 30°30'E.|61.43 29.5 67.98 30.5
Finland - east of 30°30'E.|62.08 30.5 64.27 31.59
Fiji - Vanua Levu and Taveuni.|-17.07 178.42 -16.1 -179.77
Fiji - Viti Levu island.|-18.32 177.19 -17.25 178.75
Fiji - onshore west of 180° - Vanua Levu, Taveuni, Viti Levu and and immediately adjacent smaller islands of Yasawa and Kandavu groups.|-19.22 176.81 -16.1 180
Fiji - onshore east of 180° - Vanua Levu, Taveuni.|-17.04 -180 -16.1 -179.77
Faroe Islands - onshore.|61.33 -7.49 62.41 -6.33
Cambodia; Vietnam west of 108°E.|8.33 102.14 23.4 108
Sweden - Stockholm commune.|59.22 17.75 59.43 18.2
Canada west of 138°W, onshore and offshore south of 84°N - British Columbia, Yukon.|52.05 -141.01 72.53 -138
Canada between 138°W and 132°W, onshore and offshore south of 84°N - British Columbia, Northwest Territories, Yukon.|48.06 -138 79.42 -132
Canada - between 132°W and 126°W, onshore and offshore south of 84°N - British Columbia, Northwest Territories, Yukon.|46.52 -132 80.93 -126
Canada between 126°W and 120°W, onshore and offshore south of 84°N - British Columbia, Northwest Territories, Yukon.|48.13 -126 81.8 -120
Canada between 102°W and 96°W, onshore and offshore south of 84°N - Manitoba, Nunavut, Saskatchewan.|48.99 -102 84 -96
Canada between 96°W and 90°W, onshore and offshore south of 84°N - Manitoba, Nunavut, Ontario.|48.03 -96 84 -90
Canada between 90°W and 84°W, onshore and offshore south of 84°N - Manitoba, Nunavut, Ontario.|46.11 -90 84 -84
Canada - Ontario.|41.67 -95.16 56.9 -74.35
New Caledonia - Belep, Grande Terre, Ile des Pins, Loyalty Islands (Lifou, Mare, Ouvea).|-22.73 163.54 -19.5 168.19
New Caledonia - Loyalty Islands - Ouvea.|-20.77 166.44 -20.34 166.71
Malaysia - West Malaysia onshore.|1.21 99.59 6.72 104.6
New Caledonia - west of 162°E onshore and offshore.|-26.03 156.25 -15.34 162.01
New Caledonia - between 162°E and 168°E onshore and offshore.|-26.45 162 -14.83 168
New Caledonia - east of 168°E onshore and offshore.|-25.95 168 -19.75 174.28
New Caledonia - Loyalty Islands - Mare - east of 168°E.|-21.71 168 -21.35 168.19
Canada and United States (USA) - Great Lakes basin.|40.99 -93.17 50.74 -74.47
Canada and United States (USA) - Great Lakes basin and St Lawrence Seaway.|40.99 -93.17 52.22 -54.75
Libya - onshore and offshore.|19.5 9.31 35.23 26.21
Greenland - west of 72°W, onshore and offshore.|74.52 -75 79.04 -72
Greenland - between 72°W and 66°W, onshore and offshore.|73.24 -72 80.9 -66
Greenland - between 66°W and 60°W, onshore and offshore.|68.92 -66 82.22 -60
Greenland - between 60°W and 54°W, onshore and offshore south of 84°N.|58.91 -60 84 -54
Greenland - between 54°W and 48°W, onshore and offshore south of 84°N.|56.9 -54 84 -48
Greenland - between 48°W and 42°W, onshore and offshore south of 84°N.|56.38 -48 84 -42
Greenland - between 42°W and 36°W, onshore and offshore south of 84°N.|56.56 -42 84 -36
Greenland - between 36°W and 30°W, onshore and offshore south of 84°N.|60.16 -36 84 -30
Greenland - between 30°W and 24°W, onshore and offshore south of 84°N.|64.96 -30 84 -24
Greenland - between 24°W and 18°W, onshore and offshore south of 84°N.|67.7 -24 84 -18
Greenland - between 18°W and 12°W, onshore and offshore south of 84°N.|68.67 -18 84 -12
Greenland - 12°W to 6°W, onshore and offshore south of 84°N.|72.43 -12 84 -6
Libya - west of 12°E, onshore and offshore.|23.51 9.31 33.92 12
Iran - Arwaz area and onshore Gulf coast west of 54°E, Lavan Island, offshore Balal field and South Pars blocks 2 and 3.|26.21 47.13 33.22 53.61
Libya - between 12°E and 18°E, onshore and offshore.|22.51 12 35.23 18
Libya - between 18°E and 24°E, onshore and offshore.|19.5 17.99 35.03 24.01
Libya - east of 24°E, onshore and offshore.|19.99 24 33.6 26.21
Antarctica - 60°S to 64°S and 72°W to 60°W.|-64 -72 -60 -60
Antarctica - 60°S to 64°S and 60°W to 48°W.|-64 -60 -60 -48
Antarctica - 60°S to 64°S and 48°W to 36°W.|-64 -48 -60 -36
Antarctica - 64°S to 68°S and 180°W to 168°W.|-68 -180 -64 -168
Antarctica - 64°S to 68°S and 72°W to 60°W.|-68 -72 -64 -60
Antarctica - 64°S to 68°S and 60°W to 48°W.|-68 -60 -64 -48
Antarctica - 64°S to 68°S and 36°E to 48°E.|-68 36 -64 48
Antarctica - 64°S to 68°S and 48°E to 60°E.|-68 48 -64 60
Antarctica - 64°S to 68°S and 60°E to 72°E.|-68 60 -64 72
Antarctica - 64°S to 68°S and 72°E to 84°E.|-68 72 -64 84
Antarctica - 64°S to 68°S and 84°E to 96°E.|-68 84 -64 96
Antarctica - 64°S to 68°S and 96°E to 108°E.|-68 96 -64 108
Antarctica - 64°S to 68°S and 108°E to 120°E.|-68 108 -64 120
Antarctica - 64°S to 68°S and 120°E to 132°E.|-68 120 -64 132
Antarctica - 64°S to 68°S and 132°E to 144°E.|-68 132 -64 144
Antarctica - 64°S to 68°S and 144°E to 156°E.|-68 144 -64 156
Antarctica - 64°S to 68°S and 156°E to 168°E.|-68 156 -64 168
Antarctica - 68°S to 72°S and 108°W to 96°W.|-72 -108 -68 -96
Antarctica - 68°S to 72°S and 96°W to 84°W.|-72 -96 -68 -84
Antarctica - 68°S to 72°S and 84°W to 72°W.|-72 -84 -68 -72
Antarctica - 68°S to 72°S and 72°W to 60°W.|-72 -72 -68 -60
Antarctica - 68°S to 72°S and 24°W to 12°W.|-72 -24 -68 -12
Antarctica - 68°S to 72°S and 12°W to 0°W.|-72 -12 -68 0
Antarctica - 68°S to 72°S and 0°E to 12°E.|-72 0 -68 12
Antarctica - 68°S to 72°S and 12°E to 24°E.|-72 12 -68 24
Antarctica - 68°S to 72°S and 24°E to 36°E.|-72 24 -68 36
Antarctica - 68°S to 72°S and 36°E to 48°E.|-72 36 -68 48
Antarctica - 68°S to 72°S and 48°E to 60°E.|-72 48 -68 60
Antarctica - 68°S to 72°S and 60°E to 72°E.|-72 60 -68 72
Antarctica - 68°S to 72°S and 72°E to 84°E.|-72 72 -68 84
Antarctica - 68°S to 72°S and 84°E to 96°E.|-72 84 -68 96
Antarctica - 68°S to 72°S and 96°E to 108°E.|-72 96 -68 108
Antarctica - 68°S to 72°S and 108°E to 120°E.|-72 108 -68 120
Antarctica - 68°S to 72°S and 120°E to 132°E.|-72 120 -68 132
Antarctica - 68°S to 72°S and 132°E to 144°E.|-72 132 -68 144
Antarctica - 68°S to 72°S and 144°E to 156°E.|-72 144 -68 156
Antarctica - 68°S to 72°S and 156°E to 168°E.|-72 156 -68 168
Antarctica - 68°S to 72°S and 168°E to 180°E.|-72 168 -68 180
Antarctica - 72°S to 76°S and 162°W to 144°W.|-76 -162 -72 -144
Antarctica - 72°S to 76°S and 144°W to 126°W.|-76 -144 -72 -126
Antarctica - 72°S to 76°S and 126°W to 108°W.|-76 -126 -72 -108
Antarctica - 72°S to 76°S and 108°W to 90°W.|-76 -108 -72 -90
Antarctica - 72°S to 76°S and 90°W to 72°W.|-76 -90 -72 -72
Antarctica - 72°S to 76°S and 72°W to 54°W.|-76 -72 -72 -54
Antarctica - 72°S to 76°S and 36°W to 18°W.|-76 -36 -72 -18
Antarctica - 72°S to 76°S and 18°W to 0°W.|-76 -18 -72 0
Antarctica - 72°S to 76°S and 0°E to 18°E.|-76 0 -72 18
Antarctica - 72°S to 76°S and 18°E to 36°E.|-76 18 -72 36
Antarctica - 72°S to 76°S and 36°E to 54°E.|-76 36 -72 54
Antarctica - 72°S to 76°S and 54°E to 72°E.|-76 54 -72 72
Antarctica - 72°S to 76°S and 72°E to 90°E.|-76 72 -72 90
Antarctica - 72°S to 76°S and 90°E to 108°E.|-76 90 -72 108
Antarctica - 72°S to 76°S and 108°E to 126°E.|-76 108 -72 126
Antarctica - 72°S to 76°S and 126°E to 144°E.|-76 126 -72 144
Antarctica - 72°S to 76°S and 144°E to 162°E.|-76 144 -72 162
Antarctica - 72°S to 76°S and 162°E to 180°E.|-76 162 -72 180
Antarctica - 76°S to 80°S and 180°W to 156°W.|-80 -180 -76 -156
Antarctica - 76°S to 80°S and 156°W to 132°W.|-80 -156 -76 -132
Antarctica - 76°S to 80°S and 132°W to 108°W.|-80 -132 -76 -108
Antarctica - 76°S to 80°S and 108°W to 84°W.|-80 -108 -76 -84
Antarctica - 76°S to 80°S and 84°W to 60°W.|-80 -84 -76 -60
Antarctica - 76°S to 80°S and 60°W to 36°W.|-80 -60 -76 -36
Antarctica - 76°S to 80°S and 36°W to 12°W.|-80 -36 -76 -12
Antarctica - 76°S to 80°S and 12°W to 12°E.|-80 -12 -76 12
Antarctica - 76°S to 80°S and 12°E to 36°E.|-80 12 -76 36
Antarctica - 76°S to 80°S and 36°E to 60°E.|-80 36 -76 60
Antarctica - 76°S to 80°S and 60°E to 84°E.|-80 60 -76 84
Antarctica - 76°S to 80°S and 84°E to 108°E.|-80 84 -76 108
Antarctica - 76°S to 80°S and 108°E to 132°E.|-80 108 -76 132
Antarctica - 76°S to 80°S and 132°E to 156°E.|-80 132 -76 156
Antarctica - 76°S to 80°S and 156°E to 180°E.|-80 156 -76 180
Antarctica - 80°S to 84°S and 180°W to 150°W.|-84 -180 -80 -150
Antarctica - 80°S to 84°S and 150°W to 120°W.|-84 -150 -80 -120
Antarctica - 80°S to 84°S and 120°W to 90°W.|-84 -120 -80 -90
Antarctica - 80°S to 84°S and 90°W to 60°W.|-84 -90 -80 -60
Antarctica - 80°S to 84°S and 60°W to 30°W.|-84 -60 -80 -30
Antarctica - 80°S to 84°S and 30°W to 0°W.|-84 -30 -80 0
Antarctica - 80°S to 84°S and 0°E to 30°E.|-84 0 -80 30
Antarctica - 80°S to 84°S and 30°E to 60°E.|-84 30 -80 60
Antarctica - 80°S to 84°S and 60°E to 90°E.|-84 60 -80 90
Antarctica - 80°S to 84°S and 90°E to 120°E.|-84 90 -80 120
Antarctica - 80°S to 84°S and 120°E to 150°E.|-84 120 -80 150
Antarctica - 80°S to 84°S and 150°E to 180°E.|-84 150 -80 180
Antarctica - 84°S to 88°S and 180°W to 120°W.|-88 -180 -84 -120
Antarctica - 84°S to 88°S and 120°W to 60°W.|-88 -120 -84 -60
Antarctica - 84°S to 88°S and 60°W to 0°W.|-88 -60 -84 0
Antarctica - 84°S to 88°S and 0°E to 60°E.|-88 0 -84 60
Antarctica - 84°S to 88°S and 60°E to 120°E.|-88 60 -84 120
Antarctica - 84°S to 88°S and 120°E to 180°E.|-88 120 -84 180
Antarctica - 88°S to 90°S and 180°W to 180°E.|-90 -180 -88 180
Antarctica - Transantarctic mountains north of 80°S.|-80 149.83 -68.6 174.01
Federated States of Micronesia - Yap Islands.|9.39 137.99 9.69 138.27
French Polynesia - west of 150°W onshore and offshore.|-26.7 -158.13 -12.5 -150
French Polynesia - between 150°W and 144°W onshore and offshore.|-31.2 -150 -7.29 -144
French Polynesia - between 144°W and 138°W onshore and offshore.|-31.24 -144 -4.52 -138
French Polynesia - east of 138°W.|-26.58 -138 -5.52 -131.97
Estonia - onshore.|57.52 21.74 59.75 28.2
Estonia - onshore and offshore.|57.52 20.37 60 28.2
French Polynesia - Marquesas Islands - Hiva Oa and Tahuata.|-10.08 -139.23 -9.64 -138.75
French Polynesia - Marquesas Islands - Fatu Hiva.|-10.6 -138.75 -10.36 -138.54
French Polynesia - Society Islands - Tahiti.|-17.93 -149.7 -17.44 -149.09
French Polynesia - Society Islands - Moorea.|-17.63 -150 -17.41 -149.73
French Polynesia - Society Islands - Maupiti.|-16.57 -152.39 -16.34 -152.14
Iran - Kangan district.|27.3 51.8 28.2 53.01
Australia - New South Wales.|-37.53 140.99 -28.15 153.69
United States (USA) - California.|32.53 -124.45 42.01 -114.12
French Guiana - coastal area west of 54°W.|4.84 -54.45 5.69 -54
French Guiana - west of 54°W.|2.11 -54.61 5.69 -54
The Democratic Republic of the Congo (Zaire) - adjacent to 6th parallel south traverse between 21°30'E and 23°E.|-7.31 21.5 -5.31 23.01
The Democratic Republic of the Congo (Zaire) - adjacent to 6th parallel south traverse between 23°E and 25°E.|-6.99 23 -5.01 25
The Democratic Republic of the Congo (Zaire) - onshore west of 13°E.|-6.04 12.17 -4.67 13.01
The Democratic Republic of the Congo (Zaire) - between 13°E to 15°E.|-5.91 13 -4.28 15.01
The Democratic Republic of the Congo (Zaire) - adjacent to 6th parallel south traverse between 15°E and 17°E.|-5.87 15 -3.29 17
The Democratic Republic of the Congo (Zaire) - adjacent to 6th parallel traverse between 17°E and 19°E.|-5.38 17 -3.4 19
The Democratic Republic of the Congo (Zaire) - adjacent to 6th parallel south traverse between 19°E and 21°E.|-7.29 19 -4.01 21
The Democratic Republic of the Congo (Zaire) - adjacent to 6th parallel south traverse between 21°E and 23°E.|-7.31 21 -5.31 23
The Democratic Republic of the Congo (Zaire) - adjacent to 6th parallel south traverse between 25°E and 27°E.|-7.26 25 -4.23 27
The Democratic Republic of the Congo (Zaire) - adjacent to 6th parallel south traverse between 27°E and 29°E.|-7.36 27 -4.24 29
The Democratic Republic of the Congo (Zaire) - adjacent to 6th parallel south traverse and east of 29°E.|-6.04 29 -4.34 29.64
Poland - onshore.|49 14.14 54.89 24.15
Czechia - between 13°30'E and 16°30'E. Germany - states of former East Germany onshore - east of 13°30'E - Brandenburg; Mecklenburg-Vorpommern; Sachsen. Hungary and Poland - onshore west of 16°30'E.|46.54 13.5 54.72 16.5
Albania - onshore west of 19°30'E. Czechia - east of 16°30'E. Hungary and Poland - onshore between 16°30'E and 19°30'E. Slovakia - west of 19°30'E.|40.14 16.5 54.89 19.5
Albania - east of 19°30'E. Bulgaria and Romania - west of 22°30'E. Hungary, Poland and Slovakia - between 19°30'E and 22°30'E.|39.64 19.5 54.51 22.5
Bulgaria and Romania - between 22°30'E and 25°30'E. Hungary, Poland and Slovakia - east of 22°30'E.|41.24 22.5 54.41 25.5
Germany (former DDR) - onshore east of 12°E. Poland - onshore west of 18°E. Czechia, Hungary and Slovakia - west of 18°E.|45.78 12 54.89 18
Albania - onshore east of 18°E. Czechia, Hungary and Slovakia - east of 18°E. Poland - onshore between 18°E and 24°E. Bulgaria and Romania - onshore west of 24°E.|39.64 18 54.89 24
Bulgaria, Poland and Romania - onshore east of 24°E.|41.24 24 50.93 29.74
French Southern Territories - Kerguelen onshore.|-49.78 68.69 -48.6 70.62
Mauritius - mainland onshore.|-20.57 57.25 -19.94 57.85
The Democratic Republic of the Congo (Zaire) - Bas Congo east of 15°E.|-5.87 14.99 -4.42 16.28
The Democratic Republic of the Congo (Zaire) - Lower Congo (Bas Congo)|-6.04 12.17 -4.28 16.28
Mauritania - 18°W to 12°W, onshore and offshore.|14.72 -18 23.46 -12
Mauritania - between 12°W and 6°W.|14.75 -12 27.3 -6
Mauritania - east of 6°W.|15.49 -6 25.74 -4.8
Lithuania - onshore and offshore.|53.89 19.02 56.45 26.82
Canada - onshore and offshore - Alberta; British Columbia; Manitoba; New Brunswick; Newfoundland and Labrador; Northwest Territories; Nova Scotia; Nunavut; Ontario; Prince Edward Island; Quebec; Saskatchewan; Yukon.|38.21 -141.01 86.46 -40.73
Estonia, Latvia and Lithuania - onshore west of 23°27'E. Russia - Kaliningrad onshore.|54.17 19.57 59.27 23.45
Estonia, Latvia and Lithuania - onshore between 23°27'E and 26°27'E.|53.89 23.45 59.72 26.45
Estonia, Latvia and Lithuania - onshore east of 26°27'E.|55.15 26.45 59.61 28.24
Angola (Cabinda) - onshore and offshore; The Democratic Republic of the Congo (Zaire) - onshore coastal area and offshore.|-6.04 10.53 -4.38 13.1
Angola (Cabinda) - offshore; The Democratic Republic of the Congo (Zaire) - offshore.|-6.04 10.53 -5.05 12.37
Egypt - Gulf of Suez.|27.19 32.34 30.01 34.27
Mauritania - onshore west of 12°W.|14.72 -17.08 23.46 -12
United States (USA) - west of 174°E. Alaska and offshore continental shelf (OCS).|49.01 167.65 56.28 174.01
United States (USA) - between 174°E and 180°E - Alaska and offshore continental shelf (OCS).|47.92 174 56.67 180
Malaysia - West Malaysia onshore and offshore.|1.13 98.02 7.81 105.82
Malaysia - East Malaysia (Sabah; Sarawak), onshore and offshore.|0.85 109.31 7.67 119.61
Malaysia - West Malaysia - Johor.|1.21 102.44 2.95 104.6
Malaysia - West Malaysia - Negeri Sembilan and Melaka.|2.03 101.7 3.28 102.71
Malaysia - West Malaysia - Pahang.|2.45 101.33 4.78 103.67
Malaysia - West Malaysia - Selangor.|2.54 100.76 3.87 101.97
Malaysia - West Malaysia - Terengganu.|3.89 102.38 5.9 103.72
Malaysia - West Malaysia - Pulau Pinang - Pinang (Penang) Island and Seberang Perai (Province Wellesley).|5.12 100.12 5.59 100.56
Malaysia - West Malaysia - Kedah and Perlis.|5.08 99.59 6.72 101.12
Malaysia - West Malaysia - Perak.|3.66 100.07 5.92 102
Malaysia - West Malaysia - Kelantan.|4.54 101.33 6.29 102.67
Finland - east of 31°30'E.|62.83 31.5 63 31.59
Azerbaijan - offshore; Kazakhstan - offshore; Russian Federation - Caspian Sea; Turkmenistan - offshore.|37.35 46.95 46.97 53.93
Iraq - west of 42°E.|31.14 38.79 36.75 42
Iraq - between 42°E and 48°E.|29.06 42 37.39 48
Iraq - onshore east of 48°E.|29.87 48 31 48.61
Iraq - onshore; Iran - onshore northern Gulf coast and west bordering southeast Iraq.|29.06 38.79 37.39 51.06
World between 80°S and 84°N.|-80 -180 84 180
Germany - Thuringen - west of 10°30'E.|50.35 9.92 51.56 10.5
Germany - Thuringen - east of 10°30'E.|50.2 10.5 51.64 12.56
Germany - Sachsen - west of 13°30'E.|50.2 11.89 51.66 13.51
Germany - Sachsen - east of 13°30'E.|50.62 13.5 51.58 15.04
Canada - Alberta.|48.99 -120 60 -109.98
Northern hemisphere - north of 60°N onshore and offshore, including Arctic.|60 -180 90 180
Singapore - onshore and offshore.|1.13 103.59 1.47 104.07
China - offshore South China Sea - Pearl River basin.|18.31 110.13 22.89 116.76
Austria.|46.4 9.53 49.02 17.17
Oman - onshore west of 54°E.|16.59 51.99 19.67 54
Oman - onshore east of 54°E. Includes Musandam and the Kuria Muria (Al Hallaniyah) islands.|16.89 54 26.58 59.91
Belgium - onshore.|49.5 2.5 51.51 6.4
Jamaica - onshore.|17.64 -78.43 18.58 -76.17
Jamaica - west of 78°W onshore and offshore.|14.16 -80.6 19.36 -77.99
Jamaica - east of 78°W onshore and offshore.|14.08 -78 19.2 -74.51
United States (USA) - Louisiana.|28.85 -94.05 33.03 -88.75
Fiji - onshore. Includes Viti Levu, Vanua Levu, Taveuni, the Yasawa Group, the Kadavu Group, the Lau Islands and Rotuma Islands.|-20.81 176.81 -12.42 -178.15
Guinea - onshore west of 12°W.|9.01 -15.13 12.68 -12
Guinea - east of 12°W.|7.19 -12 12.51 -7.65
United States (USA) - Maine between approximately 69°40'W and 68°25'W. The area is bounded by the following: Beginning at the point determined by the intersection of the Maine State line and the County Line between Aroostook and Somerset Counties, thence northeasterly along the state line to the intersection of the Fort Kent - Frenchville town line, thence southerly along this town line to the intersection with the New Canada Plantation - T17 R5 WELS town line, thence continuing southerly along town lines to the northeast corner of Penobscot County, thence continuing southerly along the Penobscot County line to the intersection of the Woodville - Mattawamkeag town line (being determined by the Penobscot River), thence along the Penobscot River to the Enfield - Lincoln town line, thence southeasterly along the Enfield - Lincoln town line and the Enfield - Lowell town line to the Passadumkeag - Edinburg town line, thence south-southeasterly along town lines to the intersection of the Hancock County line, thence southerly along the county line to the intersection of the Otis - Mariaville town line, thence southerly along the Otis - Mariaville town line to the Ellsworth city line, thence southerly along the Ellsworth city line to the intersection of the Surry - Trenton town line, thence southerly along the easterly town lines of Surry, Blue Hill, Brooklin, Deer Isle, and Stonington to the Knox County line, thence following the Knox County line to the boundary of the State of Maine as determined by Maritime law, thence following the State boundary westerly to the intersection of the Sagadahoc - Lincoln county line, thence northerly along the easterly boundary of the Maine 2000 West Zone, as defined, to the point of beginning.|43.75 -70.03 47.47 -68.33
United States (USA) - Alaska - east of 141°W; i.e. Panhandle.|54.61 -141 60.35 -129.99
United States (USA) - Alaska - between 144°W and 141°W, onshore.|59.72 -144.01 70.16 -140.98
United States (USA) - Alaska - between 148°W and 144°W.|59.72 -148 70.38 -144
United States (USA) - Alaska - between 152°W and 148°W, onshore.|59.11 -152.01 70.63 -147.99
United States (USA) - Alaska - between 156°W and 152°W.|55.72 -156 71.28 -151.86
United States (USA) - Alaska - between 160°W and 156°W, onshore.|54.89 -160 71.4 -155.99
United States (USA) - Alaska - between 164°W and 160°W, onshore.|54.32 -164.01 70.74 -160
United States (USA) - Alaska onshore north of 54°30'N and between 168°W and 164°W.|54.34 -168.26 69.05 -164
United States (USA) - Alaska onshore north of 54°30'N and west of 168°W.|56.49 -173.16 65.82 -168
United States (USA) - Alaska - Aleutian Islands onshore.|51.3 172.42 54.34 -164.84
Northern hemisphere - north of 45°N, including Arctic.|45 -180 90 180
Canada - Yukon.|59.99 -141.01 69.7 -123.91
Canada - Northwest Territories onshore.|59.98 -136.46 78.81 -102
United States (USA) - between 180°W and 174°W - Alaska and offshore continental shelf (OCS).|47.88 -180 63.21 -173.99
United States (USA) - between 174°W and 168°W - Alaska and offshore continental shelf (OCS).|48.66 -174 73.05 -167.99
United States (USA) - between 168°W and 162°W - Alaska and offshore continental shelf (OCS).|49.52 -168 74.29 -161.99
United States (USA) - between 162°W and 156°W - Alaska and offshore continental shelf (OCS).|50.98 -162 74.71 -155.99
United States (USA) - between 156°W and 150°W - Alaska and offshore continental shelf (OCS).|52.15 -156 74.71 -149.99
United States (USA) - between 150°W and 144°W - Alaska and offshore continental shelf (OCS).|54.05 -150 74.13 -143.99
United States (USA) - between 144°W and 138°W onshore and offshore - Alaska.|53.47 -144 73.59 -137.99
United States (USA) - between 138°W and 132°W onshore and offshore - Alaska.|53.6 -138 73.04 -131.99
United States (USA) - between 132°W and 126°W onshore and offshore - Alaska.|35.38 -132 56.84 -126
United States (USA) - between 126°W and 120°W onshore and offshore - California; Oregon; Washington.|30.54 -126 49.09 -119.99
United States (USA) - between 120°W and 114°W onshore and offshore - California, Idaho, Nevada, Oregon, Washington.|30.88 -120 49.01 -114
United States (USA) - between 114°W and 108°W - Arizona; Colorado; Idaho; Montana; New Mexico; Utah; Wyoming.|31.33 -114 49.01 -108
United States (USA) - between 108°W and 102°W - Colorado; Montana; Nebraska; New Mexico; North Dakota; Oklahoma; South Dakota; Texas; Wyoming.|28.98 -108 49.01 -102
United States (USA) - between 102°W and 96°W onshore and offshore - Iowa; Kansas; Minnesota; Nebraska; North Dakota; Oklahoma; South Dakota; Texas.|25.83 -102 49.01 -96
United States (USA) - between 96°W and 90°W onshore and offshore - Arkansas; Illinois; Iowa; Kansas; Louisiana; Michigan; Minnesota; Mississippi; Missouri; Nebraska; Oklahoma; Tennessee; Texas; Wisconsin.|25.61 -96.01 49.38 -90
United States (USA) - between 90°W and 84°W onshore and offshore - Alabama; Arkansas; Florida; Georgia; Indiana; Illinois; Kentucky; Louisiana; Michigan; Minnesota; Mississippi; Missouri; North Carolina; Ohio; Tennessee; Wisconsin.|23.97 -90 48.32 -84
United States (USA) - between 84°W and 78°W onshore and offshore - Florida; Georgia; Kentucky; Maryland; Michigan; New York; North Carolina; Ohio; Pennsylvania; South Carolina; Tennessee; Virginia; West Virginia.|23.81 -84 46.13 -78
United States (USA) - between 78°W and 72°W onshore and offshore - Connecticut; Delaware; Maryland; Massachusetts; New Hampshire; New Jersey; New York; North Carolina; Pennsylvania; Virginia; Vermont.|28.28 -78 45.03 -72
United States (USA) - between 72°W and 66°W onshore and offshore - Connecticut; Maine; Massachusetts; New Hampshire; New York (Long Island); Rhode Island; Vermont.|33.61 -72 47.47 -65.99
Reunion - onshore.|-21.42 55.16 -20.81 55.91
United States (USA) - between 126°W and 120°W - onshore - California; Oregon; Washington.|33.85 -124.79 49.05 -119.99
United States (USA) - between 120°W and 114°W - onshore - Arizona; California; Idaho; Montana; Nevada; Oregon; Utah; Washington.|32.26 -120 49.01 -114
United States (USA) - between 102°W and 96°W - onshore - Iowa; Kansas; Minnesota; Nebraska; North Dakota; Oklahoma; South Dakota; Texas.|25.83 -102 49.01 -95.99
United States (USA) - between 96°W and 90°W - onshore - Arkansas; Illinois; Iowa; Kansas; Louisiana; Michigan; Minnesota; Mississippi; Missouri; Nebraska; Oklahoma; Tennessee; Texas; Wisconsin.|28.42 -96 49.38 -89.99
United States (USA) - between 90°W and 84°W - onshore - Alabama; Arkansas; Florida; Georgia; Indiana; Illinois; Kentucky; Louisiana; Michigan; Minnesota; Mississippi; Missouri; North Carolina; Ohio; Tennessee; Wisconsin.|28.85 -90 48.32 -83.99
United States (USA) - between 84°W and 78°W - onshore - Florida; Georgia; Maryland; Michigan; New York; North Carolina; Ohio; Pennsylvania; South Carolina; Tennessee; Virginia; West Virginia.|24.41 -84.01 46.13 -78
United States (USA) - between 78°W and 72°W - onshore - Connecticut; Delaware; Maryland; Massachusetts; New Hampshire; New Jersey; New York; North Carolina; Pennsylvania; Virginia; Vermont.|33.84 -78 45.03 -72
United States (USA) - between 72°W and 66°W - onshore - Connecticut; Maine; Massachusetts; New Hampshire; New York (Long Island); Rhode Island; Vermont.|40.96 -72 47.47 -66.91
United States (USA) - between 162°W and 156°W onshore - Hawaii.|19.51 -160.3 22.29 -155.99
United States (USA) - between 156°W and 150°W onshore - Hawaii.|18.87 -156 20.86 -154.74
Canada between 54°W and 48°W onshore and offshore - Newfoundland and Labrador.|39.5 -54 57.65 -47.99
South Georgia and the South Sandwich Islands - South Georgia onshore.|-54.95 -38.08 -53.93 -35.74
New Zealand - Chatham Islands group - onshore.|-44.64 -177.25 -43.3 -175.54
Croatia - onshore.|42.34 13.43 46.54 19.43
Croatia - onshore and offshore.|41.62 13 46.54 19.43
Croatia - west of 18°E, onshore and offshore.|41.63 13 46.54 18
Croatia - east of 18°E, onshore and offshore.|41.62 18 45.92 19.43
Bermuda - onshore.|32.21 -64.89 32.43 -64.61
Bermuda - onshore and offshore.|28.91 -68.83 35.73 -60.7
Canada - Alberta - east of 112°30'W.|48.99 -112.5 60 -109.98
Canada - Alberta - between 115°30'W and 112°30'W.|48.99 -115.5 60 -112.5
Canada - Alberta - between 118°30'W and 115°30' W.|50.77 -118.5 60 -115.5
Pitcairn - Pitcairn Island.|-25.14 -130.16 -25 -130.01
New Zealand - Snares Island, Auckland Island - onshore.|-51.13 165.55 -47.8 166.93
New Zealand - Campbell Island.|-52.83 168.65 -52.26 169.6
New Zealand - Antipodes Island, Bounty Islands.|-49.92 178.4 -47.54 179.37
New Zealand - Raoul Island, Kermadec Islands.|-31.56 -179.07 -29.03 -177.62
Slovenia - onshore and offshore.|45.42 13.38 46.88 16.61
Cuba - onshore north of 21°30'N but also including all of Isla de la Juventud.|21.38 -85.01 23.25 -76.91
Cuba - onshore south of 21°30'N and east of 80°W .|19.77 -78.69 21.5 -74.07
Canada - Alberta - west of 118°30' W.|52.88 -120 60 -118.5
United States (USA) - Mississippi.|30.01 -91.65 35.01 -88.09
Hungary.|45.74 16.11 48.58 22.9
Taiwan, Republic of China - onshore - Taiwan Island, Penghu (Pescadores) Islands.|21.87 119.25 25.34 122.06
Taiwan, Republic of China - onshore and offshore - Taiwan Island, Penghu (Pescadores) Islands.|17.36 114.32 26.96 123.61
Taiwan, Republic of China - between 118°E and 120°E, onshore and offshore - Penghu (Pescadores) Islands.|18.63 118 24.65 120
Taiwan, Republic of China - between 120°E and 122°E, onshore and offshore - Taiwan Island.|20.41 119.99 26.72 122.06
Taiwan, Republic of China - onshore - Penghu (Pescadores) Islands.|23.13 119.25 23.82 119.78
Taiwan, Republic of China - onshore - Taiwan Island.|21.87 119.99 25.34 122.06
Pacific Ocean - American Samoa, Antarctica, Australia, Brunei Darussalam, Cambodia, Canada, Chile, China, China - Hong Kong, China - Macao, Cook Islands, Ecuador, Fiji, French Polynesia, Guam, Indonesia, Japan, Kiribati, Democratic People's Republic of Korea (North Korea), Republic of Korea (South Korea), Malaysia, Marshall Islands, Federated States of Micronesia, Nauru, New Caledonia, New Zealand, Niue, Norfolk Island, Northern Mariana Islands, Palau, Panama, Papua New Guinea (PNG), Peru, Philippines, Pitcairn, Russian Federation, Samoa, Singapore, Solomon Islands, Taiwan, Thailand, Tokelau, Tonga, Tuvalu, United States (USA), United States Minor Outlying Islands, Vanuatu, Venezuela, Vietnam, Wallis and Futuna.|-60 98.69 66.67 -68
Germany - states of former East Germany - west of 12°E.|50.2 9.92 54.23 12
Germany (former DDR) - onshore east of 12°E. Czechia, Hungary and Slovakia - west of 18°E.|45.78 12 54.74 18.01
Czechia, Hungary and Slovakia - east of 18°E.|45.74 18 50.06 22.9
Bulgaria and Romania - onshore between 25°30'E and 28°30'E.|41.28 25.5 48.27 28.5
Bulgaria and Romania - onshore east of 28°30'E.|43.34 28.5 45.44 29.74
Czechia - east of 16°30'E. Hungary - between 16°30'E and 19°30'E. Slovakia - west of 19°30'E.|45.74 16.5 50.45 19.5
Romania - onshore and offshore.|43.44 20.26 48.27 31.41
New Zealand - offshore.|-55.95 160.6 -25.88 -171.2
Antarctica - Darwin Glacier region.|-81 145 -76 169
Sweden - Stockholm county. Municipalities of Botkyrka, Danderyd, Ekerö, Haninge, Huddinge, Järfälla, Lidingö, Nacka, Nynäshamn, Salem, Sigtuna, Sollentuna, Solna, Stockholm and Sundbyberg.|58.69 17.25 60.27 19.61
World.|-90 -180 90 180
World between 85.06°S and 85.06°N.|-85.06 -180 85.06 180
Finland - nominally onshore west of 19°30'E but may be used in adjacent areas to east if a municipality chooses to use one zone over its whole extent.|60.08 19.24 60.34 19.5
Finland - nominally onshore between 19°30'E and 20°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|59.92 19.5 60.48 20.5
Finland - nominally onshore between 20°30'E and 21°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|59.84 20.5 69.33 21.5
Finland - nominally onshore between 21°30'E and 22°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|59.76 21.5 69.31 22.5
Finland - nominally onshore between 22°30'E and 23°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|59.75 22.5 68.74 23.5
Finland - nominally onshore between 23°30'E and 24°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|59.86 23.5 68.84 24.5
Finland - nominally onshore between 24°30'E and 25°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|59.94 24.5 68.9 25.5
Finland - nominally onshore between 25°30'E and 26°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|60.18 25.5 69.94 26.5
Finland - nominally onshore between 26°30'E and 27°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|60.36 26.5 70.05 27.5
Finland - nominally onshore between 27°30'E and 28°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|60.42 27.5 70.09 28.5
Finland - nominally between 28°30'E and 29°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|60.94 28.5 69.81 29.5
Finland - nominally between 29°30'E and 30°30'E but may be used in adjacent areas if a municipality chooses to use one zone over its whole extent.|61.43 29.5 67.98 30.5
Finland - nominally east of 30°30'E but may be used in adjacent areas to west if a municipality chooses to use one zone over its whole extent.|62.08 30.5 64.27 31.59
Iraq - onshore.|29.06 38.79 37.39 48.61
Iraq - onshore and offshore.|29.06 38.79 37.39 48.75
Iraq - east of 48°E, onshore and offshore.|29.6 48 31 48.75
Finland - onshore.|59.75 19.24 70.09 31.59
Bosnia and Herzegovina; Croatia - onshore; Kosovo; Montenegro - onshore; North Macedonia; Serbia; Slovenia - onshore.|40.85 13.38 46.88 23.04
British Virgin Islands - onshore - Anegada, Jost Van Dyke, Tortola, and Virgin Gorda.|18.28 -64.88 18.78 -64.25
France onshore - mainland south of 43°N and Corsica.|41.31 -1.06 43.07 9.63
France - mainland onshore south of 44°N.|42.33 -1.79 44.01 7.65
France - mainland onshore between 43°N and 45°N.|42.92 -1.79 45 7.71
France - mainland onshore between 44°N and 46°N.|44 -1.46 46 7.71
France - mainland onshore between 45°N and 47°N.|45 -2.21 47 7.16
France - mainland onshore between 46°N and 48°N.|46 -4.77 48 7.63
France - mainland onshore between 47°N and 49°N.|47 -4.87 49 8.23
France - mainland onshore between 48°N and 50°N.|48 -4.87 50 8.23
France - mainland onshore north of 49°N.|49 -2.03 51.14 8.08
United States (USA) - Virginia.|36.54 -83.68 39.46 -75.31
Southern hemisphere - south of 60°S onshore and offshore - Antarctica.|-90 -180 -60 180
The Democratic Republic of the Congo (Zaire) - Katanga east of 28°30'E.|-13.46 28.5 -4.99 30.78
The Democratic Republic of the Congo (Zaire) - Katanga between 26°30'E and 29°30'E.|-13.44 26.5 -4.99 29.5
The Democratic Republic of the Congo (Zaire) - Katanga between 24°30'E and 27°30'E.|-12.08 24.5 -4.99 27.5
The Democratic Republic of the Congo (Zaire) - Katanga west of 25°30'E.|-11.72 21.74 -6.32 25.51
Puerto Rico - onshore.|17.87 -67.97 18.57 -65.19
US Virgin Islands - onshore - St Croix, St John, and St Thomas.|17.62 -65.09 18.44 -64.51
Guam - onshore.|13.18 144.58 13.7 145.01
Southwestern Pacific Ocean and Southern Ocean areas surrounding New Zealand.|-60 155 -25 -169.99
United Arab Emirates (UAE) - Dubai municipality.|24.85 54.84 25.34 55.55
Moldova.|45.44 26.63 48.47 30.13
Moldova - west of 30°E.|45.44 26.63 48.47 30
Moldova - east of 30°E.|46.37 30 46.47 30.13
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto - onshore and offshore.|-13.46 11.79 -3.41 29.81
The Democratic Republic of the Congo (Zaire) - west of 13°E onshore and offshore.|-6.04 11.79 -4.67 13
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto and between 15°E and 17°E.|-7.31 15 -3.41 17
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto and between 17°E and 19°E.|-8.11 17 -3.43 19
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto and between 19°E and 21°E.|-8 19 -3.77 21
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto and between 21°E and 23°E.|-11.24 21 -4.18 23.01
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto and between 23°E and 25°E.|-11.47 23 -4.58 25
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto and between 25°E and 27°E.|-11.99 25 -4.99 27
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto and between 27°E and 29°E.|-13.39 27 -6.43 29
The Democratic Republic of the Congo (Zaire) - onshore and offshore south of a line through Bandundu, Seke and Pweto and between 12°E and 18°E.|-8.11 12 -3.41 18.01
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto and between 18°E and 24°E.|-11.24 18 -3.57 24
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto and east of 24°E.|-13.46 24 -4.79 29.81
Brazil - Distrito Federal.|-15.94 -48.1 -15.37 -47.1
Serbia including Vojvodina.|42.23 18.81 46.19 23.01
Spain - Canary Islands onshore and offshore.|24.6 -21.93 32.76 -11.75
Spain - Canary Islands - west of 18°W, onshore and offshore.|24.6 -21.93 31.19 -18
Spain - Canary Islands - east of 18°W, onshore and offshore.|25.25 -18 32.76 -11.75
Denmark - Jutland onshore west of 10°E.|54.8 8 57.64 10
Denmark - onshore - Jutland east of 9°E and Funen.|54.67 9 57.8 11.29
Canada - New Brunswick; Nova Scotia; Prince Edward Island.|43.41 -69.05 48.07 -59.73
Mozambique - onshore.|-26.87 30.21 -10.42 40.9
Mozambique - west - Tete province.|-17.76 30.21 -14.01 35.37
Mozambique - south.|-26.87 31.29 -19.84 35.65
Mozambique - onshore and offshore.|-27.71 30.21 -10.09 43.03
Cambodia - onshore; Vietnam - onshore and offshore Cuu Long basin.|7.99 102.14 23.4 110
Oman - onshore. Includes Musandam and the Kuria Muria (Al Hallaniyah) islands.|16.59 51.99 26.58 59.91
United States (USA) - Hawaii - main islands onshore.|18.87 -160.3 22.29 -154.74
United States (USA) - Alaska - St Lawrence Island.|62.89 -171.97 63.84 -168.59
United States (USA) - Alaska - Pribilof Islands - St Paul Island.|57.06 -170.51 57.28 -170.04
United States (USA) - Alaska - Pribilof Islands - St George Island.|56.49 -169.88 56.67 -169.38
Puerto Rico, US Virgin Islands and British Virgin Islands - onshore.|17.62 -67.97 18.78 -64.25
Côte d'Ivoire (Ivory Coast) - onshore and offshore.|1.02 -8.61 10.74 -2.48
Bangladesh - onshore; India - mainland onshore; Myanmar - onshore and Moattama area offshore; Pakistan - onshore.|8.02 60.86 37.07 101.17
Pakistan - onshore and offshore.|21.05 60.86 37.07 77.83
India - mainland onshore.|8.02 68.13 35.51 97.42
Vietnam - onshore.|8.33 102.14 23.4 109.53
Eswatini (Swaziland); Lesotho; South Africa - onshore and offshore.|-50.32 13.33 -22.13 42.85
American Samoa - onshore - Tutuila, Aunu'u, Ofu, Olesega, Ta'u and Rose islands. Guam - onshore. Northern Mariana Islands - onshore. Puerto Rico - onshore. United States (USA) - onshore Alabama, Alaska, Arizona, Arkansas, California, Colorado, Connecticut, Delaware, Florida, Georgia, Hawaii, Idaho, Illinois, Indiana, Iowa, Kansas, Kentucky, Louisiana, Maine, Maryland, Massachusetts, Michigan, Minnesota, Mississippi, Missouri, Montana, Nebraska, Nevada, New Hampshire, New Jersey, New Mexico, New York, North Carolina, North Dakota, Ohio, Oklahoma, Oregon, Pennsylvania, Rhode Island, South Carolina, South Dakota, Tennessee, Texas, Utah, Vermont, Virginia, Washington, West Virginia, Wisconsin and Wyoming; offshore Gulf of Mexico continental shelf (GoM OCS). US Virgin Islands - onshore.|-14.59 144.58 71.4 -64.51
Iran - onshore and offshore.|23.34 44.03 39.78 63.34
Guinea - onshore.|7.19 -15.13 12.68 -7.65
Argentina - Mendoza province, Neuquen province, western La Pampa province and western Rio Negro province.|-43.41 -72.14 -31.91 -65.86
Argentina - Chibut province south of approximately 42°30'S and Santa Cruz province north of approximately 50°20'S.|-50.34 -73.59 -42.49 -65.47
Republic of Korea (South Korea) - onshore.|33.14 124.53 38.64 131.01
Yemen - onshore and offshore.|8.95 41.08 19 57.96
Yemen - South Yemen onshore mainland.|12.54 43.37 19 53.14
New Zealand - onshore and offshore. Includes Antipodes Islands, Auckland Islands, Bounty Islands, Chatham Islands, Cambell Island, Kermadec Islands, Raoul Island and Snares Islands.|-55.95 160.6 -25.88 -171.2
Ghana - onshore and offshore.|1.4 -3.79 11.16 2.1
South America - onshore and offshore. Ecuador (mainland and Galapagos) - onshore and offshore.|-59.87 -113.21 16.75 -26
Sierra Leone - onshore.|6.88 -13.35 10 -10.26
Onshore Bulgaria, Czechia, Germany (former DDR), Hungary and Slovakia.|41.24 9.92 54.74 28.68
Onshore: Bulgaria, Czechia, Germany (former DDR), Hungary, Poland and Slovakia. Onshore and offshore: Albania and Romania.|39.63 9.92 54.89 31.41
United Kingdom (UK) - Northern Ireland (Ulster) - onshore.|53.96 -8.18 55.36 -5.34
Venezuela - onshore and offshore.|0.64 -73.38 16.75 -58.95
Argentina - onshore and offshore.|-58.41 -73.59 -21.78 -52.63
Greenland - west coast onshore.|59.74 -73.29 79 -42.52
Greenland - Scoresbysund area onshore.|68.66 -29.69 74.58 -19.89
Egypt - onshore.|21.97 24.7 31.68 36.95
Russian Federation - onshore and offshore.|39.87 18.92 85.19 -168.97
Eritrea; Ethiopia; South Sudan; Sudan.|3.4 21.82 22.24 47.99
Australia - onshore and offshore. Papua New Guinea - onshore.|-47.2 109.23 -1.3 163.2
Australia - Queensland, South Australia, Western Australia, federal areas offshore west of 129°E.|-38.53 109.23 -9.37 153.61
Bahrain, Kuwait and Saudi Arabia - onshore.|16.37 34.51 32.16 55.67
Somalia - onshore.|-1.71 40.98 12.03 51.47
Niger.|11.69 0.16 23.53 16
Brazil - offshore south and east of a line intersecting the coast at 2°55'S; onshore Tucano basin.|-35.71 -53.38 4.26 -26
Botswana; Malawi; Zambia; Zimbabwe.|-26.88 19.99 -8.19 35.93
Burundi, Kenya, Rwanda, Tanzania and Uganda.|-11.75 28.85 4.63 41.91
Indonesia - Bali, Java and western Sumatra onshore, offshore southern Java Sea, Madura Strait and western Bali Sea.|-8.91 95.16 5.97 117.01
Barbados - onshore.|13 -59.71 13.39 -59.37
China - onshore and offshore.|16.7 73.62 53.56 134.77
Colombia - mainland and offshore Caribbean.|-4.23 -79.1 13.68 -66.87
Indonesia - Banga and Belitung Islands.|-3.3 105.07 -1.44 108.35
Angola - Angola proper - onshore and offshore.|-18.02 8.2 -5.82 24.09
Argentina - mainland onshore and Atlantic offshore Tierra del Fuego.|-54.93 -73.59 -21.78 -53.65
Botswana; Eswatini (Swaziland); Lesotho; South Africa - mainland.|-34.88 16.45 -17.78 32.95
Tunisia - onshore and offshore.|30.23 7.49 38.41 13.67
Brazil - south of 18°S and west of 54°W, plus Distrito Federal. Paraguay - north.|-31.91 -62.57 -15.37 -47.1
Brazil - onshore - west of 54°W and south of 18°S; also south of 15°S between 54°W and 42°W; also east of 42°W.|-33.78 -58.16 -2.68 -34.74
Lebanon - onshore. Syrian Arab Republic - onshore.|32.31 35.04 37.3 42.38
Egypt - onshore and offshore.|21.89 24.7 33.82 37.91
Europe - west: Andorra; Cyprus; Denmark - onshore and offshore; Faroe Islands - onshore; France - offshore; Germany - offshore North Sea; Gibraltar; Greece - offshore; Israel - offshore; Italy including San Marino and Vatican City State; Ireland offshore; Malta; Netherlands - offshore; North Sea; Norway including Svalbard - onshore and offshore; Portugal - mainland - offshore; Spain - onshore; Türkiye (Turkey) - onshore and offshore; United Kingdom - UKCS offshore east of 6°W including Channel Islands (Guernsey and Jersey). Egypt - Western Desert; Iraq - onshore; Jordan.|25.71 -16.1 84.73 48.61
Europe - west.|34.88 -10.56 84.73 38.01
Oman - mainland onshore.|16.59 51.99 26.42 59.91
Indonesia - onshore.|-10.98 95.16 5.97 141.01
Myanmar (Burma) - onshore; Thailand - onshore.|5.63 92.2 28.55 105.64
Thailand - onshore plus offshore Gulf of Thailand.|5.63 97.34 20.46 105.64
Bangladesh - onshore; India - mainland onshore; Myanmar (Burma) - onshore; Pakistan - onshore.|8.02 60.86 37.07 101.17
Sri Lanka - onshore.|5.86 79.64 9.88 81.95
Malaysia - West Malaysia onshore and offshore east coast; Singapore - onshore and offshore.|1.13 99.59 7.81 105.82
Kuwait - onshore.|28.53 46.54 30.09 48.48
Aruba - onshore; Bolivia; Bonaire - onshore; Brazil - offshore - Amazon Cone shelf; Chile - onshore north of 43°30'S; Curacao - onshore; Ecuador - mainland onshore; Guyana - onshore; Peru - onshore; Venezuela - onshore.|-43.5 -81.41 12.68 -47.99
Venezuela - Lake Maracaibo area, onshore and offshore in lake.|8.72 -72.4 11.04 -70.78
Liberia - onshore.|4.29 -11.52 8.52 -7.36
Togo - onshore and offshore.|2.91 -0.15 11.14 2.42
Philippines - onshore.|4.99 116.89 19.45 126.65
Chile - Tierra del Fuego, onshore; Argentina - Tierra del Fuego, onshore and offshore Atlantic west of 66°W.|-55.96 -74.83 -51.65 -63.73
Afghanistan.|29.4 60.5 38.48 74.92
Seychelles - Mahe Island.|-4.86 55.3 -4.5 55.59
Europe - onshore and offshore: Albania; Andorra; Austria; Belgium; Bosnia and Herzegovina; Bulgaria; Croatia; Cyprus; Czechia; Denmark; Estonia; Faroe Islands; Finland; France; Germany; Gibraltar; Greece; Hungary; Ireland; Italy; Kosovo; Latvia; Liechtenstein; Lithuania; Luxembourg; Malta; Moldova; Monaco; Montenegro; Netherlands; North Macedonia; Norway including Svalbard and Jan Mayen; Poland; Portugal; Romania; San Marino; Serbia; Slovakia; Slovenia; Spain; Sweden; Switzerland; United Kingdom (UK) including Channel Islands and Isle of Man; Vatican City State.|32.88 -16.1 84.73 40.18
Africa - Morocco and Western Sahara - onshore.|20.71 -17.16 35.97 -1.01
Eritrea - onshore and offshore.|12.36 36.44 18.1 43.31
Nigeria - onshore and offshore.|1.92 2.66 13.9 14.65
Italy - onshore and offshore; San Marino, Vatican City State.|34.76 5.93 47.1 18.99
Gabon - onshore and offshore.|-6.37 7.03 2.32 14.52
North and central America: Antigua and Barbuda - onshore. Bahamas - onshore plus offshore over internal continental shelf only. Belize - onshore. British Virgin Islands - onshore. Canada onshore - Alberta, British Columbia, Manitoba, New Brunswick, Newfoundland and Labrador, Northwest Territories, Nova Scotia, Nunavut, Ontario, Prince Edward Island, Quebec, Saskatchewan and Yukon - plus offshore east coast. Cuba - onshore and offshore. El Salvador - onshore. Guatemala - onshore. Honduras - onshore. Panama - onshore. Puerto Rico - onshore. Mexico - onshore plus offshore east coast. Nicaragua - onshore. United States (USA) onshore and offshore - Alabama, Alaska, Arizona, Arkansas, California, Colorado, Connecticut, Delaware, Florida, Georgia, Idaho, Illinois, Indiana, Iowa, Kansas, Kentucky, Louisiana, Maine, Maryland, Massachusetts, Michigan, Minnesota, Mississippi, Missouri, Montana, Nebraska, Nevada, New Hampshire, New Jersey, New Mexico, New York, North Carolina, North Dakota, Ohio, Oklahoma, Oregon, Pennsylvania, Rhode Island, South Carolina, South Dakota, Tennessee, Texas, Utah, Vermont, Virginia, Washington, West Virginia, Wisconsin and Wyoming - plus offshore . US Virgin Islands - onshore.|7.15 167.65 83.17 -47.74
North America - onshore and offshore: Canada - Alberta; British Columbia; Manitoba; New Brunswick; Newfoundland and Labrador; Northwest Territories; Nova Scotia; Nunavut; Ontario; Prince Edward Island; Quebec; Saskatchewan; Yukon. Puerto Rico. United States (USA) - Alabama; Alaska; Arizona; Arkansas; California; Colorado; Connecticut; Delaware; Florida; Georgia; Hawaii; Idaho; Illinois; Indiana; Iowa; Kansas; Kentucky; Louisiana; Maine; Maryland; Massachusetts; Michigan; Minnesota; Mississippi; Missouri; Montana; Nebraska; Nevada; New Hampshire; New Jersey; New Mexico; New York; North Carolina; North Dakota; Ohio; Oklahoma; Oregon; Pennsylvania; Rhode Island; South Carolina; South Dakota; Tennessee; Texas; Utah; Vermont; Virginia; Washington; West Virginia; Wisconsin; Wyoming. US Virgin Islands. British Virgin Islands.|14.92 167.65 86.45 -40.73
Arabian Gulf; Qatar - offshore; United Arab Emirates (UAE) - Abu Dhabi; Dubai; Sharjah; Ajman; Fujairah; Ras Al Kaimah; Umm Al Qaiwain - onshore and offshore.|22.63 50.55 27.05 57.13
New Zealand - North Island, South Island, Stewart Island - onshore and nearshore.|-47.65 165.87 -33.89 179.27
Norway - onshore.|57.93 4.68 71.21 31.22
France - onshore - mainland and Corsica.|41.31 -4.87 51.14 9.63
United Kingdom (UK) - offshore to boundary of UKCS within 49°45'N to 61°N and 9°W to 2°E; onshore Great Britain (England, Wales and Scotland). Isle of Man onshore.|49.75 -9 61.01 2.01
United Kingdom (UK) - Great Britain - England and Wales onshore, Scotland onshore and Western Isles nearshore including Sea of the Hebrides and The Minch; Isle of Man onshore.|49.79 -8.82 60.94 1.92
Ireland - onshore. United Kingdom (UK) - onshore - England; Scotland; Wales; Northern Ireland. Isle of Man.|49.81 -10.56 60.9 1.84
Israel - onshore; Jordan; Palestine Territory - onshore.|29.18 34.17 33.38 39.31
Congo - onshore and offshore.|-6.91 8.84 3.72 18.65
Australia including Lord Howe Island, Macquarie Island, Ashmore and Cartier Islands, Christmas Island, Cocos (Keeling) Islands, Norfolk Island. All onshore and offshore.|-60.55 93.41 -8.47 173.34
Armenia; Azerbaijan; Belarus; Estonia - onshore; Georgia - onshore; Kazakhstan; Kyrgyzstan; Latvia - onshore; Lithuania - onshore; Moldova; Russian Federation - onshore; Tajikistan; Turkmenistan; Ukraine - onshore; Uzbekistan.|35.14 19.57 81.91 -168.97
Qatar - onshore and offshore.|24.55 50.55 27.05 53.04
Venezuela - onshore north of approximately 7°45'N.|7.75 -73.38 12.25 -59.8
Netherlands - onshore, including Waddenzee, Dutch Wadden Islands and 12-mile offshore coastal zone.|50.75 3.2 53.7 7.22
Falkland Islands (Malvinas) - onshore.|-52.51 -61.55 -50.96 -57.6
Namibia - onshore and offshore.|-30.64 8.24 -16.95 25.27
Indonesia - west Kalimantan - onshore coastal area.|0.06 108.79 2.13 109.78
Madagascar - onshore and nearshore.|-26.59 42.53 -11.69 51.03
Brunei - onshore and offshore; Malaysia - East Malaysia (Sabah; Sarawak) - onshore and offshore.|0.85 109.31 7.67 119.61
Japan - onshore; North Korea - onshore; South Korea - onshore.|20.37 122.83 45.54 154.05
United Arab Emirates (UAE) - Abu Dhabi onshore and Dubai onshore.|22.63 51.56 25.34 56.03
Algeria - onshore north of 32°N.|31.99 -2.95 37.14 9.09
Algeria - onshore and offshore.|18.97 -8.67 38.8 11.99
Sweden - onshore.|55.28 10.93 69.07 24.17
Uruguay - onshore.|-35 -58.49 -30.09 -53.09
Senegal - onshore and offshore.|10.64 -20.22 16.7 -11.36
Suriname - onshore and offshore.|1.83 -58.08 9.35 -52.66
Germany - states of former West Germany onshore - Baden-Wurtemberg, Bayern, Bremen, Hamburg, Hessen, Niedersachsen, Nordrhein-Westfalen, Rheinland-Pfalz, Saarland, Schleswig-Holstein.|47.27 5.86 55.09 13.84
Romania - onshore.|43.62 20.26 48.27 29.74
Kuwait - Kuwait City.|29.17 47.78 29.45 48.16
The Democratic Republic of the Congo (Zaire) - Katanga.|-13.46 21.74 -4.99 30.78
Hungary and Slovakia - between 19°30'E and 22°30'E.|46.1 19.5 49.59 22.5
Hungary and Slovakia - east of 22°30'E.|47.76 22.5 49.1 22.9
New Zealand - South Island - Dunedin-Bluff vertical CRS area.|-46.73 166.37 -44.52 169.95
St Pierre and Miquelon - onshore and offshore.|43.41 -57.1 47.37 -55.9
Mayotte - onshore and offshore.|-14.49 43.68 -11.33 46.7
Mexico - onshore and offshore.|12.1 -122.19 32.72 -84.64
Mexico west of 114°W, onshore and offshore.|15.01 -122.19 32.72 -114
Mexico between 114°W and 108°W, onshore and offshore.|15.09 -114 32.27 -108
Mexico between 108°W and 102°W, onshore and offshore.|14.05 -108 31.79 -102
Mexico between 102°W and 96°W, onshore and offshore.|12.3 -102 29.81 -96
Mexico between 96°W and 90°W, onshore and offshore.|12.1 -96 26 -90
Mexico east of 90°W, onshore and offshore.|17.81 -90 25.77 -84.64
China - onshore and offshore between 102°E and 108°E.|17.75 102 42.47 108
China - onshore and offshore between 108°E and 114°E.|16.7 108 45.11 114
China - onshore and offshore between 114°E and 120°E.|19.02 114 51.52 120
China - onshore and offshore between 120°E and 126°E.|24.64 120 53.56 126
China - onshore and offshore between 126°E and 132°E.|29.7 126 52.79 132
China - onshore.|18.11 73.62 53.56 134.77
French Antilles onshore and offshore - Guadeloupe (including Grande Terre, Basse Terre, Marie Galante, Les Saintes, Iles de la Petite Terre, La Desirade); Martinique; St Barthélemy; St Martin.|14.08 -63.66 18.53 -57.52
French Antilles onshore and offshore west of 60°W - Guadeloupe (including Grande Terre, Basse Terre, Marie Galante, Les Saintes, Iles de la Petite Terre, La Desirade); Martinique; St Barthélemy; northern St Martin.|14.08 -63.66 18.31 -60
Japan - onshore and offshore.|17.09 122.38 46.05 157.65
Brazil - onshore and offshore. In rest of South America - onshore north of approximately 45°S and Tierra del Fuego.|-55.96 -91.72 12.52 -25.28
Senegal - central, Mali - southwest, Burkina Faso - central, Niger - southwest, Nigeria - north, Chad - central. All in proximity to the parallel of latitude of 12°N.|10.26 -17.19 15.7 30.42
French Guiana - coastal area.|3.43 -54.45 5.81 -51.61
French Guiana - onshore and offshore.|2.11 -54.61 8.88 -49.45
Reunion - onshore and offshore.|-24.72 51.83 -18.28 58.24
New Caledonia - Loyalty Islands - Mare.|-21.71 167.75 -21.32 168.19
Germany - onshore and offshore between 6°E and 12°E, including Mecklenburg-Vorpommern west of 12°E and Schleswig-Holstein.|47.27 6 55.47 12
Iraq - Kuwait boundary.|29.06 46.36 30.32 48.61
Latin America - Central America and South America - onshore and offshore. Brazil - onshore and offshore.|-59.87 -122.19 32.72 -25.28
Guam - onshore. Northern Mariana Islands - onshore.|13.18 144.58 20.61 146.12
Laos.|13.92 100.09 22.5 107.64
Mauritania - coastal area north of Cape Timiris.|19.37 -17.08 21.34 -15.88
Mauritania - coastal area south of Cape Timiris.|16.81 -16.57 19.41 -15.59
Bangladesh - onshore and offshore.|18.56 88.01 26.64 92.67
Philippines - onshore and offshore.|3 116.04 22.18 129.95
Maldives - onshore.|-0.69 72.81 7.08 73.69
Colombia - onshore and offshore. Includes San Andres y Providencia, Malpelo Islands, Roncador Bank, Serrana Bank and Serranilla Bank.|-4.23 -84.77 15.51 -66.87
French Polynesia - onshore and offshore. Includes Society archipelago, Tuamotu archipelago, Marquesas Islands, Gambier Islands and Austral Islands.|-31.24 -158.13 -4.52 -131.97
The Democratic Republic of the Congo (Zaire) - Kasai - south of 5°S and east of 21°30'E.|-7.31 21.5 -5.01 26.26
The Democratic Republic of the Congo (Zaire) - adjacent to 6th parallel south traverse.|-7.36 12.17 -3.29 29.64
Mauritania - onshore.|14.72 -17.08 27.3 -4.8
Mauritania - onshore and offshore.|14.72 -20.04 27.3 -4.8
Angola - Cabinda.|-6.04 10.53 -4.38 13.1
United States (USA) - Hawaii - Tern Island and Sorel Atoll.|23.69 -166.36 23.93 -166.03
Cocos (Keeling) Islands - onshore.|-12.27 96.76 -11.76 96.99
Japan - Iwo Jima island.|24.67 141.2 24.89 141.42
St Helena, Ascension and Tristan da Cunha - St Helena Island - onshore.|-16.08 -5.85 -15.85 -5.59
St Helena, Ascension and Tristan da Cunha - Ascension Island - onshore.|-8.03 -14.46 -7.83 -14.24
Djibouti - onshore and offshore.|10.94 41.75 12.72 44.15
Vanuatu - southern islands - Aneityum, Efate, Erromango and Tanna.|-20.31 168.09 -17.37 169.95
Antarctica - McMurdo Sound, Camp McMurdo area.|-77.94 165.73 -77.17 167.43
Kiribati - Phoenix Islands: Kanton, Orona, McKean Atoll, Birnie Atoll, Phoenix Seamounts.|-4.76 -174.6 -2.68 -170.66
North America - onshore - Bahamas and USA - Florida (east).|20.86 -82.33 30.83 -72.68
Solomon Islands - onshore southern Solomon Islands, primarily Guadalcanal, Malaita, San Cristobel, Santa Isobel, Choiseul, Makira-Ulawa.|-10.9 155.62 -6.55 162.44
Chile - Easter Island onshore.|-27.25 -109.51 -27.01 -109.16
Fiji - onshore - Vanua Levu, Taveuni, Viti Levu and and immediately adjacent smaller islands of Yasawa and Kandavu groups.|-19.22 176.81 -16.1 -179.77
Cayman Islands - Grand Cayman.|19.21 -81.46 19.41 -81.04
British Indian Ocean Territory - Chagos Archipelago - Diego Garcia.|-7.49 72.3 -7.18 72.55
United States Minor Outlying Islands - Johnston Island.|16.67 -169.59 16.79 -169.47
Cayman Islands - Little Cayman and Cayman Brac.|19.63 -80.14 19.78 -79.69
United States Minor Outlying Islands - Midway Islands - Sand Island and Eastern Island.|28.13 -177.45 28.28 -177.31
Spain - Canary Islands - El Hierro, La Gomera, La Palma and Tenerife - onshore.|27.58 -18.22 28.9 -16.08
Vanuatu - northern islands - Aese, Ambrym, Aoba, Epi, Espiritu Santo, Maewo, Malo, Malkula, Paama, Pentecost, Shepherd and Tutuba.|-17.32 166.47 -14.57 168.71
Marshall Islands - onshore. Wake atoll onshore.|8.66 162.27 19.38 167.82
Wake atoll - onshore.|19.22 166.55 19.38 166.72
St Helena, Ascension and Tristan da Cunha - Tristan da Cunha island group including Tristan, Inaccessible, Nightingale, Middle and Stoltenhoff Islands.|-40.42 -12.76 -37 -9.8
Federated States of Micronesia - Kosrae (Kusaie).|5.21 162.85 5.43 163.1
Antarctica - South Shetland Islands - Deception Island.|-63.08 -60.89 -62.82 -60.35
Republic of Korea (South Korea) - onshore and offshore.|28.6 122.71 40.27 134.28
Malaysia - onshore and offshore. Includes peninsular Malayasia, Sabah and Sarawak.|0.85 98.02 7.81 119.61
Germany - Sachsen.|50.2 11.89 51.66 15.04
Germany - Thuringen.|50.2 9.92 51.64 12.56
Greenland - onshore and offshore.|56.38 -75 87.02 7.99
New Caledonia - onshore and offshore. Isle de Pins, Loyalty Islands, Huon Islands, Belep archipelago, Chesterfield Islands, and Walpole.|-26.45 156.25 -14.83 174.28
Malaysia - West Malaysia; Singapore.|1.13 99.59 6.72 104.6
Indonesia - onshore and offshore.|-13.95 92.01 7.79 141.46
Jamaica - onshore and offshore. Includes Morant Cays and Pedro Cays.|14.08 -80.6 19.36 -74.51
Puerto Rico - onshore and offshore. United States (USA) onshore and offshore - Alabama; Alaska; Arizona; Arkansas; California; Colorado; Connecticut; Delaware; Florida; Georgia; Idaho; Illinois; Indiana; Iowa; Kansas; Kentucky; Louisiana; Maine; Maryland; Massachusetts; Michigan; Minnesota; Mississippi; Missouri; Montana; Nebraska; Nevada; New Hampshire; New Jersey; New Mexico; New York; North Carolina; North Dakota; Ohio; Oklahoma; Oregon; Pennsylvania; Rhode Island; South Carolina; South Dakota; Tennessee; Texas; Utah; Vermont; Virginia; Washington; West Virginia; Wisconsin; Wyoming. US Virgin Islands - onshore and offshore.|14.92 167.65 74.71 -63.88
Antarctica - Ross Sea Region - nominally between 160°E and 150°W but includes buffer on eastern hemisphere margin to include Transantarctic Mountains|-90 144.99 -59.99 -144.99
Colombia - mainland onshore.|-4.23 -79.1 12.52 -66.87
Austria. Bosnia and Herzegovina. Croatia - onshore. Kosovo. Montenegro - onshore. North Macedonia. Serbia. Slovenia - onshore.|40.85 9.53 49.02 23.04
Madagascar - onshore.|-25.64 43.18 -11.89 50.56
Tunisia - onshore.|30.23 7.49 37.4 11.59
Sao Tome and Principe - onshore - Sao Tome.|-0.04 6.41 0.46 6.82
Sao Tome and Principe - onshore - Principe.|1.48 7.27 1.76 7.52
Cape Verde - onshore and offshore. Includes Boa Vista, Brava, Fogo, Maio, Sal, Santo Antao, Sao Nicolau, Sao Tiago, Sao Vicente.|11.47 -28.85 20.54 -19.53
Germany - onshore - states of Baden-Wurtemberg, Bayern, Berlin, Brandenburg, Bremen, Hamburg, Hessen, Mecklenburg-Vorpommern, Niedersachsen, Nordrhein-Westfalen, Rheinland-Pfalz, Saarland, Sachsen, Sachsen-Anhalt, Schleswig-Holstein, Thuringen.|47.27 5.86 55.09 15.04
France - mainland onshore.|42.33 -4.87 51.14 8.23
World: Afghanistan, Albania, Algeria, American Samoa, Andorra, Angola, Anguilla, Antarctica, Antigua and Barbuda, Argentina, Armenia, Aruba, Australia, Austria, Azerbaijan, Bahamas, Bahrain, Bangladesh, Barbados, Belgium, Belgium, Belize, Benin, Bermuda, Bhutan, Bolivia, Bonaire, Saint Eustasius and Saba, Bosnia and Herzegovina, Botswana, Bouvet Island, Brazil, British Indian Ocean Territory, British Virgin Islands, Brunei Darussalam, Bulgaria, Burkina Faso, Burundi, Cambodia, Cameroon, Canada, Cape Verde, Cayman Islands, Central African Republic, Chad, Chile, China, Christmas Island, Cocos (Keeling) Islands, Comoros, Congo, Cook Islands, Costa Rica, Côte d'Ivoire (Ivory Coast), Croatia, Cuba, Curacao, Cyprus, Czechia, Denmark, Djibouti, Dominica, Dominican Republic, East Timor, Ecuador, Egypt, El Salvador, Equatorial Guinea, Eritrea, Estonia, Eswatini (Swaziland), Ethiopia, Falkland Islands (Malvinas), Faroe Islands, Fiji, Finland, France, French Guiana, French Polynesia, French Southern Territories, Gabon, Gambia, Georgia, Germany, Ghana, Gibraltar, Greece, Greenland, Grenada, Guadeloupe, Guam, Guatemala, Guinea, Guinea-Bissau, Guyana, Haiti, Heard Island and McDonald Islands, Holy See (Vatican City State), Honduras, China - Hong Kong, Hungary, Iceland, India, Indonesia, Islamic Republic of Iran, Iraq, Ireland, Israel, Italy, Jamaica, Japan, Jordan, Kazakhstan, Kenya, Kiribati, Democratic People's Republic of Korea (North Korea), Republic of Korea (South Korea), Kosovo, Kuwait, Kyrgyzstan, Lao People's Democratic Republic (Laos), Latvia, Lebanon, Lesotho, Liberia, Libyan Arab Jamahiriya, Liechtenstein, Lithuania, Luxembourg, China - Macao, Madagascar, Malawi, Malaysia, Maldives, Mali, Malta, Marshall Islands, Martinique, Mauritania, Mauritius, Mayotte, Mexico, Federated States of Micronesia, Monaco, Mongolia, Montenegro, Montserrat, Morocco, Mozambique, Myanmar (Burma), Namibia, Nauru, Nepal, Netherlands, New Caledonia, New Zealand, Nicaragua, Niger, Nigeria, Niue, Norfolk Island, North Macedonia, Northern Mariana Islands, Norway, Oman, Pakistan, Palau, Panama, Papua New Guinea (PNG), Paraguay, Peru, Philippines, Pitcairn, Poland, Portugal, Puerto Rico, Qatar, Reunion, Romania, Russian Federation, Rwanda, St Barthelemy, St Kitts and Nevis, St Helena, Ascension and Tristan da Cunha, St Lucia, St Martin, St Pierre and Miquelon, Saint Vincent and the Grenadines, Samoa, San Marino, Sao Tome and Principe, Saudi Arabia, Senegal, Serbia, Seychelles, Sierra Leone, Singapore, Slovakia (Slovak Republic), Slovenia, St Maarten, Solomon Islands, Somalia, South Africa, South Georgia and the South Sandwich Islands, South Sudan, Spain, Sri Lanka, Sudan, Suriname, Svalbard and Jan Mayen, Sweden, Switzerland, Syrian Arab Republic, Taiwan, Tajikistan, United Republic of Tanzania, Thailand, The Democratic Republic of the Congo (Zaire), Togo, Tokelau, Tonga, Trinidad and Tobago, Tunisia, Türkiye (Turkey), Turkmenistan, Turks and Caicos Islands, Tuvalu, Uganda, Ukraine, United Arab Emirates (UAE), United Kingdom (UK), United States (USA), United States Minor Outlying Islands, Uruguay, Uzbekistan, Vanuatu, Venezuela, Vietnam, US Virgin Islands, Wallis and Futuna, Western Sahara, Yemen, Zambia, Zimbabwe.|-90 -180 90 180
Portugal - Azores and Madeira island groups and surrounding EEZ - Flores, Corvo; Graciosa, Terceira, Sao Jorge, Pico, Faial; Sao Miguel, Santa Maria; Madeira, Porto Santo, Desertas; Selvagens.|29.24 -35.58 43.07 -12.48
Portugal - west of 30°W - western Azores - Flores and Corvo islands and surrounding EEZ.|35.25 -35.58 43.07 -30
Portugal - between 30°W and 24°W - central and eastern Azores - Graciosa, Terceira, Sao Jorge, Pico, Faial; Sao Miguel and Santa Maria islands and surrounding EEZ.|33.52 -30 42.96 -24
Portugal - Madeira, Porto Santo, Desertas and Selvagens islands and surrounding EEZ east of 18°W.|29.24 -18 36.46 -12.48
United States (USA) - CONUS onshore - Alabama; Arizona; Arkansas; California; Colorado; Connecticut; Delaware; Florida; Georgia; Idaho; Illinois; Indiana; Iowa; Kansas; Kentucky; Louisiana; Maine; Maryland; Massachusetts; Michigan; Minnesota; Mississippi; Missouri; Montana; Nebraska; Nevada; New Hampshire; New Jersey; New Mexico; New York; North Carolina; North Dakota; Ohio; Oklahoma; Oregon; Pennsylvania; Rhode Island; South Carolina; South Dakota; Tennessee; Texas; Utah; Vermont; Virginia; Washington; West Virginia; Wisconsin; Wyoming.|24.41 -124.79 49.38 -66.91
Norway - onshore - west of 6°E.|58.32 4.68 62.49 6
Norway - onshore - between 6°E and 7°E.|57.93 6 63.02 7
Norway - onshore - between 7°E and 8°E.|57.93 7 63.52 8
Norway - onshore - between 8°E and 9°E.|58.03 8 63.87 9
Norway - onshore - between 9°E and 10°E.|58.52 9 64.16 10
Norway - onshore - between 10°E and 11°E.|58.9 10 65.04 11
Norway - onshore - between 11°E and 12°E.|58.88 11 65.76 12
Norway - onshore - between 12°E and 13°E.|59.88 12 68.15 13
Norway - onshore - between 13°E and 14°E.|64.01 13 68.37 14
Norway - onshore - between 14°E and 15°E.|64.03 14 69.05 15
Norway - onshore - between 15°E and 16°E.|66.14 15 69.35 16
Norway - onshore - between 16°E and 17°E.|66.88 16 69.45 17
Norway - onshore - between 17°E and 18°E.|67.94 17 69.68 18
Norway - onshore - between 18°E and 19°E.|68.04 18 70.27 19
Norway - onshore - between 19°E and 20°E.|68.33 19 70.34 20
Norway - onshore - between 20°E and 21°E.|68.37 20 70.29 21
Norway - onshore - between 21°E and 22°E.|69.03 21 70.71 22
Norway - onshore - between 22°E and 23°E.|68.69 22 70.81 23
Norway - onshore - between 23°E and 24°E.|68.62 23 71.08 24
Norway - onshore - between 24°E and 25°E.|68.58 24 71.16 25
Norway - onshore - between 25°E and 26°E.|68.59 25 71.21 26
Norway - onshore - between 26°E and 27°E.|69.71 26 71.17 27
Norway - onshore - between 27°E and 28°E.|69.9 27 71.17 28
Norway - onshore - between 28°E and 29°E.|69.03 28 71.13 29
Norway - onshore - between 29°E and 30°E.|69.02 29 70.93 30
Norway - onshore - east of 30°E.|69.46 30 70.77 31.22
Republic of Korea (South Korea) - onshore between 130°E and 132°E.|37.39 130.71 37.62 131.01
Republic of Korea (South Korea) - between 126°E and 128°E - Jeju island onshore.|33.14 126.09 33.61 127.01
Democratic People's Republic of Korea (North Korea) and Republic of Korea (South Korea) - onshore west of 126°E.|33.99 124.27 40.9 126
Democratic People's Republic of Korea (North Korea) and Republic of Korea (South Korea) - onshore between 126°E and 128°E.|33.14 126 41.8 128
Democratic People's Republic of Korea (North Korea) and Republic of Korea (South Korea) - onshore between 128°E and 130°E.|34.49 128 43.01 130
Democratic People's Republic of Korea (North Korea) and Republic of Korea (South Korea) - onshore east of 130°E.|37.39 130 42.98 131.01
Republic of Korea (South Korea) - onshore between 126°E and 128°E.|33.14 126 38.33 128
Republic of Korea (South Korea) - mainland onshore.|33.96 125.75 38.64 129.65
Italy - mainland (including San Marino and Vatican City State) and Sicily.|36.59 6.62 47.1 18.58
Gabon - onshore.|-3.98 8.65 2.32 14.52
Czechia.|48.58 12.09 51.06 18.86
Brunei Darussalam - onshore and offshore.|4.01 112.37 6.31 115.37
Türkiye (Turkey) - onshore and offshore.|34.42 25.62 43.45 44.83
Bhutan.|26.7 88.74 28.33 92.13
Bhutan - Bumthang district.|27.33 90.46 28.09 91.02
Bhutan - Chhukha district.|26.71 89.26 27.32 89.83
Bhutan - Dagana district.|26.7 89.63 27.29 90.08
Bhutan - Gasa district.|27.72 89.44 28.33 90.47
Bhutan - Ha district.|27.02 88.9 27.62 89.39
Bhutan - Lhuentse district.|27.39 90.77 28.09 91.49
Bhutan - Mongar district.|26.93 90.95 27.61 91.5
Bhutan - Paro district.|27.18 89.12 27.79 89.56
Bhutan - Pemagatshel district.|26.78 91 27.18 91.56
Bhutan - Punakha district.|27.46 89.63 27.87 90.08
Bhutan - Samdrup Jongkhar district.|26.79 91.39 27.25 92.13
Bhutan - Samtse district.|26.8 88.74 27.28 89.38
Bhutan - Sarpang district.|26.73 90.01 27.23 90.78
Bhutan - Thimphu district.|27.14 89.22 28.01 89.77
Bhutan - Trashigang district.|27.01 91.37 27.49 92.13
Bhutan - Trongsa district.|27.13 90.26 27.79 90.76
Bhutan - Tsirang district.|26.81 90 27.2 90.35
Bhutan - Wangdue Phodrang district.|27.11 89.71 28.08 90.54
Bhutan - Yangtse district.|27.37 91.34 28 91.77
Bhutan - Zhemgang district.|26.77 90.53 27.39 91.19
Faroe Islands - onshore and offshore.|59.94 -13.91 65.7 -0.48
Georgia - onshore and offshore.|41.04 38.97 43.59 46.72
Brazil - offshore between 36°W and 30°W, southern hemisphere.|-20.11 -36 0 -30
Argentina - west of 70°30'W.|-52 -73.59 -36.16 -70.5
Argentina - between 70°30'W and 67°30'W, onshore.|-54.9 -70.5 -24.08 -67.49
Argentina - between 67°30'W and 64°30'W, onshore.|-55.11 -67.5 -21.78 -64.49
Argentina - between 64°30'W and 61°30'W, onshore.|-54.91 -64.5 -21.99 -61.5
Argentina - between 61°30'W and 58°30'W onshore.|-39.06 -61.51 -23.37 -58.5
Argentina - between 58°30'W and 55°30'W, onshore.|-38.59 -58.5 -24.84 -55.49
Argentina - east of 55°30'W, onshore.|-28.11 -55.5 -25.49 -53.65
Bolivia.|-22.91 -69.66 -9.67 -57.52
Bolivia between 66°W and 60°W.|-22.87 -66 -9.67 -60
Bolivia - west of 66°W.|-22.91 -69.66 -9.77 -66
Bolivia - east of 60°W.|-20.17 -60 -16.27 -57.52
Chile - onshore and offshore. Includes Easter Island, Juan Fernandez Islands, San Felix, and Sala y Gomez.|-59.87 -113.21 -17.5 -65.72
Chile - 72°W to 66°W, onshore and offshore.|-59.87 -72 -17.5 -66
Chile - 78°W to 72°W, onshore and offshore.|-59.36 -78 -18.35 -71.99
Costa Rica - onshore and offshore.|2.15 -90.45 11.77 -81.43
Costa Rica - onshore and offshore east of 86°30'W.|2.21 -86.5 11.77 -81.43
Panama - onshore and offshore.|5 -84.32 12.51 -77.04
Peru - onshore and offshore.|-21.05 -84.68 -0.03 -68.67
Uruguay - onshore and offshore.|-37.77 -58.49 -30.09 -50.01
Uruguay - west of 54°W, onshore and offshore.|-36.63 -58.49 -30.09 -54
Uruguay - east of 54°W, onshore and offshore.|-37.77 -54 -31.9 -50.01
Peru - between 78°W and 72°W, onshore and offshore.|-21.05 -78 -0.03 -72
Peru - east of 72°W, onshore and offshore.|-20.44 -72 -2.14 -68.67
El Salvador - onshore and offshore.|9.97 -91.43 14.44 -87.65
Brazil - east of 30°W, northern and southern hemispheres, onshore and offshore.|-23.86 -30 4.26 -25.28
Costa Rica; El Salvador; Guatemala; Honduras; Nicaragua.|7.98 -92.29 17.83 -82.53
Costa Rica - onshore north of 9°32'N.|9.53 -85.97 11.22 -82.53
Costa Rica - onshore south of 9°56'N|7.98 -85.74 9.94 -82.53
Guatemala - south of 15°51'30"N.|13.69 -92.29 15.86 -88.19
El Salvador - onshore.|13.1 -90.11 14.44 -87.69
Nicaragua - onshore north of 12°48'N.|12.8 -87.74 15.03 -83.08
Nicaragua - onshore south of 12°48'N.|10.7 -87.63 12.8 -83.42
South America between 84°W and 78°W, northern hemisphere, onshore.|0 -80.18 2.7 -78
Belize - onshore.|15.88 -89.22 18.49 -87.72
Panama - onshore.|7.15 -83.04 9.68 -77.19
Antarctica - McMurdo Sound region.|-81 153 -76 173
Antarctica - Borchgrevink Coast region.|-76 157 -73 173
Antarctica - Pennell Coast region.|-73 160 -69.5 172
Antarctica - Ross Ice Shelf Region.|-90 150 -76 -150
United States (USA) - CONUS and Alaska - onshore - Alabama; Alaska mainland; Arizona; Arkansas; California; Colorado; Connecticut; Delaware; Florida; Georgia; Idaho; Illinois; Indiana; Iowa; Kansas; Kentucky; Louisiana; Maine; Maryland; Massachusetts; Michigan; Minnesota; Mississippi; Missouri; Montana; Nebraska; Nevada; New Hampshire; New Jersey; New Mexico; New York; North Carolina; North Dakota; Ohio; Oklahoma; Oregon; Pennsylvania; Rhode Island; South Carolina; South Dakota; Tennessee; Texas; Utah; Vermont; Virginia; Washington; West Virginia; Wisconsin; Wyoming.|24.41 -168.26 71.4 -66.91
Germany - offshore North Sea west of 4°30'E.|55.24 3.34 55.92 4.5
Brazil - onshore - between 18°S and 27°30'S, also east of 54°W between 15°S and 18°S.|-27.5 -58.16 -14.99 -38.82
Brazil - onshore and offshore. Includes Rocas, Fernando de Noronha archipelago, Trindade, Ihlas Martim Vaz and Sao Pedro e Sao Paulo.|-35.71 -74.01 7.04 -25.28
Brazil - between 60°W and 54°W, northern and southern hemispheres.|-31.91 -60 4.51 -53.99
Brazil - between 48°W and 42°W, northern and southern hemispheres, onshore and offshore.|-33.5 -48 5.13 -42
Brazil - between 42°W and 36°W, northern and southern hemispheres, onshore and offshore.|-26.35 -42 0.74 -36
Brazil - between 36°W and 30°W, northern and southern hemispheres, onshore and offshore.|-23.8 -36 4.19 -29.99
Brazil - west of 54°W and between 18°S and 27°30'S.|-27.5 -58.16 -17.99 -54
Brazil - onshore between 54°W and 48°W and between 15°S and 27°30'S.|-27.5 -54 -14.99 -47.99
Brazil - onshore between 48°W and 42°W and south of 15°S.|-25.29 -48 -15 -42
Brazil - between 42°W and 36°W and south of 15°S, onshore.|-22.96 -42 -14.99 -38.82
Papua New Guinea - onshore and offshore. Includes Bismark archipelago, Louisade archipelago, Admiralty Islands, d'Entrecasteaux Islands, northern Solomon Islands, Trobriand Islands, New Britain, New Ireland, Woodlark, and associated islands.|-14.75 139.2 2.58 162.81
Papua New Guinea - west of 144°E, onshore and offshore.|-11.15 139.2 2.31 144
Papua New Guinea - between 144°E and 150°E, onshore and offshore.|-13.88 144 2.58 150.01
Papua New Guinea - between 150°E and 156°E, onshore and offshore.|-14.75 150 1.98 156
Germany - onshore west of 6°E.|50.97 5.86 51.83 6
Germany - onshore between 6°E and 12°E.|47.27 6 55.09 12
Germany - onshore east of 12°E.|47.46 12 54.74 15.04
Ukraine - onshore and offshore.|43.18 22.15 52.38 40.18
Guatemala - north of 15°51'30"N.|15.85 -91.86 17.83 -88.34
Ukraine - west of 24°E.|47.95 22.15 51.66 24
Ukraine - between 24°E and 30°E, onshore and offshore.|45.1 24 51.96 30
Ukraine - between 30°E and 36°E, onshore and offshore.|43.18 30 52.38 36
Ukraine - east of 36°E, onshore and offshore.|43.43 36 50.44 40.18
Fehmarnbelt area of Denmark and Germany.|54.33 10.66 54.83 12.01
Fehmarnbelt area of Denmark and Germany.|54.42 11.17 54.76 11.51
French Polynesia - Society Islands - Bora Bora, Huahine, Maupiti, Moorea, Raiatea, Tahaa and Tahiti.|-17.93 -152.39 -16.17 -149.09
French Polynesia - Society Islands - Raiatea.|-16.96 -151.55 -16.68 -151.3
French Polynesia - Society Islands - Huahine.|-16.87 -151.11 -16.63 -150.89
French Polynesia - Society Islands - Tahaa.|-16.72 -151.63 -16.5 -151.36
French Polynesia - Society Islands - Bora Bora.|-16.62 -151.86 -16.39 -151.61
Guadeloupe - onshore - Les Saintes.|15.8 -61.68 15.94 -61.52
Guadeloupe - onshore - Marie-Galante.|15.8 -61.39 16.05 -61.13
Guadeloupe - onshore - La Desirade.|16.26 -61.13 16.38 -60.97
Guadeloupe - onshore - St Barthelemy island.|17.82 -62.92 17.98 -62.73
Guadeloupe - onshore - St Martin island.|18.01 -63.21 18.17 -62.96
Europe - onshore - Andorra; Austria; Belgium; Bosnia and Herzegovina; Bulgaria; Croatia; Czechia; Denmark; Estonia; Finland; France - mainland; Germany; Gibraltar, Hungary; Italy - mainland and Sicily; Latvia; Liechtenstein; Lithuania; Luxembourg; Netherlands; Norway; Poland; Portugal - mainland; Romania; San Marino; Slovakia; Slovenia; Spain - mainland; Sweden; Switzerland; United Kingdom (UK) - Great Britain mainland; Vatican City State.|35.95 -9.56 71.21 31.59
United States (USA) - Michigan|41.69 -84.87 46.04 -82.13
United States (USA) - Michigan|41.75 -87.61 46.11 -84.6
United States (USA) - Michigan - counties of Baraga; Dickinson; Gogebic; Houghton; Iron; Keweenaw; Marquette; Menominee; Ontonagon.|45.09 -90.42 48.32 -83.44
France - offshore Mediterranean.|41.15 3.04 43.74 10.38
Brazil - offshore - equatorial margin.|-5.74 -51.64 7.04 -32.43
Europe - South Permian basin.|50.5 -1.67 56 22
Reunion - offshore - west of 54°E.|-24.37 51.83 -18.52 54
Germany - onshore and offshore west of 6°E.|50.97 3.34 55.92 6
Germany - onshore and offshore east of 12°E, including Brandenburg (all state, including that part west of 12°E) and Mecklenburg-Vorpommern east of 12°E.|47.46 11.57 55.03 15.04
Italy - Emilia-Romagna region.|43.73 9.19 45.14 12.76
Germany - former West Germany onshore west of 7°30'E - states of Niedersachsen, Nordrhein-Westfalen, Rheinland-Pfalz, Saarland.|49.11 5.86 53.81 7.5
Germany - former West Germany onshore between 7°30'E and 10°30'E - states of Baden-Wurtemberg, Bayern, Bremen, Hamberg, Hessen, Niedersachsen, Nordrhein-Westfalen, Rhineland-Pfalz, Schleswig-Holstein.|47.27 7.5 55.09 10.51
Germany - former West Germany onshore between 10°30'E and 13°30'E - states of Bayern, Berlin, Niedersachsen, Schleswig-Holstein.|47.39 10.5 54.59 13.51
Germany - former West Germany onshore east of 13°30'E - state of Bayern.|48.51 13.5 48.98 13.84
Germany - onshore between 7°30'E and 10°30'E.|47.27 7.5 55.09 10.51
Germany - onshore between 10°30'E and 13°30'E.|47.39 10.5 54.74 13.51
Germany - onshore east of 13°30'E.|48.51 13.5 54.72 15.04
France - Corsica onshore.|41.31 8.5 43.07 9.63
New Zealand - offshore between 180°W and 174°W.|-52.97 -180 -25.88 -174
United Kingdom (UK) - Great Britain onshore - England and Wales - mainland; Scotland - mainland and Inner Hebrides.|49.93 -7.06 58.71 1.8
Mexico - onshore. United States (USA) - CONUS and Alaska - onshore - Alabama; Alaska; Arizona; Arkansas; California; Colorado; Connecticut; Delaware; Florida; Georgia; Idaho; Illinois; Indiana; Iowa; Kansas; Kentucky; Louisiana; Maine; Maryland; Massachusetts; Michigan; Minnesota; Mississippi; Missouri; Montana; Nebraska; Nevada; New Hampshire; New Jersey; New Mexico; New York; North Carolina; North Dakota; Ohio; Oklahoma; Oregon; Pennsylvania; Rhode Island; South Carolina; South Dakota; Tennessee; Texas; Utah; Vermont; Virginia; Washington; West Virginia; Wisconsin; Wyoming.|14.51 172.42 71.4 -66.91
France mainland onshore north of 53.5 grads North (48°09'N).|48.14 -4.87 51.14 8.23
Netherlands - onshore and offshore.|50.75 2.53 55.77 7.22
Australia - Australian Capital Territory, New South Wales, Northern Territory, Queensland, South Australia, Tasmania, Western Australia and Victoria - onshore. Christmas Island - onshore. Cocos and Keeling Islands - onshore.|-43.7 96.76 -9.86 153.69
Australia - Tasmania mainland - onshore.|-43.7 144.55 -40.24 148.44
Canada - onshore - Alberta; British Columbia; Manitoba south of 57°N; New Brunswick; Northwest Territories south west of a line between 60°N, 110°W and the coast at 132°W; Nova Scotia; Ontario south of 52°N; Prince Edward Island; Quebec - mainland west of 66°W and south of 55°N; Saskatchewan south of 55°N; Yukon.|41.67 -141.01 69.8 -59.73
Japan - onshore mainland - Honshu, Shikoku, Kyushu.|30.94 129.3 41.58 142.14
Cambodia - mainland onshore; Vietnam - mainland onshore.|8.33 102.14 23.4 109.53
Vietnam - mainland onshore.|8.33 102.14 23.4 109.53
Europe - onshore - Andorra; Austria; Belgium; Bosnia and Herzegovina; Croatia; Czechia; Denmark; Estonia; Finland; France - mainland; Germany; Gibraltar; Hungary; Italy - mainland and Sicily; Latvia; Liechtenstein; Lithuania; Luxembourg; Netherlands; Norway; Poland; Portugal - mainland; Romania; San Marino; Slovakia; Slovenia; Spain - mainland; Sweden; Switzerland; United Kingdom (UK) - Great Britain mainland; Vatican City State.|35.95 -9.56 71.21 31.59
Denmark - onshore.|54.51 8 57.8 15.25
Azerbaijan - Caspian offshore and onshore Sangachal terminal.|37.89 48.66 42.59 51.73
Georgia - onshore.|41.04 39.99 43.59 46.72
China - Hong Kong - onshore.|22.19 113.82 22.56 114.39
China - Hong Kong - offshore.|22.13 113.76 22.58 114.51
United Kingdom (UK) - Great Britain - Scotland - Orkney Islands onshore.|58.72 -3.48 59.41 -2.34
United Kingdom (UK) - Great Britain - Scotland - Fair Isle onshore.|59.45 -1.76 59.6 -1.5
United Kingdom (UK) - Great Britain - Scotland - Shetland Islands onshore.|59.83 -1.78 60.87 -0.67
United Kingdom (UK) - Great Britain - Scotland - Foula onshore.|60.06 -2.21 60.2 -1.95
United Kingdom (UK) - Great Britain - Scotland - Sule Skerry onshore.|59.05 -4.5 59.13 -4.3
United Kingdom (UK) - Great Britain - Scotland - North Rona onshore.|59.07 -5.92 59.19 -5.73
United Kingdom (UK) - Great Britain - Scotland - Outer Hebrides onshore.|56.76 -7.72 58.54 -6.1
United Kingdom (UK) - Great Britain - Scotland - St Kilda onshore.|57.74 -8.74 57.93 -8.41
United Kingdom (UK) - Great Britain - Scotland - Flannan Isles onshore.|58.21 -7.75 58.35 -7.46
United Kingdom (UK) - Great Britain - England - Isles of Scilly onshore.|49.86 -6.41 49.99 -6.23
Isle of Man - onshore.|54.02 -4.87 54.44 -4.27
Iraq - onshore southeast; Iran - onshore northern Gulf coast and west bordering southeast Iraq.|29.06 44.3 33.5 51.06
Iran - onshore.|25.02 44.03 39.78 63.34
French Guiana - onshore.|2.11 -54.61 5.81 -51.61
Guadeloupe - onshore - Basse-Terre and Grande-Terre.|15.88 -61.85 16.55 -61.15
New Zealand - North Island - Auckland vertical CRS area.|-37.67 174 -36.12 176.17
New Zealand - South Island - Bluff vertical CRS area.|-46.71 168.01 -46.26 168.86
New Zealand - South Island - between approximately 44°S and 46°S - Dunedin vertical CRS area.|-46.4 167.73 -43.82 171.28
New Zealand - North Island - Gisborne vertical CRS area.|-39.04 176.41 -37.49 178.63
New Zealand - South Island - between approximately 41°20'S and 45°S - Lyttleton vertical CRS area.|-44.92 168.95 -41.6 173.77
New Zealand - North Island - Moturiki vertical CRS area.|-40.59 174.57 -37.52 177.26
New Zealand - South Island - north of approximately 42°20'S - Nelson vertical CRS area.|-42.44 171.82 -40.44 174.46
New Zealand - North Island - One Tree Point vertical CRS area.|-36.41 172.61 -34.36 174.83
New Zealand - North Island - Tararu vertical CRS area.|-37.21 175.44 -36.78 175.99
New Zealand - North Island - Taranaki vertical CRS area.|-39.92 173.68 -38.41 174.95
New Zealand - North Island - Wellington vertical CRS area.|-41.67 174.52 -40.12 176.55
New Zealand - Chatham Island - onshore.|-44.18 -176.92 -43.67 -176.2
New Zealand - Stewart Island.|-47.33 167.29 -46.63 168.34
Türkiye (Turkey) - onshore.|35.81 25.62 42.15 44.83
Slovenia - onshore.|45.42 13.38 46.88 16.61
Gibraltar - onshore; Spain - mainland onshore.|35.95 -9.37 43.82 3.39
Germany - states of former East Germany - Berlin, Brandenburg; Mecklenburg-Vorpommern; Sachsen; Sachsen-Anhalt; Thuringen.|50.2 9.92 54.74 15.04
Bulgaria - onshore.|41.24 22.36 44.23 28.68
Nigeria - onshore.|4.22 2.69 13.9 14.65
Australia - Australian Capital Territory.|-35.93 148.76 -35.12 149.4
Yemen - west of 42°E, onshore and offshore.|14.73 41.08 16.36 42
Yemen - east of 54°E, onshore and offshore.|8.95 54 14.95 57.96
Peru - between 84°W and 78°W, onshore and offshore.|-17.33 -84 -3.11 -78
Angola - offshore north of 8°S - including blocks 0, 1, 2, 14, 15, 17, 18 north of 8°S and 32; onshore Soyo area.|-8.01 10.41 -5.05 12.84
United Arab Emirates (UAE) - Abu Dhabi onshore.|22.63 51.56 24.95 56.03
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto and east of 29°E.|-13.46 29 -12.15 29.81
Brazil - onshore and offshore northern and southern hemispheres between 54°W and 48°W.|-35.71 -54.01 7.04 -47.99
Brazil - west of 72°W.|-10.01 -74.01 -4.59 -71.99
Brazil - between 72°W and 66°W, northern and southern hemispheres.|-11.14 -72 2.15 -65.99
Brazil - between 66°W and 60°W, northern and southern hemispheres.|-16.28 -66 5.28 -59.99
Tonga - onshore and offshore.|-25.68 -179.08 -14.14 -171.28
Vietnam - onshore west of 103°30'E.|9.2 102.14 22.82 103.51
Vietnam - between 103°30'E and 106°30'E, onshore.|8.33 103.5 23.4 106.51
Vietnam - onshore east of 106°30'E.|8.57 106.5 22.95 109.53
Vietnam - Quang Ninh province; Da Nang municipality and Quang Nam province; Ba Ria-Vung Tau, Dong Nai and Lam Dong provinces.|8.57 106.43 21.67 108.76
Arctic - 87°N to 75°N, approximately 156°W to approximately 66°W. May be extended westwards or eastwards within the latitude limits.|75 -156 87.01 -66
Arctic - 87°N to 75°N, approximately 84°W to approximately 6°E. May be extended westwards or eastwards within the latitude limits.|75 -84 87.01 6.01
Arctic - 87°N to 75°N, approximately 12°W to approximately 78°E. May be extended westwards or eastwards within the latitude limits.|75 -12 87.01 78.01
Arctic - 87°N to 75°N, approximately 60°E to approximately 150°E. May be extended westwards or eastwards within the latitude limits.|75 60 87.01 150.01
Arctic - 87°N to 75°N, approximately 132°E to approximately 138°W. May be extended westwards or eastwards within the latitude limits.|75 132 87.01 -138
Arctic - 79°N to 67°N, approximately 156°W to approximately 66°W. May be extended westwards or eastwards within the latitude limits.|67 -156 79.01 -66
Arctic - 79°N to 67°N, approximately 84°W to approximately 6°E. May be extended westwards or eastwards within the latitude limits.|67 -84 79.01 6.01
Arctic - 79°N to 67°N, approximately 12°W to approximately 78°E. May be extended westwards or eastwards within the latitude limits.|67 -12 79.01 78.01
Arctic - 79°N to 67°N, approximately 60°E to approximately 150°E. May be extended westwards or eastwards within the latitude limits.|67 60 79.01 150.01
Arctic - 79°N to 67°N, approximately 132°E to approximately 138°W. May be extended westwards or eastwards within the latitude limits.|67 132 79.01 -138
Arctic - 71°N to 59°N, approximately 156°W to approximately 66°W. May be extended westwards or eastwards within the latitude limits.|59 -156 71 -66
Arctic - 71°N to 59°N, approximately 84°W to approximately 6°E. May be extended westwards or eastwards within the latitude limits.|59 -84 71 6
Arctic - 71°N to 59°N, approximately 12°W to approximately 78°E. May be extended westwards or eastwards within the latitude limits.|59 -12 71 78.01
Arctic - 71°N to 59°N, approximately 60°E to approximately 150°E. May be extended westwards or eastwards within the latitude limits.|59 60 71 150.01
Arctic - 71°N to 59°N, approximately 132°E to approximately 138°W. May be extended westwards or eastwards within the latitude limits.|59 132 71 -138
Norway - onshore - between 6°E and 12°E.|57.93 6 65.76 12
Norway - onshore - between 12°E and 18°E.|59.88 12 69.68 18.01
Norway - onshore - between 18°E and 24°E.|68.04 18 71.08 24.01
Norway - onshore - between 24°E and 30°E.|68.58 24 71.21 30
Arctic - between 87°50'N and 82°50'N, approximately 60°W to approximately 0°E. May be extended westwards or eastwards within the latitude limits.|82.83 -60 87.84 0
Arctic - between 84°30'N and 79°30'N, approximately 72°W to approximately 32°W. May be extended eastwards within the latitude limits.|79.5 -72 84.51 -32
Arctic - between 84°30'N and 79°30'N, approximately 32°W to approximately 8°E. May be extended westwards within the latitude limits.|79.5 -32 84.51 8.01
Arctic - between 81°10'N and 76°10'N, Greenland west of approximately 54°W. May be extended eastwards within the latitude limits.|76.16 -75 81.17 -54
Arctic - between 81°10'N and 76°10'N, approximately 54°W to approximately 24°W. May be extended westwards or eastwards within the latitude limits.|76.16 -54 81.17 -24
Arctic - between 81°10'N and 76°10'N, approximately 24°W to approximately 2°E. May be extended westwards within the latitude limits.|76.16 -24 81.17 1.89
Arctic - between 77°50'N and 72°50'N, approximately 76°W to approximately 51°W. May be extended eastwards within the latitude limits.|72.83 -76 77.84 -51
Arctic - between 77°50'N and 72°50'N, approximately 51°W to approximately 26°W. May be extended westwards or eastwards within the latitude limits.|72.83 -51 77.84 -26
Arctic - between 77°50'N and 72°50'N, approximately 26°W to approximately 2°W. May be extended westwards within the latitude limits.|72.83 -26 77.84 -2
Arctic - between 74°30'N and 69°30'N, approximately 72°W to approximately 52°W. May be extended eastwards within the latitude limits.|69.48 -71.89 74.51 -51.99
Arctic - between 74°30'N and 69°30'N, approximately 52°W to approximately 32°W. May be extended westwards or eastwards within the latitude limits.|69.5 -52 74.51 -32
Arctic - between 74°30'N and 69°30'N, approximately 32°W to approximately 12°W. May be extended westwards or eastwards within the latitude limits.|69.5 -32 74.51 -12
Arctic - between 71°10'N and 66°10'N, approximately 65°W to approximately 47°W. May be extended westwards or eastwards within the latitude limits.|66.16 -65 71.17 -47
Arctic - between 71°10'N and 66°10'N, approximately 47°W to approximately 29°W. May be extended westwards or eastwards within the latitude limits.|66.16 -47 71.17 -29
Arctic - between 71°10'N and 66°10'N, approximately 29°W to approximately 11°W. May be extended westwards within the latitude limits.|66.16 -29 71.17 -11
Arctic - between 67°50'N and 62°50'N, approximately 59°W to approximately 42°W. May be extended eastwards within the latitude limits.|62.83 -59 67.84 -42
Arctic - between 67°50'N and 62°50'N, approximately 42°W to approximately 25°W. May be extended westwards within the latitude limits.|62.83 -42 67.84 -25
Arctic - between 64°30'N and 59°30'N, approximately 59°W to approximately 44°W. May be extended eastwards within the latitude limits.|59.5 -59 64.51 -44
Arctic - between 64°30'N and 59°30'N, approximately 44°W to approximately 29°W. May be extended westwards within the latitude limits.|59.5 -44 64.51 -29
Arctic - between 84°30'N and 79°30'N, approximately 4°W to approximately 36°E.|79.5 -4 84.51 36.01
Arctic (Norway (Svalbard) onshore and offshore) - between 81°10'N and 76°10'N.|76.16 -3.35 81.17 38.01
Arctic - between 77°50'N and 72°50'N, approximately 2°W to approximately 22°E. May be extended westwards or eastwards within the latitude limits.|72.83 -2 77.84 22.01
Arctic - between 77°50'N and 72°50'N, approximately 22°E to approximately 46°E. May be extended westwards or eastwards within the latitude limits.|72.83 22 77.84 46.01
Arctic - between 74°30'N and 69°30'N, approximately 4°E to approximately 24°E. May be extended westwards or eastwards within the latitude limits.|69.5 4 74.51 24.01
Arctic - between 74°30'N and 69°30'N, approximately 24°E to approximately 44°E. May be extended westwards or eastwards within the latitude limits.|69.5 24 74.51 44.01
Arctic - between 84°30'N and 79°30'N, approximately 33°E to approximately 73°E. May be extended westwards or eastwards within the latitude limits.|79.5 33 84.51 73.01
Arctic - between 84°30'N and 79°30'N, approximately 73°E to approximately 113°E. May be extended westwards or eastwards within the latitude limits.|79.5 73 84.51 113.01
Arctic (Russia onshore and offshore) - between 81°10'N and 76°10'N, approximately 35°E to approximately 67°E. May be extended eastwards within the latitude limits.|76.16 34.99 81.17 67.01
Arctic (Russia onshore and offshore) - between 81°10'N and 76°10'N, approximately 67°E to approximately 98°E. May be extended westwards or eastwards within the latitude limits.|76.16 67 81.17 98.01
Arctic (Russia onshore and offshore) - between 81°10'N and 76°10'N, approximately 98°E to approximately 129°E. May be extended westwards or eastwards within the latitude limits.|76.16 98 81.17 129.01
Arctic (Russia onshore and offshore) - between 81°10'N and 76°10'N, approximately 129°E to approximately 160°E. May be extended westwards or eastwards within the latitude limits.|76.16 129 81.17 160.01
Arctic - between 77°50'N and 72°50'N, approximately 46°E to approximately 70°E. May be extended westwards or eastwards within the latitude limits.|72.83 46 77.84 70.01
Arctic - between 77°50'N and 72°50'N, approximately 70°E to approximately 94°E. May be extended westwards or eastwards within the latitude limits.|72.83 70 77.84 94.01
Arctic - between 77°50'N and 72°50'N, approximately 94°E to approximately 118°E. May be extended westwards or eastwards within the latitude limits.|72.83 94 77.84 118.01
Arctic - between 77°50'N and 72°50'N, approximately 118°E to approximately 142°E. May be extended westwards or eastwards within the latitude limits.|72.83 118 77.84 142.01
Arctic - between 77°50'N and 72°50'N, approximately 142°E to approximately 166°E. May be extended westwards or eastwards within the latitude limits.|72.83 142 77.84 166.01
Arctic - between 77°50'N and 72°50'N, approximately 166°E to approximately 169°W. May be extended westwards or eastwards within the latitude limits.|72.83 166 77.84 -168.99
Arctic - between 74°30'N and 69°30'N, approximately 44°E to approximately 64°E. May be extended westwards or eastwards within the latitude limits.|69.5 44 74.51 64.01
Arctic - between 74°30'N and 69°30'N, approximately 64°E to approximately 85°E. May be extended westwards or eastwards within the latitude limits.|69.5 64 74.51 85.01
Arctic - between 74°30'N and 69°30'N, approximately 85°E to approximately 106°E. May be extended westwards or eastwards within the latitude limits.|69.5 85 74.51 106.01
Arctic - between 74°30'N and 69°30'N, approximately 106°E to approximately 127°E. May be extended westwards or eastwards within the latitude limits.|69.5 106 74.51 127.01
Arctic - between 74°30'N and 69°30'N, approximately 127°E to approximately 148°E. May be extended westwards or eastwards within the latitude limits.|69.5 127 74.51 148
Arctic - between 74°30'N and 69°30'N, approximately 148°E to approximately 169°E. May be extended westwards or eastwards within the latitude limits.|69.5 148 74.51 169.01
Arctic - between 74°30'N and 69°30'N, approximately 169°E to approximately 169°W. May be extended westwards or eastwards within the latitude limits.|69.5 169 74.51 -169
Arctic - between 74°30'N and 69°30'N, approximately 173°W to approximately 153°W. May be extended eastwards within the latitude limits.|69.5 -173 74.51 -153
Arctic - between 74°30'N and 69°30'N, approximately 157°W to approximately 137°W. May be extended westwards within the latitude limits.|69.5 -157 74.51 -137
Arctic - between 71°10'N and 66°10'N, approximately 174°W to approximately 156°W. May be extended eastwards within the latitude limits.|66.16 -174 71.17 -156
Arctic - between 71°10'N and 66°10'N, approximately 156°W to approximately 138°W. May be extended westwards within the latitude limits.|66.16 -156 71.17 -138
Arctic - between 87°50'N and 82°50'N, approximately 120°W to approximately 60°W. May be extended westwards or eastwards within the latitude limits.|82.83 -120 87.84 -60
Arctic - between 84°30'N and 79°30'N, approximately 135°W to approximately 95°W. May be extended eastwards within the latitude limits.|79.5 -135 84.51 -95
Arctic - between 84°30'N and 79°30'N, approximately 95°W to approximately 55°W. May be extended westwards within the latitude limits.|79.5 -95 84.51 -55
Arctic - between 81°10'N and 76°10'N, approximately 144°W to approximately 114°W. May be extended eastwards within the latitude limits.|76.16 -144 81.17 -114
Arctic - between 81°10'N and 76°10'N, approximately 114°W to approximately 84°W. May be extended westwards or eastwards within the latitude limits.|76.16 -114 81.17 -84
Arctic - between 81°10'N and 76°10'N, Canada east of approximately 84°W. May be extended westwards within the latitude limits.|76.16 -84 81.17 -64.78
Arctic - between 77°50'N and 72°50'N, approximately 141°W to approximately 116°W. May be extended westwards or eastwards within the latitude limits.|72.83 -141 77.84 -116
Arctic - between 77°50'N and 72°50'N, approximately 116°W to approximately 91°W. May be extended westwards or eastwards within the latitude limits.|72.83 -116 77.84 -91
Arctic - between 77°50'N and 72°50'N, approximately 91°W to approximately 67°W. May be extended westwards within the latitude limits.|72.83 -91 77.84 -67
Arctic - between 74°30'N and 69°30'N, approximately 141°W to approximately 121°W. May be extended eastwards within the latitude limits.|69.5 -141 74.51 -121
Arctic - between 74°30'N and 69°30'N, approximately 121°W to approximately 101°W. May be extended westwards or eastwards within the latitude limits.|69.5 -121 74.51 -101
Arctic - between 74°30'N and 69°30'N, approximately 101°W to approximately 81°W. May be extended westwards or eastwards within the latitude limits.|69.5 -101 74.51 -81
Arctic - between 74°30'N and 69°30'N, approximately 81°W to approximately 61°W. May be extended westwards within the latitude limits.|69.5 -81 74.51 -61
Arctic - between 71°10'N and 66°10'N, approximately 141°W to approximately 122°W. May be extended eastwards within the latitude limits.|66.16 -141 71.17 -122
Arctic - between 71°10'N and 66°10'N, approximately 122°W to approximately 103°W. May be extended westwards or eastwards within the latitude limits.|66.16 -122 71.17 -103
Arctic - between 71°10'N and 66°10'N, approximately 103°W to approximately 84°W. May be extended westwards or eastwards within the latitude limits.|66.16 -103 71.17 -84
Arctic - between 71°10'N and 66°10'N, approximately 84°W to approximately 65°W. May be extended westwards or eastwards within the latitude limits.|66.16 -84 71.17 -65
Arctic - between 87°50'N and 82°50'N, approximately 0°E to approximately 60°E. May be extended westwards or eastwards within the latitude limits.|82.83 0 87.84 60.01
Arctic - between 87°50'N and 82°50'N, approximately 60°E to approximately 120°E. May be extended westwards or eastwards within the latitude limits.|82.83 60 87.84 120.01
Arctic - between 87°50'N and 82°50'N, approximately 120°E to approximately 180°E. May be extended westwards or eastwards within the latitude limits.|82.83 120 87.83 180
Arctic - between 87°50'N and 82°50'N, approximately 180°W to approximately 120°W. May be extended westwards or eastwards within the latitude limits.|82.83 -180 87.84 -120
Arctic - between 84°30'N and 79°30'N, approximately 113°E to approximately 153°E. May be extended westwards or eastwards within the latitude limits.|79.5 113 84.51 153.01
Arctic - between 84°30'N and 79°30'N, approximately 146°E to approximately 174°W. May be extended westwards or eastwards within the latitude limits.|79.5 146 84.51 -173.99
Arctic - between 84°30'N and 79°30'N, approximately 174°W to approximately 135°W. May be extended westwards or eastwards within the latitude limits.|79.5 -174 84.51 -134.99
Arctic - between 81°10'N and 76°10'N, approximately 160°E to approximately 169°W. May be extended westwards or eastwards within the latitude limits.|76.16 160 81.17 -168.99
Arctic - between 81°10'N and 76°10'N, approximately 169°W to approximately 138°W. May be extended westwards or eastwards within the latitude limits.|76.16 -169 81.17 -138
Arctic - between 77°50'N and 72°50'N, approximately 169°W to approximately 141°W. May be extended westwards or eastwards within the latitude limits.|72.83 -169 77.84 -141
Arctic - between 74°30'N and 69°30'N, approximately 15°W to approximately 5°E. May be extended westwards or eastwards within the latitude limits.|69.5 -15 74.51 5.01
Cayman Islands - Little Cayman.|19.63 -80.14 19.74 -79.93
Cayman Islands - Cayman Brac.|19.66 -79.92 19.78 -79.69
Cayman Islands - onshore and offshore. Includes Grand Cayman, Little Cayman and Cayman Brac.|17.58 -83.6 20.68 -78.72
Portugal - Madeira and Desertas islands - onshore.|32.35 -17.31 32.93 -16.4
Portugal - Porto Santo island (Madeira archipelago) onshore.|32.96 -16.44 33.15 -16.23
Portugal - central Azores - Sao Jorge island onshore.|38.48 -28.37 38.8 -27.71
Portugal - central Azores - Faial island onshore.|38.46 -28.9 38.7 -28.54
Portugal - central Azores - Pico island onshore.|38.32 -28.61 38.61 -27.98
Portugal - central Azores - Graciosa island onshore.|38.97 -28.13 39.14 -27.88
Portugal - central Azores - Terceira island onshore.|38.57 -27.44 38.86 -26.97
Portugal - eastern Azores onshore - Santa Maria, Formigas.|36.87 -25.26 37.34 -24.72
Portugal - eastern Azores - Sao Miguel island onshore.|37.65 -25.92 37.96 -25.08
North Macedonia.|40.85 20.45 42.36 23.04
Nepal.|26.34 80.06 30.43 88.21
Brazil - offshore between 48°W and 42°W, northern hemisphere.|0 -48 5.13 -41.99
Brazil - offshore between 42°W and 36°W, northern hemisphere.|0 -42 0.74 -38.22
Colombia - Arauca city.|7.05 -70.78 7.1 -70.71
Colombia - Armenia city.|4.5 -75.73 4.55 -75.65
Colombia - Barranquilla city.|10.85 -74.87 11.06 -74.75
Colombia - Bogota DC city.|4.45 -74.27 4.85 -73.98
Colombia - Bucaramanga city.|7.03 -73.19 7.17 -73.06
Colombia - Cali city.|3.32 -76.61 3.56 -76.42
Colombia - Cartagena city.|10.27 -75.57 10.47 -75.42
Colombia - Cucuta city.|7.81 -72.56 7.97 -72.46
Colombia - Florencia city.|1.57 -75.63 1.65 -75.59
Colombia - Ibague city.|4.39 -75.27 4.47 -75.11
Colombia - Inirida city.|3.8 -67.94 3.9 -67.88
Colombia - Leticia city.|-4.23 -69.98 -4.17 -69.92
Colombia - Manizales city.|5.02 -75.54 5.11 -75.44
Colombia - Medellin city.|6.12 -75.66 6.37 -75.5
Colombia - Mitu city.|1.23 -70.25 1.29 -70.21
Colombia - Mocoa city.|1.12 -76.66 1.18 -76.63
Colombia - Monteria city.|8.7 -75.94 8.81 -75.82
Colombia - Neiva city.|2.87 -75.32 2.99 -75.23
Colombia - Pasto city.|1.16 -77.32 1.26 -77.23
Colombia - Pereira city.|4.78 -75.77 4.87 -75.64
Colombia - Popayan city.|2.41 -76.65 2.49 -76.55
Colombia - Puerto Carreno city.|5.98 -67.7 6.3 -67.41
Colombia - Quibdo city.|5.66 -76.68 5.72 -76.63
Colombia - Riohacha city.|11.42 -72.96 11.58 -72.84
Colombia - San Andres city.|12.43 -81.82 12.65 -81.6
Colombia - San Jose del Guaviare city.|2.54 -72.66 2.61 -72.6
Colombia - Santa Marta city.|11.16 -74.24 11.3 -74.13
Colombia - Sucre city.|8.79 -74.74 8.83 -74.69
Colombia - Tunja city.|5.5 -73.39 5.61 -73.3
Colombia - Valledupar city.|10.39 -73.3 10.51 -73.19
Colombia - Villavicencio city.|4.07 -73.69 4.21 -73.56
Colombia - Yopal city.|5.3 -72.43 5.37 -72.35
Cyprus - onshore.|34.59 32.2 35.74 34.65
Bosnia and Herzegovina - east of 19°30'E; Kosovo; Montenegro - east of 19°30'E; Serbia - between 19°30'E and 22°30'E.|41.85 19.5 46.19 22.51
American Samoa, Marshall Islands, United States (USA) - Hawaii, United States minor outlying islands; onshore and offshore.|-17.56 157.47 31.8 -151.27
Guam, Northern Mariana Islands and Palau; onshore and offshore.|1.64 129.48 23.9 149.55
Ukraine - west of 22°30'E.|48.24 22.15 48.98 22.5
Ukraine - between 22°30'E and 25°30'E.|47.71 22.5 51.96 25.5
Ukraine - between 25°30'E and 28°30'E.|45.26 25.5 51.94 28.5
Ukraine - between 28°30'E and 31°30'E, onshore and offshore.|43.42 28.5 52.12 31.5
Ukraine - between 31°30'E and 34°30'E, onshore and offshore.|43.18 31.5 52.38 34.5
Ukraine - between 34°30'E and 37°30'E, onshore and offshore.|43.24 34.5 51.25 37.5
Ukraine - east of 37°30'E.|46.77 37.5 50.39 40.18
American Samoa - Tutuila island.|-14.43 -170.88 -14.2 -170.51
Northern Mariana Islands - onshore - Rota, Saipan and Tinian.|14.06 145.06 15.35 145.89
Japan - onshore mainland - Hokkaido.|41.34 139.7 45.54 145.87
Japan - onshore mainland - Hokkaido, Honshu, Shikoku, Kyushu.|30.94 129.3 45.54 145.87
Falkland Islands (Malvinas) - offshore - between 63°W and 57°W.|-56.25 -63.01 -47.68 -56.99
Italy - onshore and offshore - east of 18°E.|34.76 17.99 41.64 18.99
Christmas Island - onshore.|-10.63 105.48 -10.36 105.77
Cocos (Keeling) Islands - offshore west of 96°E.|-15.46 93.41 -8.57 96.01
Cocos (Keeling) Islands - onshore and offshore east of 96°E.|-15.56 96 -8.47 100.34
Norfolk Island - offshore east of 168°E.|-32.48 168 -25.61 173.35
United States (USA) - Oregon - Baker City area.|44.6 -118.15 45.19 -117.37
United States (USA) - Oregon - Bend-Klamath Falls area.|41.88 -122.45 43.89 -120.77
United States (USA) - Oregon - Bend-Redmond-Prineville area.|43.76 -121.88 44.98 -119.79
United States (USA) - Oregon - Bend-Burns area.|43.34 -120.95 44.28 -118.8
United States (USA) - Oregon - Canyonville-Grants Pass area.|42.49 -123.83 43.24 -122.43
United States (USA) - Oregon - Columbia River area between approximately 122°03'W and 118°53'W.|45.49 -122.05 46.08 -118.89
United States (USA) - Oregon - Columbia River area west of approximately 121°30'W.|45.17 -124.33 46.56 -121.47
United States (USA) - Oregon - Cottage Grove-Canyonville area.|42.82 -123.96 43.88 -122.4
United States (USA) - Oregon - Dufur-Madras area.|44.63 -121.95 45.55 -120.46
United States (USA) - Oregon - Eugene area.|43.74 -123.8 44.71 -122.18
United States (USA) - Oregon - Grants Pass-Ashland area.|41.88 -123.95 42.85 -122.37
United States (USA) - Oregon - Gresham-Warm Springs area.|45.02 -122.43 45.55 -121.68
United States (USA) - Oregon - La Grande area.|45.13 -118.17 45.8 -117.14
United States (USA) - Oregon - Ontario area.|43.41 -117.9 44.65 -116.7
United States (USA) - Oregon - coastal area.|41.89 -124.84 46.4 -123.35
United States (USA) - Oregon - Pendleton area.|45.46 -119.36 46.02 -118.17
United States (USA) - Oregon - Pendleton-La Grande area.|45.13 -118.64 45.64 -118.09
United States (USA) - Oregon - Portland area.|45.23 -123.53 46.01 -122.11
United States (USA) - Oregon - Salem area.|44.32 -123.73 45.3 -121.89
United States (USA) - Oregon - Sweet Home-Santiam Pass-Sisters area.|44.1 -122.51 44.66 -121.69
Italy - onshore and offshore.|34.76 5.93 47.1 18.99
Lebanon - onshore.|33.06 35.04 34.65 36.63
Equatorial Guinea - Bioko onshore.|3.14 8.37 3.82 9.02
Seychelles - Mahe, Silhouette, North, Aride Island, Praslin, La Digue and Frigate islands including adjacent smaller granitic islands on the Seychelles Bank, Bird Island and Denis Island.|-4.86 55.15 -3.66 56.01
Gambia - onshore.|13.05 -16.88 13.83 -13.79
United States (USA) - Kansas.|36.99 -102.06 40.01 -94.58
Northern hemisphere.|0 -180 90 180
Southern hemisphere.|-90 -180 0 180
World between 86°S and 86°N.|-86 -180 86 180
United States (USA) - Iowa - counties of Clay; Dickinson; Emmet; Kossuth; Lyon; O'Brien; Osceola; Palo Alto; Sioux.|42.9 -96.6 43.51 -93.97
United States (USA) - Iowa - counties of Cerro Gordo; Chickasaw; Floyd; Hancock; Howard; Mitchell; Winnebago; Winneshiek; Worth.|42.9 -93.98 43.51 -91.6
United States (USA) - Iowa - counties of Allamakee; Clayton; Delaware.|42.29 -91.62 43.51 -90.89
United States (USA) - Iowa|42.2 -96.65 42.92 -93
United States (USA) - Iowa - counties of Black Hawk; Bremer; Buchanan; Butler; Fayette; Grundy.|42.2 -93.03 43.09 -91.59
United States (USA) - Iowa - counties of Crawford; Fremont; Harrison; Mills; Monona; Pottawattamie; Shelby.|40.58 -96.37 42.22 -95.04
United States (USA) - Iowa - counties of Adair; Audubon; Carroll; Cass; Greene; Guthrie.|41.15 -95.16 42.22 -94.16
United States (USA) - Iowa - counties of Boone; Dallas; Madison; Polk; Story; Warren.|41.15 -94.29 42.22 -93.23
United States (USA) - Iowa - counties of Jasper; Mahaska; Marion; Marshall; Poweshiek; Tama.|41.16 -93.35 42.3 -92.29
United States (USA) - Iowa - counties of Benton; Cedar; Iowa; Johnson; Jones; Linn.|41.42 -92.31 42.3 -90.89
United States (USA) - Iowa - counties of Clinton; Dubuque; Jackson; Scott.|41.44 -91.14 42.68 -90.14
United States (USA) - Iowa - counties of Adams; Appanoose; Clarke; Davis; Decatur; Lucas; Monroe; Montgomery; Page; Ringgold; Taylor; Union; Wapello; Wayne.|40.57 -95.39 41.17 -92.17
United States (USA) - Iowa - counties of Jefferson; Keokuk; Van Buren; Washington.|40.59 -92.42 41.52 -91.48
United States (USA) - Iowa - counties of Des Moines; Henry; Lee; Louisa; Muscatine.|40.37 -91.72 41.6 -90.78
French Southern Territories - onshore and offshore: Amsterdam and St Paul, Crozet, Europa and Kerguelen. Antarctica - Adelie Land coastal area.|-67.13 37.98 -20.91 142
French Southern Territories - Europa onshore and offshore.|-25.7 37.98 -20.91 41.82
French Southern Territories - Crozet offshore west of 48°E.|-49.38 45.37 -43.12 48.01
French Southern Territories - Crozet onshore and offshore between 48°E to 54°E.|-49.82 48 -42.61 54.01
French Southern Territories - Crozet offshore east of 54°E.|-49.61 54 -43.3 57.16
French Southern Territories - Kerguelen offshore west of 66°E.|-53.03 62.96 -45.73 66
French Southern Territories - Kerguelen onshore and offshore between 66°E and 72°E.|-53.24 66 -45.11 72.01
French Southern Territories - Kerguelen offshore east of 72°E and Amsterdam & St Paul onshore and offshore west of 78°E.|-51.19 72 -34.47 78.01
French Southern Territories - Amsterdam & St Paul offshore east of 78°E.|-42.04 78 -34.5 81.83
United States (USA) - Montana - St Mary's Valley area.|48.55 -113.97 49.01 -113
United States (USA) - Montana - Blackfeet Indian Reservation.|48 -113.84 49.01 -112
United States (USA) - Montana - Milk River area.|47.78 -112.5 49.01 -108.74
United States (USA) - Montana - Fort Belknap Indian Reservation area.|47.78 -110.84 49.01 -106.99
United States (USA) - Montana - Fort Peck Indian Reservation - higher areas, notably in west and north.|48.01 -107.57 48.88 -104.78
United States (USA) - Montana - Fort Peck Indian Reservation - lower areas, notably in south and east.|47.75 -107.76 49.01 -104.04
United States (USA) - Montana - Crow Indian Reservation.|44.99 -108.84 46.09 -106.66
United States (USA) - Montana - Three Forks area.|45.36 -112.34 46.59 -110.75
United States (USA) - Montana - Billings area.|44.99 -109.42 47.41 -107.99
United States (USA) - Wyoming - Wind River Indian Reservation.|42.69 -109.5 43.86 -107.94
United States (USA) - California - San Francisco bay area - counties of Alameda, Contra Costa, Marin, Napa, San Francisco, San Mateo, Santa Clara, Santa Cruz, Solano and Sonoma.|36.85 -123.56 38.87 -121.2
Israel - onshore and offshore.|29.45 32.99 33.53 35.69
United States (USA) - Indiana - Adams county.|40.56 -85.08 40.93 -84.8
United States (USA) - Indiana - Allen county.|40.91 -85.34 41.28 -84.8
United States (USA) - Indiana - Bartholomew county.|39.03 -86.09 39.36 -85.68
United States (USA) - Indiana - Benton county.|40.47 -87.53 40.74 -87.09
United States (USA) - Indiana - counties of Blackford and Delaware.|40.07 -85.58 40.57 -85.2
United States (USA) - Indiana - counties of Boone and Hendricks.|39.6 -86.7 40.19 -86.24
United States (USA) - Indiana - Brown county.|39.04 -86.39 39.35 -86.07
United States (USA) - Indiana - Carroll county.|40.43 -86.78 40.74 -86.37
United States (USA) - Indiana - Cass county.|40.56 -86.59 40.92 -86.16
United States (USA) - Indiana - counties of Clark, Floyd and Scott.|38.17 -86.04 38.84 -85.41
United States (USA) - Indiana - Clay county.|39.16 -87.25 39.61 -86.93
United States (USA) - Indiana - Clinton county.|40.17 -86.7 40.44 -86.24
United States (USA) - Indiana - counties of Crawford, Lawrence and Orange.|38.1 -86.69 39 -86.24
United States (USA) - Indiana - counties of Daviess and Greene.|38.49 -87.28 39.18 -86.68
United States (USA) - Indiana - counties of Dearborn, Ohio and Switzerland.|38.68 -85.21 39.31 -84.78
United States (USA) - Indiana - counties of Decatur and Rush.|39.13 -85.69 39.79 -85.29
United States (USA) - Indiana - DeKalb county.|41.26 -85.2 41.54 -84.8
United States (USA) - Indiana - counties of Dubois and Martin.|38.2 -87.08 38.91 -86.67
United States (USA) - Indiana - counties of Elkhart, Kosciusko and Wabash.|40.65 -86.08 41.77 -85.63
United States (USA) - Indiana - counties of Fayette, Franklin and Union.|39.26 -85.31 39.79 -84.81
United States (USA) - Indiana - counties of Fountain and Warren.|39.95 -87.54 40.48 -87.09
United States (USA) - Indiana - counties of Fulton, Marshall and St Joseph.|40.9 -86.53 41.77 -85.94
United States (USA) - Indiana - Gibson county.|38.16 -87.98 38.54 -87.31
United States (USA) - Indiana - Grant county.|40.37 -85.87 40.66 -85.44
United States (USA) - Indiana - counties of Hamilton and Tipton.|39.92 -86.25 40.41 -85.86
United States (USA) - Indiana - counties of Hancock and Madison.|39.69 -85.96 40.38 -85.57
United States (USA) - Indiana - counties of Harrison and Washington.|37.95 -86.33 38.79 -85.84
United States (USA) - Indiana - Henry county.|39.78 -85.6 40.08 -85.2
United States (USA) - Indiana - counties of Howard and Miami.|40.37 -86.38 41 -85.86
United States (USA) - Indiana - counties of Huntington and Whitley.|40.65 -85.69 41.3 -85.3
United States (USA) - Indiana - Jackson county.|38.72 -86.32 39.08 -85.79
United States (USA) - Indiana - counties of Jasper and Porter.|40.73 -87.28 41.77 -86.92
United States (USA) - Indiana - Jay county.|40.3 -85.22 40.58 -84.8
United States (USA) - Indiana - Jefferson county.|38.58 -85.69 38.92 -85.2
United States (USA) - Indiana - Jennings county.|38.8 -85.8 39.2 -85.43
United States (USA) - Indiana - counties of Johnson and Marion.|39.34 -86.33 39.93 -85.93
United States (USA) - Indiana - Knox county.|38.41 -87.75 38.91 -87.09
United States (USA) - Indiana - counties of LaGrange and Noble.|41.26 -85.66 41.77 -85.19
United States (USA) - Indiana - counties of Lake and Newton.|40.73 -87.53 41.77 -87.21
United States (USA) - Indiana - counties of LaPorte, Pulaski and Starke.|40.9 -86.94 41.77 -86.46
United States (USA) - Indiana - counties of Monroe and Morgan.|38.99 -86.69 39.64 -86.24
United States (USA) - Indiana - counties of Montgomery and Putnam.|39.47 -87.1 40.22 -86.64
United States (USA) - Indiana - Owen county.|39.16 -87.06 39.48 -86.63
United States (USA) - Indiana - counties of Parke and Vermillion.|39.6 -87.54 40.15 -87
United States (USA) - Indiana - Perry county.|37.84 -86.82 38.27 -86.43
United States (USA) - Indiana - counties of Pike and Warrick.|37.87 -87.48 38.56 -87.01
United States (USA) - Indiana - Posey county.|37.77 -88.06 38.24 -87.68
United States (USA) - Indiana - counties of Randolph and Wayne.|39.71 -85.23 40.32 -84.8
United States (USA) - Indiana - Ripley county.|38.91 -85.45 39.32 -85.06
United States (USA) - Indiana - Shelby county.|39.34 -85.96 39.7 -85.62
United States (USA) - Indiana - Spencer county.|37.78 -87.27 38.21 -86.76
United States (USA) - Indiana - Steuben county.|41.52 -85.2 41.77 -84.8
United States (USA) - Indiana - Sullivan county.|38.9 -87.65 39.26 -87.24
United States (USA) - Indiana - counties of Tippecanoe and White.|40.21 -87.1 40.92 -86.58
United States (USA) - Indiana - Vanderburgh county.|37.82 -87.71 38.17 -87.44
United States (USA) - Indiana - Vigo county.|39.25 -87.62 39.61 -87.19
United States (USA) - Indiana - Wells county.|40.56 -85.45 40.92 -85.06
Oman - onshore and offshore.|14.33 51.99 26.74 63.38
Oman - onshore and offshore west of 54°E.|14.94 51.99 19.67 54.01
Oman - onshore and offshore between 54°E and 60°E.|14.33 54 26.74 60.01
Oman - offshore east of 60°E.|16.37 60 24.09 63.38
Denmark - onshore west of 12°E - Zealand, Jutland, Fuen and Lolland.|54.51 8 57.8 12.01
Denmark - onshore east of 12°E - Zealand and Falster, Bornholm.|54.51 12 56.18 15.25
France - mainland onshore south of 50.5 grads North (45°27'N).|42.33 -1.79 45.46 7.71
Papua New Guinea - between 0°N and 12°S and 140°E and 158°E - onshore and offshore.|-12 140 0.01 158.01
United States (USA) - Wisconsin - counties of Adams and Juneau.|43.64 -90.32 44.25 -89.59
United States (USA) - Wisconsin - Ashland county.|45.98 -90.93 47.09 -90.3
United States (USA) - Wisconsin - Barron county.|45.2 -92.16 45.65 -91.53
United States (USA) - Wisconsin - Bayfield county.|46.15 -91.56 47.01 -90.75
United States (USA) - Wisconsin - Brown county.|44.24 -88.26 44.68 -87.76
United States (USA) - Wisconsin - Buffalo county.|44.02 -92.09 44.6 -91.52
United States (USA) - Wisconsin - Burnett county.|45.63 -92.89 46.16 -92.03
United States (USA) - Wisconsin - counties of Calumet, Fond du Lac, Outagamie and Winnebago.|43.54 -88.89 44.6 -88.04
United States (USA) - Wisconsin - Chippewa county.|44.85 -91.67 45.3 -90.92
United States (USA) - Wisconsin - Clark county.|44.42 -90.93 45.04 -90.31
United States (USA) - Wisconsin - Columbia county.|43.28 -89.79 43.65 -89
United States (USA) - Wisconsin - Crawford county.|42.98 -91.22 43.43 -90.66
United States (USA) - Wisconsin - Dane county.|42.84 -89.84 43.3 -89
United States (USA) - Wisconsin - counties of Dodge and Jefferson.|42.84 -89.02 43.64 -88.4
United States (USA) - Wisconsin - Door county.|44.67 -87.74 45.43 -86.8
United States (USA) - Wisconsin - Douglas county.|46.15 -92.3 46.76 -91.55
United States (USA) - Wisconsin - Dunn county.|44.68 -92.16 45.21 -91.64
United States (USA) - Wisconsin - Eau Claire county.|44.59 -91.66 44.86 -90.92
United States (USA) - Wisconsin - Florence county.|45.71 -88.69 46.03 -88.05
United States (USA) - Wisconsin - Forest county.|45.37 -89.05 46.08 -88.42
United States (USA) - Wisconsin - Grant county.|42.5 -91.16 43.22 -90.42
United States (USA) - Wisconsin - counties of Green and Lafayette.|42.5 -90.43 42.86 -89.36
United States (USA) - Wisconsin - counties of Green Lake and Marquette.|43.63 -89.6 43.99 -88.88
United States (USA) - Wisconsin - Iowa county.|42.81 -90.43 43.21 -89.83
United States (USA) - Wisconsin - Iron county.|45.98 -90.56 46.6 -89.92
United States (USA) - Wisconsin - Jackson county.|44.07 -91.17 44.6 -90.31
United States (USA) - Wisconsin - counties of Kenosha, Milwaukee, Ozaukee and Racine.|42.49 -88.31 43.55 -87.75
United States (USA) - Wisconsin - counties of Kewaunee, Manitowoc and Sheboygan.|43.54 -88.17 44.68 -87.37
United States (USA) - Wisconsin - La Crosse county.|43.72 -91.43 44.1 -90.91
United States (USA) - Wisconsin - Langlade county.|45.02 -89.43 45.48 -88.63
United States (USA) - Wisconsin - Lincoln county.|45.11 -90.05 45.56 -89.42
United States (USA) - Wisconsin - Marathon county.|44.68 -90.32 45.13 -89.22
United States (USA) - Wisconsin - Marinette county.|44.96 -88.43 45.8 -87.48
United States (USA) - Wisconsin - Menominee county.|44.85 -88.99 45.12 -88.48
United States (USA) - Wisconsin - Monroe county.|43.72 -90.98 44.17 -90.31
United States (USA) - Wisconsin - Oconto county.|44.67 -88.69 45.38 -87.76
United States (USA) - Wisconsin - Oneida county.|45.46 -90.05 45.91 -89.04
United States (USA) - Wisconsin - counties of Pepin and Pierce.|44.4 -92.81 44.87 -91.65
United States (USA) - Wisconsin - Polk county.|45.2 -92.89 45.73 -92.15
United States (USA) - Wisconsin - Portage county.|44.24 -89.85 44.69 -89.22
United States (USA) - Wisconsin - Price county.|45.37 -90.68 45.99 -90.04
United States (USA) - Wisconsin - Richland county.|43.16 -90.68 43.56 -90.19
United States (USA) - Wisconsin - Rock county.|42.49 -89.37 42.85 -88.77
United States (USA) - Wisconsin - Rusk county.|45.29 -91.55 45.64 -90.67
United States (USA) - Wisconsin - Sauk county.|43.14 -90.32 43.65 -89.59
United States (USA) - Wisconsin - Sawyer county.|45.63 -91.56 46.16 -90.67
United States (USA) - Wisconsin - Shawano county.|44.58 -89.23 45.03 -88.24
United States (USA) - Wisconsin - St. Croix county.|44.85 -92.81 45.22 -92.13
United States (USA) - Wisconsin - Taylor county.|45.03 -90.93 45.39 -90.04
United States (USA) - Wisconsin - Trempealeau county.|43.98 -91.62 44.6 -91.15
United States (USA) - Wisconsin - Vernon county.|43.42 -91.28 43.74 -90.31
United States (USA) - Wisconsin - Vilas county.|45.85 -90.05 46.3 -88.93
United States (USA) - Wisconsin - Walworth county.|42.49 -88.78 42.85 -88.3
United States (USA) - Wisconsin - Washburn county.|45.63 -92.06 46.16 -91.54
United States (USA) - Wisconsin - Washington county.|43.19 -88.42 43.55 -88.03
United States (USA) - Wisconsin - Waukesha county.|42.84 -88.55 43.2 -88.06
United States (USA) - Wisconsin - Waupaca county.|44.24 -89.23 44.69 -88.6
United States (USA) - Wisconsin - Waushara county.|43.98 -89.6 44.25 -88.88
United States (USA) - Wisconsin - Wood county.|44.24 -90.32 44.69 -89.72
Papua New Guinea - Papuan fold and thrust belt.|-8.28 142.24 -5.59 144.75
Papua New Guinea - onshore south of 5°S and west of 144°E.|-9.35 140.85 -5 144.01
Kyrgyzstan.|39.19 69.24 43.22 80.29
Kyrgyzstan - west of 70°01'E.|39.51 69.24 40.22 70.02
Kyrgyzstan - between 70°01'E and 73°01'E.|39.19 70.01 42.83 73.02
Kyrgyzstan - between 73°01'E and 76°01'E.|39.35 73.01 43.22 76.02
Kyrgyzstan - between 76°01'E and 79°01'E.|40.35 76.01 43 79.02
Kyrgyzstan - east of 79°01'E.|41.66 79.01 42.8 80.29
Latvia - onshore.|55.67 20.87 58.09 28.24
United Kingdom (UK) - offshore between 2km from shore and boundary of UKCS within 49°46'N to 61°01'N and 7°33'W to 3°33'E.|49.75 -9 61.01 2.01
India - onshore and offshore. Includes Amandivis, Laccadives, Minicoy, Andaman Islands, Nicobar Islands, and Sikkim.|3.87 65.6 35.51 97.42
India - Andhra Pradesh; Telangana; Yanam area of Pudacherry territory.|12.61 76.75 19.92 84.81
India - Arunachal Pradesh.|26.65 91.55 29.47 97.42
India - Assam.|24.13 89.69 27.98 96.03
India - Bihar.|24.28 83.31 27.86 88.3
India - Delhi national capital territory.|28.4 76.83 28.89 77.34
India - Gujarat and union territories of Daman, Diu, Dadra and Nagar Haveli.|20.05 68.13 24.71 74.48
India - Haryana including Chandigarh.|27.65 74.46 30.94 77.6
India - Himachal Pradesh.|30.38 75.57 33.26 79
India - Jammu and Kashmir.|32.27 73.76 35.51 79.57
India - Jharkhand.|21.96 83.32 25.35 87.98
India - Madhya Pradesh.|21.07 74.03 26.88 82.81
India - Maharashtra.|15.6 72.6 22.04 80.9
India - Manipur.|23.84 92.97 25.7 94.76
India - Meghalaya.|25.03 89.82 26.12 92.81
India - Nagaland.|25.2 93.33 27.05 95.25
India - Arunachal Pradesh, Assam, Manipur, Meghalaya, Mizoram, Nagaland and Tripura.|21.94 89.69 29.47 97.42
India - Odisha (Orissa).|17.8 81.38 22.57 87.5
India - Punjab including Chandigarh.|29.54 73.87 32.58 76.94
India - Rajasthan.|23.06 69.48 30.2 78.27
India - Uttar Pradesh.|23.87 77.08 30.42 84.64
India - Uttarakhand (Uttaranchal).|28.71 77.56 31.48 81.02
India - Andaman and Nicobar Islands.|6.7 92.15 13.73 94.33
India - Chhattisgarh.|17.78 80.23 24.11 84.39
India - Goa.|14.86 73.61 15.8 74.35
India - Karnataka.|11.57 74 18.46 78.58
India - Kerala; Mayyazhi (Mahe) area of Pudacherry territory.|8.25 74.81 12.8 77.4
India - Lakshadweep (Laccadive, Minicoy, and Aminidivi Islands).|8.21 72.04 11.76 73.76
India - Mizoram.|21.94 92.25 24.53 93.45
India - Sikkim.|27.08 88.01 28.14 88.92
India - Tamil Nadu; Pudacherry and Karaikal areas of Pudacherry territory.|8.02 76.22 13.59 80.4
India - Tripura.|22.94 91.15 24.54 92.34
India - West Bengal.|21.49 85.82 27.23 89.88
Bulgaria - onshore and offshore.|41.24 22.36 44.23 31.35
Bulgaria - west of 24°E.|41.32 22.36 44.23 24
Bulgaria - onshore east of 24°E, offshore west of 30°E.|41.24 24 44.15 30.01
Bulgaria - offshore east of 30°E.|42.56 30 43.67 31.35
Ukraine - west of 25°E.|47.71 22.15 51.92 25.01
Ukraine - between 25°E and 28°E.|47.72 25 51.96 28.01
Ukraine - between 28°E and 31°E, onshore.|45.18 28 52.09 31.01
Ukraine - between 31°E and 34°E, onshore.|44.32 31 52.38 34.01
Ukraine - between 34°E and 37°E, onshore.|44.33 34 52.25 37.01
Ukraine - between 37°E and 40°E, onshore.|46.8 37 50.44 40.01
Ukraine - east of 40°E.|48.8 40 49.62 40.18
Papua New Guinea - onshore - Gulf province east of 144°24'E, Central province and National Capital District.|-10.42 144.4 -6.67 149.67
Australia - offshore west of 108°E. Christmas Island - onshore and offshore west of 108°E.|-34.68 102.14 -8.87 108.01
Australia - onshore and offshore west of 114°E. Christmas Island - offshore east of 108°E.|-37.84 108 -10.72 114.01
Australia - onshore and offshore between 114°E and 120°E.|-38.53 114 -12.06 120.01
Australia - onshore and offshore between 120°E and 126°E.|-38.07 120 -10.46 126.01
Australia - onshore and offshore between 126°E and 132°E.|-37.38 125.99 -9.1 132
Australia - onshore and offshore between 132°E and 138°E.|-40.71 132 -8.88 138.01
Australia - onshore and offshore between 138°E and 144°E.|-48.19 138 -9.08 144.01
Australia - onshore and offshore between 144°E and 150°E.|-50.89 144 -9.23 150.01
Australia - onshore and offshore between 150°E and 156°E.|-58.96 150 -13.87 156
Australia including Lord Howe Island and Macquarie Island - onshore and offshore between 156°E and 162°E.|-60.56 156 -14.08 162.01
Australia - offshore east of 162°E. Norfolk Island - onshore and offshore west of 168°E.|-59.39 162 -25.94 168
The Democratic Republic of the Congo (Zaire) - offshore.|-6.04 11.79 -5.79 12.37
Australia - Western Australia - Albany area onshore below 190m AHD.|-35.21 117.55 -34.75 118.22
Australia - Western Australia - Barrow Island and Onslow area onshore.|-22.2 114.9 -20.21 115.59
Australia - Western Australia - Broome area onshore below 130m AHD.|-18.09 122.08 -16.75 122.62
Australia - Western Australia - Busselton area onshore below 250m AHD.|-33.75 115.18 -33.4 115.87
Australia - Western Australia - Carnarvon area onshore.|-25.5 113.33 -23 114
Australia - Western Australia - Collie area between 50m and 310m AHD.|-34.67 115.73 -33.25 116.4
Australia - Western Australia - Esperance area onshore.|-34.5 121.56 -33.33 122.2
Australia - Western Australia - Exmouth area onshore below 160m AHD.|-22.42 113.75 -21.75 114.25
Australia - Western Australia - Geraldton area onshore below 195m AHD.|-29.1 114.51 -28.48 115
Australia - Western Australia - Kalgoorlie area.|-32.25 121 -28.75 121.84
Australia - Western Australia - Jurien Bay area onshore below 200m AHD.|-30.74 114.83 -29.08 115.34
Australia - Western Australia - Kalbarri area onshore.|-28.5 113.9 -27.16 114.75
Australia - Western Australia - Karratha area onshore.|-20.92 116.58 -20.25 117.25
Australia - Western Australia - Kununurra area onshore below 200m AHD.|-16.75 128.5 -14.75 129
Australia - Western Australia - Lancelin area onshore below 200m AHD.|-31.49 115.15 -30.71 115.62
Australia - Western Australia - Margaret River area onshore below 200m AHD.|-34.42 114.96 -33.51 115.24
Australia - Western Australia - Perth area onshore below 165m AHD.|-33.42 115.44 -31.33 116.09
Australia - Western Australia - Port Hedland area onshore.|-20.79 118.25 -20.1 118.97
Trinidad and Tobago - offshore west of 60°W.|9.83 -62.09 12.34 -59.99
Trinidad and Tobago - offshore east of 60°W.|9.95 -60 12.19 -57.28
Austria - Upper Austria and Salzburg provinces. Czechia - Bohemia.|46.93 12.07 51.06 16.83
Austria - Lower Austria. Czechia - Moravia and Czech Silesia.|47.42 14.41 50.45 18.86
United States (USA) - onshore and offshore.|15.56 167.65 74.71 -65.69
United States (USA) - Arizona - Pima county - east of the township line between ranges R7E and R8E, Gila and Salt River Meridian (east of approximately 111°34'W).|31.43 -111.57 32.52 -110.44
United States (USA) - Arizona - Pima county - between the township line between ranges R2W and R3W and the township line between ranges R7E and R8E, Gila and Salt River Meridian (between approximately 112°31'W and 111°34'W).|31.5 -112.52 32.51 -111.56
United States (USA) - Arizona - Pima county - west of the township line between ranges R2W and R3W, Gila and Salt River Meridian (west of approximately 112°31'W).|31.8 -113.33 32.51 -112.51
United States (USA) - Arizona - Pima county - Catalina Highway corridor between Mt. Lemmon and Willow Canyon.|32.33 -110.87 32.49 -110.61
Iceland - onshore.|63.24 -24.66 66.62 -13.38
United States (USA) - onshore - Arizona; Michigan; Montana; North Dakota; Oregon; South Carolina.|31.33 -124.6 49.01 -78.52
Greenland - onshore and offshore between 59°N and 84°N and west of 10°W.|59 -75 84.01 -10
Greenland - onshore and offshore between 58°N and 85°N and west of 7°W.|58 -75 85.01 -6.99
United States (USA) - Oregon - Burns-Harper area.|43.49 -118.61 44.19 -117.49
United States (USA) - Oregon - Canyon City-Burns area.|43.52 -119.22 44.36 -118.52
United States (USA) - Oregon - Coast Range North area.|45.4 -123.81 45.98 -123.01
United States (USA) - Oregon - Dayville-Prairie City area.|44.24 -119.89 44.94 -118.61
United States (USA) - Oregon - Denio-Burns area.|41.88 -119.41 43.54 -117.67
United States (USA) - Oregon - Halfway area.|44.61 -117.61 45.28 -116.63
United States (USA) - Oregon - Medford-Diamond Lake area.|42.53 -122.73 43.34 -121.71
United States (USA) - Oregon - Mitchell area.|44.38 -120.56 44.78 -119.82
United States (USA) - Oregon - North Central area.|44.89 -121.79 45.95 -119.03
United States (USA) - Oregon - Ochoco Summit area.|44.21 -121.01 44.61 -120.31
United States (USA) - Oregon - Owyhee area.|41.88 -118.14 43.54 -116.85
United States (USA) - Oregon - Pilot Rock-Ukiah area.|44.99 -119.65 46.04 -118.11
United States (USA) - Oregon - Prairie City-Brogan area.|44.16 -118.77 45.02 -117.48
United States (USA) - Oregon - Riley-Lakeview area.|41.88 -120.97 43.45 -119.15
United States (USA) - Oregon - Siskiyou Pass area.|41.95 -122.71 42.46 -121.96
United States (USA) - Oregon - Ukiah-Fox area.|44.52 -119.35 45.21 -118.64
United States (USA) - Oregon - Wallowa area.|45.27 -118.16 46.05 -116.42
United States (USA) - Oregon - Warner Highway area.|41.95 -120.42 42.43 -119.3
United States (USA) - Oregon - Willamette Pass area.|42.99 -122.26 44.18 -121.48
Slovakia.|47.73 16.84 49.61 22.56
Description of the extent of the CRS.|-90 -180 90 180
United States (USA) - Nevada - Las Vegas area below approximately 3000 feet.|35.88 -115.5 36.43 -114.71
United States (USA) - Nevada - Las Vegas area above approximately 2850 feet.|35.88 -115.5 36.43 -114.71
Australia - Queensland - Weipa area between 141°30'E and 142°30'E.|-13.5 141.5 -11.49 142.51
Germany - Hamburg, including Neuwerk, Nigehörn, Scharhörn and surrounding maritime area.|53.36 8.33 53.99 10.41
China - Macao - onshore and offshore.|22.06 113.52 22.23 113.68
Antarctica - Adelie Land - coastal area between 136°E and 138°E.|-66.73 136 -65.61 138.01
Antarctica - Adelie Land - coastal area between 138°E and 142°E.|-67.13 138 -66.1 142
United States (USA) - Kansas - counties of Cheyenne; Sherman; Wallace.|38.69 -102.06 40.01 -101.38
United States (USA) - Kansas - counties of Logan; Rawlins; Thomas.|38.69 -101.49 40.01 -100.71
United States (USA) - Kansas - counties of Decatur; Gove; Sheridan.|38.69 -100.82 40.01 -100.14
United States (USA) - Kansas - counties of Ellis; Graham; Norton; Phillips; Rooks; Trego.|38.69 -100.19 40.01 -99.03
United States (USA) - Kansas - counties of Barton; Osborne; Russell; Smith.|38.26 -99.07 40.01 -98.47
United States (USA) - Kansas - counties of Ellsworth; Jewell; Lincoln; Mitchell; Rice.|38.15 -98.51 40.01 -97.92
United States (USA) - Kansas - counties of Clay; Cloud; Dickinson; Marion; McPherson; Ottawa; Republic; Saline; Washington.|38.08 -97.94 40.01 -96.8
United States (USA) - Kansas - counties of Geary; Pottawatomie; Riley; Wabaunsee.|38.73 -96.97 39.57 -95.94
United States (USA) - Kansas - counties of Chase; Lyon; Morris.|38.08 -96.94 38.88 -95.94
United States (USA) - Kansas - counties of Atchison; Brown; Doniphan; Jackson; Marshall; Nemaha.|39.21 -96.81 40.01 -94.85
United States (USA) - Kansas - counties of Douglas; Jefferson; Johnson; Leavenworth; Shawnee; Wyandotte.|38.73 -96.04 39.43 -94.58
United States (USA) - Kansas - counties of Grant; Greeley; Hamilton; Kearny; Morton; Stanton; Stevens; Wichita.|36.99 -102.05 38.71 -101.06
United States (USA) - Kansas - counties of Finney; Gray; Haskell; Lane; Meade; Scott; Seward.|36.99 -101.13 38.71 -100.08
United States (USA) - Kansas - counties of Clark; Ford; Hodgeman; Ness.|36.99 -100.25 38.7 -99.54
United States (USA) - Kansas - counties of Comanche; Edwards; Kiowa; Pawnee; Rush.|36.99 -99.59 38.7 -98.91
United States (USA) - Kansas - counties of Barber; Pratt; Stafford.|36.99 -99.03 38.27 -98.34
United States (USA) - Kansas - counties of Butler; Harvey; Kingman; Reno; Sedgwick.|37.38 -98.48 38.18 -96.52
United States (USA) - Kansas - counties of Cowley; Harper; Sumner.|36.99 -98.35 37.48 -96.52
United States (USA) - Kansas - counties of Chautauqua; Coffey; Elk; Greenwood; Montgomery; Osage; Wilson; Woodson.|36.99 -96.53 38.88 -95.5
United States (USA) - Kansas - counties of Allen; Anderson; Bourbon; Cherokee; Crawford; Franklin; Labette; Linn; Miami; Neosho.|36.99 -95.53 38.74 -94.6
American Samoa - Tutuila, Aunu'u, Ofu, Olesega, Ta'u and Rose islands - onshore. Guam - onshore. Northern Mariana Islands - onshore. Puerto Rico - onshore. United States (USA) - CONUS - Alabama; Arizona; Arkansas; California; Colorado; Connecticut; Delaware; Florida; Georgia; Idaho; Illinois; Indiana; Iowa; Kansas; Kentucky; Louisiana; Maine; Maryland; Massachusetts; Michigan; Minnesota; Mississippi; Missouri; Montana; Nebraska; Nevada; New Hampshire; New Jersey; New Mexico; New York; North Carolina; North Dakota; Ohio; Oklahoma; Oregon; Pennsylvania; Rhode Island; South Carolina; South Dakota; Tennessee; Texas; Utah; Vermont; Virginia; Washington; West Virginia; Wisconsin; Wyoming - onshore plus Gulf of Mexico offshore continental shelf (GoM OCS). US Virgin Islands - onshore.|-14.59 144.58 49.38 -64.51
Finland - onshore mainland south of approximately 66°N.|59.75 20.95 66.73 31.59
Bosnia and Herzegovina - west of 16°30'E; Croatia - onshore west of 16°30'E; Slovenia - onshore.|42.95 13.38 46.88 16.5
Bosnia and Herzegovina - between 16°30'E and 19°30'E; Croatia - onshore east of 16°30'E; Montenegro - onshore west of 19°30'E; Serbia - west of 19°30'E.|41.79 16.5 46.55 19.51
North Macedonia - east of 22°30'E; Serbia - east of 22°30'E.|41.11 22.5 44.7 23.04
Guam and Northern Mariana Islands; offshore west of 144°E.|10.95 141.19 23.9 144.01
Guam and Northern Mariana Islands; onshore and offshore east of 144°E.|11.05 144 23.9 149.55
Angola - onshore and offshore.|-18.02 8.2 -4.38 24.09
Saudi Arabia - onshore and offshore.|16.29 34.44 32.16 55.67
United States (USA) - Idaho.|41.99 -117.24 49.01 -111.04
Saudi Arabia - onshore and offshore - west of 36°E.|24.92 34.44 29.38 36.01
Saudi Arabia - onshore and offshore - between 36°E and 42°E.|16.29 36 32.16 42
Saudi Arabia - onshore and offshore - between of 42°E and 48°E.|16.35 41.99 31.15 48
Saudi Arabia - onshore and offshore - between 48°E and 54°E.|17.94 47.99 28.94 54.01
Saudi Arabia - east of 54°E.|19.66 54 22.77 55.67
World centred on the Americas.|-90 90.01 90 89.99
World centred on Asia-Pacific.|-90 -29.99 90 -30.01
Austria - Vienna city state.|48.12 16.18 48.34 16.59
Wallis and Futuna - onshore and offshore - Uvea, Futuna, and Alofi.|-15.94 179.49 -9.84 -174.27
Costa Rica - onshore.|7.98 -85.97 11.22 -82.53
Costa Rica - offshore Pacific ocean and onshore Coco Island.|2.15 -90.45 11.11 -82.92
Costa Rica - offshore - Caribbean sea.|9.6 -83.6 11.77 -81.43
Latin America - Central America and South America, onshore and offshore.|-59.87 -122.19 32.72 -25.28
Kosovo.|41.85 19.97 43.25 21.8
Angola - west of 12°E, onshore and offshore.|-17.28 8.2 -5.03 12.01
Angola - between 12°E and 18°E, onshore and offshore.|-17.44 12 -4.38 18
Angola - east of 18°E.|-18.02 17.99 -6.91 24.09
Angola - Angola proper - offshore.|-17.26 8.2 -6.01 13.86
Vietnam - Dien Bien and Lai Chau provinces.|20.89 102.14 22.82 103.99
Vietnam - Son La province.|20.57 103.21 22.04 105.03
Vietnam - Ca Mau and Kien Giang provinces.|8.33 103.4 10.55 105.54
Vietnam - An Giang, Lao Cai, Nghe An, Phu Tho and Yen Bai provinces.|10.18 103.53 22.85 105.86
Vietnam - Bac Ninh, Ha Giang, Ha Tinh, Hai Duong, Hung Yen, Nam Dinh, Soc Trang, Tay Ninh, Thai Binh, Tra Vinh and Vinh Long provinces.|9.19 104.33 23.4 106.69
Vietnam - Hai Phong and Ho Chi Minh cities; Ben Tre, Binh Duong, Cao Bang, Long An and Tien Giang provinces.|9.75 105.26 23.12 107.8
Vietnam - Hoa Binh, Quang Binh and Tuyen Quang provinces.|16.92 104.83 22.7 107.03
Vietnam - Binh Phuoc and Quang Tri provinces.|11.3 106.41 17.22 107.43
Vietnam - Bac Kan and Thai Nguyen provinces.|21.32 105.43 22.75 106.25
Vietnam - Bac Giang and Thua Thien-Hue provinces.|15.99 105.88 21.63 108.24
Vietnam - Lang Son province.|21.32 106.09 22.47 107.37
Vietnam - Kon Tum province.|13.92 107.33 15.42 108.55
Vietnam - Binh Dinh, Khanh Hoa and Ninh Thuan provinces.|11.25 108.55 14.71 109.53
Vietnam - Binh Thuan, Dak Lak, Dak Nong, Gia Lai and Phu Yen provinces.|10.43 107.2 14.61 109.52
South Africa - mainland - onshore and offshore.|-38.17 13.33 -22.13 36.54
South Africa - Marion Island and Prince Edward Island - onshore and offshore.|-50.32 32.71 -43.26 42.85
Argentina - Santa Cruz province south of approximately 50°20'S.|-52.43 -73.28 -50.33 -68.3
Argentina - Santa Cruz province south of approximately 50°20'S and west of 70°30'W.|-52 -73.28 -50.33 -70.5
Argentina - Santa Cruz province south of approximately 50°20'S and east of 70°30'W.|-52.43 -70.5 -50.33 -68.3
Argentina - Tierra del Fuego onshore.|-55.11 -68.64 -52.59 -63.73
Argentina - onshore.|-55.11 -73.59 -21.78 -53.65
Austria west of 11°50'E of Greenwich (29°30'E of Ferro).|46.77 9.53 47.61 11.84
Austria between 11°50'E and 14°50'E of Greenwich (29°30'E and 32°30'E of Ferro).|46.4 11.83 48.79 14.84
Austria east of 14°50'E of Greenwich (32°30'E of Ferro).|46.56 14.83 49.02 17.17
South Africa - mainland onshore.|-34.88 16.45 -22.13 32.95
Argentina - Chibut province west of 70°30'W and south of approximately 44°55'S and Santa Cruz province west of 70°30'W and north of approximately 50°20'S.|-50.34 -73.59 -44.94 -70.5
Argentina - Chibut province east of 67°30'W and south of approximately 43°35'S and Santa Cruz province east of 67°30'W and north of approximately 49°23'S.|-49.05 -67.5 -43.58 -65.47
Netherlands - offshore North Sea.|51.45 2.53 55.77 6.41
United Kingdom (UK) - HS2 phases 1 and 2a railway corridor from London to Birmingham, Lichfield and Crewe.|51.45 -2.75 53.3 0
Southern hemisphere - south of 50°S onshore and offshore, including Antarctica.|-90 -180 -50 180
United Kingdom (UK) - on or related to the Trans-Pennine rail route from Liverpool via Manchester to Bradford and Leeds.|53.32 -3.14 53.9 -1.34
United Kingdom (UK) - on or related to the Midland Mainline rail route from Sheffield to London.|51.46 -1.89 53.42 0.16
United Kingdom (UK) - on or related to the A96 highway from Aberdeen to Inverness.|57.1 -4.31 57.71 -2.1
Europe - onshore - Andorra; Austria; Belarus; Belgium; Bosnia and Herzegovina; Bulgaria; Croatia; Czechia; Denmark; Estonia; Finland; France - mainland; Germany; Gibraltar, Hungary; Italy - mainland and Sicily; Latvia; Liechtenstein; Lithuania; Luxembourg; Netherlands; North Macedonia; Norway; Poland; Portugal - mainland; Romania; Russia – west of approximately 60°E; San Marino; Slovakia; Slovenia; Spain - mainland; Sweden; Switzerland; United Kingdom (UK) - Great Britain mainland; Ukraine; Vatican City State.|35.95 -9.56 77.07 69.15
Spain - Balearic Islands - Mallorca onshore.|39.07 2.23 40.02 3.55
Spain - Balearic Islands - Menorca onshore.|39.75 3.73 40.15 4.39
Spain - Balearic Islands - Ibiza and Formentera - onshore.|38.59 1.12 39.17 1.68
Spain - Canary Islands - Lanzarote onshore.|28.78 -13.95 29.47 -13.37
Spain - Canary Islands - Fuerteventura onshore.|27.99 -14.58 28.81 -13.75
Spain - Canary Islands - Gran Canaria onshore.|27.68 -15.88 28.23 -15.31
Spain - Canary Islands - Tenerife onshore.|27.93 -16.96 28.63 -16.08
Spain - Canary Islands - La Gomera onshore.|27.95 -17.39 28.26 -17.03
Spain - Canary Islands - La Palma onshore.|28.4 -18.06 28.9 -17.66
Spain - Canary Islands - El Hierro onshore.|27.58 -18.22 27.9 -17.83
Spain - Ceuta onshore.|35.82 -5.4 35.97 -5.24
Spain - Canary Islands onshore.|27.58 -18.22 29.47 -13.37
Spain - Canary Islands - El Hierro onshore west of 18°W.|27.59 -18.22 27.88 -18
Spain - Canary Islands onshore - El Hierro east of 18°W, Fuerteventura, Gran Canaria, La Gomera, La Palma, Lanzarote and Tenerife.|27.58 -18.06 29.47 -13.37
Spain - Canary Islands onshore - El Hierro east of 18°W, La Gomera, La Palma and Tenerife.|27.58 -18.06 28.9 -16.08
Europe - onshore - Andorra; Austria; Belgium; Bosnia and Herzegovina; Bulgaria; Croatia; Czechia; Denmark; Estonia; Finland; France - mainland; Germany; Gibraltar, Hungary; Italy - mainland and Sicily; Latvia; Liechtenstein; Lithuania; Luxembourg; Netherlands; North Macedonia; Norway; Poland; Portugal - mainland; Romania; San Marino; Slovakia; Slovenia; Spain - mainland; Sweden; Switzerland; United Kingdom (UK) - Great Britain mainland; Vatican City State.|35.95 -9.56 71.21 31.59
United Kingdom (UK) - offshore to boundary of UKCS within 49°45'N to 61°N and 9°W to 2°E; onshore Great Britain (England, Wales and Scotland) and Northern Ireland. Ireland onshore. Isle of Man onshore.|49.75 -10.85 61.01 2.01
United Kingdom (UK) - on or related to the rail route from Glasgow to Kilmarnock via Barrhead and the branch to East Kilbride.|55.55 -4.65 55.95 -4.05
Indonesia - north of equator and west of 96°E - onshore and offshore.|0 92.01 7.79 96
Indonesia - north of equator and between 96°E and 102°E - onshore and offshore.|0 96 7.49 102
Indonesia - north of equator and between 102°E and 108°E - onshore and offshore.|0 102 6.94 108
Indonesia - north of equator and between 108°E and 114°E - onshore and offshore.|0 108 7.37 114
Indonesia - north of equator and between 114°E and 120°E - onshore and offshore.|0 114 4.37 120
Indonesia - north of equator and between 120°E and 126°E - onshore and offshore.|0 120 5.48 126
Indonesia - north of equator and between 126°E and 132°E - onshore and offshore.|0 126 6.68 132
Indonesia - south of equator and between 96°E and 102°E - onshore and offshore.|-8.86 96 0 102
Indonesia - south of equator and between 102°E and 108°E - onshore and offshore.|-10.73 102 0 108.01
Indonesia - south of equator and between 108°E and 114°E - onshore and offshore.|-12.07 108 0 114
Indonesia - south of equator and between 114°E and 120°E - onshore and offshore.|-13.06 114 0 120.01
Indonesia - south of equator and between 120°E and 126°E - onshore and offshore.|-13.95 120 0.01 126.01
Indonesia - south of equator and between 126°E and 132°E - onshore and offshore.|-9.45 126 0 132
Indonesia - south of equator and between 132°E and 138°E - onshore and offshore.|-10.06 132 0 138.01
Indonesia - south of equator and east of 138°E - onshore and offshore.|-10.84 138 0 141.46
Argentina - autonomous city of Buenos Aires.|-34.71 -58.54 -34.5 -58.29
Northern Mariana Islands - onshore.|14.06 144.83 20.61 146.12
France and Italy - on or related to the rail route from Lyon to Turin.|44.87 4.65 45.89 7.88
Lithuania - onshore.|53.89 20.86 56.45 26.82
Norway (offshore) and Svalbard and Jan Mayen (offshore).|56.08 -13.63 84.73 38.01
United States (USA) - Oregon and Washington.|41.98 -124.79 49.05 -116.47
Canada offshore Atlantic - 48°W to 42°W.|39.85 -48 54.47 -42
Canada offshore Atlantic - east of 42°W.|45.53 -42 49.53 -40.73
Italy - Sicily onshore.|36.59 12.36 38.35 15.71
Italy - Sardinia onshore.|38.82 8.08 41.31 9.89
United Kingdom (UK) - on or related to the complex of rail routes in the East of Scotland, incorporating the route from Tweedbank through the Borders to Edinburgh; the line from Edinburgh to Aberdeen; routes via Kirkaldy and Cowdenbeath; and routes via Leuchars and Perth to Dundee. |55.55 -3.56 57.21 -1.94
United Kingdom (UK) - on or related to rail routes from Newcastle Central to Ashington via Benton North Junction, and the section from Bedlington to Morpeth.|54.85 -1.9 55.3 -1.3
United Kingdom (UK) - on or related to East West Rail (Phase 2) routes from Oxford to Bicester, Bletchley and Bedford, and from Claydon Junction to Aylesbury and Princes Risborough.|51.7 -1.43 52.24 -0.36
Ukraine - Kyiv (Kiev) region (oblast).|49.17 29.26 51.55 32.16
Ukraine - Crimea autonomous region.|44.38 32.47 46.24 36.65
Ukraine - Vinnytsia region (oblast).|48.06 27.37 49.89 30.02
Ukraine - Volyn region (oblast).|50.28 23.6 51.97 26.11
Ukraine - Dnipropetrovsk region (oblast).|47.45 32.95 49.19 36.94
Ukraine - Donetsk region (oblast).|46.86 36.54 49.24 39.1
Ukraine - Zhytomyr region (oblast).|49.58 27.19 51.68 29.74
Ukraine - Zakarpattia (Zakarpatska) region (Transcarpathia oblast).|47.89 22.13 49.1 24.63
Ukraine - Zaporizhzhia region (oblast).|46.07 34.17 48.15 37.25
Ukraine - Ivano-Frankivsk region (oblast).|47.72 23.53 49.56 25.66
Ukraine - Kirovohrad region (oblast).|47.74 29.74 49.25 33.9
Ukraine - Luhansk region (oblast).|47.82 37.83 50.09 40.23
Ukraine - Lviv region (oblast).|48.71 22.64 50.65 25.43
Ukraine - Mykolaiv region (oblast).|46.36 30.2 48.23 33.19
Ukraine - Odessa region (oblast).|45.2 28.21 48.24 31.3
Ukraine - Poltava region (oblast).|48.74 32.08 50.55 35.49
Ukraine - Rivne region (oblast).|50 25.08 51.95 27.74
Ukraine - Sumy region (oblast).|50.1 32.93 52.37 35.67
Ukraine - Ternopil region (oblast).|48.5 24.71 50.27 26.45
Ukraine - Kharkiv region (oblast).|48.52 34.84 50.46 38.1
Ukraine - Kherson region (oblast).|45.75 31.51 47.6 35.11
Ukraine - Khmelnytskyi region (oblast).|48.45 26.13 50.59 27.9
Ukraine - Cherkasy region (oblast).|48.45 29.6 50.23 32.89
Ukraine - Chernivtsi region (oblast).|47.72 24.9 48.68 27.54
Ukraine - Chernihiv region (oblast).|50.34 30.48 52.38 33.51
Ukraine - Kyiv (Kiev) city.|50.21 30.23 50.59 30.83
Ukraine - Sevastopol (Sebastopol) city.|44.38 33.37 44.85 33.93
United Kingdom (UK) - on or related to Midland Rail Hub, covering routes through Cardiff, Bristol, Gloucester, Derby, Birmingham, Leicester, and Lincoln.|51.35 -3.27 53.26 -0.36
United Kingdom (UK) - on or related to the rail route from Manchester via Ordsall Lane and the Hope Valley to Dore Junction.|53.25 -2.4 53.55 -1.39
Papua New Guinea - between 156°E and 162°E, onshore and offshore.|-14.26 156 -1.11 162.01
Papua New Guinea - east of 162°E to EEZ limit.|-4.36 162 -2.34 162.81
Norway - inshore and nearshore.|57.75 4.08 71.38 31.77
United Kingdom (UK) - on or related to the rail route from Newport (Park Junction) to Ebbw Vale.|51.5 -3.3 51.85 -2.89
United Kingdom (UK) - on or related to the rail route from the Morley tunnel through Leeds to Hull.|53.6 -1.7 53.9 -0.27
United Kingdom (UK) - on or related to the Scottish central mainline rail route from Motherwell through Perth and Pitlochry to Inverness.|55.7 -4.4 57.55 -3.3
United Kingdom (UK) - on or related to the rail route from Inverness to Thurso and Wick.|57.4 -4.6 58.64 -3
United Kingdom (UK) - on or related to the rail route from Manchester via Wigan and Liverpool to Chester.|53.09 -3.15 53.65 -2.1
Chile - Easter Island onshore and offshore - west of 108°W.|-30.54 -113.21 -23.72 -108
United States (USA) - parts of Connecticut, Delaware, District of Columbia, Maryland, Massachusetts, New Jersey, New York, Pennsylvania, Rhode Island and Virginia on or related to the Amtrak northeast corridor rail route from Boston to Washington DC via New York and Philadelphia.|38.64 -78.51 42.74 -70.48
South Sudan and Sudan - between 24°E and 30°E.|4.21 23.99 22.01 30.01
Ethiopia - west of 36°E. South Sudan - east of 30°E. Sudan - between 30°E and 36°E.|3.49 29.99 22.24 36
Eritrea. Ethiopia - between 36°E and 42°E. Sudan - east of 36°E.|3.4 36 22.01 42
Ethiopia - east of 42°E.|4.11 42 12.85 47.99
Australia - onshore and offshore to 200 nautical mile EEZ boundary between 108°E and 114°E.|-37.84 109.23 -17.19 114
Australia - onshore and offshore to 200 nautical mile EEZ boundary between 114°E and 120°E.|-38.53 114 -12.61 120
Australia - onshore and offshore between 138°E and 144°E. Papua New Guinea - onshore west of 144°E.|-46.63 138 -2.53 144.01
Australia - onshore and offshore between 144°E and 150°E. Papua New Guinea (PNG) - onshore between 144°E and 150°E.|-47.2 144 -1.3 150.01
Australia - onshore and offshore between 150°E and 156°E. Papua New Guinea onshore east of 150°E.|-46.44 150 -2.32 156
Australia including Lord Howe Island - onshore and offshore between 156°E and 162°E.|-35.13 156 -14.08 162.01
Australia - offshore east of 162°E to 200 nautical mile EEZ boundary.|-34.22 162 -27.25 163.2
Australia - South Australia west of 132°E, Western Australia east of 126°E, offshore federal waters between 126°E and 129°E.|-37.05 125.99 -9.37 132.01
Australia - South Australia between 132°E and 138°E.|-36.14 132 -25.99 138
Australia - South Australia east of 138°E, Queensland west of 144°E.|-38.13 138 -9.86 144.01
Australia - Queensland between 144°E and 150°E.|-29.01 144 -14.01 150
Australia - Queensland east of 150°E.|-29.19 150 -22 153.61
Saudi Arabia - onshore west of 36°E.|26.82 34.51 29.38 36
Saudi Arabia - onshore between 36°E and 42°E.|16.59 36 32.16 42
Kuwait - west of 48°E. Saudi Arabia - between of 42°E and 48°E.|16.37 42 31.15 48.01
Kuwait - onshore east of 48°E. Saudi Arabia - onshore between 48°E and 54°E.|17.94 47.99 30.04 54.01
Bahrain - onshore.|25.53 50.39 26.34 50.85
Somalia - onshore north of equator and between 42°E and 48°E.|0 42 11.52 48
Somalia - onshore east of 48°E.|4.44 48 12.03 51.47
Brazil - offshore between 54°W and 48°W, including Pelotas basin.|-35.71 -53.38 -25.01 -47.99
Brazil - offshore areas south of intersection of parallel of 2°55'S with coast and between 48°W and 42°W including Santos basin.|-33.5 -48.01 0 -41.99
Brazil - between 42°W and 36°W, southern hemisphere offshore including Campos and Espirito Santo basins; onshore Tucano basin area.|-26.35 -42.01 0.01 -36
Botswana and Zambia - west of 24°E.|-26.88 19.99 -10.86 24
Botswana - east of 24°E; Zambia - between 24°E and 30°E; Zimbabwe - west of 30°E .|-25.84 24 -8.31 30
Malawi. Zambia and Zimbabwe - east of 30°E.|-22.42 30 -8.19 35.93
Tanzania - west of 30°E; Uganda - south of equator and west of 30°E.|-6.81 29.34 0 30
Kenya - south of equator and west of 36°E; Tanzania - 30°E to 36°E; Uganda - south of equator and east of 30°E.|-11.61 29.99 0.01 36
Kenya - south of equator and east of 36°E; Tanzania - east of 36°E.|-11.75 36 0 41.6
Uganda - north of equator and west of 30°E.|0 29.71 0.86 30
Kenya - north of equator and west of 36°E; Uganda - north of equator and east of 30°E.|0 29.99 4.63 36
Kenya - north of equator and east of 36°E.|0 36 4.49 41.91
Indonesia - onshore Java and offshore southern Java Sea west of 108°E.|-7.79 105.06 -4.07 108
Indonesia - onshore Java and Madura and offshore southern Java Sea and Madura Strait - between 108°E and 114°E.|-8.67 108 -4.27 114
Indonesia - onshore Java and Bali, offshore southern Java Sea, Madura Strait and western Bali Sea - east of 114°E.|-8.91 114 -5.33 117.01
Liechtenstein.|47.05 9.47 47.28 9.64
Colombia - offshore Caribbean west of 72°W of Greenwich.|7.9 -77.37 13.68 -72
Colombia - mainland onshore west of 1°30'W of Bogota (75°34'51.30"W of Greenwich).|0.03 -79.1 10.21 -75.58
Angola - Angola proper - offshore - west of 12°E.|-17.26 8.2 -6.03 12
Angola - Angola proper between 12°E and 18°E.|-17.44 12 -5.82 18
Angola - offshore block 15.|-6.59 10.83 -6.03 11.67
Argentina - between 70°30'W and 67°30'W, onshore mainland.|-52.43 -70.5 -24.08 -67.49
Argentina - between 67°30'W and 64°30'W, onshore mainland.|-49.05 -67.5 -21.78 -64.49
Argentina - between 64°30'W and 61°30'W, onshore mainland.|-43.14 -64.5 -21.99 -61.49
Botswana - west of 24°E.|-26.88 19.99 -17.99 24
Botswana - east of 24°E.|-25.84 24 -17.78 29.38
Tunisia - onshore north of 38.5 grads North (34°39'N).|34.65 8.18 37.4 11.37
Tunisia - onshore south of 38.5 grads North (34°39'N) .|30.23 7.49 34.66 11.59
Brazil - west of 54°W and south of 18°S.|-31.91 -58.16 -17.99 -54
Brazil - onshore between 54°W and 48°W and south of 15°S.|-33.78 -54 -15 -48
Brazil - between 42°W and 36°W, onshore.|-22.96 -42 -2.68 -36
Brazil - onshore east of 36°W .|-10.1 -36 -4.99 -34.74
Canada - Newfoundland - onshore east of 54°30'W.|46.56 -54.5 49.89 -52.54
Canada - Newfoundland and Labrador between 57°30'W and 54°30'W.|46.81 -57.5 54.71 -54.49
Canada - Newfoundland west of 57°30'W.|47.5 -59.48 50.54 -57.5
Canada - Labrador between 63°W and 60°W.|52 -63 58.92 -60
Canada - Labrador - 66°W to 63°W.|51.58 -66 60.52 -63
Canada - Labrador - west of 66°W.|52.05 -67.81 55.34 -66
Egypt - east of 33°E - onshore plus offshore Gulf of Suez.|21.97 33 31.36 36.95
Egypt - onshore between 29°E and 33°E, offshore Mediterranean east of 29°E and offshore Gulf of Suez.|21.99 29 33.82 34.27
Egypt - onshore west of 29°E and north of approximately 28°11'N.|28.18 24.7 31.68 29
Egypt - west of 29°E; south of approximately 28°11'N.|21.99 24.99 28.19 29.01
Europe - between 18°W and 12°W - Ireland offshore.|48.43 -16.1 56.57 -12
Europe - between 12°W and 6°W - Faroe Islands - onshore; Spain - mainland onshore; Ireland offshore.|36.13 -12 62.41 -6
Europe - between 6°W and 0°W - Channel Islands (Jersey, Guernsey); France offshore; Gibraltar; Ireland offshore; Norway including Svalbard - offshore; Spain - onshore; United Kingdom - UKCS offshore.|35.26 -6 80.49 0.01
Europe - between 0°E and 6°E - Andorra; Denmark (North Sea); Germany offshore; Netherlands offshore; Norway including Svalbard - onshore and offshore; Spain - onshore (mainland and Balearic Islands); United Kingdom (UKCS) offshore.|38.56 0 82.45 6.01
Europe - between 6°E and 12°E - Denmark - onshore and offshore; France - offshore; Germany offshore; Italy - onshore and offshore; Netherlands offshore; Norway including Svalbard - onshore and offshore.|36.53 5.99 84.33 12.01
Europe - between 12°E and 18°E onshore and offshore - Denmark (including Bornholm); Italy including San Marino and Vatican City State; Malta; Norway including Svalbard.|34.49 12 84.42 18.01
Europe - between 18°E and 24°E - Greece - offshore; Italy - onshore and offshore; Norway including Svalbard - onshore and offshore.|33.59 17.99 84.54 24.01
Europe - between 24°E and 30°E - Greece - offshore; Norway including Svalbard - onshore and offshore; Türkiye (Turkey) - onshore and offshore. Egypt - Western Desert.|25.71 24 84.73 30.01
Europe - between 30°E and 36°E - Israel - offshore; Jordan; Norway including Svalbard - onshore and offshore; Türkiye (Turkey) - onshore and offshore.|29.19 30 84.7 36
Europe - between 36°E and 42°E - Jordan; Norway including Svalbard - offshore; Türkiye (Turkey) - onshore and offshore.|29.18 36 79.07 42
Europe - between 42°E and 48°E - Türkiye (Turkey).|36.97 42 41.6 44.83
United Kingdom (UK) - offshore - North Sea.|51.03 -5.05 62.03 3.4
Oman - mainland onshore east of 54°E.|16.89 54 26.42 59.91
Indonesia - onshore west of 96°E.|2.55 95.16 5.97 96
Indonesia - onshore between 96°E and 99°E.|-1.81 96 5.42 99
Indonesia - onshore between 99°E and 102°E.|-3.57 99 3.71 102
Indonesia - onshore between 102°E and 105°E.|-5.99 102 1.68 105
Indonesia - onshore between 105°E and 108°E.|-7.79 105 4.11 108
Indonesia - onshore between 108°E and 111°E.|-8.31 108 4.25 111
Indonesia - onshore between 111°E and 114°E.|-8.67 111 1.59 114
Indonesia - onshore between 114°E and 117°E.|-9.15 114 4.37 117.01
Indonesia - onshore between 117°E and 120°E.|-10.15 117 4.36 120
Indonesia - onshore between 120°E and 123°E.|-10.98 120 1.4 123
Indonesia - onshore between 123°E and 126°E.|-10.92 123 3.84 126
Indonesia - onshore between 126°E and 129°E.|-8.32 126 4.59 129
Indonesia - onshore between 129°E and 132°E.|-8.41 129 0.1 132
Indonesia - onshore between 132°E and 135°E.|-7.3 132 -0.29 135
Indonesia - onshore between 135°E and 138°E.|-8.49 135 -0.58 138
Indonesia - onshore east of 138°E.|-9.19 138 -1.49 141.01
Indonesia - onshore north of equator and between 96°E and 102°E.|0 96 5.42 102
Indonesia - onshore north of equator and between 102°E and 108°E.|0 102 4.11 108
Indonesia - onshore north of equator and between 108°E and 114°E.|0 108 4.25 114
Indonesia - onshore north of equator and between 114°E and 120°E.|0 114 4.37 120
Indonesia - onshore north of equator and between 120°E and 126°E.|0 120 3.84 125.71
Indonesia - onshore north of equator and between 126°E and 132°E.|0 126.55 4.59 131
Indonesia - onshore south of equator and between 96°E and 102°E.|-3.57 98.24 0 102
Indonesia - onshore south of equator and between 102°E and 108°E.|-7.79 102 0 108
Indonesia - onshore south of equator and between 108°E and 114°E.|-8.67 108 0 114
Indonesia - onshore south of equator and between 114°E and 120°E.|-10.15 114 0 120
Indonesia - onshore south of equator and between 120°E and 126°E.|-10.98 120 0 126
Indonesia - onshore south of equator and between 126°E and 132°E.|-8.41 126 0 132
Indonesia - onshore south of equator and between 132°E and 138°E.|-8.49 132 -0.29 138
Myanmar (Burma) - onshore west of 96°E.|15.66 92.2 27.14 96.01
Myanmar (Burma) - onshore east of 96°E; Thailand - onshore west of 102°E.|5.63 95.99 28.55 102.01
Thailand - onshore east of 102°E.|6.02 102 18.44 105.64
Thailand - onshore west of 102°E plus offshore Gulf of Thailand west of 102°E.|5.63 97.34 20.46 102.01
Thailand - onshore and offshore east of 102°E.|6.02 102 18.44 105.64
Bangladesh - onshore west of 90°E.|21.59 88.01 26.64 90
Bangladesh - onshore east of 90°E.|20.52 90 25.29 92.67
Pakistan - onshore west of 66°E.|24.98 60.86 29.87 66.01
Pakistan - onshore between 66°E and 72°E.|23.64 66 36.56 72.01
Pakistan - east of 72°E.|28.21 72 37.07 77.83
India - onshore west of 72°E.|20.64 68.13 28.22 72.01
India - mainland onshore between 72°E and 78°E.|8.02 72 35.51 78.01
India - onshore between 78°E and 84°E.|8.29 78 35.5 84.01
India - onshore between 84°E and 90°E.|18.18 84 28.14 90.01
India - mainland onshore between 90°E and 96°E.|21.94 90 29.42 96.01
India - east of 96°E.|27.1 96 29.47 97.42
Pakistan - north of 35°35'N.|35.58 71.18 37.07 77.01
India - north of 28°N; Pakistan - between 28°N and 35°35'N.|28 60.86 35.59 81.64
India - onshore between 21°N and 28°N and west of 82°E; Pakistan - onshore south of 28°N.|21 61.59 28.01 82.01
India - onshore between 15°N and 21°N.|15 70.14 21.01 87.15
India - mainland onshore south of 15°N.|8.02 73.94 15.01 80.4
Pakistan - between 28°N and 35°35'N.|28 60.86 35.59 77.83
Pakistan - onshore south of 28°N.|23.64 61.59 28.01 71.91
India - north of 28°N.|28 70.35 35.51 81.64
India - onshore between 21°N and 28°N and west of 82°E.|21 68.13 28.01 82.01
India - onshore north of 21°N and east of 82°E.|21 82 29.47 97.42
Bangladesh - onshore north of 21°N; India - onshore north of 21°N and east of 82°E; Myanmar (Burma) - north of 21°N.|21 82 29.47 101.17
Malaysia - West Malaysia onshore west of 102°E.|2.29 99.59 6.72 102.01
Malaysia - onshore West Malaysia east of 102°E and offshore east coast.|1.21 102 7.81 105.82
Venezuela - between 72°W and 66°W, onshore.|0.73 -72 12.25 -66
Venezuela - onshore east of 66°W.|0.64 -66 11.23 -59.8
South America (Ecuador) between 84°W and 78°W, northern hemisphere, onshore.|0 -80.18 1.45 -78
South America (Ecuador; Venezuela) between 78°W and 72°W, northern hemisphere, onshore.|0 -78 11.62 -71.99
South America (Aruba; Bonaire; Curacao; Venezuela) between 72°W and 66°W, northern hemisphere, onshore.|0.73 -72 12.68 -66
South America (Guyana; Venezuela) onshore between 66°W and 60°W, northern hemisphere.|0.64 -66 11.23 -59.99
South America (Guyana) onshore between 60°W and 54°W, northern hemisphere.|1.18 -60 8.58 -56.47
South America (Ecuador and Peru) between 84°W and 78°W, southern hemisphere, onshore.|-10.53 -81.41 0 -78
South America (Chile - north of 45°S; Ecuador; Peru) between 78°W and 72°W, southern hemisphere, onshore.|-43.5 -78 0 -71.99
South America (Bolivia; Chile - north of 45°S; Peru) between 72°W and 66°W, southern hemisphere, onshore.|-43.5 -72 -2.14 -66
Brazil - offshore shelf - Amazon cone.|-1.05 -51.64 5.6 -48
Peru - west of 79°W.|-8.32 -81.41 -3.38 -79
Peru - between 79°W and 73°W, onshore.|-16.57 -79 -0.03 -73
Peru - east of 73°W, onshore.|-18.39 -73 -2.14 -68.67
Philippines - onshore west of 118°E.|7.75 116.89 9.32 118
Philippines - onshore approximately between 118°E and 120°E - Palawan; Calamian Islands.|8.82 118 11.58 120.07
Philippines - onshore approximately between 120°E and 122°E. Luzon (west of 122°E); Mindoro.|4.99 119.7 19.45 122.21
Philippines - onshore approximately between 122°E and 124°E - southeast Luzon (east of 122°E); Tablas; Masbate; Panay; Cebu; Negros; northwest Mindanao (west of 124°E).|6.35 121.74 18.58 124.29
Philippines - onshore approximately between 124°E and 126°E - east Mindanao (east of 124°E); Bohol; Samar.|5.5 123.73 14.15 126.65
Estonia, Latvia and Lithuania - onshore and offshore.|53.89 19.02 60 28.24
Morocco onshore north of 35 grads North (31°30'N).|31.49 -9.85 35.97 -1.01
Morocco onshore south of 35 grads North (31°30'N).|27.66 -13.24 31.51 -3.59
Western Sahara - onshore north of 27grads North (24°18'N).|24.29 -15.42 27.67 -8.66
Western Sahara - onshore south of 27grads North (24°18'N).|20.71 -17.16 24.31 -12
Nigeria - offshore beyond continental shelf west of 6°E.|1.92 2.66 6.14 6
Nigeria - offshore deep water - east of 6°E.|2.61 6 3.68 7.82
Nigeria - onshore west of 6°30'E, onshore and offshore shelf.|3.57 2.69 13.9 6.5
Nigeria between 6°30'E and 10°30'E, onshore and offshore shelf.|3.57 6.5 13.53 10.51
Nigeria east of 10°30'E.|6.43 10.49 13.72 14.65
Gabon - onshore north of equator and west of 12°E.|0 9.25 2.32 12
Gabon - west of 12°E - onshore and offshore.|-6.37 7.03 2.32 12.01
North America - between 144°W and 138°W. Canada - British Columbia; Yukon. United States (USA) - Alaska. Onshore for western Canada & but onshore and offshore for Alaska.|53.47 -144 73.59 -138
North America - between 138°W and 132°W - onshore. Canada - British Columbia; Northwest Territiories; Yukon. United States (USA) - Alaska. Onshore for Canadian British Columbia & Arctic and for US Pacific coast including Alaska panhandle.|52.58 -138 73.04 -132
North America - between 132°W and 126°W - onshore. Canada - British Columbia; Northwest Territories; Yukon. United States (USA) - Alaska. Onshore for Canadian British Colombia & Arctic coasts and for the US Pacific coast including Alaska panhandle.|49.18 -132 72.03 -126
North America - between 126°W and 120°W - onshore. Canada - British Columbia; Northwest Territories; Nunavut; Yukon. United States (USA) - California; Oregon; Washington.|34.4 -126 77.13 -119.99
North America - between 120°W and 114°W - onshore. Canada - Alberta; British Columbia; Northwest Territories; Nunavut. Mexico. United States (USA) - California; Idaho; Nevada; Oregon; Washington.|26.93 -120 78.13 -114
North America - between 114°W and 108°W. Canada - Alberta; Northwest Territories; Nunavut; Saskatchewan. Mexico. United States (USA) - Arizona; Colorado; Idaho; Montana; New Mexico; Utah; Wyoming. Onshore for Mexican Pacific and Canadian Arctic coasts.|18.66 -114 78.81 -108
North America - between 108°W and 102°W. Canada - Northwest Territories; Nunavut; Saskatchewan. Mexico. United States (USA) - Colorado; Montana; Nebraska; New Mexico; North Dakota; Oklahoma; South Dakota; Texas; Wyoming. Onshore for Mexican Pacific and Canadian Arctic coasts.|17.86 -108 79.42 -102
North America - between 102°W and 96°W. Canada - Manitoba; Nunavut; Saskatchewan. Mexico. United States (USA) - Iowa; Kansas; Minnesota; Nebraska; North Dakota; Oklahoma; South Dakota; Texas. Onshore for Mexican Pacific coast and Canadian Arctic but onshore and offshore for US & Mexico Gulf of Mexico and Caribbean coasts.|15.59 -102 80.74 -96
North America - between 96°W and 90°W. Canada - Manitoba; Nunavut; Ontario. Guatemala. Mexico. United States (USA) - Arkansas; Illinois; Iowa; Kansas; Louisiana; Michigan; Minnesota; Mississippi; Missouri; Nebraska; Oklahoma; Tennessee; Texas; Wisconsin. Onshore for Canadian Arctic and Central America, onshore and offshore for Gulf of Mexico (both US and Mexican sectors).|13.63 -96 81.96 -90
North America - between 90°W and 84°W. Belize. Canada - Manitoba; Nunavut; Ontario. Costa Rica. Cuba. El Salvador. Guatemala. Honduras. Mexico. Nicaragua. United States (USA) - Alabama; Arkansas; Florida; Georgia; Indiana; Illinois; Kentucky; Louisiana; Michigan; Minnesota; Mississippi; Missouri; North Carolina; Ohio; Tennessee; Wisconsin. Onshore for Canadian Arctic and Central America, onshore and offshore for Cuba and Gulf of Mexico (both US and Mexican sectors).|9.27 -90.01 82.54 -84
North America - between 84°W and 78°W. Bahamas. Canada - Nunavut; Ontario; Quebec. Costa Rica. Cuba. Honduras. Nicaragua. United States (USA) - Florida; Georgia; Kentucky; Maryland; Michigan; New York; North Carolina; Ohio; Pennsylvania; South Carolina; Tennessee; Virginia; West Virginia. Onshore for Canadian Arctic. onshore and offshore for US east coast and Cuba, with usage in Bahamas onshore plus offshore over internal continental shelf only.|7.98 -84 83.03 -78
North America - between 78°W and 72°W. Bahamas. Canada - Nunavut; Ontario; Quebec. Cuba. United States (USA) - Connecticut; Delaware; Maryland; Massachusetts; New Hampshire; New Jersey; New York; North Carolina; Pennsylvania; Virginia; Vermont. Onshore for Canadian arctic. onshore and offshore for US east coast and Cuba, with usage in Bahamas onshore plus offshore over internal continental shelf only.|18.83 -78 83.16 -72
North America - between 72°W and 66°W. Canada - New Brunswick; Labrador; Nunavut; Nova Scotia; Quebec. United States (USA) - Connecticut; Maine; Massachusetts; New Hampshire; New York (Long Island); Rhode Island; Vermont. Onshore and offshore for US and Canadian east coasts.|33.61 -72 83.17 -66
North America - between 66°W and 60°W - onshore and offshore. Canada - New Brunswick; Labrador; Nova Scotia; Nunavut; Prince Edward Island; Quebec. United States (USA) offshore Atlantic.|38.21 -66 82.97 -59.99
Canada between 60°W and 54°W, onshore and offshore - Newfoundland and Labrador; Quebec.|40.57 -60 68.93 -54
United States (USA) - California - counties of Kern; San Bernardino; San Luis Obispo; Santa Barbara; Ventura.|32.76 -121.43 35.81 -114.12
United States (USA) - Louisiana|27.82 -93.94 31.07 -87.76
United States (USA) - California - Los Angeles county.|33.66 -118.96 34.83 -117.63
United States (USA) - between 162°W and 156°W onshore and offshore - Alaska, Hawaii.|15.57 -162 74.71 -155.99
United States (USA) - between 156°W and 150°W onshore and offshore - Alaska, Hawaii.|15.56 -156 74.71 -149.99
North America - between 144°W and 138°W - onshore and offshore. Canada - British Columbia; Yukon. United States (USA) - Alaska.|52.05 -144 73.59 -137.99
North America - between 138°W and 132°W - onshore and offshore. Canada - British Columbia; Northwest Territiories; Yukon. United States (USA) - Alaska.|48.06 -138 79.42 -132
North America - between 132°W and 126°W - onshore and offshore. Canada - British Columbia; Northwest Territories; Yukon. United States (USA) - Alaska.|35.38 -132 80.93 -126
North America - between 126°W and 120°W - onshore and offshore. Canada - British Columbia; Northwest Territories; Yukon. United States (USA) - California; Oregon; Washington.|30.54 -126 81.8 -119.99
North America - between 120°W and 114°W - onshore and offshore. Canada - Alberta; British Columbia; Northwest Territories; Nunavut. United States (USA) - California; Idaho; Nevada, Oregon; Washington.|30.88 -120 83.5 -114
North America - between 114°W and 108°W - onshore and offshore. Canada - Alberta; Northwest Territories; Nunavut; Saskatchewan. United States (USA) - Arizona; Colorado; Idaho; Montana; New Mexico; Utah; Wyoming.|31.33 -114 84 -108
North America - between 108°W and 102°W - onshore and offshore. Canada - Northwest Territories; Nunavut; Saskatchewan. United States (USA) - Colorado; Montana; Nebraska; New Mexico; North Dakota; Oklahoma; South Dakota; Texas; Wyoming.|28.98 -108 84 -102
North America - between 102°W and 96°W - onshore and offshore. Canada - Manitoba; Nunavut; Saskatchewan. United States (USA) - Iowa; Kansas; Minnesota; Nebraska; North Dakota; Oklahoma; South Dakota; Texas.|25.83 -102 84 -96
North America - between 96°W and 90°W - onshore and offshore. Canada - Manitoba; Nunavut; Ontario. United States (USA) - Arkansas; Illinois; Iowa; Kansas; Louisiana; Michigan; Minnesota; Mississippi; Missouri; Nebraska; Oklahoma; Tennessee; Texas; Wisconsin.|25.61 -96 84 -90
North America - between 90°W and 84°W - onshore and offshore. Canada - Manitoba; Nunavut; Ontario. United States (USA) - Alabama; Arkansas; Florida; Georgia; Indiana; Illinois; Kentucky; Louisiana; Michigan; Minnesota; Mississippi; Missouri; North Carolina; Ohio; Tennessee; Wisconsin.|23.97 -90 84 -84
North America - between 84°W and 78°W - onshore and offshore. Canada - Nunavut; Ontario; Quebec. United States (USA) - Florida; Georgia; Kentucky; Maryland; Michigan; New York; North Carolina; Ohio; Pennsylvania; South Carolina; Tennessee; Virginia; West Virginia.|23.81 -84 84 -78
North America - between 78°W and 72°W - onshore and offshore. Canada - Nunavut; Ontario; Quebec. United States (USA) - Connecticut; Delaware; Maryland; Massachusetts; New Hampshire; New Jersey; New York; North Carolina; Pennsylvania; Virginia; Vermont.|28.28 -78 84 -72
North America - between 72°W and 66°W - onshore and offshore. Canada - Labrador; New Brunswick; Nova Scotia; Nunavut; Quebec. Puerto Rico. United States (USA) - Connecticut; Maine; Massachusetts; New Hampshire; New York (Long Island); Rhode Island; Vermont.|14.92 -72 84 -66
North America - between 66°W and 60°W - onshore and offshore. British Virgin Islands. Canada - New Brunswick; Labrador; Nunavut; Prince Edward Island; Quebec. Puerto Rico. US Virgin Islands. United States (USA) offshore Atlantic.|15.63 -66 84 -60
Qatar - offshore. United Arab Emirates (UAE) - Abu Dhabi - onshore and offshore west of 54°E.|22.76 50.55 27.05 54.01
United Arab Emirates (UAE) onshore and offshore east of 54°E - Abu Dhabi; Dubai; Sharjah; Ajman; Fujairah; Ras Al Kaimah; Umm Al Qaiwain.|22.63 54 26.27 57.13
New Zealand - nearshore west of 168°E.|-47.65 165.87 -42.59 168
New Zealand - nearshore between 168°E and 174°E.|-47.64 168 -33.89 174
New Zealand - nearshore east of 174°E.|-44.13 174 -34.24 179.27
New Zealand - North Island.|-41.67 171.99 -34.1 178.63
New Zealand - South Island, Stewart Island.|-47.33 166.37 -40.44 174.46
Norway - west of 3°30'W of Oslo (7°13'22.5"E of Greenwich).|57.93 4.68 63.06 7.23
Norway - between 3°30'W and 1°10' W of Oslo (7°13'22.5"E and 9°33'22.5"E of Greenwich).|57.95 7.22 63.87 9.56
Norway - between 1°10'W and 1°15'E of Oslo (9°33'22.5"E and 11°58'22.5"E of Greenwich).|58.84 9.55 65.76 11.98
Norway - between 1°15'E and 4°20'E of Oslo (11°58'22.5"E and 15°03'22.5"E of Greenwich).|59.88 11.97 69.06 15.06
Norway - between 4°20'E and 8°10'E of Oslo (15°03'22.5"E and 18°53'22.5"E of Greenwich).|66.15 15.05 70.19 18.89
Norway - between 8°10'E and 12°10'E of Oslo (18°53'22.5"E and 22°53'22.5"E of Greenwich).|68.33 18.88 70.81 22.89
Norway - between 12°10'E and 16°15'E of Oslo (22°53'22.5"E and 26°58'22.5"E of Greenwich).|68.58 22.88 71.21 26.98
Norway - east of 16°15'E of Oslo (26°58'22.5"E of Greenwich).|69.02 26.97 71.17 31.22
France - Alsace.|47.42 6.84 49.07 8.23
France mainland onshore between 50.5 grads and 53.5 grads North (45°27'N to 48°09'N).|45.44 -4.8 48.15 7.63
France mainland onshore between 50.5 grads and 53.5 grads North (45°27'N to 48°09'N). Also used over all onshore mainland France.|42.33 -4.87 51.14 8.23
South America between 78°W and 72°W, northern hemisphere, onshore.|0 -78 12.31 -72
South America between 72°W and 66°W, northern hemisphere, onshore, but excluding the area between approximately 0°N, 70°W to 2°N, 70°W to 2°N, 66°W.|0 -72 12.52 -66
South America between 66°W and 60°W, northern hemisphere, onshore, but excluding most of the area south of 4°N.|0.64 -66 11.23 -59.99
South America between 60°W and 54°W, northern hemisphere onshore, but excluding most of the area south of approximately 2°N.|1.18 -60 8.6 -54
Brazil - offshore deep water - Amazon cone. In remainder of South America, between 54°W and 48°W, northern hemisphere onshore but excluding most of the area southeast of a line between approximately 2°N, 54°W and 4°N, 52°W.|1.68 -54 5.81 -46.65
South America between 84°W and 78°W, southern hemisphere, onshore.|-10.53 -81.41 0 -78
Brazil - west of 72°W. In rest of South America between 78°W and 72°W, southern hemisphere onshore north of 45°S.|-45 -78 0 -71.99
Brazil - between 72°W and 66°W, northern and southern hemispheres. In rest of South America between 72°W and 66°W, southern hemisphere onshore north of 45°S.|-45 -72 2.15 -65.99
Brazil - between 66°W and 60°W, northern and southern hemispheres. In rest of South America between 66°W and 60°W, southern hemisphere onshore.|-45 -66 5.28 -59.99
Brazil - between 60°W and 54°W, northern and southern hemispheres. In rest of South America between 60°W and 54°W southern hemisphere, onshore.|-38.91 -60 4.51 -53.99
Brazil - onshore and offshore northern and southern hemispheres between 54°W and 48°W. In remainder of South America - between 54°W and 48°W, southern hemisphere, onshore.|-35.71 -54 7.04 -47.99
Falkland Islands (Malvinas) - onshore west of 60°W.|-52.33 -61.55 -50.96 -59.99
Falkland Islands (Malvinas) - onshore east of 60°W.|-52.51 -60 -51.13 -57.6
Namibia - offshore.|-30.64 8.24 -17.24 16.46
Namibia - onshore west of 12°E.|-18.53 11.66 -17.15 12
Namibia - onshore between 12°E and 14°E.|-21.9 12 -16.95 14.01
Namibia - onshore between 14°E and 16°E.|-28.3 14 -17.38 16
Namibia - onshore between 16°E and 18°E.|-28.83 15.99 -17.38 18.01
Namibia - between 18°E and 20°E.|-28.97 18 -17.38 20
Namibia - between 20°E and 22°E.|-22.01 19.99 -17.85 22
Namibia - between 22°E and 24°E.|-18.49 21.99 -17.52 24
Namibia - east of 24°E.|-18.18 24 -17.47 25.27
Madagascar - nearshore west of 48°E.|-26.59 42.53 -13 48
Madagascar - nearshore east of 48°E.|-24.21 48 -11.69 51.03
Brunei - offshore west of 114°E; Malaysia - East Malaysia (Sarawak) onshore and offshore west of 114°E).|0.85 109.31 7.37 114
Brunei - onshore and offshore east of 114°E; Malaysia - East Malaysia (Sabah, Sarawak) onshore and offshore east of 114°E).|1.43 114 7.67 119.61
Malaysia - East Malaysia - Sarawak onshore.|0.85 109.54 5.03 115.69
Ireland - onshore.|51.39 -10.56 55.43 -5.93
United Arab Emirates (UAE) - Abu Dhabi onshore west of 54°E.|22.76 51.56 24.32 54.01
United Arab Emirates (UAE) - Abu Dhabi onshore east of 54°E; Dubai onshore.|22.63 53.99 25.34 56.03
Algeria - onshore north of 38.5 grads North (34°39'N).|34.64 -2.22 37.14 8.64
Algeria - 35.6 grads to 38.5 grads North (32°N to 34°39'N).|31.99 -2.95 34.66 9.09
Algeria - west of 6°W (of Greenwich).|25.73 -8.67 29.85 -6
Algeria - between 6°W and 0°W (of Greenwich), onshore and offshore.|21.82 -6 37.01 0
Algeria - between 0°E and 6°E (of Greenwich), onshore and offshore.|18.97 0 38.77 6.01
Algeria - east of 6°E (of Greenwich), onshore and offshore.|19.6 6 38.8 11.99
Algeria - 35 grads to 38.5 grads North (31°30'N to 34°39'N).|31.49 -3.85 34.66 9.22
Suriname - offshore.|5.34 -57.25 9.35 -52.66
Suriname - onshore.|1.83 -58.08 6.06 -53.95
Kuwait - onshore west of 48°E.|28.53 46.54 30.09 48
Kuwait - onshore east of 48°E.|28.54 48 30.04 48.48
Latin America between 120°W and 114°W, northern hemisphere, onshore and offshore.|15.01 -120 32.72 -114
Latin America between 114°W and 108°W, northern hemisphere, onshore and offshore.|15.09 -114 32.27 -108
Latin America between 108°W and 102°W, northern hemisphere, onshore and offshore.|14.05 -108 31.79 -102
Latin America between 102°W and 96°W, northern hemisphere, onshore and offshore.|12.3 -102.01 29.81 -96
Latin America - Central and South America - between 96°W and 90°W, northern hemisphere, onshore and offshore.|0 -96 26 -90
Latin America - Central America and South America - between 90°W and 84°W, northern hemisphere, onshore and offshore.|0 -90 25.77 -83.99
Latin America - Central America and South America - between 84°W and 78°W, northern hemisphere, onshore and offshore.|0 -84 19.54 -78
Latin America - Central America and South America - between 78°W and 72°W, northern hemisphere, onshore and offshore.|0 -78 15.04 -72
South America between 72°W and 66°W and north of approximately 2°N, onshore and offshore.|0 -72 15.64 -66
South America between 66°W and 60°W, north of approximately 4°N, onshore and offshore.|0.64 -66 16.75 -59.99
South America between 60°W and 54°W, north of approximately 2°N, onshore and offshore.|1.18 -60 12.19 -54
South America between 54°W and 48°W, northern hemisphere, onshore and offshore except Brazil where offshore only.|0 -54 9.24 -47.99
South America between 84°W and 78°W, southern hemisphere, onshore and offshore.|-56.45 -84 0 -78
Brazil west of 72°W. In remainder of South America, between 78°W and 72°W, southern hemisphere, onshore and offshore.|-59.36 -78 0 -71.99
Brazil - between 72°W and 66°W, northern and southern hemispheres. In remainder of South America - between 72°W and 66°W, southern hemisphere, onshore and offshore.|-59.87 -72 2.15 -66
Brazil - between 66°W and 60°W, northern and southern hemispheres. In remainder of South America - between 66°W and 60°W, southern hemisphere, onshore and offshore.|-58.39 -66 5.28 -60
Brazil - between 60°W and 54°W, northern and southern hemispheres. In remainder of South America - between 60°W and 54°W, southern hemisphere, onshore and offshore.|-44.82 -60 4.51 -54
Brazil - between 54°W and 48°W, northern and southern hemispheres, onshore and offshore. In remainder of South America - between 54°W and 48°W, southern hemisphere, onshore and offshore.|-54.18 -54 7.04 -47.99
South America between 84°W and 78°W, northern hemisphere, onshore and offshore.|0.9 -84 15.51 -78
South America between 78°W and 72°W, northern hemisphere, onshore and offshore.|0 -78 15.04 -72
South America between 72°W and 66°W, northern hemisphere, onshore and offshore.|0 -72 15.64 -66
South America between 66°W and 60°W, northern hemisphere, onshore and offshore.|0 -66 16.75 -60
South America between 60°W and 54°W, northern hemisphere, onshore and offshore.|0 -60 10.7 -54
South America between 54°W and 48°W, northern hemisphere, onshore and offshore.|0 -54 9.24 -48
Ecuador (mainland whole country including areas in northern hemisphere and east of 78°W), onshore and offshore. In remainder of South America, between 84°W and 78°W, southern hemisphere, onshore and offshore.|-56.45 -84 1.45 -75.21
South America between 78°W and 72°W, southern hemisphere, onshore and offshore.|-59.36 -78 0 -71.99
South America between 72°W and 66°W, southern hemisphere, onshore and offshore.|-59.87 -72 0 -66
South America between 66°W and 60°W, southern hemisphere, onshore and offshore.|-58.39 -66 0 -60
South America onshore and offshore, southern hemisphere between 60°W and 54°W.|-44.82 -60 0 -54
South America between 54°W and 48°W, southern hemisphere, onshore and offshore.|-39.95 -54 0 -48
South America - between 48°W and 42°W, southern hemisphere, onshore and offshore.|-33.5 -48 0 -42
South America - between 42°W and 36°W, southern hemisphere, onshore and offshore.|-26.35 -42 0 -36
South America - between 36°W and 30°W, southern hemisphere, onshore and offshore.|-20.11 -36 0 -30
United States (USA) - Montana north of approximately 47°50'N|47.41 -116.07 49.01 -104.04
United States (USA) - Montana|46.17 -116.06 48.26 -104.04
United States (USA) - Montana|44.35 -114.57 46.87 -104.04
United States (USA) - Nebraska|41.68 -104.06 43.01 -96.07
United States (USA) - Nebraska|39.99 -104.06 42.01 -95.3
United States (USA) - New Mexico - counties of Bernalillo; Dona Ana; Lincoln; Los Alamos; Otero; Rio Arriba; Sandoval; Santa Fe; Socorro; Taos; Torrance.|31.78 -107.73 37 -104.83
United States (USA) - New Mexico - counties of Catron; Cibola; Grant; Hidalgo; Luna; McKinley; San Juan; Sierra; Valencia.|31.33 -109.06 37 -106.32
United States (USA) - South Carolina|33.46 -83.36 35.21 -78.52
United States (USA) - South Carolina|32.05 -82.03 33.95 -78.95
United States (USA) - Texas|27.78 -105 30.67 -93.41
United States (USA) - Texas|25.83 -100.2 28.21 -95.36
United States (USA) - Washington|45.54 -124.4 47.96 -116.91
United States (USA) - between 102°W and 96°W. Iowa; Kansas; Minnesota; Nebraska; North Dakota; Oklahoma; South Dakota; Texas; Gulf of Mexico outer continental shelf (GoM OCS) west of approximately 96°W - protraction areas Corpus Christi; Port Isabel.|25.83 -102 49.01 -95.87
United States (USA) - between 96°W and 90°W - Arkansas; Illinois; Iowa; Kansas; Louisiana; Michigan; Minnesota; Mississippi; Missouri; Nebraska; Oklahoma; Tennessee; Texas; Wisconsin; Gulf of Mexico outer continental shelf (GoM OCS) between approximately 96°W and 90°W - protraction areas East Breaks; Alaminos Canyon; Garden Banks; Keathley Canyon; Sigsbee Escarpment; Ewing Bank; Green Canyon; Walker Ridge; Amery Terrace.|25.61 -96.01 49.38 -89.86
United States (USA) - between 90°W and 84°W onshore and offshore - Alabama; Arkansas; Florida; Georgia; Indiana; Illinois; Kentucky; Louisiana; Michigan; Minnesota; Mississippi; Missouri; North Carolina; Ohio; Tennessee; Wisconsin; Gulf of Mexico outer continental shelf (GoM OCS) between approximately 90°W and 84°W - protraction areas Mobile; Viosca Knoll; Mississippi Canyon; Atwater Valley; Lund; Lund South; Pensacola; Destin Dome; De Soto Canyon; Lloyd Ridge; Henderson; Florida Plain; Campeche Escarpment; Apalachicola; Florida Middle Ground; The Elbow; Vernon Basin; Howell Hook; Rankin.|23.95 -90.01 48.32 -83.91
United States (USA) - between 84°W and 78°W onshore and offshore - Florida; Georgia; Maryland; Michigan; New York; North Carolina; Ohio; Pennsylvania; South Carolina; Tennessee; Virginia; West Virginia; Gulf of Mexico outer continental shelf (GoM OCS) east of approximately 84°W - protraction areas Gainesville; Tarpon Springs; St Petersburg; Charlotte Harbor; Pulley Ridge; Dry Tortugas; Tortugas Valley; Miami; Key West.|23.81 -84.09 46.13 -77.99
United States (USA) - Wyoming.|40.99 -111.06 45.01 -104.05
Puerto Rico and US Virgin Islands - onshore and offshore.|14.92 -68.49 21.86 -63.88
Between 180°W and 174°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -180 84 -174
Between 174°W and 168°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -174 84 -168
Between 168°W and 162°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -168 84 -162
Between 162°W and 156°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -162 84 -156
Between 156°W and 150°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -156 84 -150
Between 150°W and 144°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -150 84 -144
Between 144°W and 138°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -144 84 -138
Between 138°W and 132°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -138 84 -132
Between 132°W and 126°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -132 84 -126
Between 126°W and 120°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -126 84 -120
Between 120°W and 114°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -120 84 -114
Between 114°W and 108°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -114 84 -108
Between 108°W and 102°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -108 84 -102
Between 102°W and 96°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -102 84 -96
Between 96°W and 90°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -96 84 -90
Between 90°W and 84°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -90 84 -84
Between 84°W and 78°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -84 84 -78
Between 78°W and 72°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -78 84 -72
Between 72°W and 66°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -72 84 -66
Between 66°W and 60°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -66 84 -60
Between 60°W and 54°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -60 84 -54
Between 54°W and 48°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -54 84 -48
Between 48°W and 42°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -48 84 -42
Between 42°W and 36°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -42 84 -36
Between 36°W and 30°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -36 84 -30
Between 30°W and 24°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -30 84 -24
Between 24°W and 18°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -24 84 -18
Between 18°W and 12°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -18 84 -12
Between 12°W and 6°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -12 84 -6
Between 6°W and 0°W, northern hemisphere between equator and 84°N, onshore and offshore.|0 -6 84 0
Between 0°E and 6°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 0 84 6
Between 6°E and 12°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 6 84 12
Between 12°E and 18°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 12 84 18
Between 18°E and 24°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 18 84 24
Between 24°E and 30°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 24 84 30
Between 30°E and 36°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 30 84 36
Between 36°E and 42°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 36 84 42
Between 42°E and 48°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 42 84 48
Between 48°E and 54°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 48 84 54
Between 54°E and 60°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 54 84 60
Between 60°E and 66°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 60 84 66
Between 66°E and 72°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 66 84 72
Between 72°E and 78°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 72 84 78
Between 78°E and 84°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 78 84 84
Between 84°E and 90°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 84 84 90
Between 90°E and 96°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 90 84 96
Between 96°E and 102°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 96 84 102
Between 102°E and 108°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 102 84 108
Between 108°E and 114°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 108 84 114
Between 114°E and 120°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 114 84 120
Between 120°E and 126°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 120 84 126
Between 126°E and 132°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 126 84 132
Between 132°E and 138°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 132 84 138
Between 138°E and 144°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 138 84 144
Between 144°E and 150°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 144 84 150
Between 150°E and 156°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 150 84 156
Between 156°E and 162°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 156 84 162
Between 162°E and 168°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 162 84 168
Between 168°E and 174°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 168 84 174
Between 174°E and 180°E, northern hemisphere between equator and 84°N, onshore and offshore.|0 174 84 180
Between 180°W to 174°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -180 0 -174
Between 174°W and 168°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -174 0 -168
Between 168°W and 162°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -168 0 -162
Between 162°W and 156°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -162 0 -156
Between 156°W and 150°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -156 0 -150
Between 150°W and 144°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -150 0 -144
Between 144°W and 138°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -144 0 -138
Between 138°W and 132°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -138 0 -132
Between 132°W and 126°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -132 0 -126
Between 126°W and 120°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -126 0 -120
Between 120°W and 114°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -120 0 -114
Between 114°W and 108°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -114 0 -108
Between 108°W and 102°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -108 0 -102
Between 102°W and 96°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -102 0 -96
Between 96°W and 90°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -96 0 -90
Between 90°W and 84°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -90 0 -84
Between 84°W and 78°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -84 0 -78
Between 78°W and 72°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -78 0 -72
Between 72°W and 66°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -72 0 -66
Between 66°W and 60°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -66 0 -60
Between 60°W and 54°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -60 0 -54
Between 54°W and 48°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -54 0 -48
Between 48°W and 42°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -48 0 -42
Between 42°W and 36°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -42 0 -36
Between 36°W and 30°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -36 0 -30
Between 30°W and 24°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -30 0 -24
Between 24°W and 18°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -24 0 -18
Between 18°W and 12°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -18 0 -12
Between 12°W and 6°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -12 0 -6
Between 6°W and 0°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -6 0 0
Between 0°E and 6°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 0 0 6
Between 6°E and 12°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 6 0 12
Between 12°E and 18°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 12 0 18
Between 18°E and 24°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 18 0 24
Between 24°E and 30°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 24 0 30
Between 30°E and 36°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 30 0 36
Between 36°E and 42°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 36 0 42
Between 42°E and 48°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 42 0 48
Between 48°E and 54°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 48 0 54
Between 54°E and 60°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 54 0 60
Between 60°E and 66°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 60 0 66
Between 66°E and 72°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 66 0 72
Between 72°E and 78°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 72 0 78
Between 78°E and 84°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 78 0 84
Between 84°E and 90°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 84 0 90
Between 90°E and 96°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 90 0 96
Between 96°E and 102°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 96 0 102
Between 102°E and 108°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 102 0 108
Between 108°E and 114°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 108 0 114
Between 114°E and 120°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 114 0 120
Between 120°E and 126°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 120 0 126
Between 126°E and 132°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 126 0 132
Between 132°E and 138°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 132 0 138
Between 138°E and 144°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 138 0 144
Between 144°E and 150°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 144 0 150
Between 150°E and 156°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 150 0 156
Between 156°E and 162°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 156 0 162
Between 162°E and 168°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 162 0 168
Between 168°E and 174°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 168 0 174
Between 174°E and 180°E, southern hemisphere between 80°S and equator, onshore and offshore.|-80 174 0 180
Between 12°E and 18°E, northern hemisphere between equator and 84°N, onshore and offshore. Chad - west of 18°E.|0 12 84 18
Between 12°E and 18°E, northern hemisphere between equator and 84°N, onshore and offshore. Chad - east of 18°E.|0 18 84 24
Between 102°E and 108°E, northern hemisphere between equator and 84°N, onshore and offshore. Vietnam - offshore.|0 102 84 108
Between 108°E and 114°E, northern hemisphere between equator and 84°N, onshore and offshore. Vietnam - offshore.|0 108 84 114
Between 108°E and 114°E, southern hemisphere between 80°S and equator, onshore and offshore. Indonesia - offshore.|-80 108 0 114
Northern hemisphere between equator and 84°N, onshore and offshore.|0 -180 84 180
Between 180°W and 174°W, northern hemisphere between equator and 84°N, onshore and offshore. Russian Federation; United States (USA) - Alaska (AK).|0 -180 84 -174
Between 174°W and 168°W, northern hemisphere between equator and 84°N, onshore and offshore. Russian Federation; United States (USA) - Alaska (AK).|0 -174 84 -168
Between 168°W and 162°W, northern hemisphere between equator and 84°N, onshore and offshore. United States (USA) - Alaska (AK).|0 -168 84 -162
Between 162°W and 156°W, northern hemisphere between equator and 84°N, onshore and offshore. United States (USA) - Alaska (AK).|0 -162 84 -156
Between 156°W and 150°W, northern hemisphere between equator and 84°N, onshore and offshore. United States (USA) - Alaska (AK).|0 -156 84 -150
Between 150°W and 144°W, northern hemisphere between equator and 84°N, onshore and offshore. United States (USA) - Alaska (AK).|0 -150 84 -144
Between 144°W and 138°W, northern hemisphere between equator and 84°N, onshore and offshore. Canada - British Columbia (BC); Yukon. United States (USA) - Alaska (AK).|0 -144 84 -138
Between 138°W and 132°W, northern hemisphere between equator and 84°N, onshore and offshore. Canada - British Columbia (BC); Northwest Territiories (NWT); Yukon. United States (USA) - Alaska (AK).|0 -138 84 -132
Between 132°W and 126°W, northern hemisphere between equator and 84°N, onshore and offshore. Canada - British Columbia (BC); NorthW Territories (NWT); Yukon. United States (USA) - Alaska (AK).|0 -132 84 -126
Between 126°W and 120°W, northern hemisphere between equator and 84°N, onshore and offshore. Canada - British Columbia (BC); Northwest Territories (NWT); Nunavut; Yukon. United States (USA) - Alaska (AK).|0 -126 84 -120
Between 120°W and 114°W, northern hemisphere between equator and 84°N, onshore and offshore. Canada - Alberta; British Columbia (BC); Northwest Territories (NWT); Nunavut. Mexico. United States (USA).|0 -120 84 -114
Between 114°W and 108°W, northern hemisphere between equator and 84°N, onshore and offshore. Canada - Alberta; Northwest Territories (NWT); Nunavut; Saskatchewan. Mexico. United States (USA).|0 -114 84 -108
Between 108°W and 102°W, northern hemisphere between equator and 84°N, onshore and offshore. Canada - Northwest Territories (NWT); Nunavut; Saskatchewan. Mexico. United States (USA).|0 -108 84 -102
Between 102°W and 96°W, northern hemisphere between equator and 84°N, onshore and offshore. Canada - Manitoba; Nunavut; Saskatchewan. Mexico. United States (USA).|0 -102 84 -96
Between 96°W and 90°W, northern hemisphere between equator and 84°N, onshore and offshore. Canada - Manitoba; Nunavut; Ontario. Ecuador -Galapagos. Guatemala. Mexico. United States (USA).|0 -96 84 -90
Between 90°W and 84°W, northern hemisphere between equator and 84°N, onshore and offshore. Belize. Canada - Manitoba; Nunavut; Ontario. Costa Rica. Cuba. Ecuador - Galapagos. El Salvador. Guatemala. Honduras. Mexico. Nicaragua. United States (USA).|0 -90 84 -84
Between 84°W and 78°W, northern hemisphere between equator and 84°N, onshore and offshore. Bahamas. Ecuador - north of equator. Canada - Nunavut; Ontario; Quebec. Cayman Islands. Colombia. Costa Rica. Cuba. Jamaica. Nicaragua. Panama. United States (USA).|0 -84 84 -78
Between 78°W and 72°W, northern hemisphere between equator and 84°N, onshore and offshore. Bahamas. Canada - Nunavut; Ontario; Quebec. Colombia. Cuba. Ecuador. Greenland. Haiti. Jamaica. Panama. Turks and Caicos Islands. United States (USA). Venezuela.|0 -78 84 -72
Between 72°W and 66°W, northern hemisphere between equator and 84°N, onshore and offshore. Aruba. Bahamas. Brazil. Canada - New Brunswick (NB); Labrador; Nunavut; Nova Scotia (NS); Quebec. Colombia. Dominican Republic. Greenland. Netherlands Antilles. Puerto Rico. Turks and Caicos Islands. United States. Venezuela.|0 -72 84 -66
Between 66°W and 60°W, northern hemisphere between equator and 84°N, onshore and offshore. Anguilla. Antigua and Barbuda. Bermuda. Brazil. British Virgin Islands. Canada - New Brunswick; Labrador; Nova Scotia; Nunavut; Prince Edward Island; Quebec. Dominica. Greenland. Grenada. Guadeloupe. Guyana. Martinique. Montserrat. Puerto Rico. St Kitts and Nevis. St Barthelemy. St Lucia. St Maarten, St Martin. St Vincent and the Grenadines. Trinidad and Tobago. Venezuela. US Virgin Islands.|0 -66 84 -60
Between 60°W and 54°W, northern hemisphere between equator and 84°N, onshore and offshore. Barbados. Brazil. Canada - Newfoundland and Labrador, Quebec. French Guiana. Greenland. Guyana. St Pierre and Miquelon. Suriname.|0 -60 84 -54
Between 54°W and 48°W, northern hemisphere between equator and 84°N, onshore and offshore. Brazil. Canada - Newfoundland. French Guiana. Greenland.|0 -54 84 -48
Between 48°W and 42°W, northern hemisphere between equator and 84°N, onshore and offshore. Greenland.|0 -48 84 -42
Between 42°W and 36°W, northern hemisphere between equator and 84°N, onshore and offshore. Greenland.|0 -42 84 -36
Between 36°W and 30°W, northern hemisphere between equator and 84°N, onshore and offshore. Greenland.|0 -36 84 -30
Between 30°W and 24°W, northern hemisphere between equator and 84°N, onshore and offshore. Greenland. Iceland.|0 -30 84 -24
Between 24°W and 18°W, northern hemisphere between equator and 84°N, onshore and offshore. Greenland. Iceland.|0 -24 84 -18
Between 18°W and 12°W, northern hemisphere between equator and 84°N, onshore and offshore. Gambia. Greenland. Guinea. Guinea-Bissau. Iceland. Ireland - offshore Porcupine Basin. Mauritania. Morocco. Senegal. Sierra Leone. Western Sahara.|0 -18 84 -12
Between 12°W and 6°W, northern hemisphere between equator and 84°N, onshore and offshore. Algeria. Côte D'Ivoire (Ivory Coast). Faroe Islands. Guinea. Ireland. Jan Mayen. Mali. Mauritania. Morocco. Portugal. Sierra Leone. Spain. United Kingdom (UK). Western Sahara.|0 -12 84 -6
Between 6°W and 0°W, northern hemisphere between equator and 84°N, onshore and offshore. Algeria. Burkina Faso. Côte' Ivoire (Ivory Coast). Faroe Islands - offshore. France. Ghana. Gibraltar. Ireland - offshore Irish Sea. Mali. Mauritania. Morocco. Spain. United Kingdom (UK).|0 -6 84 0
Between 0°E and 6°E, northern hemisphere between equator and 84°N, onshore and offshore. Algeria. Andorra. Belgium. Benin. Burkina Faso. Denmark - North Sea. France. Germany - North Sea. Ghana. Luxembourg. Mali. Netherlands. Niger. Nigeria. Norway. Spain. Togo. United Kingdom (UK) - North Sea.|0 0 84 6
Between 6°E and 12°E, northern hemisphere between equator and 84°N, onshore and offshore. Algeria. Austria. Cameroon. Denmark. Equatorial Guinea. France. Gabon. Germany. Italy. Libya. Liechtenstein. Monaco. Netherlands. Niger. Nigeria. Norway. Sao Tome and Principe. Svalbard. Sweden. Switzerland. Tunisia. Vatican City State.|0 6 84 12
Between 12°E and 18°E, northern hemisphere between equator and 84°N, onshore and offshore. Austria. Bosnia and Herzegovina. Cameroon. Central African Republic. Chad. Congo. Croatia. Czechia. Democratic Republic of the Congo (Zaire). Gabon. Germany. Hungary. Italy. Libya. Malta. Niger. Nigeria. Norway. Poland. San Marino. Slovakia. Slovenia. Svalbard. Sweden. Vatican City State.|0 12 84 18
Between 18°E and 24°E, northern hemisphere between equator and 84°N, onshore and offshore. Albania. Belarus. Bosnia and Herzegovina. Bulgaria. Central African Republic. Chad. Croatia. Democratic Republic of the Congo (Zaire). Estonia. Finland. Greece. Hungary. Italy. Kosovo. Latvia. Libya. Lithuania. Montenegro. North Macedonia. Norway, including Svalbard and Bjornoys. Poland. Romania. Russian Federation. Serbia. Slovakia. Sudan. Sweden. Ukraine.|0 18 84 24
Between 24°E and 30°E, northern hemisphere between equator and 84°N, onshore and offshore. Belarus. Bulgaria. Central African Republic. Democratic Republic of the Congo (Zaire). Egypt. Estonia. Finland. Greece. Latvia. Lesotho. Libya. Lithuania. Moldova. Norway. Poland. Romania. Russian Federation. Sudan. Svalbard. Türkiye (Turkey). Uganda. Ukraine.|0 24 84 30
Between 30°E and 36°E, northern hemisphere between equator and 84°N, onshore and offshore. Belarus. Cyprus. Egypt. Ethiopia. Finland. Israel. Jordan. Kenya. Lebanon. Moldova. Norway. Russian Federation. Saudi Arabia. Sudan. Syria. Türkiye (Turkey). Uganda. Ukraine.|0 30 84 36
Between 36°E and 42°E, northern hemisphere between equator and 84°N, onshore and offshore. Djibouti. Egypt. Eritrea. Ethiopia. Georgia. Iraq. Jordan. Kenya. Lebanon. Russian Federation. Saudi Arabia. Somalia. Sudan. Syria. Türkiye (Turkey). Ukraine.|0 36 84 42
Between 42°E and 48°E, northern hemisphere between equator and 84°N, onshore and offshore. Armenia. Azerbaijan. Djibouti. Eritrea. Ethiopia. Georgia. Islamic Republic of Iran. Iraq. kazakhstan. Kuwait. Russian Federation. Saudi Arabia. Somalia. Türkiye (Turkey). Yemen.|0 42 84 48
Between 48°E and 54°E, northern hemisphere between equator and 84°N, onshore and offshore. Azerbaijan. Bahrain. Islamic Republic of Iran. Iraq. Kazakhstan. Kuwait. Oman. Qatar. Russian Federation. Saudi Arabia. Somalia. Turkmenistan. United Arab Emirates. Yemen.|0 48 84 54
Between 54°E and 60°E, northern hemisphere between equator and 84°N, onshore and offshore. Islamic Republic of Iran. kazakhstan. Oman. Russian Federation. Saudi Arabia. Turkmenistan. United Arab Emirates. Uzbekistan.|0 54 84 60
Between 60°E and 66°E, northern hemisphere between equator and 84°N, onshore and offshore. Afghanistan. Islamic Republic of Iran. kazakhstan. Pakistan. Russian Federation. Turkmenistan. Uzbekistan.|0 60 84 66
Between 66°E and 72°E, northern hemisphere between equator and 84°N, onshore and offshore. Afghanistan. India. Kazakhstan. Kyrgyzstan. Pakistan. Russian Federation. Tajikistan. Uzbekistan.|0 66 84 72
Between 72°E and 78°E, northern hemisphere between equator and 84°N, onshore and offshore. China. India. Kazakhstan. Kyrgyzstan. Maldives. Pakistan. Russian Federation. Tajikistan.|0 72 84 78
Between 78°E and 84°E, northern hemisphere between equator and 84°N, onshore and offshore. China. India. Kazakhstan. Kyrgyzstan. Nepal. Russian Federation. Sri Lanka.|0 78 84 84
Between 84°E and 90°E, northern hemisphere between equator and 84°N, onshore and offshore. Bangladesh. Bhutan. China. India. Kazakhstan. Mongolia. Nepal. Russian Federation.|0 84 84 90
Between 90°E and 96°E, northern hemisphere between equator and 84°N, onshore and offshore. Bangladesh. Bhutan. China. Indonesia. Mongolia. Myanmar (Burma). Russian Federation.|0 90 84 96
Between 96°E and 102°E, northern hemisphere between equator and 84°N, onshore and offshore. China. Indonesia. Laos. Malaysia - West Malaysia. Mongolia. Myanmar (Burma). Russian Federation. Thailand.|0 96 84 102
Between 102°E and 108°E, northern hemisphere between equator and 84°N, onshore and offshore. Cambodia. China. Indonesia. Laos. Malaysia - West Malaysia. Mongolia. Russian Federation. Singapore. Thailand. Vietnam.|0 102 84 108
Between 108°E and 114°E, northern hemisphere between equator and 84°N, onshore and offshore. China. Hong Kong. Indonesia. Macao. Malaysia - East Malaysia - Sarawak. Mongolia. Russian Federation. Vietnam.|0 108 84 114
Between 114°E and 120°E, northern hemisphere between equator and 84°N, onshore and offshore. Brunei. China. Hong Kong. Indonesia. Malaysia - East Malaysia - Sarawak. Mongolia. Philippines. Russian Federation. Taiwan.|0 114 84 120
Between 120°E and 126°E, northern hemisphere between equator and 84°N, onshore and offshore. China. Indonesia. Japan. North Korea. Philippines. Russian Federation. South Korea. Taiwan.|0 120 84 126
Between 126°E and 132°E, northern hemisphere between equator and 84°N, onshore and offshore. China. Indonesia. Japan. North Korea. Russian Federation. South Korea.|0 126 84 132
Between 132°E and 138°E, northern hemisphere between equator and 84°N, onshore and offshore. China. Japan. Russian Federation.|0 132 84 138
Between 138°E and 144°E, northern hemisphere between equator and 84°N, onshore and offshore. Japan. Russian Federation.|0 138 84 144
Between 144°E and 150°E, northern hemisphere between equator and 84°N, onshore and offshore. Japan. Russian Federation.|0 144 84 150
Between 150°E and 156°E, northern hemisphere between equator and 84°N, onshore and offshore. Russian Federation.|0 150 84 156
Between 156°E and 162°E, northern hemisphere between equator and 84°N, onshore and offshore. Russian Federation.|0 156 84 162
Between 162°E and 168°E, northern hemisphere between equator and 84°N, onshore and offshore. Russian Federation.|0 162 84 168
Between 168°E and 174°E, northern hemisphere between equator and 84°N, onshore and offshore. Russian Federation; United States (USA) - Alaska.|0 168 84 174
Between 174°E and 180°E, northern hemisphere between equator and 84°N, onshore and offshore. Russian Federation; United States (USA) - Alaska (AK).|0 174 84 180
United States (USA) - Gulf of Mexico outer continental shelf (GoM OCS) west of approximately 96°W - protraction areas Corpus Christi; Port Isabel.|25.97 -97.22 28.43 -95.87
United States (USA) - Gulf of Mexico outer continental shelf (GoM OCS) between approximately 96°W and 90°W - protraction areas East Breaks; Alaminos Canyon; Garden Banks; Keathley Canyon; Sigsbee Escarpment; Ewing Bank; Green Canyon; Walker Ridge; Amery Terrace.|25.61 -96 29.73 -89.86
United States (USA) - Gulf of Mexico outer continental shelf (GoM OCS) between approximately 90°W and 84°W - protraction areas Mobile; Viosca Knoll; Mississippi Canyon; Atwater Valley; Lund; Lund South; Pensacola; Destin Dome; De Soto Canyon; Lloyd Ridge; Henderson; Florida Plain; Campeche Escarpment; Apalachicola; Florida Middle Ground; The Elbow; Vernon Basin; Howell Hook; Rankin.|23.95 -90.01 30.25 -83.91
United States (USA) - Gulf of Mexico outer continental shelf (GoM OCS) east of approximately 84°W - protraction areas Gainesville; Tarpon Springs; St Petersburg; Charlotte Harbor; Pulley Ridge; Dry Tortugas; Tortugas Valley; Miami; Key West.|23.82 -84.09 29.94 -81.17
Southern hemisphere between equator and 80°S, onshore and offshore.|-80 -180 0 180
Between 180°W and 174°W, southern hemisphere between 80°S and equator, onshore and offshore.|-80 -180 0 -174
Between 96°W and 90°W, southern hemisphere between 80°S and equator, onshore and offshore. Ecuador - Galapagos.|-80 -96 0 -90
Between 90°W and 84°W, southern hemisphere between 80°S and equator, onshore and offshore. Ecuador - Galapagos.|-80 -90 0 -84
Between 84°W and 78°W, southern hemisphere between 80°S and equator, onshore and offshore. Ecuador. Peru.|-80 -84 0 -78
Between 78°W and 72°W, southern hemisphere between 80°S and equator, onshore and offshore. Argentina. Brazil. Chile. Colombia. Ecuador. Peru.|-80 -78 0 -72
Between 72°W and 66°W, southern hemisphere between 80°S and equator, onshore and offshore. Argentina. Bolivia. Brazil. Chile. Colombia. Peru.|-80 -72 0 -66
Between 66°W and 60°W, southern hemisphere between 80°S and equator, onshore and offshore. Argentina. Bolivia. Brazil. Falkland Islands (Malvinas). Paraguay.|-80 -66 0 -60
Between 60°W and 54°W, southern hemisphere between 80°S and equator, onshore and offshore. Argentina. Bolivia. Brazil. Falkland Islands (Malvinas). Paraguay. Uruguay.|-80 -60 0 -54
Between 54°W and 48°W, southern hemisphere between 80°S and equator, onshore and offshore. Brazil. Uruguay.|-80 -54 0 -48
Between 48°W and 42°W, southern hemisphere between 80°S and equator, onshore and offshore. Brazil.|-80 -48 0 -42
Between 42°W and 36°W, southern hemisphere between 80°S and equator, onshore and offshore. Brazil. South Georgia and the South Sandwich Islands.|-80 -42 0 -36
Between 36°W and 30°W, southern hemisphere between 80°S and equator, onshore and offshore. Brazil.|-80 -36 0 -30
Between 6°E and 12°E, southern hemisphere between 80°S and equator, onshore and offshore. Angola. Congo. Gabon. Namibia.|-80 6 0 12
Between 12°E and 18°E, southern hemisphere between 80°S and equator, onshore and offshore. Angola. Congo. Democratic Republic of the Congo (Zaire). Gabon. Namibia. South Africa.|-80 12 0 18
Between 18°E and 24°E, southern hemisphere between 80°S and equator, onshore and offshore. Angola. Botswana. Democratic Republic of the Congo (Zaire). Namibia. South Africa. Zambia.|-80 18 0 24
Between 24°E and 30°E, southern hemisphere between 80°S and equator, onshore and offshore. Botswana. Burundi. Democratic Republic of the Congo (Zaire). Rwanda. South Africa. Tanzania. Uganda. Zambia. Zimbabwe.|-80 24 0 30
Between 30°E and 36°E, southern hemisphere between 80°S and equator, onshore and offshore. Burundi. Eswatini (Swaziland). Kenya. Malawi. Mozambique. Rwanda. South Africa. Tanzania. Uganda. Zambia. Zimbabwe.|-80 30 0 36
Between 36°E and 42°E, southern hemisphere between 80°S and equator, onshore and offshore. Kenya. Mozambique. Tanzania.|-80 36 0 42
Between 42°E and 48°E, southern hemisphere between 80°S and equator, onshore and offshore. Madagascar.|-80 42 0 48
Between 48°E and 54°E, southern hemisphere between 80°S and equator, onshore and offshore. Madagascar.|-80 48 0 54
Between 54°E and 60°E, southern hemisphere between 80°S and equator, onshore and offshore. Seychelles.|-80 54 0 60
Between 96°E and 102°E, southern hemisphere between 80°S and equator, onshore and offshore. Indonesia.|-80 96 0 102
Between 102°E and 108°E, southern hemisphere between 80°S and equator, onshore and offshore. Indonesia.|-80 102 0 108
Between 108°E and 114°E, southern hemisphere between 80°S and equator, onshore and offshore. Australia. Indonesia.|-80 108 0 114
Between 114°E and 120°E, southern hemisphere between 80°S and equator, onshore and offshore. Australia. Indonesia.|-80 114 0 120
Between 120°E and 126°E, southern hemisphere between 80°S and equator, onshore and offshore. Australia. East Timor. Indonesia.|-80 120 0 126
Between 126°E and 132°E, southern hemisphere between 80°S and equator, onshore and offshore. Australia. East Timor. Indonesia.|-80 126 0 132
Between 132°E and 138°E, southern hemisphere between 80°S and equator, onshore and offshore. Australia. Indonesia.|-80 132 0 138
Between 138°E and 144°E, southern hemisphere between 80°S and equator, onshore and offshore. Australia. Indonesia. Papua New Guinea.|-80 138 0 144
Between 144°E and 150°E, southern hemisphere between 80°S and equator, onshore and offshore. Australia. Papua New Guinea.|-80 144 0 150
Between 150°E and 156°E, southern hemisphere between 80°S and equator, onshore and offshore. Australia. Papua New Guinea.|-80 150 0 156
Between 168°E and 174°E, southern hemisphere between 80°S and equator, onshore and offshore. New Zealand.|-80 168 0 174
Between 174°E and 180°E, southern hemisphere between 80°S and equator, onshore and offshore. New Zealand.|-80 174 0 180
Mozambique - offshore.|-27.71 32.64 -10.09 43.03
`;

/** name | semi-major axis in metres | inverse flattening */
export const ELLIPSOIDS = `
Bessel 1841|6377397.155|299.1528128
GRS 1967 Modified|6378160|298.25
GRS 1980|6378137|298.257222101
Average Terrestrial System 1977|6378135|298.257
International 1924|6378388|297
Clarke 1866|6378206.4|294.978698213898
WGS 84|6378137|298.257223563
Everest 1830 (1937 Adjustment)|6377276.345|300.8017
Clarke 1880 (RGS)|6378249.145|293.465
Everest 1830 (1962 Definition)|6377301.243|300.8017255
Everest 1830 (1975 Definition)|6377299.151|300.8017255
Krassowsky 1940|6378245|298.3
Clarke 1880 (IGN)|6378249.2|293.466021293627
Clarke 1858|6378293.64520876|294.260676369261
War Office|6378300|296
Airy 1830|6377563.396|299.3249646
Australian National Spheroid|6378160|298.25
Clarke 1880 (Arc)|6378249.145|293.4663077
Helmert 1906|6378200|298.3
GRS 1967|6378160|298.247167427
Indonesian National Spheroid|6378160|298.247
Clarke 1880|6378249.14480801|293.466307655636
Everest (1830 Definition)|6377299.36559538|300.801725543355
Everest 1830 Modified|6377304.063|300.8017
Bessel Modified|6377492.018|299.1528128
NWL 9D|6378145|298.25
Clarke 1880 (Benoit)|6378300.789|293.466315538981
Bessel Namibia (GLM)|6377483.86528042|299.1528128
Everest 1830 (1967 Definition)|6377298.556|300.8017
Airy Modified 1849|6377340.189|299.3249646
WGS 72|6378135|298.26
CGCS2000|6378137|298.257222101
IAG 1975|6378140|298.257
Danish 1876|6377019.27|300
Hough 1960|6378270|297
PZ-90|6378136|298.257839303
Clarke 1880 (international foot)|6378306.3696|293.466307655635
Everest 1830 (RSO 1969)|6377295.664|300.8017
6377492.018 m|6377492.018|299.1528128
Plessis 1817|6376523|308.64
Struve 1860|6378298.3|294.73
GSK-2011|6378136.5|298.2564151
Zach 1812|6376045|310
`;

/** name | metres */
export const UNITS = `
metre|1
Clarke's link|0.201166195164
Gold Coast foot|0.304799710181509
US survey foot|0.3048006096012192
foot|0.3048
Clarke's foot|0.3047972654
link|0.201168
British chain (Sears 1922 truncated)|20.116756
Clarke's yard|0.9143917962
British foot (1936)|0.3048007491
Indian yard|0.914398530744441
British yard (Sears 1922)|0.914398414616029
German legal metre|1.0000135965
British chain (Sears 1922)|20.1167651215526
British foot (Sears 1922)|0.304799471538676
`;

/** name | geographic system | ellipsoid | prime meridian */
export const DATUMS = `
HD1909|3819|0|0
TWD67|3821|1|0
TWD97|3824|2|0
IGRS|3889|2|0
MGI 1901|3906|0|0
MOLDREF99|4023|2|0
RGRDC 2005|4046|2|0
SREF98|4075|2|0
REGCAN95|4081|2|0
Greek|4120|0|0
GGRS87|4121|2|0
ATS77|4122|3|0
KKJ|4123|4|0
RT90|4124|0|0
Tete|4127|5|0
Madzansua|4128|5|0
Observatario|4129|5|0
Moznet|4130|6|0
Indian 1960|4131|7|0
FD58|4132|8|0
EST92|4133|2|0
PSD93|4134|8|0
Old Hawaiian|4135|5|0
Puerto Rico|4139|5|0
Israel 1993|4141|2|0
Locodjo 1965|4142|8|0
Abidjan 1987|4143|8|0
Kalianpur 1937|4144|7|0
Kalianpur 1962|4145|9|0
Kalianpur 1975|4146|10|0
Hanoi 1972|4147|11|0
Hartebeesthoek94|4148|6|0
CH1903|4149|0|0
CH1903+|4150|0|0
CHTRS95|4151|2|0
NAD83(HARN)|4152|2|0
Rassadiran|4153|4|0
ED50(ED77)|4154|4|0
Dabola 1981|4155|12|0
S-JTSK|4156|0|0
Mount Dillon|4157|13|0
Naparima 1955|4158|4|0
ELD79|4159|4|0
Chos Malal 1914|4160|4|0
Pampa del Castillo|4161|4|0
Korean 1985|4162|0|0
Yemen NGN96|4163|6|0
South Yemen|4164|11|0
Bissau|4165|4|0
Korean 1995|4166|6|0
NZGD2000|4167|2|0
Accra|4168|14|0
American Samoa 1962|4169|5|0
SIRGAS 1995|4170|2|0
RGF93 v1|4171|2|0
IRENET95|4173|2|0
Sierra Leone 1924|4174|14|0
Sierra Leone 1968|4175|8|0
Australian Antarctic|4176|2|0
Pulkovo 1942(83)|4178|11|0
Pulkovo 1942(58)|4179|11|0
EST97|4180|2|0
LUREF|4181|4|0
Azores Occidental 1939|4182|4|0
Azores Central 1948|4183|4|0
Azores Oriental 1940|4184|4|0
OSNI 1952|4188|15|0
REGVEN|4189|2|0
POSGAR 98|4190|2|0
Albanian 1987|4191|11|0
Douala 1948|4192|4|0
Manoca 1962|4193|12|0
Qornoq 1927|4194|4|0
Scoresbysund 1952|4195|4|0
Ammassalik 1958|4196|4|0
Garoua|4197|8|0
Kousseri|4198|8|0
Egypt 1930|4199|4|0
Pulkovo 1995|4200|11|0
Adindan|4201|8|0
AGD66|4202|16|0
AGD84|4203|16|0
Ain el Abd|4204|4|0
Afgooye|4205|11|0
Agadez|4206|12|0
Lisbon|4207|4|0
Aratu|4208|4|0
Arc 1950|4209|17|0
Arc 1960|4210|8|0
Batavia|4211|0|0
Barbados 1938|4212|8|0
Beduaram|4213|12|0
Beijing 1954|4214|11|0
BD50|4215|4|0
Bermuda 1957|4216|5|0
Bogota 1975|4218|4|0
Bukit Rimpah|4219|0|0
Camacupa 1948|4220|8|0
Campo Inchauspe|4221|4|0
Cape|4222|17|0
Carthage|4223|12|0
Chua|4224|4|0
Corrego Alegre 1970-72|4225|4|0
Deir ez Zor|4227|12|0
Egypt 1907|4229|18|0
ED50|4230|4|0
ED87|4231|4|0
Fahud|4232|8|0
Hu Tzu Shan 1950|4236|4|0
HD72|4237|19|0
ID74|4238|20|0
Indian 1954|4239|7|0
Indian 1975|4240|7|0
Jamaica 1875|4241|21|0
JAD69|4242|5|0
Kalianpur 1880|4243|22|0
Kandawala|4244|7|0
Kertau 1968|4245|23|0
KOC|4246|8|0
La Canoa|4247|4|0
PSAD56|4248|4|0
Lake|4249|4|0
Leigon|4250|8|0
Liberia 1964|4251|8|0
Lome|4252|12|0
Luzon 1911|4253|5|0
Hito XVIII 1963|4254|4|0
Herat North|4255|4|0
Mahe 1971|4256|8|0
Makassar|4257|0|0
ETRS89|4258|2|0
Malongo 1987|4259|4|0
Merchich|4261|12|0
Massawa|4262|0|0
Minna|4263|8|0
Monte Mario|4265|4|0
M'poraloko|4266|12|0
NAD27|4267|5|0
NAD83|4269|2|0
Nahrwan 1967|4270|8|0
Naparima 1972|4271|4|0
NZGD49|4272|4|0
NGO 1948|4273|24|0
Datum 73|4274|4|0
NTF|4275|12|0
NSWC 9Z-2|4276|25|0
OSGB36|4277|15|0
OSGB70|4278|15|0
OS(SN)80|4279|15|0
Palestine 1923|4281|26|0
Pointe Noire|4282|12|0
GDA94|4283|2|0
Pulkovo 1942|4284|11|0
Qatar 1974|4285|4|0
Qatar 1948|4286|18|0
Loma Quintana|4288|4|0
Amersfoort|4289|0|0
Sapper Hill 1943|4292|4|0
Schwarzeck|4293|27|0
Serindung|4295|0|0
Tananarive|4297|4|0
Timbalai 1948|4298|28|0
TM65|4299|29|0
TM75|4300|29|0
Tokyo|4301|0|0
Trinidad 1903|4302|13|0
TC(1948)|4303|18|0
Voirol 1875|4304|12|0
Bern 1938|4306|0|0
Nord Sahara 1959|4307|8|0
RT38|4308|0|0
Yacare|4309|4|0
Yoff|4310|12|0
Zanderij|4311|4|0
MGI|4312|0|0
BD72|4313|4|0
DHDN|4314|0|0
Conakry 1905|4315|12|0
Dealul Piscului 1930|4316|4|0
NGN|4318|6|0
KUDAMS|4319|2|0
WGS 72|4322|30|0
WGS 72BE|4324|30|0
WGS 84|4326|6|0
RGSPM06|4463|2|0
RGM04|4470|2|0
Cadastre 1997|4475|4|0
Mexico ITRF92|4483|2|0
China Geodetic Coordinate System 2000|4490|31|0
New Beijing|4555|11|0
RRAF 1991|4558|2|0
Antigua 1943|4601|8|0
Dominica 1945|4602|8|0
Grenada 1953|4603|8|0
Montserrat 1958|4604|8|0
St. Kitts 1955|4605|8|0
St. Lucia 1955|4606|8|0
St. Vincent 1945|4607|8|0
NAD27(76)|4608|5|0
NAD27(CGQ77)|4609|5|0
Xian 1980|4610|32|0
Hong Kong 1980|4611|4|0
JGD2000|4612|2|0
Segara|4613|0|0
QND95|4614|4|0
Porto Santo|4615|4|0
Selvagem Grande|4616|4|0
NAD83(CSRS)|4617|2|0
SAD69|4618|1|0
SWEREF99|4619|2|0
Point 58|4620|8|0
Fort Marigot|4621|4|0
Guadeloupe 1948|4622|4|0
CSG67|4623|4|0
RGFG95|4624|2|0
Martinique 1938|4625|4|0
Reunion 1947|4626|4|0
RGR92|4627|2|0
Tahiti 52|4628|4|0
Tahaa 54|4629|4|0
IGN72 Nuku Hiva|4630|4|0
Combani 1950|4632|4|0
IGN56 Lifou|4633|4|0
Petrels 1972|4636|4|0
Perroud 1950|4637|4|0
Saint Pierre et Miquelon 1950|4638|5|0
MOP78|4639|4|0
IGN53 Mare|4641|4|0
ST84 Ile des Pins|4642|4|0
ST71 Belep|4643|4|0
NEA74 Noumea|4644|4|0
Grand Comoros|4646|4|0
Reykjavik 1900|4657|33|0
Hjorsey 1955|4658|4|0
ISN93|4659|2|0
Helle 1954|4660|4|0
LKS92|4661|2|0
IGN72 Grande Terre|4662|4|0
Porto Santo 1995|4663|4|0
Azores Oriental 1995|4664|4|0
Azores Central 1995|4665|4|0
Lisbon 1890|4666|0|0
IKBD-92|4667|6|0
ED79|4668|4|0
LKS94|4669|2|0
IGM95|4670|2|0
Voirol 1879|4671|12|0
Chatham Islands 1971|4672|4|0
Chatham Islands 1979|4673|4|0
SIRGAS 2000|4674|2|0
Vientiane 1982|4676|11|0
Lao 1993|4677|11|0
Lao 1997|4678|11|0
Jouik 1961|4679|8|0
Nouakchott 1965|4680|8|0
Gulshan 303|4682|7|0
PRS92|4683|5|0
Gan 1970|4684|4|0
MAGNA-SIRGAS|4686|2|0
RGPF|4687|2|0
Fatu Iva 72|4688|4|0
IGN63 Hiva Oa|4689|4|0
Tahiti 79|4690|4|0
Moorea 87|4691|4|0
Maupiti 83|4692|4|0
Nakhl-e Ghanem|4693|6|0
POSGAR 94|4694|6|0
Katanga 1955|4695|5|0
Kasai 1953|4696|8|0
IGC 1962 6th Parallel South|4697|8|0
IGN 1962 Kerguelen|4698|4|0
Le Pouce 1934|4699|8|0
IGN Astro 1960|4700|8|0
IGCB 1955|4701|8|0
Mauritania 1999|4702|2|0
Mhast 1951|4703|8|0
Mhast (onshore)|4704|4|0
Mhast (offshore)|4705|4|0
Egypt Gulf of Suez S-650 TL|4706|18|0
Tern Island 1961|4707|4|0
Cocos Islands 1965|4708|16|0
Iwo Jima 1945|4709|4|0
Astro DOS 71|4710|4|0
Marcus Island 1952|4711|4|0
Ascension Island 1958|4712|4|0
Ayabelle Lighthouse|4713|8|0
Bellevue|4714|4|0
Camp Area Astro|4715|4|0
Phoenix Islands 1966|4716|4|0
Cape Canaveral|4717|5|0
Solomon 1968|4718|4|0
Easter Island 1967|4719|4|0
Fiji 1986|4720|30|0
Fiji 1956|4721|4|0
South Georgia 1968|4722|4|0
GCGD59|4723|5|0
Diego Garcia 1969|4724|4|0
Johnston Island 1961|4725|4|0
SIGD61|4726|5|0
Midway 1961|4727|4|0
PN84|4728|4|0
Pitcairn 1967|4729|4|0
Santo 1965|4730|4|0
Marshall Islands 1960|4732|34|0
Wake Island 1952|4733|4|0
Tristan 1968|4734|4|0
Kusaie 1951|4735|4|0
Deception Island|4736|8|0
Korea 2000|4737|2|0
Hong Kong 1963|4738|13|0
Hong Kong 1963(67)|4739|4|0
PZ-90|4740|35|0
FD54|4741|4|0
GDM2000|4742|2|0
Karbala 1979|4743|8|0
Nahrwan 1934|4744|8|0
RD/83|4745|0|0
PD/83|4746|0|0
GR96|4747|2|0
Vanua Levu 1915|4748|36|0
RGNC91-93|4749|2|0
ST87 Ouvea|4750|6|0
Kertau (RSO)|4751|37|0
Viti Levu 1912|4752|36|0
fk89|4753|4|0
LGD2006|4754|4|0
DGN95|4755|6|0
VN-2000|4756|6|0
SVY21|4757|6|0
JAD2001|4758|6|0
NAD83(NSRS2007)|4759|2|0
WGS 66|4760|25|0
HTRS96|4761|2|0
BDA2000|4762|6|0
Pitcairn 2006|4763|6|0
RSRGD2000|4764|2|0
Slovenia 1996|4765|2|0
Bern 1898 (Bern)|4801|0|7.43958333333333
Bogota 1975 (Bogota)|4802|4|-74.0809166666667
Lisbon (Lisbon)|4803|4|-9.13190611111111
Makassar (Jakarta)|4804|0|106.807719444444
MGI (Ferro)|4805|0|-17.6666666666667
Monte Mario (Rome)|4806|4|12.4523333333333
NTF (Paris)|4807|12|2.33722916666667
BD50 (Brussels)|4809|4|4.367975
Tananarive (Paris)|4810|4|2.33722916666667
Voirol 1875 (Paris)|4811|12|2.33722916666667
Batavia (Jakarta)|4813|0|106.807719444444
RT38 (Stockholm)|4814|0|18.0582777777778
Greek (Athens)|4815|0|23.7163375
Carthage (Paris)|4816|12|2.33722916666667
NGO 1948 (Oslo)|4817|38|10.7229166666667
S-JTSK (Ferro)|4818|0|-17.6666666666667
Segara (Jakarta)|4820|0|106.807719444444
Voirol 1879 (Paris)|4821|12|2.33722916666667
Sao Tome|4823|4|0
Principe|4824|4|0
ATF (Paris)|4901|39|2.33720833333333
Madrid 1870 (Madrid)|4903|40|-3.687375
Lisbon 1890 (Lisbon)|4904|0|-9.13190611111111
PTRA08|5013|2|0
Tokyo 1892|5132|0|0
S-JTSK/05|5228|0|0
S-JTSK/05 (Ferro)|5229|0|-17.6666666666667
SLD99|5233|7|0
GDBD2009|5246|2|0
TUREF|5252|2|0
DRUKREF 03|5264|2|0
ISN2004|5324|2|0
POSGAR 2007|5340|6|0
MARGEN|5354|2|0
SIRGAS-Chile 2002|5360|2|0
CR05|5365|6|0
MACARIO SOLIS|5371|2|0
Peru96|5373|2|0
SIRGAS-ROU98|5381|6|0
SIRGAS_ES2007.8|5393|2|0
Ocotepeque 1935|5451|5|0
Sibun Gorge 1922|5464|13|0
Panama-Colon 1911|5467|5|0
RGAF09|5489|2|0
Corrego Alegre 1961|5524|4|0
SAD69(96)|5527|1|0
PNG94|5546|2|0
UCS-2000|5561|11|0
FEH2010|5593|2|0
DB_REF|5681|0|0
TGD2005|5886|2|0
CIGD11|6135|2|0
Nepal 1981|6207|7|0
CGRS93|6311|6|0
NAD83(2011)|6318|2|0
NAD83(PA11)|6322|2|0
NAD83(MA11)|6325|2|0
Mexico ITRF2008|6365|2|0
JGD2011|6668|2|0
RDN2008|6706|2|0
NAD83(CORS96)|6783|2|0
Aden 1925|6881|8|0
Bekaa Valley 1920|6882|8|0
Bioko|6883|4|0
South East Island 1943|6892|8|0
Gambia|6894|8|0
IG05 Intermediate CRS|6983|2|0
IG05/12 Intermediate CRS|6990|2|0
RGSPM06 (lon-lat)|7035|2|0
RGR92 (lon-lat)|7037|2|0
RGM04 (lon-lat)|7039|2|0
RGFG95 (lon-lat)|7041|2|0
RGTAAF07|7073|2|0
RGF93 v1 (lon-lat)|7084|2|0
RGAF09 (lon-lat)|7086|2|0
RGTAAF07 (lon-lat)|7133|2|0
IGD05|7136|6|0
IGD05/12|7139|6|0
ONGD14|7373|2|0
GSK-2011|7683|41|0
Kyrg-06|7686|2|0
BGS2005|7798|2|0
GDA2020|7844|2|0
St. Helena Tritan|7881|6|0
SHGD2015|7886|2|0
Gusterberg (Ferro)|8042|42|-17.6666666666667
St. Stephen (Ferro)|8043|42|-17.6666666666667
ISN2016|8086|2|0
NAD83(CSRS96)|8232|2|0
NAD83(CSRS)v2|8237|2|0
NAD83(CSRS)v3|8240|2|0
NAD83(CSRS)v4|8246|2|0
NAD83(CSRS)v5|8249|2|0
NAD83(CSRS)v6|8252|2|0
NAD83(CSRS)v7|8255|2|0
S-JTSK [JTSK03]|8351|0|0
Hong Kong Geodetic CS|8427|2|0
Macao 1920|8428|4|0
Macao 2008|8431|2|0
NAD83(HARN Corrected)|8545|2|0
SRB_ETRS89|8685|2|0
Camacupa 2015|8694|8|0
RSAO13|8699|2|0
MTRF-2000|8818|2|0
NAD83(FBN)|8860|2|0
WGS 84 (Transit)|8888|6|0
RGWF96|8900|2|0
RGWF96 (lon-lat)|8902|2|0
CR-SIRGAS|8907|2|0
SIRGAS-Chile 2010|8949|2|0
SIRGAS-CON DGF00P01|8972|2|0
SIRGAS-CON DGF01P01|8973|2|0
SIRGAS-CON DGF01P02|8974|2|0
SIRGAS-CON DGF02P01|8975|2|0
SIRGAS-CON DGF04P01|8976|2|0
SIRGAS-CON DGF05P01|8977|2|0
SIRGAS-CON DGF06P01|8978|2|0
SIRGAS-CON DGF07P01|8979|2|0
SIRGAS-CON DGF08P01|8980|2|0
SIRGAS-CON SIR09P01|8981|2|0
SIRGAS-CON SIR10P01|8982|2|0
SIRGAS-CON SIR11P01|8983|2|0
SIRGAS-CON SIR13P01|8984|2|0
SIRGAS-CON SIR14P01|8985|2|0
SIRGAS-CON SIR15P01|8986|2|0
SIRGAS-CON SIR17P01|8987|2|0
ITRF88|8988|2|0
ITRF89|8989|2|0
ITRF90|8990|2|0
ITRF91|8991|2|0
ITRF92|8992|2|0
ITRF93|8993|2|0
ITRF94|8994|2|0
ITRF96|8995|2|0
ITRF97|8996|2|0
ITRF2000|8997|2|0
ITRF2005|8998|2|0
ITRF2008|8999|2|0
ITRF2014|9000|2|0
IGS97|9003|2|0
IGS00|9006|2|0
IGb00|9009|2|0
IGS05|9012|2|0
IGS08|9014|2|0
IGb08|9017|2|0
IGS14|9019|2|0
WGS 84 (G730)|9053|6|0
WGS 84 (G873)|9054|6|0
WGS 84 (G1150)|9055|6|0
WGS 84 (G1674)|9056|6|0
WGS 84 (G1762)|9057|6|0
ETRF89|9059|2|0
ETRF90|9060|2|0
ETRF91|9061|2|0
ETRF92|9062|2|0
ETRF93|9063|2|0
ETRF94|9064|2|0
ETRF96|9065|2|0
ETRF97|9066|2|0
ETRF2000|9067|2|0
ETRF2005|9068|2|0
ETRF2014|9069|2|0
NAD83(MARP00)|9072|2|0
NAD83(PACP00)|9075|2|0
KOSOVAREF01|9140|2|0
SIRGAS-Chile 2013|9148|2|0
SIRGAS-Chile 2016|9153|2|0
Tapi Aike|9248|4|0
MMN|9251|4|0
MMS|9253|4|0
ONGD17|9294|2|0
HS2-IRF|9299|2|0
ATRF2014|9309|2|0
KSA-GRF17|9333|2|0
TPEN11-IRF|9364|2|0
MML07-IRF|9372|2|0
IGb14|9380|2|0
AbInvA96_2020-IRF|9384|2|0
PN68|9403|4|0
GBK19-IRF|9453|2|0
SRGI2013|9470|6|0
PZ-90.02|9474|35|0
PZ-90.11|9475|35|0
LTF2004(G)|9547|2|0
REDGEOMIN|9696|2|0
ETRF2000-PL|9702|2|0
EOS21-IRF|9739|2|0
WGS 84 (G2139)|9755|6|0
ECML14_NB-IRF|9758|2|0
EWR2-IRF|9763|2|0
RGF93 v2|9777|2|0
RGF93 v2 (lon-lat)|9779|2|0
RGF93 v2b|9782|2|0
RGF93 v2b (lon-lat)|9784|2|0
MRH21-IRF|9866|2|0
MOLDOR11-IRF|9871|2|0
EBBWV14-IRF|9939|2|0
HULLEE13-IRF|9964|2|0
SCM22-IRF|9969|2|0
FNL22-IRF|9974|2|0
ITRF2020|9990|2|0
MWC18-IRF|20033|2|0
SIRGAS-Chile 2021|20041|2|0
`;

/**
 * code | kind | name | area | then, for P (projected), datum | unit | axes | PROJ parameters; for G (geographic),
 * H (geographic with height) and C (geocentric), datum; for V (vertical), datum's name | unit | axis; for K (compound),
 * horizontal | vertical.
 */
export const SYSTEMS = `
2000|P|Anguilla 1957 / British West Indies Grid|0||0|en|
2001|P|Antigua 1943 / British West Indies Grid|1|191|0|en|proj=tmerc lat_0=0 lon_0=-62 k=0.9995 x_0=400000 y_0=0
2002|P|Dominica 1945 / British West Indies Grid|2|192|0|en|proj=tmerc lat_0=0 lon_0=-62 k=0.9995 x_0=400000 y_0=0
2003|P|Grenada 1953 / British West Indies Grid|3|193|0|en|proj=tmerc lat_0=0 lon_0=-62 k=0.9995 x_0=400000 y_0=0
2004|P|Montserrat 1958 / British West Indies Grid|4|194|0|en|proj=tmerc lat_0=0 lon_0=-62 k=0.9995 x_0=400000 y_0=0
2005|P|St. Kitts 1955 / British West Indies Grid|5|195|0|en|proj=tmerc lat_0=0 lon_0=-62 k=0.9995 x_0=400000 y_0=0
2006|P|St. Lucia 1955 / British West Indies Grid|6|196|0|en|proj=tmerc lat_0=0 lon_0=-62 k=0.9995 x_0=400000 y_0=0
2007|P|St. Vincent 45 / British West Indies Grid|7|197|0|en|proj=tmerc lat_0=0 lon_0=-62 k=0.9995 x_0=400000 y_0=0
2009|P|NAD27(CGQ77) / SCoPQ zone 3|8|199|0|en|proj=tmerc lat_0=0 lon_0=-58.5 k=0.9999 x_0=304800 y_0=0
2010|P|NAD27(CGQ77) / SCoPQ zone 4|9|199|0|en|proj=tmerc lat_0=0 lon_0=-61.5 k=0.9999 x_0=304800 y_0=0
2011|P|NAD27(CGQ77) / SCoPQ zone 5|10|199|0|en|proj=tmerc lat_0=0 lon_0=-64.5 k=0.9999 x_0=304800 y_0=0
2012|P|NAD27(CGQ77) / SCoPQ zone 6|11|199|0|en|proj=tmerc lat_0=0 lon_0=-67.5 k=0.9999 x_0=304800 y_0=0
2013|P|NAD27(CGQ77) / SCoPQ zone 7|12|199|0|en|proj=tmerc lat_0=0 lon_0=-70.5 k=0.9999 x_0=304800 y_0=0
2014|P|NAD27(CGQ77) / SCoPQ zone 8|13|199|0|en|proj=tmerc lat_0=0 lon_0=-73.5 k=0.9999 x_0=304800 y_0=0
2015|P|NAD27(CGQ77) / SCoPQ zone 9|14|199|0|en|proj=tmerc lat_0=0 lon_0=-76.5 k=0.9999 x_0=304800 y_0=0
2016|P|NAD27(CGQ77) / SCoPQ zone 10|15|199|0|en|proj=tmerc lat_0=0 lon_0=-79.5 k=0.9999 x_0=304800 y_0=0
2017|P|NAD27(76) / MTM zone 8|16|198|0|en|proj=tmerc lat_0=0 lon_0=-73.5 k=0.9999 x_0=304800 y_0=0
2018|P|NAD27(76) / MTM zone 9|17|198|0|en|proj=tmerc lat_0=0 lon_0=-76.5 k=0.9999 x_0=304800 y_0=0
2019|P|NAD27(76) / MTM zone 10|18|198|0|en|proj=tmerc lat_0=0 lon_0=-79.5 k=0.9999 x_0=304800 y_0=0
2020|P|NAD27(76) / MTM zone 11|19|198|0|en|proj=tmerc lat_0=0 lon_0=-82.5 k=0.9999 x_0=304800 y_0=0
2021|P|NAD27(76) / MTM zone 12|20|198|0|en|proj=tmerc lat_0=0 lon_0=-81 k=0.9999 x_0=304800 y_0=0
2022|P|NAD27(76) / MTM zone 13|21|198|0|en|proj=tmerc lat_0=0 lon_0=-84 k=0.9999 x_0=304800 y_0=0
2023|P|NAD27(76) / MTM zone 14|22|198|0|en|proj=tmerc lat_0=0 lon_0=-87 k=0.9999 x_0=304800 y_0=0
2024|P|NAD27(76) / MTM zone 15|23|198|0|en|proj=tmerc lat_0=0 lon_0=-90 k=0.9999 x_0=304800 y_0=0
2025|P|NAD27(76) / MTM zone 16|24|198|0|en|proj=tmerc lat_0=0 lon_0=-93 k=0.9999 x_0=304800 y_0=0
2026|P|NAD27(76) / MTM zone 17|25|198|0|en|proj=tmerc lat_0=0 lon_0=-96 k=0.9999 x_0=304800 y_0=0
2027|P|NAD27(76) / UTM zone 15N|26|198|0|en|proj=utm zone=15
2028|P|NAD27(76) / UTM zone 16N|27|198|0|en|proj=utm zone=16
2029|P|NAD27(76) / UTM zone 17N|28|198|0|en|proj=utm zone=17
2030|P|NAD27(76) / UTM zone 18N|29|198|0|en|proj=utm zone=18
2031|P|NAD27(CGQ77) / UTM zone 17N|15|199|0|en|proj=utm zone=17
2032|P|NAD27(CGQ77) / UTM zone 18N|30|199|0|en|proj=utm zone=18
2033|P|NAD27(CGQ77) / UTM zone 19N|31|199|0|en|proj=utm zone=19
2034|P|NAD27(CGQ77) / UTM zone 20N|32|199|0|en|proj=utm zone=20
2035|P|NAD27(CGQ77) / UTM zone 21N|8|199|0|en|proj=utm zone=21
2039|P|Israel 1993 / Israeli TM Grid|33|24|0|en|proj=tmerc lat_0=31.7343936111111 lon_0=35.2045169444444 k=1.0000067 x_0=219529.584 y_0=626907.39
2040|P|Locodjo 1965 / UTM zone 30N|34|25|0|en|proj=utm zone=30
2041|P|Abidjan 1987 / UTM zone 30N|34|26|0|en|proj=utm zone=30
2042|P|Locodjo 1965 / UTM zone 29N|35|25|0|en|proj=utm zone=29
2043|P|Abidjan 1987 / UTM zone 29N|35|26|0|en|proj=utm zone=29
2044|P|Hanoi 1972 / Gauss-Kruger zone 18|36|30|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=18500000 y_0=0
2045|P|Hanoi 1972 / Gauss-Kruger zone 19|37|30|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=19500000 y_0=0
2046|P|Hartebeesthoek94 / Lo15|38|31|0|ws|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=0 y_0=0
2047|P|Hartebeesthoek94 / Lo17|39|31|0|ws|proj=tmerc lat_0=0 lon_0=17 k=1 x_0=0 y_0=0
2048|P|Hartebeesthoek94 / Lo19|40|31|0|ws|proj=tmerc lat_0=0 lon_0=19 k=1 x_0=0 y_0=0
2049|P|Hartebeesthoek94 / Lo21|41|31|0|ws|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=0 y_0=0
2050|P|Hartebeesthoek94 / Lo23|42|31|0|ws|proj=tmerc lat_0=0 lon_0=23 k=1 x_0=0 y_0=0
2051|P|Hartebeesthoek94 / Lo25|43|31|0|ws|proj=tmerc lat_0=0 lon_0=25 k=1 x_0=0 y_0=0
2052|P|Hartebeesthoek94 / Lo27|44|31|0|ws|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=0 y_0=0
2053|P|Hartebeesthoek94 / Lo29|45|31|0|ws|proj=tmerc lat_0=0 lon_0=29 k=1 x_0=0 y_0=0
2054|P|Hartebeesthoek94 / Lo31|46|31|0|ws|proj=tmerc lat_0=0 lon_0=31 k=1 x_0=0 y_0=0
2055|P|Hartebeesthoek94 / Lo33|47|31|0|ws|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=0 y_0=0
2056|P|CH1903+ / LV95|48|33|0|en|proj=somerc lat_0=46.9524055555556 lon_0=7.43958333333333 k_0=1 x_0=2600000 y_0=1200000
2057|P|Rassadiran / Nakhl e Taqi|49|36|0|en|proj=omerc lat_0=27.5188288055556 lonc=52.6035391666667 alpha=0.571661194444444 gamma=0.571661194444444 k=0.999895934 x_0=658377.437 y_0=3044969.194
2058|P|ED50(ED77) / UTM zone 38N|50|37|0|en|proj=utm zone=38
2059|P|ED50(ED77) / UTM zone 39N|51|37|0|en|proj=utm zone=39
2060|P|ED50(ED77) / UTM zone 40N|52|37|0|en|proj=utm zone=40
2061|P|ED50(ED77) / UTM zone 41N|53|37|0|en|proj=utm zone=41
2062|P|Madrid 1870 (Madrid) / Spain LCC|54|358|0|en|proj=lcc lat_1=40 lat_0=40 lon_0=0 k_0=0.9988085293 x_0=600000 y_0=600000
2065|P|S-JTSK (Ferro) / Krovak|55|352|0|sw|proj=krovak lat_0=49.5 lon_0=42.5 alpha=30.2881397527778 k=0.9999 x_0=0 y_0=0
2066|P|Mount Dillon / Tobago Grid|56|40|1|en|proj=cass lat_0=11.2521786111111 lon_0=-60.6860088888889 x_0=37718.66159325 y_0=36209.91512952
2067|P|Naparima 1955 / UTM zone 20N|57|41|0|en|proj=utm zone=20
2068|P|ELD79 / Libya zone 5|58|42|0|en|proj=tmerc lat_0=0 lon_0=9 k=0.9999 x_0=200000 y_0=0
2069|P|ELD79 / Libya zone 6|59|42|0|en|proj=tmerc lat_0=0 lon_0=11 k=0.9999 x_0=200000 y_0=0
2070|P|ELD79 / Libya zone 7|60|42|0|en|proj=tmerc lat_0=0 lon_0=13 k=0.9999 x_0=200000 y_0=0
2071|P|ELD79 / Libya zone 8|61|42|0|en|proj=tmerc lat_0=0 lon_0=15 k=0.9999 x_0=200000 y_0=0
2072|P|ELD79 / Libya zone 9|62|42|0|en|proj=tmerc lat_0=0 lon_0=17 k=0.9999 x_0=200000 y_0=0
2073|P|ELD79 / Libya zone 10|63|42|0|en|proj=tmerc lat_0=0 lon_0=19 k=0.9999 x_0=200000 y_0=0
2074|P|ELD79 / Libya zone 11|64|42|0|en|proj=tmerc lat_0=0 lon_0=21 k=0.9999 x_0=200000 y_0=0
2075|P|ELD79 / Libya zone 12|65|42|0|en|proj=tmerc lat_0=0 lon_0=23 k=0.9999 x_0=200000 y_0=0
2076|P|ELD79 / Libya zone 13|66|42|0|en|proj=tmerc lat_0=0 lon_0=25 k=0.9999 x_0=200000 y_0=0
2077|P|ELD79 / UTM zone 32N|67|42|0|en|proj=utm zone=32
2078|P|ELD79 / UTM zone 33N|68|42|0|en|proj=utm zone=33
2079|P|ELD79 / UTM zone 34N|69|42|0|en|proj=utm zone=34
2080|P|ELD79 / UTM zone 35N|66|42|0|en|proj=utm zone=35
2081|P|Chos Malal 1914 / Argentina 2|70|43|0|ne|proj=tmerc lat_0=-90 lon_0=-69 k=1 x_0=2500000 y_0=0
2082|P|Pampa del Castillo / Argentina 2|71|44|0|ne|proj=tmerc lat_0=-90 lon_0=-69 k=1 x_0=2500000 y_0=0
2083|P|Hito XVIII 1963 / Argentina 2|72|126|0|ne|proj=tmerc lat_0=-90 lon_0=-69 k=1 x_0=2500000 y_0=0
2084|P|Hito XVIII 1963 / UTM zone 19S|73|126|0|en|proj=utm zone=19 south
2087|P|ELD79 / TM 12 NE|74|42|0|en|proj=tmerc lat_0=0 lon_0=12 k=0.9996 x_0=500000 y_0=0
2088|P|Carthage / TM 11 NE|75|100|0|en|proj=tmerc lat_0=0 lon_0=11 k=0.9996 x_0=500000 y_0=0
2089|P|Yemen NGN96 / UTM zone 38N|76|46|0|en|proj=utm zone=38
2090|P|Yemen NGN96 / UTM zone 39N|77|46|0|en|proj=utm zone=39
2093|P|Hanoi 1972 / GK 106 NE|78|30|0|ne|proj=tmerc lat_0=0 lon_0=106 k=1 x_0=500000 y_0=0
2094|P|WGS 72BE / TM 106 NE|79|182|0|en|proj=tmerc lat_0=0 lon_0=106 k=0.9996 x_0=500000 y_0=0
2095|P|Bissau / UTM zone 28N|80|48|0|en|proj=utm zone=28
2096|P|Korean 1985 / East Belt|81|45|0|ne|proj=tmerc lat_0=38 lon_0=129 k=1 x_0=200000 y_0=500000
2097|P|Korean 1985 / Central Belt|82|45|0|ne|proj=tmerc lat_0=38 lon_0=127 k=1 x_0=200000 y_0=500000
2098|P|Korean 1985 / West Belt|83|45|0|ne|proj=tmerc lat_0=38 lon_0=125 k=1 x_0=200000 y_0=500000
2099|P|Qatar 1948 / Qatar Grid|84|154|0|en|proj=cass lat_0=25.3823611111111 lon_0=50.7613888888889 x_0=100000 y_0=100000
2100|P|GGRS87 / Greek Grid|85|10|0|en|proj=tmerc lat_0=0 lon_0=24 k=0.9996 x_0=500000 y_0=0
2101|P|Lake / Maracaibo Grid M1|86|121|0|en|proj=lcc lat_1=10.1666666666667 lat_0=10.1666666666667 lon_0=-71.6056177777778 k_0=1 x_0=0 y_0=-52684.972
2102|P|Lake / Maracaibo Grid|86|121|0|en|proj=lcc lat_1=10.1666666666667 lat_0=10.1666666666667 lon_0=-71.6056177777778 k_0=1 x_0=200000 y_0=147315.028
2103|P|Lake / Maracaibo Grid M3|86|121|0|en|proj=lcc lat_1=10.1666666666667 lat_0=10.1666666666667 lon_0=-71.6056177777778 k_0=1 x_0=500000 y_0=447315.028
2104|P|Lake / Maracaibo La Rosa Grid|87|121|0|en|proj=lcc lat_1=10.1666666666667 lat_0=10.1666666666667 lon_0=-71.6056177777778 k_0=1 x_0=-17044 y_0=-23139.97
2105|P|NZGD2000 / Mount Eden 2000|88|50|0|ne|proj=tmerc lat_0=-36.8797222222222 lon_0=174.764166666667 k=0.9999 x_0=400000 y_0=800000
2106|P|NZGD2000 / Bay of Plenty 2000|89|50|0|ne|proj=tmerc lat_0=-37.7611111111111 lon_0=176.466111111111 k=1 x_0=400000 y_0=800000
2107|P|NZGD2000 / Poverty Bay 2000|90|50|0|ne|proj=tmerc lat_0=-38.6244444444444 lon_0=177.885555555556 k=1 x_0=400000 y_0=800000
2108|P|NZGD2000 / Hawkes Bay 2000|91|50|0|ne|proj=tmerc lat_0=-39.6508333333333 lon_0=176.673611111111 k=1 x_0=400000 y_0=800000
2109|P|NZGD2000 / Taranaki 2000|92|50|0|ne|proj=tmerc lat_0=-39.1355555555556 lon_0=174.227777777778 k=1 x_0=400000 y_0=800000
2110|P|NZGD2000 / Tuhirangi 2000|93|50|0|ne|proj=tmerc lat_0=-39.5122222222222 lon_0=175.64 k=1 x_0=400000 y_0=800000
2111|P|NZGD2000 / Wanganui 2000|94|50|0|ne|proj=tmerc lat_0=-40.2419444444444 lon_0=175.488055555556 k=1 x_0=400000 y_0=800000
2112|P|NZGD2000 / Wairarapa 2000|95|50|0|ne|proj=tmerc lat_0=-40.9252777777778 lon_0=175.647222222222 k=1 x_0=400000 y_0=800000
2113|P|NZGD2000 / Wellington 2000|96|50|0|ne|proj=tmerc lat_0=-41.3011111111111 lon_0=174.776388888889 k=1 x_0=400000 y_0=800000
2114|P|NZGD2000 / Collingwood 2000|97|50|0|ne|proj=tmerc lat_0=-40.7147222222222 lon_0=172.671944444444 k=1 x_0=400000 y_0=800000
2115|P|NZGD2000 / Nelson 2000|98|50|0|ne|proj=tmerc lat_0=-41.2744444444444 lon_0=173.299166666667 k=1 x_0=400000 y_0=800000
2116|P|NZGD2000 / Karamea 2000|99|50|0|ne|proj=tmerc lat_0=-41.2897222222222 lon_0=172.108888888889 k=1 x_0=400000 y_0=800000
2117|P|NZGD2000 / Buller 2000|100|50|0|ne|proj=tmerc lat_0=-41.8105555555556 lon_0=171.581111111111 k=1 x_0=400000 y_0=800000
2118|P|NZGD2000 / Grey 2000|101|50|0|ne|proj=tmerc lat_0=-42.3336111111111 lon_0=171.549722222222 k=1 x_0=400000 y_0=800000
2119|P|NZGD2000 / Amuri 2000|102|50|0|ne|proj=tmerc lat_0=-42.6888888888889 lon_0=173.01 k=1 x_0=400000 y_0=800000
2120|P|NZGD2000 / Marlborough 2000|103|50|0|ne|proj=tmerc lat_0=-41.5444444444444 lon_0=173.801944444444 k=1 x_0=400000 y_0=800000
2121|P|NZGD2000 / Hokitika 2000|104|50|0|ne|proj=tmerc lat_0=-42.8861111111111 lon_0=170.979722222222 k=1 x_0=400000 y_0=800000
2122|P|NZGD2000 / Okarito 2000|105|50|0|ne|proj=tmerc lat_0=-43.11 lon_0=170.260833333333 k=1 x_0=400000 y_0=800000
2123|P|NZGD2000 / Jacksons Bay 2000|106|50|0|ne|proj=tmerc lat_0=-43.9777777777778 lon_0=168.606111111111 k=1 x_0=400000 y_0=800000
2124|P|NZGD2000 / Mount Pleasant 2000|107|50|0|ne|proj=tmerc lat_0=-43.5905555555556 lon_0=172.726944444444 k=1 x_0=400000 y_0=800000
2125|P|NZGD2000 / Gawler 2000|108|50|0|ne|proj=tmerc lat_0=-43.7486111111111 lon_0=171.360555555556 k=1 x_0=400000 y_0=800000
2126|P|NZGD2000 / Timaru 2000|109|50|0|ne|proj=tmerc lat_0=-44.4019444444444 lon_0=171.057222222222 k=1 x_0=400000 y_0=800000
2127|P|NZGD2000 / Lindis Peak 2000|110|50|0|ne|proj=tmerc lat_0=-44.735 lon_0=169.4675 k=1 x_0=400000 y_0=800000
2128|P|NZGD2000 / Mount Nicholas 2000|111|50|0|ne|proj=tmerc lat_0=-45.1327777777778 lon_0=168.398611111111 k=1 x_0=400000 y_0=800000
2129|P|NZGD2000 / Mount York 2000|112|50|0|ne|proj=tmerc lat_0=-45.5636111111111 lon_0=167.738611111111 k=1 x_0=400000 y_0=800000
2130|P|NZGD2000 / Observation Point 2000|113|50|0|ne|proj=tmerc lat_0=-45.8161111111111 lon_0=170.628333333333 k=1 x_0=400000 y_0=800000
2131|P|NZGD2000 / North Taieri 2000|114|50|0|ne|proj=tmerc lat_0=-45.8613888888889 lon_0=170.2825 k=0.99996 x_0=400000 y_0=800000
2132|P|NZGD2000 / Bluff 2000|115|50|0|ne|proj=tmerc lat_0=-46.6 lon_0=168.342777777778 k=1 x_0=400000 y_0=800000
2133|P|NZGD2000 / UTM zone 58S|116|50|0|en|proj=utm zone=58 south
2134|P|NZGD2000 / UTM zone 59S|117|50|0|en|proj=utm zone=59 south
2135|P|NZGD2000 / UTM zone 60S|118|50|0|en|proj=utm zone=60 south
2136|P|Accra / Ghana National Grid|119|51|2|en|proj=tmerc lat_0=4.66666666666667 lon_0=-1 k=0.99975 x_0=274319.739163358 y_0=0
2137|P|Accra / TM 1 NW|120|51|0|en|proj=tmerc lat_0=0 lon_0=-1 k=0.9996 x_0=500000 y_0=0
2138|P|NAD27(CGQ77) / Quebec Lambert|121|199|0|en|proj=lcc lat_0=44 lon_0=-68.5 lat_1=60 lat_2=46 x_0=0 y_0=0
2154|P|RGF93 v1 / Lambert-93|122|54|0|en|proj=lcc lat_0=46.5 lon_0=3 lat_1=49 lat_2=44 x_0=700000 y_0=6600000
2157|P|IRENET95 / Irish Transverse Mercator|123|55|0|en|proj=tmerc lat_0=53.5 lon_0=-8 k=0.99982 x_0=600000 y_0=750000
2158|P|IRENET95 / UTM zone 29N|123|55|0|en|proj=utm zone=29
2159|P|Sierra Leone 1924 / New Colony Grid|124|56|2|en|proj=tmerc lat_0=6.66666666666667 lon_0=-12 k=1 x_0=152399.855090754 y_0=0
2160|P|Sierra Leone 1924 / New War Office Grid|124|56|2|en|proj=tmerc lat_0=6.66666666666667 lon_0=-12 k=1 x_0=243839.768145207 y_0=182879.826108905
2161|P|Sierra Leone 1968 / UTM zone 28N|125|57|0|en|proj=utm zone=28
2162|P|Sierra Leone 1968 / UTM zone 29N|126|57|0|en|proj=utm zone=29
2164|P|Locodjo 1965 / TM 5 NW|127|25|0|en|proj=tmerc lat_0=0 lon_0=-5 k=0.9996 x_0=500000 y_0=0
2165|P|Abidjan 1987 / TM 5 NW|127|26|0|en|proj=tmerc lat_0=0 lon_0=-5 k=0.9996 x_0=500000 y_0=0
2169|P|LUREF / Luxembourg TM|128|62|0|ne|proj=tmerc lat_0=49.8333333333333 lon_0=6.16666666666667 k=1 x_0=80000 y_0=100000
2172|P|Pulkovo 1942(58) / Poland zone II|129|60|0|ne|proj=sterea lat_0=53.0019444444444 lon_0=21.5027777777778 k=0.9998 x_0=4603000 y_0=5806000
2173|P|Pulkovo 1942(58) / Poland zone III|130|60|0|ne|proj=sterea lat_0=53.5833333333333 lon_0=17.0083333333333 k=0.9998 x_0=3501000 y_0=5999000
2174|P|Pulkovo 1942(58) / Poland zone IV|131|60|0|ne|proj=sterea lat_0=51.6708333333333 lon_0=16.6722222222222 k=0.9998 x_0=3703000 y_0=5627000
2175|P|Pulkovo 1942(58) / Poland zone V|132|60|0|ne|proj=tmerc lat_0=0 lon_0=18.9583333333333 k=0.999983 x_0=237000 y_0=-4700000
2176|P|ETRF2000-PL / CS2000/15|133|522|0|ne|proj=tmerc lat_0=0 lon_0=15 k=0.999923 x_0=5500000 y_0=0
2177|P|ETRF2000-PL / CS2000/18|134|522|0|ne|proj=tmerc lat_0=0 lon_0=18 k=0.999923 x_0=6500000 y_0=0
2178|P|ETRF2000-PL / CS2000/21|135|522|0|ne|proj=tmerc lat_0=0 lon_0=21 k=0.999923 x_0=7500000 y_0=0
2179|P|ETRF2000-PL / CS2000/24|136|522|0|ne|proj=tmerc lat_0=0 lon_0=24 k=0.999923 x_0=8500000 y_0=0
2180|P|ETRF2000-PL / CS92|137|522|0|ne|proj=tmerc lat_0=0 lon_0=19 k=0.9993 x_0=500000 y_0=-5300000
2188|P|Azores Occidental 1939 / UTM zone 25N|138|63|0|en|proj=utm zone=25
2189|P|Azores Central 1948 / UTM zone 26N|139|64|0|en|proj=utm zone=26
2190|P|Azores Oriental 1940 / UTM zone 26N|140|65|0|en|proj=utm zone=26
2193|P|NZGD2000 / New Zealand Transverse Mercator 2000|141|50|0|ne|proj=tmerc lat_0=0 lon_0=173 k=0.9996 x_0=1600000 y_0=10000000
2195|P|NAD83(HARN) / UTM zone 2S|142|35|0|en|proj=utm zone=2 south
2196|P|ETRS89 / Kp2000 Jutland|143|130|0|en|proj=tmerc lat_0=0 lon_0=9.5 k=0.99995 x_0=200000 y_0=0
2197|P|ETRS89 / Kp2000 Zealand|144|130|0|en|proj=tmerc lat_0=0 lon_0=12 k=0.99995 x_0=500000 y_0=0
2198|P|ETRS89 / Kp2000 Bornholm|145|130|0|en|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=900000 y_0=0
2200|P|ATS77 / New Brunswick Stereographic (ATS77)|146|11|0|ne|proj=sterea lat_0=46.5 lon_0=-66.5 k=0.999912 x_0=300000 y_0=800000
2201|P|REGVEN / UTM zone 18N|147|67|0|en|proj=utm zone=18
2202|P|REGVEN / UTM zone 19N|148|67|0|en|proj=utm zone=19
2203|P|REGVEN / UTM zone 20N|149|67|0|en|proj=utm zone=20
2204|P|NAD27 / Tennessee|150|137|3|en|proj=lcc lat_0=34.6666666666667 lon_0=-86 lat_1=35.25 lat_2=36.4166666666667 x_0=609601.219202438 y_0=30480.0609601219
2205|P|NAD83 / Kentucky North|151|138|0|en|proj=lcc lat_0=37.5 lon_0=-84.25 lat_1=37.9666666666667 lat_2=38.9666666666667 x_0=500000 y_0=0
2206|P|ED50 / 3-degree Gauss-Kruger zone 9|152|105|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=9500000 y_0=0
2207|P|ED50 / 3-degree Gauss-Kruger zone 10|153|105|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=10500000 y_0=0
2208|P|ED50 / 3-degree Gauss-Kruger zone 11|154|105|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=11500000 y_0=0
2209|P|ED50 / 3-degree Gauss-Kruger zone 12|155|105|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=12500000 y_0=0
2210|P|ED50 / 3-degree Gauss-Kruger zone 13|156|105|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=13500000 y_0=0
2211|P|ED50 / 3-degree Gauss-Kruger zone 14|157|105|0|ne|proj=tmerc lat_0=0 lon_0=42 k=1 x_0=14500000 y_0=0
2212|P|ED50 / 3-degree Gauss-Kruger zone 15|158|105|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=15500000 y_0=0
2213|P|ETRS89 / TM 30 NE|159|130|0|en|proj=tmerc lat_0=0 lon_0=30 k=0.9996 x_0=500000 y_0=0
2215|P|Manoca 1962 / UTM zone 32N|160|71|0|en|proj=utm zone=32
2216|P|Qornoq 1927 / UTM zone 22N|161|72|0|en|proj=utm zone=22
2217|P|Qornoq 1927 / UTM zone 23N|162|72|0|en|proj=utm zone=23
2218|P|Scoresbysund 1952 / Greenland zone 5 east|163|73|0|nw|
2219|P|ATS77 / UTM zone 19N|164|11|0|en|proj=utm zone=19
2220|P|ATS77 / UTM zone 20N|165|11|0|en|proj=utm zone=20
2221|P|Scoresbysund 1952 / Greenland zone 6 east|166|73|0|nw|
2222|P|NAD83 / Arizona East (ft)|167|138|4|en|proj=tmerc lat_0=31 lon_0=-110.166666666667 k=0.9999 x_0=213360 y_0=0
2223|P|NAD83 / Arizona Central (ft)|168|138|4|en|proj=tmerc lat_0=31 lon_0=-111.916666666667 k=0.9999 x_0=213360 y_0=0
2224|P|NAD83 / Arizona West (ft)|169|138|4|en|proj=tmerc lat_0=31 lon_0=-113.75 k=0.999933333 x_0=213360 y_0=0
2225|P|NAD83 / California zone 1 (ftUS)|170|138|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-122 lat_1=41.6666666666667 lat_2=40 x_0=2000000.0001016 y_0=500000.0001016
2226|P|NAD83 / California zone 2 (ftUS)|171|138|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-122 lat_1=39.8333333333333 lat_2=38.3333333333333 x_0=2000000.0001016 y_0=500000.0001016
2227|P|NAD83 / California zone 3 (ftUS)|172|138|3|en|proj=lcc lat_0=36.5 lon_0=-120.5 lat_1=38.4333333333333 lat_2=37.0666666666667 x_0=2000000.0001016 y_0=500000.0001016
2228|P|NAD83 / California zone 4 (ftUS)|173|138|3|en|proj=lcc lat_0=35.3333333333333 lon_0=-119 lat_1=37.25 lat_2=36 x_0=2000000.0001016 y_0=500000.0001016
2229|P|NAD83 / California zone 5 (ftUS)|174|138|3|en|proj=lcc lat_0=33.5 lon_0=-118 lat_1=35.4666666666667 lat_2=34.0333333333333 x_0=2000000.0001016 y_0=500000.0001016
2230|P|NAD83 / California zone 6 (ftUS)|175|138|3|en|proj=lcc lat_0=32.1666666666667 lon_0=-116.25 lat_1=33.8833333333333 lat_2=32.7833333333333 x_0=2000000.0001016 y_0=500000.0001016
2231|P|NAD83 / Colorado North (ftUS)|176|138|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-105.5 lat_1=40.7833333333333 lat_2=39.7166666666667 x_0=914401.828803657 y_0=304800.609601219
2232|P|NAD83 / Colorado Central (ftUS)|177|138|3|en|proj=lcc lat_0=37.8333333333333 lon_0=-105.5 lat_1=39.75 lat_2=38.45 x_0=914401.828803657 y_0=304800.609601219
2233|P|NAD83 / Colorado South (ftUS)|178|138|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-105.5 lat_1=38.4333333333333 lat_2=37.2333333333333 x_0=914401.828803657 y_0=304800.609601219
2234|P|NAD83 / Connecticut (ftUS)|179|138|3|en|proj=lcc lat_0=40.8333333333333 lon_0=-72.75 lat_1=41.8666666666667 lat_2=41.2 x_0=304800.609601219 y_0=152400.30480061
2235|P|NAD83 / Delaware (ftUS)|180|138|3|en|proj=tmerc lat_0=38 lon_0=-75.4166666666667 k=0.999995 x_0=200000.0001016 y_0=0
2236|P|NAD83 / Florida East (ftUS)|181|138|3|en|proj=tmerc lat_0=24.3333333333333 lon_0=-81 k=0.999941177 x_0=200000.0001016 y_0=0
2237|P|NAD83 / Florida West (ftUS)|182|138|3|en|proj=tmerc lat_0=24.3333333333333 lon_0=-82 k=0.999941177 x_0=200000.0001016 y_0=0
2238|P|NAD83 / Florida North (ftUS)|183|138|3|en|proj=lcc lat_0=29 lon_0=-84.5 lat_1=30.75 lat_2=29.5833333333333 x_0=600000 y_0=0
2239|P|NAD83 / Georgia East (ftUS)|184|138|3|en|proj=tmerc lat_0=30 lon_0=-82.1666666666667 k=0.9999 x_0=200000.0001016 y_0=0
2240|P|NAD83 / Georgia West (ftUS)|185|138|3|en|proj=tmerc lat_0=30 lon_0=-84.1666666666667 k=0.9999 x_0=699999.999898399 y_0=0
2241|P|NAD83 / Idaho East (ftUS)|186|138|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-112.166666666667 k=0.999947368 x_0=200000.0001016 y_0=0
2242|P|NAD83 / Idaho Central (ftUS)|187|138|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-114 k=0.999947368 x_0=500000.0001016 y_0=0
2243|P|NAD83 / Idaho West (ftUS)|188|138|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-115.75 k=0.999933333 x_0=800000.0001016 y_0=0
2246|P|NAD83 / Kentucky North (ftUS)|151|138|3|en|proj=lcc lat_0=37.5 lon_0=-84.25 lat_1=37.9666666666667 lat_2=38.9666666666667 x_0=500000.0001016 y_0=0
2247|P|NAD83 / Kentucky South (ftUS)|189|138|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.9333333333333 lat_2=36.7333333333333 x_0=500000.0001016 y_0=500000.0001016
2248|P|NAD83 / Maryland (ftUS)|190|138|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-77 lat_1=39.45 lat_2=38.3 x_0=399999.9998984 y_0=0
2249|P|NAD83 / Massachusetts Mainland (ftUS)|191|138|3|en|proj=lcc lat_0=41 lon_0=-71.5 lat_1=42.6833333333333 lat_2=41.7166666666667 x_0=200000.0001016 y_0=750000
2250|P|NAD83 / Massachusetts Island (ftUS)|192|138|3|en|proj=lcc lat_0=41 lon_0=-70.5 lat_1=41.4833333333333 lat_2=41.2833333333333 x_0=500000.0001016 y_0=0
2251|P|NAD83 / Michigan North (ft)|193|138|4|en|proj=lcc lat_0=44.7833333333333 lon_0=-87 lat_1=47.0833333333333 lat_2=45.4833333333333 x_0=7999999.999968 y_0=0
2252|P|NAD83 / Michigan Central (ft)|194|138|4|en|proj=lcc lat_0=43.3166666666667 lon_0=-84.3666666666667 lat_1=45.7 lat_2=44.1833333333333 x_0=5999999.999976 y_0=0
2253|P|NAD83 / Michigan South (ft)|195|138|4|en|proj=lcc lat_0=41.5 lon_0=-84.3666666666667 lat_1=43.6666666666667 lat_2=42.1 x_0=3999999.999984 y_0=0
2254|P|NAD83 / Mississippi East (ftUS)|196|138|3|en|proj=tmerc lat_0=29.5 lon_0=-88.8333333333333 k=0.99995 x_0=300000 y_0=0
2255|P|NAD83 / Mississippi West (ftUS)|197|138|3|en|proj=tmerc lat_0=29.5 lon_0=-90.3333333333333 k=0.99995 x_0=699999.999898399 y_0=0
2256|P|NAD83 / Montana (ft)|198|138|4|en|proj=lcc lat_0=44.25 lon_0=-109.5 lat_1=49 lat_2=45 x_0=599999.9999976 y_0=0
2257|P|NAD83 / New Mexico East (ftUS)|199|138|3|en|proj=tmerc lat_0=31 lon_0=-104.333333333333 k=0.999909091 x_0=165000 y_0=0
2258|P|NAD83 / New Mexico Central (ftUS)|200|138|3|en|proj=tmerc lat_0=31 lon_0=-106.25 k=0.9999 x_0=500000.0001016 y_0=0
2259|P|NAD83 / New Mexico West (ftUS)|201|138|3|en|proj=tmerc lat_0=31 lon_0=-107.833333333333 k=0.999916667 x_0=830000.0001016 y_0=0
2260|P|NAD83 / New York East (ftUS)|202|138|3|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
2261|P|NAD83 / New York Central (ftUS)|203|138|3|en|proj=tmerc lat_0=40 lon_0=-76.5833333333333 k=0.9999375 x_0=249999.9998984 y_0=0
2262|P|NAD83 / New York West (ftUS)|204|138|3|en|proj=tmerc lat_0=40 lon_0=-78.5833333333333 k=0.9999375 x_0=350000.0001016 y_0=0
2263|P|NAD83 / New York Long Island (ftUS)|205|138|3|en|proj=lcc lat_0=40.1666666666667 lon_0=-74 lat_1=41.0333333333333 lat_2=40.6666666666667 x_0=300000 y_0=0
2264|P|NAD83 / North Carolina (ftUS)|206|138|3|en|proj=lcc lat_0=33.75 lon_0=-79 lat_1=36.1666666666667 lat_2=34.3333333333333 x_0=609601.219202438 y_0=0
2265|P|NAD83 / North Dakota North (ft)|207|138|4|en|proj=lcc lat_0=47 lon_0=-100.5 lat_1=48.7333333333333 lat_2=47.4333333333333 x_0=599999.9999976 y_0=0
2266|P|NAD83 / North Dakota South (ft)|208|138|4|en|proj=lcc lat_0=45.6666666666667 lon_0=-100.5 lat_1=47.4833333333333 lat_2=46.1833333333333 x_0=599999.9999976 y_0=0
2267|P|NAD83 / Oklahoma North (ftUS)|209|138|3|en|proj=lcc lat_0=35 lon_0=-98 lat_1=36.7666666666667 lat_2=35.5666666666667 x_0=600000 y_0=0
2268|P|NAD83 / Oklahoma South (ftUS)|210|138|3|en|proj=lcc lat_0=33.3333333333333 lon_0=-98 lat_1=35.2333333333333 lat_2=33.9333333333333 x_0=600000 y_0=0
2269|P|NAD83 / Oregon North (ft)|211|138|4|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=46 lat_2=44.3333333333333 x_0=2500000.0001424 y_0=0
2270|P|NAD83 / Oregon South (ft)|212|138|4|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=44 lat_2=42.3333333333333 x_0=1500000.0001464 y_0=0
2271|P|NAD83 / Pennsylvania North (ftUS)|213|138|3|en|proj=lcc lat_0=40.1666666666667 lon_0=-77.75 lat_1=41.95 lat_2=40.8833333333333 x_0=600000 y_0=0
2272|P|NAD83 / Pennsylvania South (ftUS)|214|138|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-77.75 lat_1=40.9666666666667 lat_2=39.9333333333333 x_0=600000 y_0=0
2273|P|NAD83 / South Carolina (ft)|215|138|4|en|proj=lcc lat_0=31.8333333333333 lon_0=-81 lat_1=34.8333333333333 lat_2=32.5 x_0=609600 y_0=0
2274|P|NAD83 / Tennessee (ftUS)|150|138|3|en|proj=lcc lat_0=34.3333333333333 lon_0=-86 lat_1=36.4166666666667 lat_2=35.25 x_0=600000 y_0=0
2275|P|NAD83 / Texas North (ftUS)|216|138|3|en|proj=lcc lat_0=34 lon_0=-101.5 lat_1=36.1833333333333 lat_2=34.65 x_0=200000.0001016 y_0=999999.999898399
2276|P|NAD83 / Texas North Central (ftUS)|217|138|3|en|proj=lcc lat_0=31.6666666666667 lon_0=-98.5 lat_1=33.9666666666667 lat_2=32.1333333333333 x_0=600000 y_0=2000000.0001016
2277|P|NAD83 / Texas Central (ftUS)|218|138|3|en|proj=lcc lat_0=29.6666666666667 lon_0=-100.333333333333 lat_1=31.8833333333333 lat_2=30.1166666666667 x_0=699999.999898399 y_0=3000000
2278|P|NAD83 / Texas South Central (ftUS)|219|138|3|en|proj=lcc lat_0=27.8333333333333 lon_0=-99 lat_1=30.2833333333333 lat_2=28.3833333333333 x_0=600000 y_0=3999999.9998984
2279|P|NAD83 / Texas South (ftUS)|220|138|3|en|proj=lcc lat_0=25.6666666666667 lon_0=-98.5 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=300000 y_0=5000000.0001016
2280|P|NAD83 / Utah North (ft)|221|138|4|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000.0001504 y_0=999999.999996
2281|P|NAD83 / Utah Central (ft)|222|138|4|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000.0001504 y_0=1999999.999992
2282|P|NAD83 / Utah South (ft)|223|138|4|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000.0001504 y_0=2999999.999988
2283|P|NAD83 / Virginia North (ftUS)|224|138|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-78.5 lat_1=39.2 lat_2=38.0333333333333 x_0=3500000.0001016 y_0=2000000.0001016
2284|P|NAD83 / Virginia South (ftUS)|225|138|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-78.5 lat_1=37.9666666666667 lat_2=36.7666666666667 x_0=3500000.0001016 y_0=999999.999898399
2285|P|NAD83 / Washington North (ftUS)|226|138|3|en|proj=lcc lat_0=47 lon_0=-120.833333333333 lat_1=48.7333333333333 lat_2=47.5 x_0=500000.0001016 y_0=0
2286|P|NAD83 / Washington South (ftUS)|227|138|3|en|proj=lcc lat_0=45.3333333333333 lon_0=-120.5 lat_1=47.3333333333333 lat_2=45.8333333333333 x_0=500000.0001016 y_0=0
2287|P|NAD83 / Wisconsin North (ftUS)|228|138|3|en|proj=lcc lat_0=45.1666666666667 lon_0=-90 lat_1=46.7666666666667 lat_2=45.5666666666667 x_0=600000 y_0=0
2288|P|NAD83 / Wisconsin Central (ftUS)|229|138|3|en|proj=lcc lat_0=43.8333333333333 lon_0=-90 lat_1=45.5 lat_2=44.25 x_0=600000 y_0=0
2289|P|NAD83 / Wisconsin South (ftUS)|230|138|3|en|proj=lcc lat_0=42 lon_0=-90 lat_1=44.0666666666667 lat_2=42.7333333333333 x_0=600000 y_0=0
2290|P|ATS77 / Prince Edward Isl. Stereographic (ATS77)|231|11|0|en|proj=sterea lat_0=47.25 lon_0=-63 k=0.999912 x_0=700000 y_0=400000
2294|P|ATS77 / MTM Nova Scotia zone 4|232|11|0|en|proj=tmerc lat_0=0 lon_0=-61.5 k=0.9999 x_0=4500000 y_0=0
2295|P|ATS77 / MTM Nova Scotia zone 5|233|11|0|en|proj=tmerc lat_0=0 lon_0=-64.5 k=0.9999 x_0=5500000 y_0=0
2296|P|Ammassalik 1958 / Greenland zone 7 east|234|74|0|nw|
2299|P|Qornoq 1927 / Greenland zone 2 west|235|72|0|nw|
2301|P|Qornoq 1927 / Greenland zone 3 west|236|72|0|nw|
2303|P|Qornoq 1927 / Greenland zone 4 west|237|72|0|nw|
2304|P|Qornoq 1927 / Greenland zone 5 west|238|72|0|nw|
2305|P|Qornoq 1927 / Greenland zone 6 west|239|72|0|nw|
2306|P|Qornoq 1927 / Greenland zone 7 west|240|72|0|nw|
2307|P|Qornoq 1927 / Greenland zone 8 east|241|72|0|nw|
2308|P|Batavia / TM 109 SE|242|89|0|en|proj=tmerc lat_0=0 lon_0=109 k=0.9996 x_0=500000 y_0=10000000
2309|P|WGS 84 / TM 116 SE|243|183|0|en|proj=tmerc lat_0=0 lon_0=116 k=0.9996 x_0=500000 y_0=10000000
2310|P|WGS 84 / TM 132 SE|244|183|0|en|proj=tmerc lat_0=0 lon_0=132 k=0.9996 x_0=500000 y_0=10000000
2311|P|WGS 84 / TM 6 NE|245|183|0|en|proj=tmerc lat_0=0 lon_0=6 k=0.9996 x_0=500000 y_0=0
2312|P|Garoua / UTM zone 33N|246|75|0|en|proj=utm zone=33
2313|P|Kousseri / UTM zone 33N|247|76|0|en|proj=utm zone=33
2314|P|Trinidad 1903 / Trinidad Grid (ftCla)|248|165|5|en|proj=cass lat_0=10.4416666666667 lon_0=-61.3333333333333 x_0=86501.46392052 y_0=65379.0134283
2315|P|Campo Inchauspe / UTM zone 19S|73|98|0|en|proj=utm zone=19 south
2316|P|Campo Inchauspe / UTM zone 20S|249|98|0|en|proj=utm zone=20 south
2317|P|PSAD56 / ICN Regional|250|120|0|en|proj=lcc lat_0=6 lon_0=-66 lat_1=9 lat_2=3 x_0=1000000 y_0=1000000
2318|P|Ain el Abd / Aramco Lambert|251|82|0|en|proj=lcc lat_0=25.08951 lon_0=48 lat_1=17 lat_2=33 x_0=0 y_0=0
2319|P|ED50 / TM27|152|105|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=500000 y_0=0
2320|P|ED50 / TM30|153|105|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=500000 y_0=0
2321|P|ED50 / TM33|154|105|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=500000 y_0=0
2322|P|ED50 / TM36|155|105|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=500000 y_0=0
2323|P|ED50 / TM39|156|105|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=500000 y_0=0
2324|P|ED50 / TM42|157|105|0|ne|proj=tmerc lat_0=0 lon_0=42 k=1 x_0=500000 y_0=0
2325|P|ED50 / TM45|158|105|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=500000 y_0=0
2326|P|Hong Kong 1980 Grid System|252|201|0|ne|proj=tmerc lat_0=22.3121333333333 lon_0=114.178555555556 k=1 x_0=836694.05 y_0=819069.8
2327|P|Xian 1980 / Gauss-Kruger zone 13|253|200|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=13500000 y_0=0
2328|P|Xian 1980 / Gauss-Kruger zone 14|254|200|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=14500000 y_0=0
2329|P|Xian 1980 / Gauss-Kruger zone 15|255|200|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=15500000 y_0=0
2330|P|Xian 1980 / Gauss-Kruger zone 16|256|200|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=16500000 y_0=0
2331|P|Xian 1980 / Gauss-Kruger zone 17|257|200|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=17500000 y_0=0
2332|P|Xian 1980 / Gauss-Kruger zone 18|258|200|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=18500000 y_0=0
2333|P|Xian 1980 / Gauss-Kruger zone 19|259|200|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=19500000 y_0=0
2334|P|Xian 1980 / Gauss-Kruger zone 20|260|200|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=20500000 y_0=0
2335|P|Xian 1980 / Gauss-Kruger zone 21|261|200|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=21500000 y_0=0
2336|P|Xian 1980 / Gauss-Kruger zone 22|262|200|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=22500000 y_0=0
2337|P|Xian 1980 / Gauss-Kruger zone 23|263|200|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=23500000 y_0=0
2338|P|Xian 1980 / Gauss-Kruger CM 75E|253|200|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
2339|P|Xian 1980 / Gauss-Kruger CM 81E|254|200|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
2340|P|Xian 1980 / Gauss-Kruger CM 87E|255|200|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
2341|P|Xian 1980 / Gauss-Kruger CM 93E|256|200|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
2342|P|Xian 1980 / Gauss-Kruger CM 99E|257|200|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
2343|P|Xian 1980 / Gauss-Kruger CM 105E|258|200|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
2344|P|Xian 1980 / Gauss-Kruger CM 111E|259|200|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
2345|P|Xian 1980 / Gauss-Kruger CM 117E|260|200|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
2346|P|Xian 1980 / Gauss-Kruger CM 123E|261|200|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
2347|P|Xian 1980 / Gauss-Kruger CM 129E|262|200|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
2348|P|Xian 1980 / Gauss-Kruger CM 135E|263|200|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
2349|P|Xian 1980 / 3-degree Gauss-Kruger zone 25|264|200|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=25500000 y_0=0
2350|P|Xian 1980 / 3-degree Gauss-Kruger zone 26|265|200|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=26500000 y_0=0
2351|P|Xian 1980 / 3-degree Gauss-Kruger zone 27|266|200|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=27500000 y_0=0
2352|P|Xian 1980 / 3-degree Gauss-Kruger zone 28|267|200|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=28500000 y_0=0
2353|P|Xian 1980 / 3-degree Gauss-Kruger zone 29|268|200|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=29500000 y_0=0
2354|P|Xian 1980 / 3-degree Gauss-Kruger zone 30|269|200|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=30500000 y_0=0
2355|P|Xian 1980 / 3-degree Gauss-Kruger zone 31|270|200|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=31500000 y_0=0
2356|P|Xian 1980 / 3-degree Gauss-Kruger zone 32|271|200|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=32500000 y_0=0
2357|P|Xian 1980 / 3-degree Gauss-Kruger zone 33|272|200|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=33500000 y_0=0
2358|P|Xian 1980 / 3-degree Gauss-Kruger zone 34|273|200|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=34500000 y_0=0
2359|P|Xian 1980 / 3-degree Gauss-Kruger zone 35|274|200|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=35500000 y_0=0
2360|P|Xian 1980 / 3-degree Gauss-Kruger zone 36|275|200|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=36500000 y_0=0
2361|P|Xian 1980 / 3-degree Gauss-Kruger zone 37|276|200|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=37500000 y_0=0
2362|P|Xian 1980 / 3-degree Gauss-Kruger zone 38|277|200|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=38500000 y_0=0
2363|P|Xian 1980 / 3-degree Gauss-Kruger zone 39|278|200|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=39500000 y_0=0
2364|P|Xian 1980 / 3-degree Gauss-Kruger zone 40|279|200|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=40500000 y_0=0
2365|P|Xian 1980 / 3-degree Gauss-Kruger zone 41|280|200|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=41500000 y_0=0
2366|P|Xian 1980 / 3-degree Gauss-Kruger zone 42|281|200|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=42500000 y_0=0
2367|P|Xian 1980 / 3-degree Gauss-Kruger zone 43|282|200|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=43500000 y_0=0
2368|P|Xian 1980 / 3-degree Gauss-Kruger zone 44|283|200|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=44500000 y_0=0
2369|P|Xian 1980 / 3-degree Gauss-Kruger zone 45|284|200|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=45500000 y_0=0
2370|P|Xian 1980 / 3-degree Gauss-Kruger CM 75E|264|200|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
2371|P|Xian 1980 / 3-degree Gauss-Kruger CM 78E|265|200|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=500000 y_0=0
2372|P|Xian 1980 / 3-degree Gauss-Kruger CM 81E|266|200|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
2373|P|Xian 1980 / 3-degree Gauss-Kruger CM 84E|267|200|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=500000 y_0=0
2374|P|Xian 1980 / 3-degree Gauss-Kruger CM 87E|268|200|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
2375|P|Xian 1980 / 3-degree Gauss-Kruger CM 90E|269|200|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=500000 y_0=0
2376|P|Xian 1980 / 3-degree Gauss-Kruger CM 93E|270|200|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
2377|P|Xian 1980 / 3-degree Gauss-Kruger CM 96E|271|200|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=500000 y_0=0
2378|P|Xian 1980 / 3-degree Gauss-Kruger CM 99E|272|200|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
2379|P|Xian 1980 / 3-degree Gauss-Kruger CM 102E|273|200|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=500000 y_0=0
2380|P|Xian 1980 / 3-degree Gauss-Kruger CM 105E|274|200|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
2381|P|Xian 1980 / 3-degree Gauss-Kruger CM 108E|275|200|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=500000 y_0=0
2382|P|Xian 1980 / 3-degree Gauss-Kruger CM 111E|276|200|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
2383|P|Xian 1980 / 3-degree Gauss-Kruger CM 114E|277|200|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=500000 y_0=0
2384|P|Xian 1980 / 3-degree Gauss-Kruger CM 117E|278|200|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
2385|P|Xian 1980 / 3-degree Gauss-Kruger CM 120E|279|200|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=500000 y_0=0
2386|P|Xian 1980 / 3-degree Gauss-Kruger CM 123E|280|200|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
2387|P|Xian 1980 / 3-degree Gauss-Kruger CM 126E|281|200|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=500000 y_0=0
2388|P|Xian 1980 / 3-degree Gauss-Kruger CM 129E|282|200|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
2389|P|Xian 1980 / 3-degree Gauss-Kruger CM 132E|283|200|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=500000 y_0=0
2390|P|Xian 1980 / 3-degree Gauss-Kruger CM 135E|284|200|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
2391|P|KKJ / Finland zone 1|285|12|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=1500000 y_0=0
2392|P|KKJ / Finland zone 2|286|12|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=2500000 y_0=0
2393|P|KKJ / Finland Uniform Coordinate System|287|12|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=3500000 y_0=0
2394|P|KKJ / Finland zone 4|288|12|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=4500000 y_0=0
2395|P|South Yemen / Gauss-Kruger zone 8|289|47|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=8500000 y_0=0
2396|P|South Yemen / Gauss-Kruger zone 9|290|47|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=9500000 y_0=0
2397|P|Pulkovo 1942(83) / 3-degree Gauss-Kruger zone 3|291|59|0|ne|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=3500000 y_0=0
2398|P|Pulkovo 1942(83) / 3-degree Gauss-Kruger zone 4|292|59|0|ne|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
2399|P|Pulkovo 1942(83) / 3-degree Gauss-Kruger zone 5|293|59|0|ne|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=5500000 y_0=0
2401|P|Beijing 1954 / 3-degree Gauss-Kruger zone 25|264|92|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=25500000 y_0=0
2402|P|Beijing 1954 / 3-degree Gauss-Kruger zone 26|265|92|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=26500000 y_0=0
2403|P|Beijing 1954 / 3-degree Gauss-Kruger zone 27|266|92|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=27500000 y_0=0
2404|P|Beijing 1954 / 3-degree Gauss-Kruger zone 28|267|92|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=28500000 y_0=0
2405|P|Beijing 1954 / 3-degree Gauss-Kruger zone 29|268|92|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=29500000 y_0=0
2406|P|Beijing 1954 / 3-degree Gauss-Kruger zone 30|269|92|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=30500000 y_0=0
2407|P|Beijing 1954 / 3-degree Gauss-Kruger zone 31|270|92|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=31500000 y_0=0
2408|P|Beijing 1954 / 3-degree Gauss-Kruger zone 32|271|92|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=32500000 y_0=0
2409|P|Beijing 1954 / 3-degree Gauss-Kruger zone 33|272|92|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=33500000 y_0=0
2410|P|Beijing 1954 / 3-degree Gauss-Kruger zone 34|273|92|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=34500000 y_0=0
2411|P|Beijing 1954 / 3-degree Gauss-Kruger zone 35|274|92|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=35500000 y_0=0
2412|P|Beijing 1954 / 3-degree Gauss-Kruger zone 36|275|92|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=36500000 y_0=0
2413|P|Beijing 1954 / 3-degree Gauss-Kruger zone 37|276|92|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=37500000 y_0=0
2414|P|Beijing 1954 / 3-degree Gauss-Kruger zone 38|277|92|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=38500000 y_0=0
2415|P|Beijing 1954 / 3-degree Gauss-Kruger zone 39|278|92|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=39500000 y_0=0
2416|P|Beijing 1954 / 3-degree Gauss-Kruger zone 40|279|92|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=40500000 y_0=0
2417|P|Beijing 1954 / 3-degree Gauss-Kruger zone 41|280|92|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=41500000 y_0=0
2418|P|Beijing 1954 / 3-degree Gauss-Kruger zone 42|281|92|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=42500000 y_0=0
2419|P|Beijing 1954 / 3-degree Gauss-Kruger zone 43|282|92|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=43500000 y_0=0
2420|P|Beijing 1954 / 3-degree Gauss-Kruger zone 44|283|92|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=44500000 y_0=0
2421|P|Beijing 1954 / 3-degree Gauss-Kruger zone 45|284|92|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=45500000 y_0=0
2422|P|Beijing 1954 / 3-degree Gauss-Kruger CM 75E|264|92|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
2423|P|Beijing 1954 / 3-degree Gauss-Kruger CM 78E|265|92|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=500000 y_0=0
2424|P|Beijing 1954 / 3-degree Gauss-Kruger CM 81E|266|92|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
2425|P|Beijing 1954 / 3-degree Gauss-Kruger CM 84E|267|92|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=500000 y_0=0
2426|P|Beijing 1954 / 3-degree Gauss-Kruger CM 87E|268|92|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
2427|P|Beijing 1954 / 3-degree Gauss-Kruger CM 90E|269|92|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=500000 y_0=0
2428|P|Beijing 1954 / 3-degree Gauss-Kruger CM 93E|270|92|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
2429|P|Beijing 1954 / 3-degree Gauss-Kruger CM 96E|271|92|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=500000 y_0=0
2430|P|Beijing 1954 / 3-degree Gauss-Kruger CM 99E|272|92|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
2431|P|Beijing 1954 / 3-degree Gauss-Kruger CM 102E|273|92|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=500000 y_0=0
2432|P|Beijing 1954 / 3-degree Gauss-Kruger CM 105E|274|92|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
2433|P|Beijing 1954 / 3-degree Gauss-Kruger CM 108E|275|92|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=500000 y_0=0
2434|P|Beijing 1954 / 3-degree Gauss-Kruger CM 111E|276|92|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
2435|P|Beijing 1954 / 3-degree Gauss-Kruger CM 114E|277|92|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=500000 y_0=0
2436|P|Beijing 1954 / 3-degree Gauss-Kruger CM 117E|278|92|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
2437|P|Beijing 1954 / 3-degree Gauss-Kruger CM 120E|279|92|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=500000 y_0=0
2438|P|Beijing 1954 / 3-degree Gauss-Kruger CM 123E|280|92|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
2439|P|Beijing 1954 / 3-degree Gauss-Kruger CM 126E|281|92|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=500000 y_0=0
2440|P|Beijing 1954 / 3-degree Gauss-Kruger CM 129E|282|92|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
2441|P|Beijing 1954 / 3-degree Gauss-Kruger CM 132E|283|92|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=500000 y_0=0
2442|P|Beijing 1954 / 3-degree Gauss-Kruger CM 135E|284|92|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
2443|P|JGD2000 / Japan Plane Rectangular CS I|294|202|0|ne|proj=tmerc lat_0=33 lon_0=129.5 k=0.9999 x_0=0 y_0=0
2444|P|JGD2000 / Japan Plane Rectangular CS II|295|202|0|ne|proj=tmerc lat_0=33 lon_0=131 k=0.9999 x_0=0 y_0=0
2445|P|JGD2000 / Japan Plane Rectangular CS III|296|202|0|ne|proj=tmerc lat_0=36 lon_0=132.166666666667 k=0.9999 x_0=0 y_0=0
2446|P|JGD2000 / Japan Plane Rectangular CS IV|297|202|0|ne|proj=tmerc lat_0=33 lon_0=133.5 k=0.9999 x_0=0 y_0=0
2447|P|JGD2000 / Japan Plane Rectangular CS V|298|202|0|ne|proj=tmerc lat_0=36 lon_0=134.333333333333 k=0.9999 x_0=0 y_0=0
2448|P|JGD2000 / Japan Plane Rectangular CS VI|299|202|0|ne|proj=tmerc lat_0=36 lon_0=136 k=0.9999 x_0=0 y_0=0
2449|P|JGD2000 / Japan Plane Rectangular CS VII|300|202|0|ne|proj=tmerc lat_0=36 lon_0=137.166666666667 k=0.9999 x_0=0 y_0=0
2450|P|JGD2000 / Japan Plane Rectangular CS VIII|301|202|0|ne|proj=tmerc lat_0=36 lon_0=138.5 k=0.9999 x_0=0 y_0=0
2451|P|JGD2000 / Japan Plane Rectangular CS IX|302|202|0|ne|proj=tmerc lat_0=36 lon_0=139.833333333333 k=0.9999 x_0=0 y_0=0
2452|P|JGD2000 / Japan Plane Rectangular CS X|303|202|0|ne|proj=tmerc lat_0=40 lon_0=140.833333333333 k=0.9999 x_0=0 y_0=0
2453|P|JGD2000 / Japan Plane Rectangular CS XI|304|202|0|ne|proj=tmerc lat_0=44 lon_0=140.25 k=0.9999 x_0=0 y_0=0
2454|P|JGD2000 / Japan Plane Rectangular CS XII|305|202|0|ne|proj=tmerc lat_0=44 lon_0=142.25 k=0.9999 x_0=0 y_0=0
2455|P|JGD2000 / Japan Plane Rectangular CS XIII|306|202|0|ne|proj=tmerc lat_0=44 lon_0=144.25 k=0.9999 x_0=0 y_0=0
2456|P|JGD2000 / Japan Plane Rectangular CS XIV|307|202|0|ne|proj=tmerc lat_0=26 lon_0=142 k=0.9999 x_0=0 y_0=0
2457|P|JGD2000 / Japan Plane Rectangular CS XV|308|202|0|ne|proj=tmerc lat_0=26 lon_0=127.5 k=0.9999 x_0=0 y_0=0
2458|P|JGD2000 / Japan Plane Rectangular CS XVI|309|202|0|ne|proj=tmerc lat_0=26 lon_0=124 k=0.9999 x_0=0 y_0=0
2459|P|JGD2000 / Japan Plane Rectangular CS XVII|310|202|0|ne|proj=tmerc lat_0=26 lon_0=131 k=0.9999 x_0=0 y_0=0
2460|P|JGD2000 / Japan Plane Rectangular CS XVIII|311|202|0|ne|proj=tmerc lat_0=20 lon_0=136 k=0.9999 x_0=0 y_0=0
2461|P|JGD2000 / Japan Plane Rectangular CS XIX|312|202|0|ne|proj=tmerc lat_0=26 lon_0=154 k=0.9999 x_0=0 y_0=0
2462|P|Albanian 1987 / Gauss-Kruger zone 4|313|69|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=4500000 y_0=0
2463|P|Pulkovo 1995 / Gauss-Kruger CM 21E|314|78|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=500000 y_0=0
2464|P|Pulkovo 1995 / Gauss-Kruger CM 27E|315|78|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=500000 y_0=0
2465|P|Pulkovo 1995 / Gauss-Kruger CM 33E|316|78|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=500000 y_0=0
2466|P|Pulkovo 1995 / Gauss-Kruger CM 39E|317|78|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=500000 y_0=0
2467|P|Pulkovo 1995 / Gauss-Kruger CM 45E|318|78|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=500000 y_0=0
2468|P|Pulkovo 1995 / Gauss-Kruger CM 51E|319|78|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=500000 y_0=0
2469|P|Pulkovo 1995 / Gauss-Kruger CM 57E|320|78|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=500000 y_0=0
2470|P|Pulkovo 1995 / Gauss-Kruger CM 63E|321|78|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=500000 y_0=0
2471|P|Pulkovo 1995 / Gauss-Kruger CM 69E|322|78|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=500000 y_0=0
2472|P|Pulkovo 1995 / Gauss-Kruger CM 75E|323|78|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
2473|P|Pulkovo 1995 / Gauss-Kruger CM 81E|324|78|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
2474|P|Pulkovo 1995 / Gauss-Kruger CM 87E|325|78|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
2475|P|Pulkovo 1995 / Gauss-Kruger CM 93E|326|78|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
2476|P|Pulkovo 1995 / Gauss-Kruger CM 99E|327|78|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
2477|P|Pulkovo 1995 / Gauss-Kruger CM 105E|328|78|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
2478|P|Pulkovo 1995 / Gauss-Kruger CM 111E|329|78|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
2479|P|Pulkovo 1995 / Gauss-Kruger CM 117E|330|78|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
2480|P|Pulkovo 1995 / Gauss-Kruger CM 123E|331|78|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
2481|P|Pulkovo 1995 / Gauss-Kruger CM 129E|332|78|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
2482|P|Pulkovo 1995 / Gauss-Kruger CM 135E|333|78|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
2483|P|Pulkovo 1995 / Gauss-Kruger CM 141E|334|78|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=500000 y_0=0
2484|P|Pulkovo 1995 / Gauss-Kruger CM 147E|335|78|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=500000 y_0=0
2485|P|Pulkovo 1995 / Gauss-Kruger CM 153E|336|78|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=500000 y_0=0
2486|P|Pulkovo 1995 / Gauss-Kruger CM 159E|337|78|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=500000 y_0=0
2487|P|Pulkovo 1995 / Gauss-Kruger CM 165E|338|78|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=500000 y_0=0
2488|P|Pulkovo 1995 / Gauss-Kruger CM 171E|339|78|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=500000 y_0=0
2489|P|Pulkovo 1995 / Gauss-Kruger CM 177E|340|78|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=500000 y_0=0
2490|P|Pulkovo 1995 / Gauss-Kruger CM 177W|341|78|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=500000 y_0=0
2491|P|Pulkovo 1995 / Gauss-Kruger CM 171W|342|78|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=500000 y_0=0
2494|P|Pulkovo 1942 / Gauss-Kruger CM 21E|343|152|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=500000 y_0=0
2495|P|Pulkovo 1942 / Gauss-Kruger CM 27E|344|152|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=500000 y_0=0
2496|P|Pulkovo 1942 / Gauss-Kruger CM 33E|345|152|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=500000 y_0=0
2497|P|Pulkovo 1942 / Gauss-Kruger CM 39E|346|152|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=500000 y_0=0
2498|P|Pulkovo 1942 / Gauss-Kruger CM 45E|347|152|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=500000 y_0=0
2499|P|Pulkovo 1942 / Gauss-Kruger CM 51E|348|152|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=500000 y_0=0
2500|P|Pulkovo 1942 / Gauss-Kruger CM 57E|349|152|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=500000 y_0=0
2501|P|Pulkovo 1942 / Gauss-Kruger CM 63E|350|152|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=500000 y_0=0
2502|P|Pulkovo 1942 / Gauss-Kruger CM 69E|351|152|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=500000 y_0=0
2503|P|Pulkovo 1942 / Gauss-Kruger CM 75E|352|152|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
2504|P|Pulkovo 1942 / Gauss-Kruger CM 81E|353|152|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
2505|P|Pulkovo 1942 / Gauss-Kruger CM 87E|354|152|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
2506|P|Pulkovo 1942 / Gauss-Kruger CM 93E|326|152|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
2507|P|Pulkovo 1942 / Gauss-Kruger CM 99E|327|152|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
2508|P|Pulkovo 1942 / Gauss-Kruger CM 105E|328|152|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
2509|P|Pulkovo 1942 / Gauss-Kruger CM 111E|329|152|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
2510|P|Pulkovo 1942 / Gauss-Kruger CM 117E|330|152|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
2511|P|Pulkovo 1942 / Gauss-Kruger CM 123E|331|152|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
2512|P|Pulkovo 1942 / Gauss-Kruger CM 129E|332|152|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
2513|P|Pulkovo 1942 / Gauss-Kruger CM 135E|333|152|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
2514|P|Pulkovo 1942 / Gauss-Kruger CM 141E|334|152|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=500000 y_0=0
2515|P|Pulkovo 1942 / Gauss-Kruger CM 147E|335|152|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=500000 y_0=0
2516|P|Pulkovo 1942 / Gauss-Kruger CM 153E|336|152|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=500000 y_0=0
2517|P|Pulkovo 1942 / Gauss-Kruger CM 159E|337|152|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=500000 y_0=0
2518|P|Pulkovo 1942 / Gauss-Kruger CM 165E|338|152|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=500000 y_0=0
2519|P|Pulkovo 1942 / Gauss-Kruger CM 171E|339|152|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=500000 y_0=0
2520|P|Pulkovo 1942 / Gauss-Kruger CM 177E|340|152|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=500000 y_0=0
2521|P|Pulkovo 1942 / Gauss-Kruger CM 177W|341|152|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=500000 y_0=0
2522|P|Pulkovo 1942 / Gauss-Kruger CM 171W|342|152|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=500000 y_0=0
2523|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 7|355|152|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=7500000 y_0=0
2524|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 8|356|152|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=8500000 y_0=0
2525|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 9|357|152|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=9500000 y_0=0
2526|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 10|358|152|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=10500000 y_0=0
2527|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 11|359|152|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=11500000 y_0=0
2528|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 12|360|152|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=12500000 y_0=0
2529|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 13|361|152|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=13500000 y_0=0
2530|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 14|362|152|0|ne|proj=tmerc lat_0=0 lon_0=42 k=1 x_0=14500000 y_0=0
2531|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 15|363|152|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=15500000 y_0=0
2532|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 16|364|152|0|ne|proj=tmerc lat_0=0 lon_0=48 k=1 x_0=16500000 y_0=0
2533|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 17|365|152|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=17500000 y_0=0
2534|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 18|366|152|0|ne|proj=tmerc lat_0=0 lon_0=54 k=1 x_0=18500000 y_0=0
2535|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 19|367|152|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=19500000 y_0=0
2536|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 20|368|152|0|ne|proj=tmerc lat_0=0 lon_0=60 k=1 x_0=20500000 y_0=0
2537|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 21|369|152|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=21500000 y_0=0
2538|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 22|370|152|0|ne|proj=tmerc lat_0=0 lon_0=66 k=1 x_0=22500000 y_0=0
2539|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 23|371|152|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=23500000 y_0=0
2540|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 24|372|152|0|ne|proj=tmerc lat_0=0 lon_0=72 k=1 x_0=24500000 y_0=0
2541|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 25|373|152|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=25500000 y_0=0
2542|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 26|374|152|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=26500000 y_0=0
2543|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 27|375|152|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=27500000 y_0=0
2544|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 28|376|152|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=28500000 y_0=0
2545|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 29|377|152|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=29500000 y_0=0
2546|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 30|378|152|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=30500000 y_0=0
2547|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 31|379|152|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=31500000 y_0=0
2548|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 32|380|152|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=32500000 y_0=0
2549|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 33|381|152|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=33500000 y_0=0
2551|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 34|382|152|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=34500000 y_0=0
2552|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 35|383|152|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=35500000 y_0=0
2553|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 36|384|152|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=36500000 y_0=0
2554|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 37|385|152|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=37500000 y_0=0
2555|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 38|386|152|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=38500000 y_0=0
2556|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 39|387|152|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=39500000 y_0=0
2557|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 40|388|152|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=40500000 y_0=0
2558|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 41|389|152|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=41500000 y_0=0
2559|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 42|390|152|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=42500000 y_0=0
2560|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 43|391|152|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=43500000 y_0=0
2561|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 44|392|152|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=44500000 y_0=0
2562|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 45|393|152|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=45500000 y_0=0
2563|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 46|394|152|0|ne|proj=tmerc lat_0=0 lon_0=138 k=1 x_0=46500000 y_0=0
2564|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 47|395|152|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=47500000 y_0=0
2565|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 48|396|152|0|ne|proj=tmerc lat_0=0 lon_0=144 k=1 x_0=48500000 y_0=0
2566|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 49|397|152|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=49500000 y_0=0
2567|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 50|398|152|0|ne|proj=tmerc lat_0=0 lon_0=150 k=1 x_0=50500000 y_0=0
2568|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 51|399|152|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=51500000 y_0=0
2569|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 52|400|152|0|ne|proj=tmerc lat_0=0 lon_0=156 k=1 x_0=52500000 y_0=0
2570|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 53|401|152|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=53500000 y_0=0
2571|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 54|402|152|0|ne|proj=tmerc lat_0=0 lon_0=162 k=1 x_0=54500000 y_0=0
2572|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 55|403|152|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=55500000 y_0=0
2573|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 56|404|152|0|ne|proj=tmerc lat_0=0 lon_0=168 k=1 x_0=56500000 y_0=0
2574|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 57|405|152|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=57500000 y_0=0
2575|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 58|406|152|0|ne|proj=tmerc lat_0=0 lon_0=174 k=1 x_0=58500000 y_0=0
2576|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 59|407|152|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=59500000 y_0=0
2578|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 61|408|152|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=61500000 y_0=0
2579|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 62|409|152|0|ne|proj=tmerc lat_0=0 lon_0=-174 k=1 x_0=62500000 y_0=0
2580|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 63|410|152|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=63500000 y_0=0
2581|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 64|411|152|0|ne|proj=tmerc lat_0=0 lon_0=-168 k=1 x_0=64500000 y_0=0
2582|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 21E|355|152|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=500000 y_0=0
2583|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 24E|356|152|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=500000 y_0=0
2584|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 27E|357|152|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=500000 y_0=0
2585|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 30E|358|152|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=500000 y_0=0
2586|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 33E|359|152|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=500000 y_0=0
2587|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 36E|360|152|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=500000 y_0=0
2588|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 39E|361|152|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=500000 y_0=0
2589|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 42E|362|152|0|ne|proj=tmerc lat_0=0 lon_0=42 k=1 x_0=500000 y_0=0
2590|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 45E|363|152|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=500000 y_0=0
2591|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 48E|364|152|0|ne|proj=tmerc lat_0=0 lon_0=48 k=1 x_0=500000 y_0=0
2592|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 51E|365|152|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=500000 y_0=0
2593|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 54E|366|152|0|ne|proj=tmerc lat_0=0 lon_0=54 k=1 x_0=500000 y_0=0
2594|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 57E|367|152|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=500000 y_0=0
2595|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 60E|368|152|0|ne|proj=tmerc lat_0=0 lon_0=60 k=1 x_0=500000 y_0=0
2596|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 63E|369|152|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=500000 y_0=0
2597|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 66E|370|152|0|ne|proj=tmerc lat_0=0 lon_0=66 k=1 x_0=500000 y_0=0
2598|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 69E|371|152|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=500000 y_0=0
2599|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 72E|372|152|0|ne|proj=tmerc lat_0=0 lon_0=72 k=1 x_0=500000 y_0=0
2601|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 75E|373|152|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
2602|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 78E|374|152|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=500000 y_0=0
2603|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 81E|375|152|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
2604|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 84E|376|152|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=500000 y_0=0
2605|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 87E|377|152|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
2606|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 90E|378|152|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=500000 y_0=0
2607|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 93E|379|152|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
2608|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 96E|380|152|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=500000 y_0=0
2609|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 99E|381|152|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
2610|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 102E|382|152|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=500000 y_0=0
2611|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 105E|383|152|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
2612|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 108E|384|152|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=500000 y_0=0
2613|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 111E|385|152|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
2614|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 114E|386|152|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=500000 y_0=0
2615|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 117E|387|152|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
2616|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 120E|388|152|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=500000 y_0=0
2617|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 123E|389|152|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
2618|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 126E|390|152|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=500000 y_0=0
2619|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 129E|391|152|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
2620|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 132E|392|152|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=500000 y_0=0
2621|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 135E|393|152|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
2622|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 138E|394|152|0|ne|proj=tmerc lat_0=0 lon_0=138 k=1 x_0=500000 y_0=0
2623|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 141E|395|152|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=500000 y_0=0
2624|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 144E|396|152|0|ne|proj=tmerc lat_0=0 lon_0=144 k=1 x_0=500000 y_0=0
2625|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 147E|397|152|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=500000 y_0=0
2626|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 150E|398|152|0|ne|proj=tmerc lat_0=0 lon_0=150 k=1 x_0=500000 y_0=0
2627|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 153E|399|152|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=500000 y_0=0
2628|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 156E|400|152|0|ne|proj=tmerc lat_0=0 lon_0=156 k=1 x_0=500000 y_0=0
2629|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 159E|401|152|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=500000 y_0=0
2630|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 162E|402|152|0|ne|proj=tmerc lat_0=0 lon_0=162 k=1 x_0=500000 y_0=0
2631|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 165E|403|152|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=500000 y_0=0
2632|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 168E|404|152|0|ne|proj=tmerc lat_0=0 lon_0=168 k=1 x_0=500000 y_0=0
2633|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 171E|405|152|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=500000 y_0=0
2634|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 174E|406|152|0|ne|proj=tmerc lat_0=0 lon_0=174 k=1 x_0=500000 y_0=0
2635|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 177E|407|152|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=500000 y_0=0
2636|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 180E|412|152|0|ne|proj=tmerc lat_0=0 lon_0=180 k=1 x_0=500000 y_0=0
2637|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 177W|408|152|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=500000 y_0=0
2638|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 174W|409|152|0|ne|proj=tmerc lat_0=0 lon_0=-174 k=1 x_0=500000 y_0=0
2639|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 171W|410|152|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=500000 y_0=0
2640|P|Pulkovo 1942 / 3-degree Gauss-Kruger CM 168W|411|152|0|ne|proj=tmerc lat_0=0 lon_0=-168 k=1 x_0=500000 y_0=0
2641|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 7|413|78|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=7500000 y_0=0
2642|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 8|414|78|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=8500000 y_0=0
2643|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 9|415|78|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=9500000 y_0=0
2644|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 10|416|78|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=10500000 y_0=0
2645|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 11|417|78|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=11500000 y_0=0
2646|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 12|418|78|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=12500000 y_0=0
2647|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 13|419|78|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=13500000 y_0=0
2648|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 14|420|78|0|ne|proj=tmerc lat_0=0 lon_0=42 k=1 x_0=14500000 y_0=0
2649|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 15|421|78|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=15500000 y_0=0
2650|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 16|422|78|0|ne|proj=tmerc lat_0=0 lon_0=48 k=1 x_0=16500000 y_0=0
2651|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 17|423|78|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=17500000 y_0=0
2652|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 18|424|78|0|ne|proj=tmerc lat_0=0 lon_0=54 k=1 x_0=18500000 y_0=0
2653|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 19|425|78|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=19500000 y_0=0
2654|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 20|426|78|0|ne|proj=tmerc lat_0=0 lon_0=60 k=1 x_0=20500000 y_0=0
2655|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 21|427|78|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=21500000 y_0=0
2656|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 22|428|78|0|ne|proj=tmerc lat_0=0 lon_0=66 k=1 x_0=22500000 y_0=0
2657|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 23|429|78|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=23500000 y_0=0
2658|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 24|430|78|0|ne|proj=tmerc lat_0=0 lon_0=72 k=1 x_0=24500000 y_0=0
2659|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 25|431|78|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=25500000 y_0=0
2660|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 26|432|78|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=26500000 y_0=0
2661|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 27|433|78|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=27500000 y_0=0
2662|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 28|434|78|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=28500000 y_0=0
2663|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 29|435|78|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=29500000 y_0=0
2664|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 30|378|78|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=30500000 y_0=0
2665|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 31|379|78|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=31500000 y_0=0
2666|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 32|380|78|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=32500000 y_0=0
2667|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 33|381|78|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=33500000 y_0=0
2668|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 34|382|78|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=34500000 y_0=0
2669|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 35|383|78|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=35500000 y_0=0
2670|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 36|384|78|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=36500000 y_0=0
2671|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 37|385|78|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=37500000 y_0=0
2672|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 38|386|78|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=38500000 y_0=0
2673|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 39|387|78|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=39500000 y_0=0
2674|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 40|388|78|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=40500000 y_0=0
2675|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 41|389|78|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=41500000 y_0=0
2676|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 42|390|78|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=42500000 y_0=0
2677|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 43|391|78|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=43500000 y_0=0
2678|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 44|392|78|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=44500000 y_0=0
2679|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 45|393|78|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=45500000 y_0=0
2680|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 46|394|78|0|ne|proj=tmerc lat_0=0 lon_0=138 k=1 x_0=46500000 y_0=0
2681|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 47|395|78|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=47500000 y_0=0
2682|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 48|396|78|0|ne|proj=tmerc lat_0=0 lon_0=144 k=1 x_0=48500000 y_0=0
2683|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 49|397|78|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=49500000 y_0=0
2684|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 50|398|78|0|ne|proj=tmerc lat_0=0 lon_0=150 k=1 x_0=50500000 y_0=0
2685|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 51|399|78|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=51500000 y_0=0
2686|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 52|400|78|0|ne|proj=tmerc lat_0=0 lon_0=156 k=1 x_0=52500000 y_0=0
2687|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 53|401|78|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=53500000 y_0=0
2688|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 54|402|78|0|ne|proj=tmerc lat_0=0 lon_0=162 k=1 x_0=54500000 y_0=0
2689|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 55|403|78|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=55500000 y_0=0
2690|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 56|404|78|0|ne|proj=tmerc lat_0=0 lon_0=168 k=1 x_0=56500000 y_0=0
2691|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 57|405|78|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=57500000 y_0=0
2692|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 58|406|78|0|ne|proj=tmerc lat_0=0 lon_0=174 k=1 x_0=58500000 y_0=0
2693|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 59|407|78|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=59500000 y_0=0
2695|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 61|408|78|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=61500000 y_0=0
2696|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 62|409|78|0|ne|proj=tmerc lat_0=0 lon_0=-174 k=1 x_0=62500000 y_0=0
2697|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 63|410|78|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=63500000 y_0=0
2698|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 64|411|78|0|ne|proj=tmerc lat_0=0 lon_0=-168 k=1 x_0=64500000 y_0=0
2699|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 21E|413|78|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=500000 y_0=0
2700|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 24E|414|78|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=500000 y_0=0
2701|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 27E|415|78|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=500000 y_0=0
2702|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 30E|416|78|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=500000 y_0=0
2703|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 33E|417|78|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=500000 y_0=0
2704|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 36E|418|78|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=500000 y_0=0
2705|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 39E|419|78|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=500000 y_0=0
2706|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 42E|420|78|0|ne|proj=tmerc lat_0=0 lon_0=42 k=1 x_0=500000 y_0=0
2707|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 45E|421|78|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=500000 y_0=0
2708|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 48E|422|78|0|ne|proj=tmerc lat_0=0 lon_0=48 k=1 x_0=500000 y_0=0
2709|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 51E|423|78|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=500000 y_0=0
2710|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 54E|424|78|0|ne|proj=tmerc lat_0=0 lon_0=54 k=1 x_0=500000 y_0=0
2711|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 57E|425|78|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=500000 y_0=0
2712|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 60E|426|78|0|ne|proj=tmerc lat_0=0 lon_0=60 k=1 x_0=500000 y_0=0
2713|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 63E|427|78|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=500000 y_0=0
2714|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 66E|428|78|0|ne|proj=tmerc lat_0=0 lon_0=66 k=1 x_0=500000 y_0=0
2715|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 69E|429|78|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=500000 y_0=0
2716|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 72E|430|78|0|ne|proj=tmerc lat_0=0 lon_0=72 k=1 x_0=500000 y_0=0
2717|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 75E|431|78|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
2718|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 78E|432|78|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=500000 y_0=0
2719|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 81E|433|78|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
2720|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 84E|434|78|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=500000 y_0=0
2721|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 87E|435|78|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
2722|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 90E|378|78|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=500000 y_0=0
2723|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 93E|379|78|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
2724|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 96E|380|78|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=500000 y_0=0
2725|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 99E|381|78|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
2726|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 102E|382|78|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=500000 y_0=0
2727|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 105E|383|78|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
2728|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 108E|384|78|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=500000 y_0=0
2729|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 111E|385|78|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
2730|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 114E|386|78|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=500000 y_0=0
2731|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 117E|387|78|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
2732|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 120E|388|78|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=500000 y_0=0
2733|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 123E|389|78|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
2734|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 126E|390|78|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=500000 y_0=0
2735|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 129E|391|78|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
2736|P|Tete / UTM zone 36S|436|14|0|en|proj=utm zone=36 south
2737|P|Tete / UTM zone 37S|437|14|0|en|proj=utm zone=37 south
2738|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 132E|392|78|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=500000 y_0=0
2739|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 135E|393|78|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
2740|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 138E|394|78|0|ne|proj=tmerc lat_0=0 lon_0=138 k=1 x_0=500000 y_0=0
2741|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 141E|395|78|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=500000 y_0=0
2742|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 144E|396|78|0|ne|proj=tmerc lat_0=0 lon_0=144 k=1 x_0=500000 y_0=0
2743|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 147E|397|78|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=500000 y_0=0
2744|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 150E|398|78|0|ne|proj=tmerc lat_0=0 lon_0=150 k=1 x_0=500000 y_0=0
2745|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 153E|399|78|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=500000 y_0=0
2746|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 156E|400|78|0|ne|proj=tmerc lat_0=0 lon_0=156 k=1 x_0=500000 y_0=0
2747|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 159E|401|78|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=500000 y_0=0
2748|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 162E|402|78|0|ne|proj=tmerc lat_0=0 lon_0=162 k=1 x_0=500000 y_0=0
2749|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 165E|403|78|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=500000 y_0=0
2750|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 168E|404|78|0|ne|proj=tmerc lat_0=0 lon_0=168 k=1 x_0=500000 y_0=0
2751|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 171E|405|78|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=500000 y_0=0
2752|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 174E|406|78|0|ne|proj=tmerc lat_0=0 lon_0=174 k=1 x_0=500000 y_0=0
2753|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 177E|407|78|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=500000 y_0=0
2754|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 180E|412|78|0|ne|proj=tmerc lat_0=0 lon_0=180 k=1 x_0=500000 y_0=0
2755|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 177W|408|78|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=500000 y_0=0
2756|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 174W|409|78|0|ne|proj=tmerc lat_0=0 lon_0=-174 k=1 x_0=500000 y_0=0
2757|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 171W|410|78|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=500000 y_0=0
2758|P|Pulkovo 1995 / 3-degree Gauss-Kruger CM 168W|411|78|0|ne|proj=tmerc lat_0=0 lon_0=-168 k=1 x_0=500000 y_0=0
2759|P|NAD83(HARN) / Alabama East|438|35|0|en|proj=tmerc lat_0=30.5 lon_0=-85.8333333333333 k=0.99996 x_0=200000 y_0=0
2760|P|NAD83(HARN) / Alabama West|439|35|0|en|proj=tmerc lat_0=30 lon_0=-87.5 k=0.999933333 x_0=600000 y_0=0
2761|P|NAD83(HARN) / Arizona East|167|35|0|en|proj=tmerc lat_0=31 lon_0=-110.166666666667 k=0.9999 x_0=213360 y_0=0
2762|P|NAD83(HARN) / Arizona Central|168|35|0|en|proj=tmerc lat_0=31 lon_0=-111.916666666667 k=0.9999 x_0=213360 y_0=0
2763|P|NAD83(HARN) / Arizona West|169|35|0|en|proj=tmerc lat_0=31 lon_0=-113.75 k=0.999933333 x_0=213360 y_0=0
2764|P|NAD83(HARN) / Arkansas North|440|35|0|en|proj=lcc lat_0=34.3333333333333 lon_0=-92 lat_1=36.2333333333333 lat_2=34.9333333333333 x_0=400000 y_0=0
2765|P|NAD83(HARN) / Arkansas South|441|35|0|en|proj=lcc lat_0=32.6666666666667 lon_0=-92 lat_1=34.7666666666667 lat_2=33.3 x_0=400000 y_0=400000
2766|P|NAD83(HARN) / California zone 1|170|35|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-122 lat_1=41.6666666666667 lat_2=40 x_0=2000000 y_0=500000
2767|P|NAD83(HARN) / California zone 2|171|35|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-122 lat_1=39.8333333333333 lat_2=38.3333333333333 x_0=2000000 y_0=500000
2768|P|NAD83(HARN) / California zone 3|172|35|0|en|proj=lcc lat_0=36.5 lon_0=-120.5 lat_1=38.4333333333333 lat_2=37.0666666666667 x_0=2000000 y_0=500000
2769|P|NAD83(HARN) / California zone 4|173|35|0|en|proj=lcc lat_0=35.3333333333333 lon_0=-119 lat_1=37.25 lat_2=36 x_0=2000000 y_0=500000
2770|P|NAD83(HARN) / California zone 5|174|35|0|en|proj=lcc lat_0=33.5 lon_0=-118 lat_1=35.4666666666667 lat_2=34.0333333333333 x_0=2000000 y_0=500000
2771|P|NAD83(HARN) / California zone 6|175|35|0|en|proj=lcc lat_0=32.1666666666667 lon_0=-116.25 lat_1=33.8833333333333 lat_2=32.7833333333333 x_0=2000000 y_0=500000
2772|P|NAD83(HARN) / Colorado North|176|35|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-105.5 lat_1=40.7833333333333 lat_2=39.7166666666667 x_0=914401.8289 y_0=304800.6096
2773|P|NAD83(HARN) / Colorado Central|177|35|0|en|proj=lcc lat_0=37.8333333333333 lon_0=-105.5 lat_1=39.75 lat_2=38.45 x_0=914401.8289 y_0=304800.6096
2774|P|NAD83(HARN) / Colorado South|178|35|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-105.5 lat_1=38.4333333333333 lat_2=37.2333333333333 x_0=914401.8289 y_0=304800.6096
2775|P|NAD83(HARN) / Connecticut|179|35|0|en|proj=lcc lat_0=40.8333333333333 lon_0=-72.75 lat_1=41.8666666666667 lat_2=41.2 x_0=304800.6096 y_0=152400.3048
2776|P|NAD83(HARN) / Delaware|180|35|0|en|proj=tmerc lat_0=38 lon_0=-75.4166666666667 k=0.999995 x_0=200000 y_0=0
2777|P|NAD83(HARN) / Florida East|181|35|0|en|proj=tmerc lat_0=24.3333333333333 lon_0=-81 k=0.999941177 x_0=200000 y_0=0
2778|P|NAD83(HARN) / Florida West|182|35|0|en|proj=tmerc lat_0=24.3333333333333 lon_0=-82 k=0.999941177 x_0=200000 y_0=0
2779|P|NAD83(HARN) / Florida North|183|35|0|en|proj=lcc lat_0=29 lon_0=-84.5 lat_1=30.75 lat_2=29.5833333333333 x_0=600000 y_0=0
2780|P|NAD83(HARN) / Georgia East|184|35|0|en|proj=tmerc lat_0=30 lon_0=-82.1666666666667 k=0.9999 x_0=200000 y_0=0
2781|P|NAD83(HARN) / Georgia West|185|35|0|en|proj=tmerc lat_0=30 lon_0=-84.1666666666667 k=0.9999 x_0=700000 y_0=0
2782|P|NAD83(HARN) / Hawaii zone 1|442|35|0|en|proj=tmerc lat_0=18.8333333333333 lon_0=-155.5 k=0.999966667 x_0=500000 y_0=0
2783|P|NAD83(HARN) / Hawaii zone 2|443|35|0|en|proj=tmerc lat_0=20.3333333333333 lon_0=-156.666666666667 k=0.999966667 x_0=500000 y_0=0
2784|P|NAD83(HARN) / Hawaii zone 3|444|35|0|en|proj=tmerc lat_0=21.1666666666667 lon_0=-158 k=0.99999 x_0=500000 y_0=0
2785|P|NAD83(HARN) / Hawaii zone 4|445|35|0|en|proj=tmerc lat_0=21.8333333333333 lon_0=-159.5 k=0.99999 x_0=500000 y_0=0
2786|P|NAD83(HARN) / Hawaii zone 5|446|35|0|en|proj=tmerc lat_0=21.6666666666667 lon_0=-160.166666666667 k=1 x_0=500000 y_0=0
2787|P|NAD83(HARN) / Idaho East|186|35|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-112.166666666667 k=0.999947368 x_0=200000 y_0=0
2788|P|NAD83(HARN) / Idaho Central|187|35|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-114 k=0.999947368 x_0=500000 y_0=0
2789|P|NAD83(HARN) / Idaho West|188|35|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-115.75 k=0.999933333 x_0=800000 y_0=0
2790|P|NAD83(HARN) / Illinois East|447|35|0|en|proj=tmerc lat_0=36.6666666666667 lon_0=-88.3333333333333 k=0.999975 x_0=300000 y_0=0
2791|P|NAD83(HARN) / Illinois West|448|35|0|en|proj=tmerc lat_0=36.6666666666667 lon_0=-90.1666666666667 k=0.999941177 x_0=700000 y_0=0
2792|P|NAD83(HARN) / Indiana East|449|35|0|en|proj=tmerc lat_0=37.5 lon_0=-85.6666666666667 k=0.999966667 x_0=100000 y_0=250000
2793|P|NAD83(HARN) / Indiana West|450|35|0|en|proj=tmerc lat_0=37.5 lon_0=-87.0833333333333 k=0.999966667 x_0=900000 y_0=250000
2794|P|NAD83(HARN) / Iowa North|451|35|0|en|proj=lcc lat_0=41.5 lon_0=-93.5 lat_1=43.2666666666667 lat_2=42.0666666666667 x_0=1500000 y_0=1000000
2795|P|NAD83(HARN) / Iowa South|452|35|0|en|proj=lcc lat_0=40 lon_0=-93.5 lat_1=41.7833333333333 lat_2=40.6166666666667 x_0=500000 y_0=0
2796|P|NAD83(HARN) / Kansas North|453|35|0|en|proj=lcc lat_0=38.3333333333333 lon_0=-98 lat_1=39.7833333333333 lat_2=38.7166666666667 x_0=400000 y_0=0
2797|P|NAD83(HARN) / Kansas South|454|35|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-98.5 lat_1=38.5666666666667 lat_2=37.2666666666667 x_0=400000 y_0=400000
2798|P|NAD83(HARN) / Kentucky North|151|35|0|en|proj=lcc lat_0=37.5 lon_0=-84.25 lat_1=37.9666666666667 lat_2=38.9666666666667 x_0=500000 y_0=0
2799|P|NAD83(HARN) / Kentucky South|189|35|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.9333333333333 lat_2=36.7333333333333 x_0=500000 y_0=500000
2800|P|NAD83(HARN) / Louisiana North|455|35|0|en|proj=lcc lat_0=30.5 lon_0=-92.5 lat_1=32.6666666666667 lat_2=31.1666666666667 x_0=1000000 y_0=0
2801|P|NAD83(HARN) / Louisiana South|456|35|0|en|proj=lcc lat_0=28.5 lon_0=-91.3333333333333 lat_1=30.7 lat_2=29.3 x_0=1000000 y_0=0
2802|P|NAD83(HARN) / Maine East|457|35|0|en|proj=tmerc lat_0=43.6666666666667 lon_0=-68.5 k=0.9999 x_0=300000 y_0=0
2803|P|NAD83(HARN) / Maine West|458|35|0|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.1666666666667 k=0.999966667 x_0=900000 y_0=0
2804|P|NAD83(HARN) / Maryland|190|35|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-77 lat_1=39.45 lat_2=38.3 x_0=400000 y_0=0
2805|P|NAD83(HARN) / Massachusetts Mainland|191|35|0|en|proj=lcc lat_0=41 lon_0=-71.5 lat_1=42.6833333333333 lat_2=41.7166666666667 x_0=200000 y_0=750000
2806|P|NAD83(HARN) / Massachusetts Island|192|35|0|en|proj=lcc lat_0=41 lon_0=-70.5 lat_1=41.4833333333333 lat_2=41.2833333333333 x_0=500000 y_0=0
2807|P|NAD83(HARN) / Michigan North|193|35|0|en|proj=lcc lat_0=44.7833333333333 lon_0=-87 lat_1=47.0833333333333 lat_2=45.4833333333333 x_0=8000000 y_0=0
2808|P|NAD83(HARN) / Michigan Central|194|35|0|en|proj=lcc lat_0=43.3166666666667 lon_0=-84.3666666666667 lat_1=45.7 lat_2=44.1833333333333 x_0=6000000 y_0=0
2809|P|NAD83(HARN) / Michigan South|195|35|0|en|proj=lcc lat_0=41.5 lon_0=-84.3666666666667 lat_1=43.6666666666667 lat_2=42.1 x_0=4000000 y_0=0
2810|P|NAD83(HARN) / Minnesota North|459|35|0|en|proj=lcc lat_0=46.5 lon_0=-93.1 lat_1=48.6333333333333 lat_2=47.0333333333333 x_0=800000 y_0=100000
2811|P|NAD83(HARN) / Minnesota Central|460|35|0|en|proj=lcc lat_0=45 lon_0=-94.25 lat_1=47.05 lat_2=45.6166666666667 x_0=800000 y_0=100000
2812|P|NAD83(HARN) / Minnesota South|461|35|0|en|proj=lcc lat_0=43 lon_0=-94 lat_1=45.2166666666667 lat_2=43.7833333333333 x_0=800000 y_0=100000
2813|P|NAD83(HARN) / Mississippi East|196|35|0|en|proj=tmerc lat_0=29.5 lon_0=-88.8333333333333 k=0.99995 x_0=300000 y_0=0
2814|P|NAD83(HARN) / Mississippi West|197|35|0|en|proj=tmerc lat_0=29.5 lon_0=-90.3333333333333 k=0.99995 x_0=700000 y_0=0
2815|P|NAD83(HARN) / Missouri East|462|35|0|en|proj=tmerc lat_0=35.8333333333333 lon_0=-90.5 k=0.999933333 x_0=250000 y_0=0
2816|P|NAD83(HARN) / Missouri Central|463|35|0|en|proj=tmerc lat_0=35.8333333333333 lon_0=-92.5 k=0.999933333 x_0=500000 y_0=0
2817|P|NAD83(HARN) / Missouri West|464|35|0|en|proj=tmerc lat_0=36.1666666666667 lon_0=-94.5 k=0.999941177 x_0=850000 y_0=0
2818|P|NAD83(HARN) / Montana|198|35|0|en|proj=lcc lat_0=44.25 lon_0=-109.5 lat_1=49 lat_2=45 x_0=600000 y_0=0
2819|P|NAD83(HARN) / Nebraska|465|35|0|en|proj=lcc lat_0=39.8333333333333 lon_0=-100 lat_1=43 lat_2=40 x_0=500000 y_0=0
2820|P|NAD83(HARN) / Nevada East|466|35|0|en|proj=tmerc lat_0=34.75 lon_0=-115.583333333333 k=0.9999 x_0=200000 y_0=8000000
2821|P|NAD83(HARN) / Nevada Central|467|35|0|en|proj=tmerc lat_0=34.75 lon_0=-116.666666666667 k=0.9999 x_0=500000 y_0=6000000
2822|P|NAD83(HARN) / Nevada West|468|35|0|en|proj=tmerc lat_0=34.75 lon_0=-118.583333333333 k=0.9999 x_0=800000 y_0=4000000
2823|P|NAD83(HARN) / New Hampshire|469|35|0|en|proj=tmerc lat_0=42.5 lon_0=-71.6666666666667 k=0.999966667 x_0=300000 y_0=0
2824|P|NAD83(HARN) / New Jersey|470|35|0|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
2825|P|NAD83(HARN) / New Mexico East|199|35|0|en|proj=tmerc lat_0=31 lon_0=-104.333333333333 k=0.999909091 x_0=165000 y_0=0
2826|P|NAD83(HARN) / New Mexico Central|200|35|0|en|proj=tmerc lat_0=31 lon_0=-106.25 k=0.9999 x_0=500000 y_0=0
2827|P|NAD83(HARN) / New Mexico West|201|35|0|en|proj=tmerc lat_0=31 lon_0=-107.833333333333 k=0.999916667 x_0=830000 y_0=0
2828|P|NAD83(HARN) / New York East|202|35|0|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
2829|P|NAD83(HARN) / New York Central|203|35|0|en|proj=tmerc lat_0=40 lon_0=-76.5833333333333 k=0.9999375 x_0=250000 y_0=0
2830|P|NAD83(HARN) / New York West|204|35|0|en|proj=tmerc lat_0=40 lon_0=-78.5833333333333 k=0.9999375 x_0=350000 y_0=0
2831|P|NAD83(HARN) / New York Long Island|205|35|0|en|proj=lcc lat_0=40.1666666666667 lon_0=-74 lat_1=41.0333333333333 lat_2=40.6666666666667 x_0=300000 y_0=0
2832|P|NAD83(HARN) / North Dakota North|207|35|0|en|proj=lcc lat_0=47 lon_0=-100.5 lat_1=48.7333333333333 lat_2=47.4333333333333 x_0=600000 y_0=0
2833|P|NAD83(HARN) / North Dakota South|208|35|0|en|proj=lcc lat_0=45.6666666666667 lon_0=-100.5 lat_1=47.4833333333333 lat_2=46.1833333333333 x_0=600000 y_0=0
2834|P|NAD83(HARN) / Ohio North|471|35|0|en|proj=lcc lat_0=39.6666666666667 lon_0=-82.5 lat_1=41.7 lat_2=40.4333333333333 x_0=600000 y_0=0
2835|P|NAD83(HARN) / Ohio South|472|35|0|en|proj=lcc lat_0=38 lon_0=-82.5 lat_1=40.0333333333333 lat_2=38.7333333333333 x_0=600000 y_0=0
2836|P|NAD83(HARN) / Oklahoma North|209|35|0|en|proj=lcc lat_0=35 lon_0=-98 lat_1=36.7666666666667 lat_2=35.5666666666667 x_0=600000 y_0=0
2837|P|NAD83(HARN) / Oklahoma South|210|35|0|en|proj=lcc lat_0=33.3333333333333 lon_0=-98 lat_1=35.2333333333333 lat_2=33.9333333333333 x_0=600000 y_0=0
2838|P|NAD83(HARN) / Oregon North|211|35|0|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=46 lat_2=44.3333333333333 x_0=2500000 y_0=0
2839|P|NAD83(HARN) / Oregon South|212|35|0|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=44 lat_2=42.3333333333333 x_0=1500000 y_0=0
2840|P|NAD83(HARN) / Rhode Island|473|35|0|en|proj=tmerc lat_0=41.0833333333333 lon_0=-71.5 k=0.99999375 x_0=100000 y_0=0
2841|P|NAD83(HARN) / South Dakota North|474|35|0|en|proj=lcc lat_0=43.8333333333333 lon_0=-100 lat_1=45.6833333333333 lat_2=44.4166666666667 x_0=600000 y_0=0
2842|P|NAD83(HARN) / South Dakota South|475|35|0|en|proj=lcc lat_0=42.3333333333333 lon_0=-100.333333333333 lat_1=44.4 lat_2=42.8333333333333 x_0=600000 y_0=0
2843|P|NAD83(HARN) / Tennessee|150|35|0|en|proj=lcc lat_0=34.3333333333333 lon_0=-86 lat_1=36.4166666666667 lat_2=35.25 x_0=600000 y_0=0
2844|P|NAD83(HARN) / Texas North|216|35|0|en|proj=lcc lat_0=34 lon_0=-101.5 lat_1=36.1833333333333 lat_2=34.65 x_0=200000 y_0=1000000
2845|P|NAD83(HARN) / Texas North Central|217|35|0|en|proj=lcc lat_0=31.6666666666667 lon_0=-98.5 lat_1=33.9666666666667 lat_2=32.1333333333333 x_0=600000 y_0=2000000
2846|P|NAD83(HARN) / Texas Central|218|35|0|en|proj=lcc lat_0=29.6666666666667 lon_0=-100.333333333333 lat_1=31.8833333333333 lat_2=30.1166666666667 x_0=700000 y_0=3000000
2847|P|NAD83(HARN) / Texas South Central|219|35|0|en|proj=lcc lat_0=27.8333333333333 lon_0=-99 lat_1=30.2833333333333 lat_2=28.3833333333333 x_0=600000 y_0=4000000
2848|P|NAD83(HARN) / Texas South|220|35|0|en|proj=lcc lat_0=25.6666666666667 lon_0=-98.5 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=300000 y_0=5000000
2849|P|NAD83(HARN) / Utah North|221|35|0|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000 y_0=1000000
2850|P|NAD83(HARN) / Utah Central|222|35|0|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000 y_0=2000000
2851|P|NAD83(HARN) / Utah South|223|35|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000 y_0=3000000
2852|P|NAD83(HARN) / Vermont|476|35|0|en|proj=tmerc lat_0=42.5 lon_0=-72.5 k=0.999964286 x_0=500000 y_0=0
2853|P|NAD83(HARN) / Virginia North|224|35|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-78.5 lat_1=39.2 lat_2=38.0333333333333 x_0=3500000 y_0=2000000
2854|P|NAD83(HARN) / Virginia South|225|35|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-78.5 lat_1=37.9666666666667 lat_2=36.7666666666667 x_0=3500000 y_0=1000000
2855|P|NAD83(HARN) / Washington North|226|35|0|en|proj=lcc lat_0=47 lon_0=-120.833333333333 lat_1=48.7333333333333 lat_2=47.5 x_0=500000 y_0=0
2856|P|NAD83(HARN) / Washington South|227|35|0|en|proj=lcc lat_0=45.3333333333333 lon_0=-120.5 lat_1=47.3333333333333 lat_2=45.8333333333333 x_0=500000 y_0=0
2857|P|NAD83(HARN) / West Virginia North|477|35|0|en|proj=lcc lat_0=38.5 lon_0=-79.5 lat_1=40.25 lat_2=39 x_0=600000 y_0=0
2858|P|NAD83(HARN) / West Virginia South|478|35|0|en|proj=lcc lat_0=37 lon_0=-81 lat_1=38.8833333333333 lat_2=37.4833333333333 x_0=600000 y_0=0
2859|P|NAD83(HARN) / Wisconsin North|228|35|0|en|proj=lcc lat_0=45.1666666666667 lon_0=-90 lat_1=46.7666666666667 lat_2=45.5666666666667 x_0=600000 y_0=0
2860|P|NAD83(HARN) / Wisconsin Central|229|35|0|en|proj=lcc lat_0=43.8333333333333 lon_0=-90 lat_1=45.5 lat_2=44.25 x_0=600000 y_0=0
2861|P|NAD83(HARN) / Wisconsin South|230|35|0|en|proj=lcc lat_0=42 lon_0=-90 lat_1=44.0666666666667 lat_2=42.7333333333333 x_0=600000 y_0=0
2862|P|NAD83(HARN) / Wyoming East|479|35|0|en|proj=tmerc lat_0=40.5 lon_0=-105.166666666667 k=0.9999375 x_0=200000 y_0=0
2863|P|NAD83(HARN) / Wyoming East Central|480|35|0|en|proj=tmerc lat_0=40.5 lon_0=-107.333333333333 k=0.9999375 x_0=400000 y_0=100000
2864|P|NAD83(HARN) / Wyoming West Central|481|35|0|en|proj=tmerc lat_0=40.5 lon_0=-108.75 k=0.9999375 x_0=600000 y_0=0
2865|P|NAD83(HARN) / Wyoming West|482|35|0|en|proj=tmerc lat_0=40.5 lon_0=-110.083333333333 k=0.9999375 x_0=800000 y_0=100000
2866|P|NAD83(HARN) / Puerto Rico and Virgin Is.|483|35|0|en|proj=lcc lat_0=17.8333333333333 lon_0=-66.4333333333333 lat_1=18.4333333333333 lat_2=18.0333333333333 x_0=200000 y_0=200000
2867|P|NAD83(HARN) / Arizona East (ft)|167|35|4|en|proj=tmerc lat_0=31 lon_0=-110.166666666667 k=0.9999 x_0=213360 y_0=0
2868|P|NAD83(HARN) / Arizona Central (ft)|168|35|4|en|proj=tmerc lat_0=31 lon_0=-111.916666666667 k=0.9999 x_0=213360 y_0=0
2869|P|NAD83(HARN) / Arizona West (ft)|169|35|4|en|proj=tmerc lat_0=31 lon_0=-113.75 k=0.999933333 x_0=213360 y_0=0
2870|P|NAD83(HARN) / California zone 1 (ftUS)|170|35|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-122 lat_1=41.6666666666667 lat_2=40 x_0=2000000.0001016 y_0=500000.0001016
2871|P|NAD83(HARN) / California zone 2 (ftUS)|171|35|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-122 lat_1=39.8333333333333 lat_2=38.3333333333333 x_0=2000000.0001016 y_0=500000.0001016
2872|P|NAD83(HARN) / California zone 3 (ftUS)|172|35|3|en|proj=lcc lat_0=36.5 lon_0=-120.5 lat_1=38.4333333333333 lat_2=37.0666666666667 x_0=2000000.0001016 y_0=500000.0001016
2873|P|NAD83(HARN) / California zone 4 (ftUS)|173|35|3|en|proj=lcc lat_0=35.3333333333333 lon_0=-119 lat_1=37.25 lat_2=36 x_0=2000000.0001016 y_0=500000.0001016
2874|P|NAD83(HARN) / California zone 5 (ftUS)|174|35|3|en|proj=lcc lat_0=33.5 lon_0=-118 lat_1=35.4666666666667 lat_2=34.0333333333333 x_0=2000000.0001016 y_0=500000.0001016
2875|P|NAD83(HARN) / California zone 6 (ftUS)|175|35|3|en|proj=lcc lat_0=32.1666666666667 lon_0=-116.25 lat_1=33.8833333333333 lat_2=32.7833333333333 x_0=2000000.0001016 y_0=500000.0001016
2876|P|NAD83(HARN) / Colorado North (ftUS)|176|35|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-105.5 lat_1=40.7833333333333 lat_2=39.7166666666667 x_0=914401.828803657 y_0=304800.609601219
2877|P|NAD83(HARN) / Colorado Central (ftUS)|177|35|3|en|proj=lcc lat_0=37.8333333333333 lon_0=-105.5 lat_1=39.75 lat_2=38.45 x_0=914401.828803657 y_0=304800.609601219
2878|P|NAD83(HARN) / Colorado South (ftUS)|178|35|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-105.5 lat_1=38.4333333333333 lat_2=37.2333333333333 x_0=914401.828803657 y_0=304800.609601219
2879|P|NAD83(HARN) / Connecticut (ftUS)|179|35|3|en|proj=lcc lat_0=40.8333333333333 lon_0=-72.75 lat_1=41.8666666666667 lat_2=41.2 x_0=304800.609601219 y_0=152400.30480061
2880|P|NAD83(HARN) / Delaware (ftUS)|180|35|3|en|proj=tmerc lat_0=38 lon_0=-75.4166666666667 k=0.999995 x_0=200000.0001016 y_0=0
2881|P|NAD83(HARN) / Florida East (ftUS)|181|35|3|en|proj=tmerc lat_0=24.3333333333333 lon_0=-81 k=0.999941177 x_0=200000.0001016 y_0=0
2882|P|NAD83(HARN) / Florida West (ftUS)|182|35|3|en|proj=tmerc lat_0=24.3333333333333 lon_0=-82 k=0.999941177 x_0=200000.0001016 y_0=0
2883|P|NAD83(HARN) / Florida North (ftUS)|183|35|3|en|proj=lcc lat_0=29 lon_0=-84.5 lat_1=30.75 lat_2=29.5833333333333 x_0=600000 y_0=0
2884|P|NAD83(HARN) / Georgia East (ftUS)|184|35|3|en|proj=tmerc lat_0=30 lon_0=-82.1666666666667 k=0.9999 x_0=200000.0001016 y_0=0
2885|P|NAD83(HARN) / Georgia West (ftUS)|185|35|3|en|proj=tmerc lat_0=30 lon_0=-84.1666666666667 k=0.9999 x_0=699999.999898399 y_0=0
2886|P|NAD83(HARN) / Idaho East (ftUS)|186|35|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-112.166666666667 k=0.999947368 x_0=200000.0001016 y_0=0
2887|P|NAD83(HARN) / Idaho Central (ftUS)|187|35|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-114 k=0.999947368 x_0=500000.0001016 y_0=0
2888|P|NAD83(HARN) / Idaho West (ftUS)|188|35|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-115.75 k=0.999933333 x_0=800000.0001016 y_0=0
2891|P|NAD83(HARN) / Kentucky North (ftUS)|151|35|3|en|proj=lcc lat_0=37.5 lon_0=-84.25 lat_1=37.9666666666667 lat_2=38.9666666666667 x_0=500000.0001016 y_0=0
2892|P|NAD83(HARN) / Kentucky South (ftUS)|189|35|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.9333333333333 lat_2=36.7333333333333 x_0=500000.0001016 y_0=500000.0001016
2893|P|NAD83(HARN) / Maryland (ftUS)|190|35|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-77 lat_1=39.45 lat_2=38.3 x_0=399999.9998984 y_0=0
2894|P|NAD83(HARN) / Massachusetts Mainland (ftUS)|191|35|3|en|proj=lcc lat_0=41 lon_0=-71.5 lat_1=42.6833333333333 lat_2=41.7166666666667 x_0=200000.0001016 y_0=750000
2895|P|NAD83(HARN) / Massachusetts Island (ftUS)|192|35|3|en|proj=lcc lat_0=41 lon_0=-70.5 lat_1=41.4833333333333 lat_2=41.2833333333333 x_0=500000.0001016 y_0=0
2896|P|NAD83(HARN) / Michigan North (ft)|193|35|4|en|proj=lcc lat_0=44.7833333333333 lon_0=-87 lat_1=47.0833333333333 lat_2=45.4833333333333 x_0=7999999.999968 y_0=0
2897|P|NAD83(HARN) / Michigan Central (ft)|194|35|4|en|proj=lcc lat_0=43.3166666666667 lon_0=-84.3666666666667 lat_1=45.7 lat_2=44.1833333333333 x_0=5999999.999976 y_0=0
2898|P|NAD83(HARN) / Michigan South (ft)|195|35|4|en|proj=lcc lat_0=41.5 lon_0=-84.3666666666667 lat_1=43.6666666666667 lat_2=42.1 x_0=3999999.999984 y_0=0
2899|P|NAD83(HARN) / Mississippi East (ftUS)|196|35|3|en|proj=tmerc lat_0=29.5 lon_0=-88.8333333333333 k=0.99995 x_0=300000 y_0=0
2900|P|NAD83(HARN) / Mississippi West (ftUS)|197|35|3|en|proj=tmerc lat_0=29.5 lon_0=-90.3333333333333 k=0.99995 x_0=699999.999898399 y_0=0
2901|P|NAD83(HARN) / Montana (ft)|198|35|4|en|proj=lcc lat_0=44.25 lon_0=-109.5 lat_1=49 lat_2=45 x_0=599999.9999976 y_0=0
2902|P|NAD83(HARN) / New Mexico East (ftUS)|199|35|3|en|proj=tmerc lat_0=31 lon_0=-104.333333333333 k=0.999909091 x_0=165000 y_0=0
2903|P|NAD83(HARN) / New Mexico Central (ftUS)|200|35|3|en|proj=tmerc lat_0=31 lon_0=-106.25 k=0.9999 x_0=500000.0001016 y_0=0
2904|P|NAD83(HARN) / New Mexico West (ftUS)|201|35|3|en|proj=tmerc lat_0=31 lon_0=-107.833333333333 k=0.999916667 x_0=830000.0001016 y_0=0
2905|P|NAD83(HARN) / New York East (ftUS)|202|35|3|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
2906|P|NAD83(HARN) / New York Central (ftUS)|203|35|3|en|proj=tmerc lat_0=40 lon_0=-76.5833333333333 k=0.9999375 x_0=249999.9998984 y_0=0
2907|P|NAD83(HARN) / New York West (ftUS)|204|35|3|en|proj=tmerc lat_0=40 lon_0=-78.5833333333333 k=0.9999375 x_0=350000.0001016 y_0=0
2908|P|NAD83(HARN) / New York Long Island (ftUS)|205|35|3|en|proj=lcc lat_0=40.1666666666667 lon_0=-74 lat_1=41.0333333333333 lat_2=40.6666666666667 x_0=300000 y_0=0
2909|P|NAD83(HARN) / North Dakota North (ft)|207|35|4|en|proj=lcc lat_0=47 lon_0=-100.5 lat_1=48.7333333333333 lat_2=47.4333333333333 x_0=599999.9999976 y_0=0
2910|P|NAD83(HARN) / North Dakota South (ft)|208|35|4|en|proj=lcc lat_0=45.6666666666667 lon_0=-100.5 lat_1=47.4833333333333 lat_2=46.1833333333333 x_0=599999.9999976 y_0=0
2911|P|NAD83(HARN) / Oklahoma North (ftUS)|209|35|3|en|proj=lcc lat_0=35 lon_0=-98 lat_1=36.7666666666667 lat_2=35.5666666666667 x_0=600000 y_0=0
2912|P|NAD83(HARN) / Oklahoma South (ftUS)|210|35|3|en|proj=lcc lat_0=33.3333333333333 lon_0=-98 lat_1=35.2333333333333 lat_2=33.9333333333333 x_0=600000 y_0=0
2913|P|NAD83(HARN) / Oregon North (ft)|211|35|4|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=46 lat_2=44.3333333333333 x_0=2500000.0001424 y_0=0
2914|P|NAD83(HARN) / Oregon South (ft)|212|35|4|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=44 lat_2=42.3333333333333 x_0=1500000.0001464 y_0=0
2915|P|NAD83(HARN) / Tennessee (ftUS)|150|35|3|en|proj=lcc lat_0=34.3333333333333 lon_0=-86 lat_1=36.4166666666667 lat_2=35.25 x_0=600000 y_0=0
2916|P|NAD83(HARN) / Texas North (ftUS)|216|35|3|en|proj=lcc lat_0=34 lon_0=-101.5 lat_1=36.1833333333333 lat_2=34.65 x_0=200000.0001016 y_0=999999.999898399
2917|P|NAD83(HARN) / Texas North Central (ftUS)|217|35|3|en|proj=lcc lat_0=31.6666666666667 lon_0=-98.5 lat_1=33.9666666666667 lat_2=32.1333333333333 x_0=600000 y_0=2000000.0001016
2918|P|NAD83(HARN) / Texas Central (ftUS)|218|35|3|en|proj=lcc lat_0=29.6666666666667 lon_0=-100.333333333333 lat_1=31.8833333333333 lat_2=30.1166666666667 x_0=699999.999898399 y_0=3000000
2919|P|NAD83(HARN) / Texas South Central (ftUS)|219|35|3|en|proj=lcc lat_0=27.8333333333333 lon_0=-99 lat_1=30.2833333333333 lat_2=28.3833333333333 x_0=600000 y_0=3999999.9998984
2920|P|NAD83(HARN) / Texas South (ftUS)|220|35|3|en|proj=lcc lat_0=25.6666666666667 lon_0=-98.5 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=300000 y_0=5000000.0001016
2921|P|NAD83(HARN) / Utah North (ft)|221|35|4|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000.0001504 y_0=999999.999996
2922|P|NAD83(HARN) / Utah Central (ft)|222|35|4|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000.0001504 y_0=1999999.999992
2923|P|NAD83(HARN) / Utah South (ft)|223|35|4|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000.0001504 y_0=2999999.999988
2924|P|NAD83(HARN) / Virginia North (ftUS)|224|35|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-78.5 lat_1=39.2 lat_2=38.0333333333333 x_0=3500000.0001016 y_0=2000000.0001016
2925|P|NAD83(HARN) / Virginia South (ftUS)|225|35|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-78.5 lat_1=37.9666666666667 lat_2=36.7666666666667 x_0=3500000.0001016 y_0=999999.999898399
2926|P|NAD83(HARN) / Washington North (ftUS)|226|35|3|en|proj=lcc lat_0=47 lon_0=-120.833333333333 lat_1=48.7333333333333 lat_2=47.5 x_0=500000.0001016 y_0=0
2927|P|NAD83(HARN) / Washington South (ftUS)|227|35|3|en|proj=lcc lat_0=45.3333333333333 lon_0=-120.5 lat_1=47.3333333333333 lat_2=45.8333333333333 x_0=500000.0001016 y_0=0
2928|P|NAD83(HARN) / Wisconsin North (ftUS)|228|35|3|en|proj=lcc lat_0=45.1666666666667 lon_0=-90 lat_1=46.7666666666667 lat_2=45.5666666666667 x_0=600000 y_0=0
2929|P|NAD83(HARN) / Wisconsin Central (ftUS)|229|35|3|en|proj=lcc lat_0=43.8333333333333 lon_0=-90 lat_1=45.5 lat_2=44.25 x_0=600000 y_0=0
2930|P|NAD83(HARN) / Wisconsin South (ftUS)|230|35|3|en|proj=lcc lat_0=42 lon_0=-90 lat_1=44.0666666666667 lat_2=42.7333333333333 x_0=600000 y_0=0
2931|P|Beduaram / TM 13 NE|484|91|0|en|proj=tmerc lat_0=0 lon_0=13 k=0.9996 x_0=500000 y_0=0
2932|P|QND95 / Qatar National Grid|84|204|0|en|proj=tmerc lat_0=24.45 lon_0=51.2166666666667 k=0.99999 x_0=200000 y_0=300000
2933|P|Segara / UTM zone 50S|485|203|0|en|proj=utm zone=50 south
2935|P|Pulkovo 1942 / CS63 zone A1|486|152|0|ne|proj=tmerc lat_0=0.116666666666667 lon_0=41.5333333333333 k=1 x_0=1300000 y_0=0
2936|P|Pulkovo 1942 / CS63 zone A2|487|152|0|ne|proj=tmerc lat_0=0.116666666666667 lon_0=44.5333333333333 k=1 x_0=2300000 y_0=0
2937|P|Pulkovo 1942 / CS63 zone A3|488|152|0|ne|proj=tmerc lat_0=0.116666666666667 lon_0=47.5333333333333 k=1 x_0=3300000 y_0=0
2938|P|Pulkovo 1942 / CS63 zone A4|489|152|0|ne|proj=tmerc lat_0=0.116666666666667 lon_0=50.5333333333333 k=1 x_0=4300000 y_0=0
2939|P|Pulkovo 1942 / CS63 zone K2|490|152|0|ne|proj=tmerc lat_0=0.133333333333333 lon_0=50.7666666666667 k=1 x_0=2300000 y_0=0
2940|P|Pulkovo 1942 / CS63 zone K3|491|152|0|ne|proj=tmerc lat_0=0.133333333333333 lon_0=53.7666666666667 k=1 x_0=3300000 y_0=0
2941|P|Pulkovo 1942 / CS63 zone K4|492|152|0|ne|proj=tmerc lat_0=0.133333333333333 lon_0=56.7666666666667 k=1 x_0=4300000 y_0=0
2942|P|Porto Santo / UTM zone 28N|493|205|0|en|proj=utm zone=28
2943|P|Selvagem Grande / UTM zone 28N|494|206|0|en|proj=utm zone=28
2945|P|NAD83(CSRS) / MTM zone 3|495|207|0|en|proj=tmerc lat_0=0 lon_0=-58.5 k=0.9999 x_0=304800 y_0=0
2946|P|NAD83(CSRS) / MTM zone 4|496|207|0|en|proj=tmerc lat_0=0 lon_0=-61.5 k=0.9999 x_0=304800 y_0=0
2947|P|NAD83(CSRS) / MTM zone 5|497|207|0|en|proj=tmerc lat_0=0 lon_0=-64.5 k=0.9999 x_0=304800 y_0=0
2948|P|NAD83(CSRS) / MTM zone 6|498|207|0|en|proj=tmerc lat_0=0 lon_0=-67.5 k=0.9999 x_0=304800 y_0=0
2949|P|NAD83(CSRS) / MTM zone 7|12|207|0|en|proj=tmerc lat_0=0 lon_0=-70.5 k=0.9999 x_0=304800 y_0=0
2950|P|NAD83(CSRS) / MTM zone 8|499|207|0|en|proj=tmerc lat_0=0 lon_0=-73.5 k=0.9999 x_0=304800 y_0=0
2951|P|NAD83(CSRS) / MTM zone 9|500|207|0|en|proj=tmerc lat_0=0 lon_0=-76.5 k=0.9999 x_0=304800 y_0=0
2952|P|NAD83(CSRS) / MTM zone 10|501|207|0|en|proj=tmerc lat_0=0 lon_0=-79.5 k=0.9999 x_0=304800 y_0=0
2953|P|NAD83(CSRS) / New Brunswick Stereographic|146|207|0|ne|proj=sterea lat_0=46.5 lon_0=-66.5 k=0.999912 x_0=2500000 y_0=7500000
2954|P|NAD83(CSRS) / Prince Edward Isl. Stereographic (NAD83)|231|207|0|en|proj=sterea lat_0=47.25 lon_0=-63 k=0.999912 x_0=400000 y_0=800000
2955|P|NAD83(CSRS) / UTM zone 11N|502|207|0|en|proj=utm zone=11
2956|P|NAD83(CSRS) / UTM zone 12N|503|207|0|en|proj=utm zone=12
2957|P|NAD83(CSRS) / UTM zone 13N|504|207|0|en|proj=utm zone=13
2958|P|NAD83(CSRS) / UTM zone 17N|505|207|0|en|proj=utm zone=17
2959|P|NAD83(CSRS) / UTM zone 18N|506|207|0|en|proj=utm zone=18
2960|P|NAD83(CSRS) / UTM zone 19N|507|207|0|en|proj=utm zone=19
2961|P|NAD83(CSRS) / UTM zone 20N|508|207|0|en|proj=utm zone=20
2962|P|NAD83(CSRS) / UTM zone 21N|509|207|0|en|proj=utm zone=21
2963|P|Lisbon 1890 (Lisbon) / Portugal Bonne|510|359|0|sw|
2964|P|NAD27 / Alaska Albers|511|137|3|en|proj=aea lat_0=50 lon_0=-154 lat_1=55 lat_2=65 x_0=0 y_0=0
2965|P|NAD83 / Indiana East (ftUS)|449|138|3|en|proj=tmerc lat_0=37.5 lon_0=-85.6666666666667 k=0.999966667 x_0=99999.9998983997 y_0=249999.9998984
2966|P|NAD83 / Indiana West (ftUS)|450|138|3|en|proj=tmerc lat_0=37.5 lon_0=-87.0833333333333 k=0.999966667 x_0=900000 y_0=249999.9998984
2967|P|NAD83(HARN) / Indiana East (ftUS)|449|35|3|en|proj=tmerc lat_0=37.5 lon_0=-85.6666666666667 k=0.999966667 x_0=99999.9998983997 y_0=249999.9998984
2968|P|NAD83(HARN) / Indiana West (ftUS)|450|35|3|en|proj=tmerc lat_0=37.5 lon_0=-87.0833333333333 k=0.999966667 x_0=900000 y_0=249999.9998984
2969|P|Fort Marigot / UTM zone 20N|512|211|0|en|proj=utm zone=20
2970|P|Guadeloupe 1948 / UTM zone 20N|513|212|0|en|proj=utm zone=20
2971|P|CSG67 / UTM zone 22N|514|213|0|en|proj=utm zone=22
2972|P|RGFG95 / UTM zone 22N|515|214|0|en|proj=utm zone=22
2973|P|Martinique 1938 / UTM zone 20N|516|215|0|en|proj=utm zone=20
2975|P|RGR92 / UTM zone 40S|517|217|0|en|proj=utm zone=40 south
2976|P|Tahiti 52 / UTM zone 6S|518|218|0|en|proj=utm zone=6 south
2977|P|Tahaa 54 / UTM zone 5S|519|219|0|en|proj=utm zone=5 south
2978|P|IGN72 Nuku Hiva / UTM zone 7S|520|220|0|en|proj=utm zone=7 south
2980|P|Combani 1950 / UTM zone 38S|521|221|0|en|proj=utm zone=38 south
2981|P|IGN56 Lifou / UTM zone 58S|522|222|0|en|proj=utm zone=58 south
2985|P|Petrels 1972 / Terre Adelie Polar Stereographic|523|223|0|en|
2986|P|Perroud 1950 / Terre Adelie Polar Stereographic|524|224|0|en|
2987|P|Saint Pierre et Miquelon 1950 / UTM zone 21N|525|225|0|en|proj=utm zone=21
2988|P|MOP78 / UTM zone 1S|526|226|0|en|proj=utm zone=1 south
2991|P|NAD83 / Oregon LCC (m)|527|138|0|en|proj=lcc lat_0=41.75 lon_0=-120.5 lat_1=43 lat_2=45.5 x_0=400000 y_0=0
2992|P|NAD83 / Oregon GIC Lambert (ft)|527|138|4|en|proj=lcc lat_0=41.75 lon_0=-120.5 lat_1=43 lat_2=45.5 x_0=399999.9999984 y_0=0
2993|P|NAD83(HARN) / Oregon LCC (m)|527|35|0|en|proj=lcc lat_0=41.75 lon_0=-120.5 lat_1=43 lat_2=45.5 x_0=400000 y_0=0
2994|P|NAD83(HARN) / Oregon GIC Lambert (ft)|527|35|4|en|proj=lcc lat_0=41.75 lon_0=-120.5 lat_1=43 lat_2=45.5 x_0=399999.9999984 y_0=0
2995|P|IGN53 Mare / UTM zone 58S|528|227|0|en|proj=utm zone=58 south
2996|P|ST84 Ile des Pins / UTM zone 58S|529|228|0|en|proj=utm zone=58 south
2997|P|ST71 Belep / UTM zone 58S|530|229|0|en|proj=utm zone=58 south
2998|P|NEA74 Noumea / UTM zone 58S|531|230|0|en|proj=utm zone=58 south
2999|P|Grand Comoros / UTM zone 38S|532|231|0|en|proj=utm zone=38 south
3000|P|Segara / NEIEZ|533|203|0|en|proj=merc lon_0=110 k=0.997 x_0=3900000 y_0=900000
3001|P|Batavia / NEIEZ|534|89|0|en|proj=merc lon_0=110 k=0.997 x_0=3900000 y_0=900000
3002|P|Makassar / NEIEZ|535|129|0|en|proj=merc lon_0=110 k=0.997 x_0=3900000 y_0=900000
3003|P|Monte Mario / Italy zone 1|536|135|0|en|proj=tmerc lat_0=0 lon_0=9 k=0.9996 x_0=1500000 y_0=0
3004|P|Monte Mario / Italy zone 2|537|135|0|en|proj=tmerc lat_0=0 lon_0=15 k=0.9996 x_0=2520000 y_0=0
3005|P|NAD83 / BC Albers|538|138|0|en|proj=aea lat_0=45 lon_0=-126 lat_1=50 lat_2=58.5 x_0=1000000 y_0=0
3006|P|SWEREF99 TM|539|209|0|ne|proj=utm zone=33
3007|P|SWEREF99 12 00|540|209|0|ne|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=150000 y_0=0
3008|P|SWEREF99 13 30|541|209|0|ne|proj=tmerc lat_0=0 lon_0=13.5 k=1 x_0=150000 y_0=0
3009|P|SWEREF99 15 00|542|209|0|ne|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=150000 y_0=0
3010|P|SWEREF99 16 30|543|209|0|ne|proj=tmerc lat_0=0 lon_0=16.5 k=1 x_0=150000 y_0=0
3011|P|SWEREF99 18 00|544|209|0|ne|proj=tmerc lat_0=0 lon_0=18 k=1 x_0=150000 y_0=0
3012|P|SWEREF99 14 15|545|209|0|ne|proj=tmerc lat_0=0 lon_0=14.25 k=1 x_0=150000 y_0=0
3013|P|SWEREF99 15 45|546|209|0|ne|proj=tmerc lat_0=0 lon_0=15.75 k=1 x_0=150000 y_0=0
3014|P|SWEREF99 17 15|547|209|0|ne|proj=tmerc lat_0=0 lon_0=17.25 k=1 x_0=150000 y_0=0
3015|P|SWEREF99 18 45|548|209|0|ne|proj=tmerc lat_0=0 lon_0=18.75 k=1 x_0=150000 y_0=0
3016|P|SWEREF99 20 15|549|209|0|ne|proj=tmerc lat_0=0 lon_0=20.25 k=1 x_0=150000 y_0=0
3017|P|SWEREF99 21 45|550|209|0|ne|proj=tmerc lat_0=0 lon_0=21.75 k=1 x_0=150000 y_0=0
3018|P|SWEREF99 23 15|551|209|0|ne|proj=tmerc lat_0=0 lon_0=23.25 k=1 x_0=150000 y_0=0
3019|P|RT90 7.5 gon V|552|13|0|ne|proj=tmerc lat_0=0 lon_0=11.3082777777778 k=1 x_0=1500000 y_0=0
3020|P|RT90 5 gon V|553|13|0|ne|proj=tmerc lat_0=0 lon_0=13.5582777777778 k=1 x_0=1500000 y_0=0
3021|P|RT90 2.5 gon V|554|13|0|ne|proj=tmerc lat_0=0 lon_0=15.8082777777778 k=1 x_0=1500000 y_0=0
3022|P|RT90 0 gon|555|13|0|ne|proj=tmerc lat_0=0 lon_0=18.0582777777778 k=1 x_0=1500000 y_0=0
3023|P|RT90 2.5 gon O|556|13|0|ne|proj=tmerc lat_0=0 lon_0=20.3082777777778 k=1 x_0=1500000 y_0=0
3024|P|RT90 5 gon O|557|13|0|ne|proj=tmerc lat_0=0 lon_0=22.5582777777778 k=1 x_0=1500000 y_0=0
3025|P|RT38 7.5 gon V|552|170|0|ne|proj=tmerc lat_0=0 lon_0=11.3082777777778 k=1 x_0=1500000 y_0=0
3026|P|RT38 5 gon V|553|170|0|ne|proj=tmerc lat_0=0 lon_0=13.5582777777778 k=1 x_0=1500000 y_0=0
3027|P|RT38 2.5 gon V|554|170|0|ne|proj=tmerc lat_0=0 lon_0=15.8082777777778 k=1 x_0=1500000 y_0=0
3028|P|RT38 0 gon|555|170|0|ne|proj=tmerc lat_0=0 lon_0=18.0582777777778 k=1 x_0=1500000 y_0=0
3029|P|RT38 2.5 gon O|556|170|0|ne|proj=tmerc lat_0=0 lon_0=20.3082777777778 k=1 x_0=1500000 y_0=0
3030|P|RT38 5 gon O|557|170|0|ne|proj=tmerc lat_0=0 lon_0=22.5582777777778 k=1 x_0=1500000 y_0=0
3031|P|WGS 84 / Antarctic Polar Stereographic|558|183|0|en|proj=stere lat_0=-90 lat_ts=-71 lon_0=0 x_0=0 y_0=0
3032|P|WGS 84 / Australian Antarctic Polar Stereographic|559|183|0|en|proj=stere lat_0=-90 lat_ts=-71 lon_0=70 x_0=6000000 y_0=6000000
3033|P|WGS 84 / Australian Antarctic Lambert|560|183|0|en|proj=lcc lat_0=-50 lon_0=70 lat_1=-68.5 lat_2=-74.5 x_0=6000000 y_0=6000000
3034|P|ETRS89-extended / LCC Europe|561|130|0|ne|proj=lcc lat_0=52 lon_0=10 lat_1=35 lat_2=65 x_0=4000000 y_0=2800000
3035|P|ETRS89-extended / LAEA Europe|561|130|0|ne|proj=laea lat_0=52 lon_0=10 x_0=4321000 y_0=3210000
3036|P|Moznet / UTM zone 36S|562|17|0|en|proj=utm zone=36 south
3037|P|Moznet / UTM zone 37S|563|17|0|en|proj=utm zone=37 south
3040|P|ETRS89 / UTM zone 28N (N-E)|564|130|0|ne|proj=utm zone=28
3041|P|ETRS89 / UTM zone 29N (N-E)|565|130|0|ne|proj=utm zone=29
3042|P|ETRS89 / UTM zone 30N (N-E)|566|130|0|ne|proj=utm zone=30
3043|P|ETRS89 / UTM zone 31N (N-E)|567|130|0|ne|proj=utm zone=31
3044|P|ETRS89 / UTM zone 32N (N-E)|568|130|0|ne|proj=utm zone=32
3045|P|ETRS89 / UTM zone 33N (N-E)|569|130|0|ne|proj=utm zone=33
3046|P|ETRS89 / UTM zone 34N (N-E)|570|130|0|ne|proj=utm zone=34
3047|P|ETRS89 / UTM zone 35N (N-E)|571|130|0|ne|proj=utm zone=35
3048|P|ETRS89 / UTM zone 36N (N-E)|572|130|0|ne|proj=utm zone=36
3049|P|ETRS89 / UTM zone 37N (N-E)|573|130|0|ne|proj=utm zone=37
3052|P|Reykjavik 1900 / Lambert 1900|574|232|0|wn|
3053|P|Hjorsey 1955 / Lambert 1955|574|233|0|wn|
3054|P|Hjorsey 1955 / UTM zone 26N|575|233|0|en|proj=utm zone=26
3055|P|Hjorsey 1955 / UTM zone 27N|576|233|0|en|proj=utm zone=27
3056|P|Hjorsey 1955 / UTM zone 28N|577|233|0|en|proj=utm zone=28
3057|P|ISN93 / Lambert 1993|578|234|0|en|proj=lcc lat_0=65 lon_0=-19 lat_1=64.25 lat_2=65.75 x_0=500000 y_0=500000
3058|P|Helle 1954 / Jan Mayen Grid|579|235|0|ne|proj=tmerc lat_0=0 lon_0=-8.5 k=1 x_0=50000 y_0=-7800000
3059|P|LKS92 / Latvia TM|580|236|0|ne|proj=tmerc lat_0=0 lon_0=24 k=0.9996 x_0=500000 y_0=-6000000
3060|P|IGN72 Grande Terre / UTM zone 58S|581|237|0|en|proj=utm zone=58 south
3061|P|Porto Santo 1995 / UTM zone 28N|493|238|0|en|proj=utm zone=28
3062|P|Azores Oriental 1995 / UTM zone 26N|140|239|0|en|proj=utm zone=26
3063|P|Azores Central 1995 / UTM zone 26N|139|240|0|en|proj=utm zone=26
3064|P|IGM95 / UTM zone 32N|536|245|0|en|proj=utm zone=32
3065|P|IGM95 / UTM zone 33N|582|245|0|en|proj=utm zone=33
3066|P|ED50 / Jordan TM|583|105|0|en|proj=tmerc lat_0=0 lon_0=37 k=0.9998 x_0=500000 y_0=-3000000
3067|P|ETRS89 / TM35FIN(E,N)|584|130|0|en|proj=utm zone=35
3068|P|DHDN / Soldner Berlin|585|176|0|ne|proj=cass lat_0=52.4186482777778 lon_0=13.6272036666667 x_0=40000 y_0=10000
3069|P|NAD27 / Wisconsin Transverse Mercator|586|137|0|en|proj=tmerc lat_0=0 lon_0=-90 k=0.9996 x_0=500000 y_0=-4500000
3070|P|NAD83 / Wisconsin Transverse Mercator|586|138|0|en|proj=tmerc lat_0=0 lon_0=-90 k=0.9996 x_0=520000 y_0=-4480000
3071|P|NAD83(HARN) / Wisconsin Transverse Mercator|586|35|0|en|proj=tmerc lat_0=0 lon_0=-90 k=0.9996 x_0=520000 y_0=-4480000
3072|P|NAD83 / Maine CS2000 East|587|138|0|en|proj=tmerc lat_0=43.8333333333333 lon_0=-67.875 k=0.99998 x_0=700000 y_0=0
3074|P|NAD83 / Maine CS2000 West|588|138|0|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.375 k=0.99998 x_0=300000 y_0=0
3075|P|NAD83(HARN) / Maine CS2000 East|587|35|0|en|proj=tmerc lat_0=43.8333333333333 lon_0=-67.875 k=0.99998 x_0=700000 y_0=0
3077|P|NAD83(HARN) / Maine CS2000 West|588|35|0|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.375 k=0.99998 x_0=300000 y_0=0
3078|P|NAD83 / Michigan Oblique Mercator|589|138|0|en|proj=omerc no_uoff lat_0=45.3091666666667 lonc=-86 alpha=337.25556 gamma=337.25556 k=0.9996 x_0=2546731.496 y_0=-4354009.816
3079|P|NAD83(HARN) / Michigan Oblique Mercator|589|35|0|en|proj=omerc no_uoff lat_0=45.3091666666667 lonc=-86 alpha=337.25556 gamma=337.25556 k=0.9996 x_0=2546731.496 y_0=-4354009.816
3080|P|NAD27 / Shackleford|590|137|4|en|proj=lcc lat_0=31.1666666666667 lon_0=-100 lat_1=27.4166666666667 lat_2=34.9166666666667 x_0=914400 y_0=914400
3081|P|NAD83 / Texas State Mapping System|590|138|0|en|proj=lcc lat_0=31.1666666666667 lon_0=-100 lat_1=27.4166666666667 lat_2=34.9166666666667 x_0=1000000 y_0=1000000
3082|P|NAD83 / Texas Centric Lambert Conformal|590|138|0|en|proj=lcc lat_0=18 lon_0=-100 lat_1=27.5 lat_2=35 x_0=1500000 y_0=5000000
3083|P|NAD83 / Texas Centric Albers Equal Area|590|138|0|en|proj=aea lat_0=18 lon_0=-100 lat_1=27.5 lat_2=35 x_0=1500000 y_0=6000000
3084|P|NAD83(HARN) / Texas Centric Lambert Conformal|590|35|0|en|proj=lcc lat_0=18 lon_0=-100 lat_1=27.5 lat_2=35 x_0=1500000 y_0=5000000
3085|P|NAD83(HARN) / Texas Centric Albers Equal Area|590|35|0|en|proj=aea lat_0=18 lon_0=-100 lat_1=27.5 lat_2=35 x_0=1500000 y_0=6000000
3086|P|NAD83 / Florida GDL Albers|591|138|0|en|proj=aea lat_0=24 lon_0=-84 lat_1=24 lat_2=31.5 x_0=400000 y_0=0
3087|P|NAD83(HARN) / Florida GDL Albers|591|35|0|en|proj=aea lat_0=24 lon_0=-84 lat_1=24 lat_2=31.5 x_0=400000 y_0=0
3088|P|NAD83 / Kentucky Single Zone|592|138|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.0833333333333 lat_2=38.6666666666667 x_0=1500000 y_0=1000000
3089|P|NAD83 / Kentucky Single Zone (ftUS)|592|138|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.0833333333333 lat_2=38.6666666666667 x_0=1500000 y_0=999999.999898399
3090|P|NAD83(HARN) / Kentucky Single Zone|592|35|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.0833333333333 lat_2=38.6666666666667 x_0=1500000 y_0=1000000
3091|P|NAD83(HARN) / Kentucky Single Zone (ftUS)|592|35|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.0833333333333 lat_2=38.6666666666667 x_0=1500000 y_0=999999.999898399
3092|P|Tokyo / UTM zone 51N|593|164|0|en|proj=utm zone=51
3093|P|Tokyo / UTM zone 52N|594|164|0|en|proj=utm zone=52
3094|P|Tokyo / UTM zone 53N|595|164|0|en|proj=utm zone=53
3095|P|Tokyo / UTM zone 54N|596|164|0|en|proj=utm zone=54
3096|P|Tokyo / UTM zone 55N|597|164|0|en|proj=utm zone=55
3097|P|JGD2000 / UTM zone 51N|598|202|0|en|proj=utm zone=51
3098|P|JGD2000 / UTM zone 52N|599|202|0|en|proj=utm zone=52
3099|P|JGD2000 / UTM zone 53N|600|202|0|en|proj=utm zone=53
3100|P|JGD2000 / UTM zone 54N|601|202|0|en|proj=utm zone=54
3101|P|JGD2000 / UTM zone 55N|602|202|0|en|proj=utm zone=55
3102|P|American Samoa 1962 / American Samoa Lambert|603|52|3|en|proj=lcc lat_1=-14.2666666666667 lat_0=-14.2666666666667 lon_0=-170 k_0=1 x_0=152400.30480061 y_0=95169.3116586233
3106|P|Gulshan 303 / TM 90 NE|604|255|0|en|proj=tmerc lat_0=0 lon_0=90 k=0.9996 x_0=500000 y_0=0
3107|P|GDA94 / SA Lambert|605|151|0|en|proj=lcc lat_0=-32 lon_0=135 lat_1=-28 lat_2=-36 x_0=1000000 y_0=2000000
3108|P|ETRS89 / Guernsey Grid|606|130|0|en|proj=tmerc lat_0=49.5 lon_0=-2.41666666666667 k=0.999997 x_0=47000 y_0=50000
3109|P|ETRS89 / Jersey Transverse Mercator|607|130|0|en|proj=tmerc lat_0=49.225 lon_0=-2.135 k=0.9999999 x_0=40000 y_0=70000
3110|P|AGD66 / Vicgrid66|608|80|0|en|proj=lcc lat_0=-37 lon_0=145 lat_1=-36 lat_2=-38 x_0=2500000 y_0=4500000
3111|P|GDA94 / Vicgrid|608|151|0|en|proj=lcc lat_0=-37 lon_0=145 lat_1=-36 lat_2=-38 x_0=2500000 y_0=2500000
3112|P|GDA94 / Geoscience Australia Lambert|609|151|0|en|proj=lcc lat_0=0 lon_0=134 lat_1=-18 lat_2=-36 x_0=0 y_0=0
3113|P|GDA94 / BCSG02|610|151|0|en|proj=tmerc lat_0=-28 lon_0=153 k=0.99999 x_0=50000 y_0=100000
3114|P|MAGNA-SIRGAS / Colombia Far West zone|611|258|0|ne|proj=tmerc lat_0=4.59620041666667 lon_0=-80.0775079166667 k=1 x_0=1000000 y_0=1000000
3115|P|MAGNA-SIRGAS / Colombia West zone|612|258|0|ne|proj=tmerc lat_0=4.59620041666667 lon_0=-77.0775079166667 k=1 x_0=1000000 y_0=1000000
3116|P|MAGNA-SIRGAS / Colombia Bogota zone|613|258|0|ne|proj=tmerc lat_0=4.59620041666667 lon_0=-74.0775079166667 k=1 x_0=1000000 y_0=1000000
3117|P|MAGNA-SIRGAS / Colombia East Central zone|614|258|0|ne|proj=tmerc lat_0=4.59620041666667 lon_0=-71.0775079166667 k=1 x_0=1000000 y_0=1000000
3118|P|MAGNA-SIRGAS / Colombia East zone|615|258|0|ne|proj=tmerc lat_0=4.59620041666667 lon_0=-68.0775079166667 k=1 x_0=1000000 y_0=1000000
3119|P|Douala 1948 / AEF west|160|70|0|en|proj=tmerc lat_0=0 lon_0=10.5 k=0.999 x_0=1000000 y_0=1000000
3120|P|Pulkovo 1942(58) / Poland zone I|616|60|0|ne|proj=sterea lat_0=50.625 lon_0=21.0833333333333 k=0.9998 x_0=4637000 y_0=5467000
3121|P|PRS92 / Philippines zone 1|617|256|0|en|proj=tmerc lat_0=0 lon_0=117 k=0.99995 x_0=500000 y_0=0
3122|P|PRS92 / Philippines zone 2|618|256|0|en|proj=tmerc lat_0=0 lon_0=119 k=0.99995 x_0=500000 y_0=0
3123|P|PRS92 / Philippines zone 3|619|256|0|en|proj=tmerc lat_0=0 lon_0=121 k=0.99995 x_0=500000 y_0=0
3124|P|PRS92 / Philippines zone 4|620|256|0|en|proj=tmerc lat_0=0 lon_0=123 k=0.99995 x_0=500000 y_0=0
3125|P|PRS92 / Philippines zone 5|621|256|0|en|proj=tmerc lat_0=0 lon_0=125 k=0.99995 x_0=500000 y_0=0
3126|P|ETRS89 / ETRS-GK19FIN|622|130|0|ne|proj=tmerc lat_0=0 lon_0=19 k=1 x_0=500000 y_0=0
3127|P|ETRS89 / ETRS-GK20FIN|623|130|0|ne|proj=tmerc lat_0=0 lon_0=20 k=1 x_0=500000 y_0=0
3128|P|ETRS89 / ETRS-GK21FIN|624|130|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=500000 y_0=0
3129|P|ETRS89 / ETRS-GK22FIN|625|130|0|ne|proj=tmerc lat_0=0 lon_0=22 k=1 x_0=500000 y_0=0
3130|P|ETRS89 / ETRS-GK23FIN|626|130|0|ne|proj=tmerc lat_0=0 lon_0=23 k=1 x_0=500000 y_0=0
3131|P|ETRS89 / ETRS-GK24FIN|627|130|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=500000 y_0=0
3132|P|ETRS89 / ETRS-GK25FIN|628|130|0|ne|proj=tmerc lat_0=0 lon_0=25 k=1 x_0=500000 y_0=0
3133|P|ETRS89 / ETRS-GK26FIN|629|130|0|ne|proj=tmerc lat_0=0 lon_0=26 k=1 x_0=500000 y_0=0
3134|P|ETRS89 / ETRS-GK27FIN|630|130|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=500000 y_0=0
3135|P|ETRS89 / ETRS-GK28FIN|631|130|0|ne|proj=tmerc lat_0=0 lon_0=28 k=1 x_0=500000 y_0=0
3136|P|ETRS89 / ETRS-GK29FIN|632|130|0|ne|proj=tmerc lat_0=0 lon_0=29 k=1 x_0=500000 y_0=0
3137|P|ETRS89 / ETRS-GK30FIN|633|130|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=500000 y_0=0
3138|P|ETRS89 / ETRS-GK31FIN|634|130|0|ne|proj=tmerc lat_0=0 lon_0=31 k=1 x_0=500000 y_0=0
3139|P|Vanua Levu 1915 / Vanua Levu Grid|635|319|6|ne|proj=cass hyperbolic lat_0=-16.25 lon_0=179.333333333333 x_0=251727.9155424 y_0=334519.953768
3140|P|Viti Levu 1912 / Viti Levu Grid|636|323|6|ne|proj=cass lat_0=-18 lon_0=178 x_0=109435.392 y_0=141622.272
3141|P|Fiji 1956 / UTM zone 60S|637|293|0|en|proj=utm zone=60 south
3142|P|Fiji 1956 / UTM zone 1S|638|293|0|en|proj=utm zone=1 south
3144|P|FD54 / Faroe Lambert|639|312|0|nw|
3145|P|ETRS89 / Faroe Lambert|639|130|0|nw|
3148|P|Indian 1960 / UTM zone 48N|640|18|0|en|proj=utm zone=48
3149|P|Indian 1960 / UTM zone 49N|37|18|0|en|proj=utm zone=49
3152|P|ST74|641|209|0|ne|proj=tmerc lat_0=0 lon_0=18.05779 k=0.99999425 x_0=100178.1808 y_0=-6500614.7836
3153|P|NAD83(CSRS) / BC Albers|538|207|0|en|proj=aea lat_0=45 lon_0=-126 lat_1=50 lat_2=58.5 x_0=1000000 y_0=0
3154|P|NAD83(CSRS) / UTM zone 7N|642|207|0|en|proj=utm zone=7
3155|P|NAD83(CSRS) / UTM zone 8N|643|207|0|en|proj=utm zone=8
3156|P|NAD83(CSRS) / UTM zone 9N|644|207|0|en|proj=utm zone=9
3157|P|NAD83(CSRS) / UTM zone 10N|645|207|0|en|proj=utm zone=10
3158|P|NAD83(CSRS) / UTM zone 14N|646|207|0|en|proj=utm zone=14
3159|P|NAD83(CSRS) / UTM zone 15N|647|207|0|en|proj=utm zone=15
3160|P|NAD83(CSRS) / UTM zone 16N|648|207|0|en|proj=utm zone=16
3161|P|NAD83 / Ontario MNR Lambert|649|138|0|en|proj=lcc lat_0=0 lon_0=-85 lat_1=44.5 lat_2=53.5 x_0=930000 y_0=6430000
3162|P|NAD83(CSRS) / Ontario MNR Lambert|649|207|0|en|proj=lcc lat_0=0 lon_0=-85 lat_1=44.5 lat_2=53.5 x_0=930000 y_0=6430000
3163|P|RGNC91-93 / Lambert New Caledonia|650|320|0|en|proj=lcc lat_0=-21.5 lon_0=166 lat_1=-20.6666666666667 lat_2=-22.3333333333333 x_0=400000 y_0=300000
3164|P|ST87 Ouvea / UTM zone 58S|651|321|0|en|proj=utm zone=58 south
3165|P|NEA74 Noumea / Noumea Lambert|531|230|0|en|proj=lcc lat_0=-22.26969175 lon_0=166.44242575 lat_1=-22.24469175 lat_2=-22.29469175 x_0=0.66 y_0=1.02
3166|P|NEA74 Noumea / Noumea Lambert 2|531|230|0|en|proj=lcc lat_0=-22.2697222222222 lon_0=166.4425 lat_1=-22.2447222222222 lat_2=-22.2947222222222 x_0=8.313 y_0=-2.354
3167|P|Kertau (RSO) / RSO Malaya (ch)|652|322|7|en|proj=omerc no_uoff lat_0=4 lonc=102.25 alpha=323.0257905 gamma=323.130102361111 k=0.99984 x_0=804670.24 y_0=0
3168|P|Kertau (RSO) / RSO Malaya (m)|652|322|0|en|proj=omerc no_uoff lat_0=4 lonc=102.25 alpha=323.0257905 gamma=323.130102361111 k=0.99984 x_0=804670.24 y_0=0
3169|P|RGNC91-93 / UTM zone 57S|653|320|0|en|proj=utm zone=57 south
3170|P|RGNC91-93 / UTM zone 58S|654|320|0|en|proj=utm zone=58 south
3171|P|RGNC91-93 / UTM zone 59S|655|320|0|en|proj=utm zone=59 south
3172|P|IGN53 Mare / UTM zone 59S|656|227|0|en|proj=utm zone=59 south
3173|P|fk89 / Faroe Lambert FK89|639|324|0|nw|
3174|P|NAD83 / Great Lakes Albers|657|138|0|en|proj=aea lat_0=45.568977 lon_0=-84.455955 lat_1=42.122774 lat_2=49.01518 x_0=1000000 y_0=1000000
3175|P|NAD83 / Great Lakes and St Lawrence Albers|658|138|0|en|proj=aea lat_0=45.568977 lon_0=-83.248627 lat_1=42.122774 lat_2=49.01518 x_0=1000000 y_0=1000000
3176|P|Indian 1960 / TM 106 NE|79|18|0|en|proj=tmerc lat_0=0 lon_0=106 k=0.9996 x_0=500000 y_0=0
3177|P|LGD2006 / Libya TM|659|325|0|en|proj=tmerc lat_0=0 lon_0=17 k=0.9965 x_0=1000000 y_0=0
3178|P|GR96 / UTM zone 18N|660|318|0|en|proj=utm zone=18
3179|P|GR96 / UTM zone 19N|661|318|0|en|proj=utm zone=19
3180|P|GR96 / UTM zone 20N|662|318|0|en|proj=utm zone=20
3181|P|GR96 / UTM zone 21N|663|318|0|en|proj=utm zone=21
3182|P|GR96 / UTM zone 22N|664|318|0|en|proj=utm zone=22
3183|P|GR96 / UTM zone 23N|665|318|0|en|proj=utm zone=23
3184|P|GR96 / UTM zone 24N|666|318|0|en|proj=utm zone=24
3185|P|GR96 / UTM zone 25N|667|318|0|en|proj=utm zone=25
3186|P|GR96 / UTM zone 26N|668|318|0|en|proj=utm zone=26
3187|P|GR96 / UTM zone 27N|669|318|0|en|proj=utm zone=27
3188|P|GR96 / UTM zone 28N|670|318|0|en|proj=utm zone=28
3189|P|GR96 / UTM zone 29N|671|318|0|en|proj=utm zone=29
3190|P|LGD2006 / Libya TM zone 5|58|325|0|en|proj=tmerc lat_0=0 lon_0=9 k=0.99995 x_0=200000 y_0=0
3191|P|LGD2006 / Libya TM zone 6|59|325|0|en|proj=tmerc lat_0=0 lon_0=11 k=0.99995 x_0=200000 y_0=0
3192|P|LGD2006 / Libya TM zone 7|60|325|0|en|proj=tmerc lat_0=0 lon_0=13 k=0.99995 x_0=200000 y_0=0
3193|P|LGD2006 / Libya TM zone 8|61|325|0|en|proj=tmerc lat_0=0 lon_0=15 k=0.99995 x_0=200000 y_0=0
3194|P|LGD2006 / Libya TM zone 9|62|325|0|en|proj=tmerc lat_0=0 lon_0=17 k=0.99995 x_0=200000 y_0=0
3195|P|LGD2006 / Libya TM zone 10|63|325|0|en|proj=tmerc lat_0=0 lon_0=19 k=0.99995 x_0=200000 y_0=0
3196|P|LGD2006 / Libya TM zone 11|64|325|0|en|proj=tmerc lat_0=0 lon_0=21 k=0.99995 x_0=200000 y_0=0
3197|P|LGD2006 / Libya TM zone 12|65|325|0|en|proj=tmerc lat_0=0 lon_0=23 k=0.99995 x_0=200000 y_0=0
3198|P|LGD2006 / Libya TM zone 13|66|325|0|en|proj=tmerc lat_0=0 lon_0=25 k=0.99995 x_0=200000 y_0=0
3199|P|LGD2006 / UTM zone 32N|672|325|0|en|proj=utm zone=32
3200|P|FD58 / Iraq zone|673|19|0|en|proj=lcc lat_1=32.5 lat_0=32.5 lon_0=45 k_0=0.9987864078 x_0=1500000 y_0=1166200
3201|P|LGD2006 / UTM zone 33N|674|325|0|en|proj=utm zone=33
3202|P|LGD2006 / UTM zone 34N|675|325|0|en|proj=utm zone=34
3203|P|LGD2006 / UTM zone 35N|676|325|0|en|proj=utm zone=35
3204|P|WGS 84 / SCAR IMW SP19-20|677|183|0|en|proj=lcc lat_0=-90 lon_0=-66 lat_1=-60.6666666666667 lat_2=-63.3333333333333 x_0=0 y_0=0
3205|P|WGS 84 / SCAR IMW SP21-22|678|183|0|en|proj=lcc lat_0=-90 lon_0=-54 lat_1=-60.6666666666667 lat_2=-63.3333333333333 x_0=0 y_0=0
3206|P|WGS 84 / SCAR IMW SP23-24|679|183|0|en|proj=lcc lat_0=-90 lon_0=-42 lat_1=-60.6666666666667 lat_2=-63.3333333333333 x_0=0 y_0=0
3207|P|WGS 84 / SCAR IMW SQ01-02|680|183|0|en|proj=lcc lat_0=-90 lon_0=-174 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3208|P|WGS 84 / SCAR IMW SQ19-20|681|183|0|en|proj=lcc lat_0=-90 lon_0=-66 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3209|P|WGS 84 / SCAR IMW SQ21-22|682|183|0|en|proj=lcc lat_0=-90 lon_0=-54 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3210|P|WGS 84 / SCAR IMW SQ37-38|683|183|0|en|proj=lcc lat_0=-90 lon_0=42 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3211|P|WGS 84 / SCAR IMW SQ39-40|684|183|0|en|proj=lcc lat_0=-90 lon_0=54 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3212|P|WGS 84 / SCAR IMW SQ41-42|685|183|0|en|proj=lcc lat_0=-90 lon_0=66 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3213|P|WGS 84 / SCAR IMW SQ43-44|686|183|0|en|proj=lcc lat_0=-90 lon_0=78 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3214|P|WGS 84 / SCAR IMW SQ45-46|687|183|0|en|proj=lcc lat_0=-90 lon_0=90 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3215|P|WGS 84 / SCAR IMW SQ47-48|688|183|0|en|proj=lcc lat_0=-90 lon_0=102 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3216|P|WGS 84 / SCAR IMW SQ49-50|689|183|0|en|proj=lcc lat_0=-90 lon_0=114 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3217|P|WGS 84 / SCAR IMW SQ51-52|690|183|0|en|proj=lcc lat_0=-90 lon_0=126 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3218|P|WGS 84 / SCAR IMW SQ53-54|691|183|0|en|proj=lcc lat_0=-90 lon_0=138 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3219|P|WGS 84 / SCAR IMW SQ55-56|692|183|0|en|proj=lcc lat_0=-90 lon_0=150 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3220|P|WGS 84 / SCAR IMW SQ57-58|693|183|0|en|proj=lcc lat_0=-90 lon_0=162 lat_1=-64.6666666666667 lat_2=-67.3333333333333 x_0=0 y_0=0
3221|P|WGS 84 / SCAR IMW SR13-14|694|183|0|en|proj=lcc lat_0=-90 lon_0=-102 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3222|P|WGS 84 / SCAR IMW SR15-16|695|183|0|en|proj=lcc lat_0=-90 lon_0=-90 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3223|P|WGS 84 / SCAR IMW SR17-18|696|183|0|en|proj=lcc lat_0=-90 lon_0=-78 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3224|P|WGS 84 / SCAR IMW SR19-20|697|183|0|en|proj=lcc lat_0=-90 lon_0=-66 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3225|P|WGS 84 / SCAR IMW SR27-28|698|183|0|en|proj=lcc lat_0=-90 lon_0=-18 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3226|P|WGS 84 / SCAR IMW SR29-30|699|183|0|en|proj=lcc lat_0=-90 lon_0=-6 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3227|P|WGS 84 / SCAR IMW SR31-32|700|183|0|en|proj=lcc lat_0=-90 lon_0=6 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3228|P|WGS 84 / SCAR IMW SR33-34|701|183|0|en|proj=lcc lat_0=-90 lon_0=18 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3229|P|WGS 84 / SCAR IMW SR35-36|702|183|0|en|proj=lcc lat_0=-90 lon_0=30 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3230|P|WGS 84 / SCAR IMW SR37-38|703|183|0|en|proj=lcc lat_0=-90 lon_0=42 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3231|P|WGS 84 / SCAR IMW SR39-40|704|183|0|en|proj=lcc lat_0=-90 lon_0=54 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3232|P|WGS 84 / SCAR IMW SR41-42|705|183|0|en|proj=lcc lat_0=-90 lon_0=66 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3233|P|WGS 84 / SCAR IMW SR43-44|706|183|0|en|proj=lcc lat_0=-90 lon_0=78 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3234|P|WGS 84 / SCAR IMW SR45-46|707|183|0|en|proj=lcc lat_0=-90 lon_0=90 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3235|P|WGS 84 / SCAR IMW SR47-48|708|183|0|en|proj=lcc lat_0=-90 lon_0=102 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3236|P|WGS 84 / SCAR IMW SR49-50|709|183|0|en|proj=lcc lat_0=-90 lon_0=114 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3237|P|WGS 84 / SCAR IMW SR51-52|710|183|0|en|proj=lcc lat_0=-90 lon_0=126 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3238|P|WGS 84 / SCAR IMW SR53-54|711|183|0|en|proj=lcc lat_0=-90 lon_0=138 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3239|P|WGS 84 / SCAR IMW SR55-56|712|183|0|en|proj=lcc lat_0=-90 lon_0=150 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3240|P|WGS 84 / SCAR IMW SR57-58|713|183|0|en|proj=lcc lat_0=-90 lon_0=162 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3241|P|WGS 84 / SCAR IMW SR59-60|714|183|0|en|proj=lcc lat_0=-90 lon_0=174 lat_1=-68.6666666666667 lat_2=-71.3333333333333 x_0=0 y_0=0
3242|P|WGS 84 / SCAR IMW SS04-06|715|183|0|en|proj=lcc lat_0=-90 lon_0=-153 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3243|P|WGS 84 / SCAR IMW SS07-09|716|183|0|en|proj=lcc lat_0=-90 lon_0=-135 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3244|P|WGS 84 / SCAR IMW SS10-12|717|183|0|en|proj=lcc lat_0=-90 lon_0=-117 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3245|P|WGS 84 / SCAR IMW SS13-15|718|183|0|en|proj=lcc lat_0=-90 lon_0=-99 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3246|P|WGS 84 / SCAR IMW SS16-18|719|183|0|en|proj=lcc lat_0=-90 lon_0=-81 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3247|P|WGS 84 / SCAR IMW SS19-21|720|183|0|en|proj=lcc lat_0=-90 lon_0=-63 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3248|P|WGS 84 / SCAR IMW SS25-27|721|183|0|en|proj=lcc lat_0=-90 lon_0=-27 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3249|P|WGS 84 / SCAR IMW SS28-30|722|183|0|en|proj=lcc lat_0=-90 lon_0=-9 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3250|P|WGS 84 / SCAR IMW SS31-33|723|183|0|en|proj=lcc lat_0=-90 lon_0=9 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3251|P|WGS 84 / SCAR IMW SS34-36|724|183|0|en|proj=lcc lat_0=-90 lon_0=27 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3252|P|WGS 84 / SCAR IMW SS37-39|725|183|0|en|proj=lcc lat_0=-90 lon_0=45 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3253|P|WGS 84 / SCAR IMW SS40-42|726|183|0|en|proj=lcc lat_0=-90 lon_0=63 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3254|P|WGS 84 / SCAR IMW SS43-45|727|183|0|en|proj=lcc lat_0=-90 lon_0=81 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3255|P|WGS 84 / SCAR IMW SS46-48|728|183|0|en|proj=lcc lat_0=-90 lon_0=99 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3256|P|WGS 84 / SCAR IMW SS49-51|729|183|0|en|proj=lcc lat_0=-90 lon_0=117 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3257|P|WGS 84 / SCAR IMW SS52-54|730|183|0|en|proj=lcc lat_0=-90 lon_0=135 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3258|P|WGS 84 / SCAR IMW SS55-57|731|183|0|en|proj=lcc lat_0=-90 lon_0=153 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3259|P|WGS 84 / SCAR IMW SS58-60|732|183|0|en|proj=lcc lat_0=-90 lon_0=171 lat_1=-72.6666666666667 lat_2=-75.3333333333333 x_0=0 y_0=0
3260|P|WGS 84 / SCAR IMW ST01-04|733|183|0|en|proj=lcc lat_0=-90 lon_0=-168 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3261|P|WGS 84 / SCAR IMW ST05-08|734|183|0|en|proj=lcc lat_0=-90 lon_0=-144 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3262|P|WGS 84 / SCAR IMW ST09-12|735|183|0|en|proj=lcc lat_0=-90 lon_0=-120 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3263|P|WGS 84 / SCAR IMW ST13-16|736|183|0|en|proj=lcc lat_0=-90 lon_0=-96 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3264|P|WGS 84 / SCAR IMW ST17-20|737|183|0|en|proj=lcc lat_0=-90 lon_0=-72 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3265|P|WGS 84 / SCAR IMW ST21-24|738|183|0|en|proj=lcc lat_0=-90 lon_0=-48 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3266|P|WGS 84 / SCAR IMW ST25-28|739|183|0|en|proj=lcc lat_0=-90 lon_0=-24 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3267|P|WGS 84 / SCAR IMW ST29-32|740|183|0|en|proj=lcc lat_0=-90 lon_0=0 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3268|P|WGS 84 / SCAR IMW ST33-36|741|183|0|en|proj=lcc lat_0=-90 lon_0=24 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3269|P|WGS 84 / SCAR IMW ST37-40|742|183|0|en|proj=lcc lat_0=-90 lon_0=48 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3270|P|WGS 84 / SCAR IMW ST41-44|743|183|0|en|proj=lcc lat_0=-90 lon_0=72 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3271|P|WGS 84 / SCAR IMW ST45-48|744|183|0|en|proj=lcc lat_0=-90 lon_0=96 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3272|P|WGS 84 / SCAR IMW ST49-52|745|183|0|en|proj=lcc lat_0=-90 lon_0=120 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3273|P|WGS 84 / SCAR IMW ST53-56|746|183|0|en|proj=lcc lat_0=-90 lon_0=144 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3274|P|WGS 84 / SCAR IMW ST57-60|747|183|0|en|proj=lcc lat_0=-90 lon_0=168 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3275|P|WGS 84 / SCAR IMW SU01-05|748|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=-165 x_0=0 y_0=0
3276|P|WGS 84 / SCAR IMW SU06-10|749|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=-135 x_0=0 y_0=0
3277|P|WGS 84 / SCAR IMW SU11-15|750|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=-105 x_0=0 y_0=0
3278|P|WGS 84 / SCAR IMW SU16-20|751|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=-75 x_0=0 y_0=0
3279|P|WGS 84 / SCAR IMW SU21-25|752|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=-45 x_0=0 y_0=0
3280|P|WGS 84 / SCAR IMW SU26-30|753|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=-15 x_0=0 y_0=0
3281|P|WGS 84 / SCAR IMW SU31-35|754|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=15 x_0=0 y_0=0
3282|P|WGS 84 / SCAR IMW SU36-40|755|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=45 x_0=0 y_0=0
3283|P|WGS 84 / SCAR IMW SU41-45|756|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=75 x_0=0 y_0=0
3284|P|WGS 84 / SCAR IMW SU46-50|757|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=105 x_0=0 y_0=0
3285|P|WGS 84 / SCAR IMW SU51-55|758|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=135 x_0=0 y_0=0
3286|P|WGS 84 / SCAR IMW SU56-60|759|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=165 x_0=0 y_0=0
3287|P|WGS 84 / SCAR IMW SV01-10|760|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=-150 x_0=0 y_0=0
3288|P|WGS 84 / SCAR IMW SV11-20|761|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=-90 x_0=0 y_0=0
3289|P|WGS 84 / SCAR IMW SV21-30|762|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=-30 x_0=0 y_0=0
3290|P|WGS 84 / SCAR IMW SV31-40|763|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=30 x_0=0 y_0=0
3291|P|WGS 84 / SCAR IMW SV41-50|764|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=90 x_0=0 y_0=0
3292|P|WGS 84 / SCAR IMW SV51-60|765|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=150 x_0=0 y_0=0
3293|P|WGS 84 / SCAR IMW SW01-60|766|183|0|en|proj=stere lat_0=-90 lat_ts=-80.2386111111111 lon_0=0 x_0=0 y_0=0
3294|P|WGS 84 / USGS Transantarctic Mountains|767|183|0|en|proj=lcc lat_0=-78 lon_0=162 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=0 y_0=0
3295|P|Guam 1963 / Yap Islands|768||0|en|
3296|P|RGPF / UTM zone 5S|769|259|0|en|proj=utm zone=5 south
3297|P|RGPF / UTM zone 6S|770|259|0|en|proj=utm zone=6 south
3298|P|RGPF / UTM zone 7S|771|259|0|en|proj=utm zone=7 south
3299|P|RGPF / UTM zone 8S|772|259|0|en|proj=utm zone=8 south
3300|P|Estonian Coordinate System of 1992|773|20|0|ne|proj=lcc lat_0=57.5175539305556 lon_0=24 lat_1=59.3333333333333 lat_2=58 x_0=500000 y_0=6375000
3301|P|Estonian Coordinate System of 1997|774|61|0|ne|proj=lcc lat_0=57.5175539305556 lon_0=24 lat_1=59.3333333333333 lat_2=58 x_0=500000 y_0=6375000
3302|P|IGN63 Hiva Oa / UTM zone 7S|775|261|0|en|proj=utm zone=7 south
3303|P|Fatu Iva 72 / UTM zone 7S|776|260|0|en|proj=utm zone=7 south
3304|P|Tahiti 79 / UTM zone 6S|777|262|0|en|proj=utm zone=6 south
3305|P|Moorea 87 / UTM zone 6S|778|263|0|en|proj=utm zone=6 south
3306|P|Maupiti 83 / UTM zone 5S|779|264|0|en|proj=utm zone=5 south
3307|P|Nakhl-e Ghanem / UTM zone 39N|780|265|0|en|proj=utm zone=39
3308|P|GDA94 / NSW Lambert|781|151|0|en|proj=lcc lat_0=-33.25 lon_0=147 lat_1=-30.75 lat_2=-35.75 x_0=9300000 y_0=4500000
3309|P|NAD27 / California Albers|782|137|0|en|proj=aea lat_0=0 lon_0=-120 lat_1=34 lat_2=40.5 x_0=0 y_0=-4000000
3310|P|NAD83 / California Albers|782|138|0|en|proj=aea lat_0=0 lon_0=-120 lat_1=34 lat_2=40.5 x_0=0 y_0=-4000000
3311|P|NAD83(HARN) / California Albers|782|35|0|en|proj=aea lat_0=0 lon_0=-120 lat_1=34 lat_2=40.5 x_0=0 y_0=-4000000
3312|P|CSG67 / UTM zone 21N|783|213|0|en|proj=utm zone=21
3313|P|RGFG95 / UTM zone 21N|784|214|0|en|proj=utm zone=21
3316|P|Kasai 1953 / Congo TM zone 22|785|268|0|en|proj=tmerc lat_0=0 lon_0=22 k=0.9999 x_0=500000 y_0=10000000
3317|P|Kasai 1953 / Congo TM zone 24|786|268|0|en|proj=tmerc lat_0=0 lon_0=24 k=0.9999 x_0=500000 y_0=10000000
3318|P|IGC 1962 / Congo TM zone 12|787|269|0|en|proj=tmerc lat_0=0 lon_0=12 k=0.9999 x_0=500000 y_0=10000000
3319|P|IGC 1962 / Congo TM zone 14|788|269|0|en|proj=tmerc lat_0=0 lon_0=14 k=0.9999 x_0=500000 y_0=10000000
3320|P|IGC 1962 / Congo TM zone 16|789|269|0|en|proj=tmerc lat_0=0 lon_0=16 k=0.9999 x_0=500000 y_0=10000000
3321|P|IGC 1962 / Congo TM zone 18|790|269|0|en|proj=tmerc lat_0=0 lon_0=18 k=0.9999 x_0=500000 y_0=10000000
3322|P|IGC 1962 / Congo TM zone 20|791|269|0|en|proj=tmerc lat_0=0 lon_0=20 k=0.9999 x_0=500000 y_0=10000000
3323|P|IGC 1962 / Congo TM zone 22|792|269|0|en|proj=tmerc lat_0=0 lon_0=22 k=0.9999 x_0=500000 y_0=10000000
3324|P|IGC 1962 / Congo TM zone 24|786|269|0|en|proj=tmerc lat_0=0 lon_0=24 k=0.9999 x_0=500000 y_0=10000000
3325|P|IGC 1962 / Congo TM zone 26|793|269|0|en|proj=tmerc lat_0=0 lon_0=26 k=0.9999 x_0=500000 y_0=10000000
3326|P|IGC 1962 / Congo TM zone 28|794|269|0|en|proj=tmerc lat_0=0 lon_0=28 k=0.9999 x_0=500000 y_0=10000000
3327|P|IGC 1962 / Congo TM zone 30|795|269|0|en|proj=tmerc lat_0=0 lon_0=30 k=0.9999 x_0=500000 y_0=10000000
3328|P|Pulkovo 1942(58) / GUGiK-80|796|60|0|ne|proj=sterea lat_0=52.1666666666667 lon_0=19.1666666666667 k=0.999714 x_0=500000 y_0=500000
3329|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 5|797|60|0|ne|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=5500000 y_0=0
3330|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 6|798|60|0|ne|proj=tmerc lat_0=0 lon_0=18 k=1 x_0=6500000 y_0=0
3331|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 7|799|60|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=7500000 y_0=0
3332|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 8|800|60|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=8500000 y_0=0
3333|P|Pulkovo 1942(58) / Gauss-Kruger zone 3|801|60|0|ne|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=3500000 y_0=0
3334|P|Pulkovo 1942(58) / Gauss-Kruger zone 4|802|60|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=4500000 y_0=0
3335|P|Pulkovo 1942(58) / Gauss-Kruger zone 5|803|60|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=5500000 y_0=0
3336|P|IGN 1962 Kerguelen / UTM zone 42S|804|270|0|en|proj=utm zone=42 south
3337|P|Le Pouce 1934 / Mauritius Grid|805|271|0|en|proj=lcc lat_1=-20.1950694444444 lat_0=-20.1950694444444 lon_0=57.5218277777778 k_0=1 x_0=1000000 y_0=1000000
3338|P|NAD83 / Alaska Albers|511|138|0|en|proj=aea lat_0=50 lon_0=-154 lat_1=55 lat_2=65 x_0=0 y_0=0
3339|P|IGCB 1955 / Congo TM zone 12|787|273|0|en|proj=tmerc lat_0=0 lon_0=12 k=0.9999 x_0=500000 y_0=10000000
3340|P|IGCB 1955 / Congo TM zone 14|788|273|0|en|proj=tmerc lat_0=0 lon_0=14 k=0.9999 x_0=500000 y_0=10000000
3341|P|IGCB 1955 / Congo TM zone 16|806|273|0|en|proj=tmerc lat_0=0 lon_0=16 k=0.9999 x_0=500000 y_0=10000000
3342|P|IGCB 1955 / UTM zone 33S|807|273|0|en|proj=utm zone=33 south
3343|P|Mauritania 1999 / UTM zone 28N|808|274|0|en|proj=utm zone=28
3344|P|Mauritania 1999 / UTM zone 29N|809|274|0|en|proj=utm zone=29
3345|P|Mauritania 1999 / UTM zone 30N|810|274|0|en|proj=utm zone=30
3346|P|LKS94 / Lithuania TM|811|244|0|ne|proj=tmerc lat_0=0 lon_0=24 k=0.9998 x_0=500000 y_0=0
3347|P|NAD83 / Statistics Canada Lambert|812|138|0|en|proj=lcc lat_0=63.390675 lon_0=-91.8666666666667 lat_1=49 lat_2=77 x_0=6200000 y_0=3000000
3348|P|NAD83(CSRS) / Statistics Canada Lambert|812|207|0|en|proj=lcc lat_0=63.390675 lon_0=-91.8666666666667 lat_1=49 lat_2=77 x_0=6200000 y_0=3000000
3350|P|Pulkovo 1942 / CS63 zone C0|813|152|0|ne|proj=tmerc lat_0=0.1 lon_0=21.95 k=1 x_0=250000 y_0=0
3351|P|Pulkovo 1942 / CS63 zone C1|814|152|0|ne|proj=tmerc lat_0=0.1 lon_0=24.95 k=1 x_0=1250000 y_0=0
3352|P|Pulkovo 1942 / CS63 zone C2|815|152|0|ne|proj=tmerc lat_0=0.1 lon_0=27.95 k=1 x_0=2250000 y_0=0
3353|P|Mhast (onshore) / UTM zone 32S|816|276|0|en|proj=utm zone=32 south
3354|P|Mhast (offshore) / UTM zone 32S|817|277|0|en|proj=utm zone=32 south
3355|P|Egypt Gulf of Suez S-650 TL / Red Belt|818|278|0|en|proj=tmerc lat_0=30 lon_0=31 k=1 x_0=615000 y_0=810000
3358|P|NAD83(HARN) / North Carolina|206|35|0|en|proj=lcc lat_0=33.75 lon_0=-79 lat_1=36.1666666666667 lat_2=34.3333333333333 x_0=609601.22 y_0=0
3360|P|NAD83(HARN) / South Carolina|215|35|0|en|proj=lcc lat_0=31.8333333333333 lon_0=-81 lat_1=34.8333333333333 lat_2=32.5 x_0=609600 y_0=0
3361|P|NAD83(HARN) / South Carolina (ft)|215|35|4|en|proj=lcc lat_0=31.8333333333333 lon_0=-81 lat_1=34.8333333333333 lat_2=32.5 x_0=609600 y_0=0
3362|P|NAD83(HARN) / Pennsylvania North|213|35|0|en|proj=lcc lat_0=40.1666666666667 lon_0=-77.75 lat_1=41.95 lat_2=40.8833333333333 x_0=600000 y_0=0
3363|P|NAD83(HARN) / Pennsylvania North (ftUS)|213|35|3|en|proj=lcc lat_0=40.1666666666667 lon_0=-77.75 lat_1=41.95 lat_2=40.8833333333333 x_0=600000 y_0=0
3364|P|NAD83(HARN) / Pennsylvania South|214|35|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-77.75 lat_1=40.9666666666667 lat_2=39.9333333333333 x_0=600000 y_0=0
3365|P|NAD83(HARN) / Pennsylvania South (ftUS)|214|35|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-77.75 lat_1=40.9666666666667 lat_2=39.9333333333333 x_0=600000 y_0=0
3367|P|IGN Astro 1960 / UTM zone 28N|819|272|0|en|proj=utm zone=28
3368|P|IGN Astro 1960 / UTM zone 29N|809|272|0|en|proj=utm zone=29
3369|P|IGN Astro 1960 / UTM zone 30N|810|272|0|en|proj=utm zone=30
3370|P|NAD27 / UTM zone 59N|820|137|0|en|proj=utm zone=59
3371|P|NAD27 / UTM zone 60N|821|137|0|en|proj=utm zone=60
3372|P|NAD83 / UTM zone 59N|820|138|0|en|proj=utm zone=59
3373|P|NAD83 / UTM zone 60N|821|138|0|en|proj=utm zone=60
3374|P|FD54 / UTM zone 29N|639|312|0|en|proj=utm zone=29
3375|P|GDM2000 / Peninsula RSO|822|313|0|en|proj=omerc no_uoff lat_0=4 lonc=102.25 alpha=323.025796466667 gamma=323.130102361111 k=0.99984 x_0=804671 y_0=0
3376|P|GDM2000 / East Malaysia BRSO|823|313|0|en|proj=omerc no_uoff lat_0=4 lonc=115 alpha=53.31580995 gamma=53.1301023611111 k=0.99984 x_0=0 y_0=0
3377|P|GDM2000 / Johor Grid|824|313|0|en|proj=cass lat_0=2.12167974444444 lon_0=103.427936236111 x_0=-14810.562 y_0=8758.32
3378|P|GDM2000 / Sembilan and Melaka Grid|825|313|0|en|proj=cass lat_0=2.68234763611111 lon_0=101.974905041667 x_0=3673.785 y_0=-4240.573
3379|P|GDM2000 / Pahang Grid|826|313|0|en|proj=cass lat_0=3.76938808888889 lon_0=102.368298983333 x_0=-7368.228 y_0=6485.858
3380|P|GDM2000 / Selangor Grid|827|313|0|en|proj=cass lat_0=3.68464905 lon_0=101.389107913889 x_0=-34836.161 y_0=56464.049
3381|P|GDM2000 / Terengganu Grid|828|313|0|en|proj=cass lat_0=4.9762852 lon_0=103.070275625 x_0=19594.245 y_0=3371.895
3382|P|GDM2000 / Pinang Grid|829|313|0|en|proj=cass lat_0=5.42151754166667 lon_0=100.344376963889 x_0=-23.414 y_0=62.283
3383|P|GDM2000 / Kedah and Perlis Grid|830|313|0|en|proj=cass lat_0=5.96467271388889 lon_0=100.636371111111 x_0=0 y_0=0
3384|P|GDM2000 / Perak Grid|831|313|0|en|proj=cass lat_0=4.85906302222222 lon_0=100.815410586111 x_0=-1.769 y_0=133454.779
3385|P|GDM2000 / Kelantan Grid|832|313|0|en|proj=cass lat_0=5.97254365833333 lon_0=102.295241669444 x_0=13227.851 y_0=8739.894
3386|P|KKJ / Finland zone 0|622|12|0|ne|proj=tmerc lat_0=0 lon_0=18 k=1 x_0=500000 y_0=0
3387|P|KKJ / Finland zone 5|833|12|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=5500000 y_0=0
3388|P|Pulkovo 1942 / Caspian Sea Mercator|834|152|0|ne|proj=merc lat_ts=42 lon_0=51 x_0=0 y_0=0
3389|P|Pulkovo 1942 / 3-degree Gauss-Kruger zone 60|412|152|0|ne|proj=tmerc lat_0=0 lon_0=180 k=1 x_0=60500000 y_0=0
3390|P|Pulkovo 1995 / 3-degree Gauss-Kruger zone 60|412|78|0|ne|proj=tmerc lat_0=0 lon_0=180 k=1 x_0=60500000 y_0=0
3391|P|Karbala 1979 / UTM zone 37N|835|314|0|en|proj=utm zone=37
3392|P|Karbala 1979 / UTM zone 38N|836|314|0|en|proj=utm zone=38
3393|P|Karbala 1979 / UTM zone 39N|837|314|0|en|proj=utm zone=39
3394|P|Nahrwan 1934 / Iraq zone|838|315|0|en|proj=lcc lat_1=32.5 lat_0=32.5 lon_0=45 k_0=0.9987864078 x_0=1500000 y_0=1166200
3395|P|WGS 84 / World Mercator|839|183|0|en|proj=merc lon_0=0 k=1 x_0=0 y_0=0
3396|P|PD/83 / 3-degree Gauss-Kruger zone 3|840|317|0|ne|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=3500000 y_0=0
3397|P|PD/83 / 3-degree Gauss-Kruger zone 4|841|317|0|ne|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
3398|P|RD/83 / 3-degree Gauss-Kruger zone 4|842|316|0|ne|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
3399|P|RD/83 / 3-degree Gauss-Kruger zone 5|843|316|0|ne|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=5500000 y_0=0
3400|P|NAD83 / Alberta 10-TM (Forest)|844|138|0|en|proj=tmerc lat_0=0 lon_0=-115 k=0.9992 x_0=500000 y_0=0
3401|P|NAD83 / Alberta 10-TM (Resource)|844|138|0|en|proj=tmerc lat_0=0 lon_0=-115 k=0.9992 x_0=0 y_0=0
3402|P|NAD83(CSRS) / Alberta 10-TM (Forest)|844|207|0|en|proj=tmerc lat_0=0 lon_0=-115 k=0.9992 x_0=500000 y_0=0
3403|P|NAD83(CSRS) / Alberta 10-TM (Resource)|844|207|0|en|proj=tmerc lat_0=0 lon_0=-115 k=0.9992 x_0=0 y_0=0
3404|P|NAD83(HARN) / North Carolina (ftUS)|206|35|3|en|proj=lcc lat_0=33.75 lon_0=-79 lat_1=36.1666666666667 lat_2=34.3333333333333 x_0=609601.219202438 y_0=0
3405|P|VN-2000 / UTM zone 48N|36|327|0|en|proj=utm zone=48
3406|P|VN-2000 / UTM zone 49N|37|327|0|en|proj=utm zone=49
3407|P|Hong Kong 1963 Grid System|252|309|5|ne|proj=cass lat_0=22.3121333333333 lon_0=114.178555555556 x_0=40243.5777560424 y_0=19069.9335151258
3413|P|WGS 84 / NSIDC Sea Ice Polar Stereographic North|845|183|0|en|proj=stere lat_0=90 lat_ts=70 lon_0=-45 x_0=0 y_0=0
3414|P|SVY21 / Singapore TM|846|328|0|ne|proj=tmerc lat_0=1.36666666666667 lon_0=103.833333333333 k=1 x_0=28001.642 y_0=38744.572
3415|P|WGS 72BE / South China Sea Lambert|847|182|0|en|proj=lcc lat_0=21 lon_0=114 lat_1=18 lat_2=24 x_0=500000 y_0=500000
3416|P|ETRS89 / Austria Lambert|848|130|0|ne|proj=lcc lat_0=47.5 lon_0=13.3333333333333 lat_1=49 lat_2=46 x_0=400000 y_0=400000
3417|P|NAD83 / Iowa North (ftUS)|451|138|3|en|proj=lcc lat_0=41.5 lon_0=-93.5 lat_1=43.2666666666667 lat_2=42.0666666666667 x_0=1500000 y_0=999999.999989839
3418|P|NAD83 / Iowa South (ftUS)|452|138|3|en|proj=lcc lat_0=40 lon_0=-93.5 lat_1=41.7833333333333 lat_2=40.6166666666667 x_0=500000.00001016 y_0=0
3419|P|NAD83 / Kansas North (ftUS)|453|138|3|en|proj=lcc lat_0=38.3333333333333 lon_0=-98 lat_1=39.7833333333333 lat_2=38.7166666666667 x_0=399999.99998984 y_0=0
3420|P|NAD83 / Kansas South (ftUS)|454|138|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-98.5 lat_1=38.5666666666667 lat_2=37.2666666666667 x_0=399999.99998984 y_0=399999.99998984
3421|P|NAD83 / Nevada East (ftUS)|466|138|3|en|proj=tmerc lat_0=34.75 lon_0=-115.583333333333 k=0.9999 x_0=200000.00001016 y_0=8000000.00001016
3422|P|NAD83 / Nevada Central (ftUS)|467|138|3|en|proj=tmerc lat_0=34.75 lon_0=-116.666666666667 k=0.9999 x_0=500000.00001016 y_0=6000000
3423|P|NAD83 / Nevada West (ftUS)|468|138|3|en|proj=tmerc lat_0=34.75 lon_0=-118.583333333333 k=0.9999 x_0=800000.00001016 y_0=3999999.99998984
3424|P|NAD83 / New Jersey (ftUS)|470|138|3|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
3425|P|NAD83(HARN) / Iowa North (ftUS)|451|35|3|en|proj=lcc lat_0=41.5 lon_0=-93.5 lat_1=43.2666666666667 lat_2=42.0666666666667 x_0=1500000 y_0=999999.999989839
3426|P|NAD83(HARN) / Iowa South (ftUS)|452|35|3|en|proj=lcc lat_0=40 lon_0=-93.5 lat_1=41.7833333333333 lat_2=40.6166666666667 x_0=500000.00001016 y_0=0
3427|P|NAD83(HARN) / Kansas North (ftUS)|453|35|3|en|proj=lcc lat_0=38.3333333333333 lon_0=-98 lat_1=39.7833333333333 lat_2=38.7166666666667 x_0=399999.99998984 y_0=0
3428|P|NAD83(HARN) / Kansas South (ftUS)|454|35|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-98.5 lat_1=38.5666666666667 lat_2=37.2666666666667 x_0=399999.99998984 y_0=399999.99998984
3429|P|NAD83(HARN) / Nevada East (ftUS)|466|35|3|en|proj=tmerc lat_0=34.75 lon_0=-115.583333333333 k=0.9999 x_0=200000.00001016 y_0=8000000.00001016
3430|P|NAD83(HARN) / Nevada Central (ftUS)|467|35|3|en|proj=tmerc lat_0=34.75 lon_0=-116.666666666667 k=0.9999 x_0=500000.00001016 y_0=6000000
3431|P|NAD83(HARN) / Nevada West (ftUS)|468|35|3|en|proj=tmerc lat_0=34.75 lon_0=-118.583333333333 k=0.9999 x_0=800000.00001016 y_0=3999999.99998984
3432|P|NAD83(HARN) / New Jersey (ftUS)|470|35|3|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
3433|P|NAD83 / Arkansas North (ftUS)|440|138|3|en|proj=lcc lat_0=34.3333333333333 lon_0=-92 lat_1=36.2333333333333 lat_2=34.9333333333333 x_0=399999.99998984 y_0=0
3434|P|NAD83 / Arkansas South (ftUS)|441|138|3|en|proj=lcc lat_0=32.6666666666667 lon_0=-92 lat_1=34.7666666666667 lat_2=33.3 x_0=399999.99998984 y_0=399999.99998984
3435|P|NAD83 / Illinois East (ftUS)|447|138|3|en|proj=tmerc lat_0=36.6666666666667 lon_0=-88.3333333333333 k=0.999975 x_0=300000 y_0=0
3436|P|NAD83 / Illinois West (ftUS)|448|138|3|en|proj=tmerc lat_0=36.6666666666667 lon_0=-90.1666666666667 k=0.999941177 x_0=699999.99998984 y_0=0
3437|P|NAD83 / New Hampshire (ftUS)|469|138|3|en|proj=tmerc lat_0=42.5 lon_0=-71.6666666666667 k=0.999966667 x_0=300000 y_0=0
3438|P|NAD83 / Rhode Island (ftUS)|473|138|3|en|proj=tmerc lat_0=41.0833333333333 lon_0=-71.5 k=0.99999375 x_0=99999.9999898399 y_0=0
3439|P|PSD93 / UTM zone 39N|849|21|0|en|proj=utm zone=39
3440|P|PSD93 / UTM zone 40N|850|21|0|en|proj=utm zone=40
3441|P|NAD83(HARN) / Arkansas North (ftUS)|440|35|3|en|proj=lcc lat_0=34.3333333333333 lon_0=-92 lat_1=36.2333333333333 lat_2=34.9333333333333 x_0=399999.99998984 y_0=0
3442|P|NAD83(HARN) / Arkansas South (ftUS)|441|35|3|en|proj=lcc lat_0=32.6666666666667 lon_0=-92 lat_1=34.7666666666667 lat_2=33.3 x_0=399999.99998984 y_0=399999.99998984
3443|P|NAD83(HARN) / Illinois East (ftUS)|447|35|3|en|proj=tmerc lat_0=36.6666666666667 lon_0=-88.3333333333333 k=0.999975 x_0=300000 y_0=0
3444|P|NAD83(HARN) / Illinois West (ftUS)|448|35|3|en|proj=tmerc lat_0=36.6666666666667 lon_0=-90.1666666666667 k=0.999941177 x_0=699999.99998984 y_0=0
3445|P|NAD83(HARN) / New Hampshire (ftUS)|469|35|3|en|proj=tmerc lat_0=42.5 lon_0=-71.6666666666667 k=0.999966667 x_0=300000 y_0=0
3446|P|NAD83(HARN) / Rhode Island (ftUS)|473|35|3|en|proj=tmerc lat_0=41.0833333333333 lon_0=-71.5 k=0.99999375 x_0=99999.9999898399 y_0=0
3447|P|ETRS89 / Belgian Lambert 2005|851|130|0|en|proj=lcc lat_0=50.797815 lon_0=4.35921583333333 lat_1=49.8333333333333 lat_2=51.1666666666667 x_0=150328 y_0=166262
3448|P|JAD2001 / Jamaica Metric Grid|852|329|0|en|proj=lcc lat_1=18 lat_0=18 lon_0=-77 k_0=1 x_0=750000 y_0=650000
3449|P|JAD2001 / UTM zone 17N|853|329|0|en|proj=utm zone=17
3450|P|JAD2001 / UTM zone 18N|854|329|0|en|proj=utm zone=18
3451|P|NAD83 / Louisiana North (ftUS)|455|138|3|en|proj=lcc lat_0=30.5 lon_0=-92.5 lat_1=32.6666666666667 lat_2=31.1666666666667 x_0=999999.999989839 y_0=0
3452|P|NAD83 / Louisiana South (ftUS)|456|138|3|en|proj=lcc lat_0=28.5 lon_0=-91.3333333333333 lat_1=30.7 lat_2=29.3 x_0=999999.999989839 y_0=0
3453|P|NAD83 / Louisiana Offshore (ftUS)|855|138|3|en|proj=lcc lat_0=25.5 lon_0=-91.3333333333333 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=999999.999989839 y_0=0
3455|P|NAD83 / South Dakota South (ftUS)|475|138|3|en|proj=lcc lat_0=42.3333333333333 lon_0=-100.333333333333 lat_1=44.4 lat_2=42.8333333333333 x_0=600000 y_0=0
3456|P|NAD83(HARN) / Louisiana North (ftUS)|455|35|3|en|proj=lcc lat_0=30.5 lon_0=-92.5 lat_1=32.6666666666667 lat_2=31.1666666666667 x_0=999999.999989839 y_0=0
3457|P|NAD83(HARN) / Louisiana South (ftUS)|456|35|3|en|proj=lcc lat_0=28.5 lon_0=-91.3333333333333 lat_1=30.7 lat_2=29.3 x_0=999999.999989839 y_0=0
3458|P|NAD83(HARN) / South Dakota North (ftUS)|474|35|3|en|proj=lcc lat_0=43.8333333333333 lon_0=-100 lat_1=45.6833333333333 lat_2=44.4166666666667 x_0=600000 y_0=0
3459|P|NAD83(HARN) / South Dakota South (ftUS)|475|35|3|en|proj=lcc lat_0=42.3333333333333 lon_0=-100.333333333333 lat_1=44.4 lat_2=42.8333333333333 x_0=600000 y_0=0
3460|P|Fiji 1986 / Fiji Map Grid|856|292|0|en|proj=tmerc lat_0=-17 lon_0=178.75 k=0.99985 x_0=2000000 y_0=4000000
3461|P|Dabola 1981 / UTM zone 28N|857|38|0|en|proj=utm zone=28
3462|P|Dabola 1981 / UTM zone 29N|858|38|0|en|proj=utm zone=29
3463|P|NAD83 / Maine CS2000 Central|859|138|0|en|proj=tmerc lat_0=43.5 lon_0=-69.125 k=0.99998 x_0=500000 y_0=0
3464|P|NAD83(HARN) / Maine CS2000 Central|859|35|0|en|proj=tmerc lat_0=43.5 lon_0=-69.125 k=0.99998 x_0=500000 y_0=0
3465|P|NAD83(NSRS2007) / Alabama East|438|330|0|en|proj=tmerc lat_0=30.5 lon_0=-85.8333333333333 k=0.99996 x_0=200000 y_0=0
3466|P|NAD83(NSRS2007) / Alabama West|439|330|0|en|proj=tmerc lat_0=30 lon_0=-87.5 k=0.999933333 x_0=600000 y_0=0
3467|P|NAD83(NSRS2007) / Alaska Albers|511|330|0|en|proj=aea lat_0=50 lon_0=-154 lat_1=55 lat_2=65 x_0=0 y_0=0
3468|P|NAD83(NSRS2007) / Alaska zone 1|860|330|0|en|proj=omerc no_uoff lat_0=57 lonc=-133.666666666667 alpha=323.130102361111 gamma=323.130102361111 k=0.9999 x_0=5000000 y_0=-5000000
3469|P|NAD83(NSRS2007) / Alaska zone 2|861|330|0|en|proj=tmerc lat_0=54 lon_0=-142 k=0.9999 x_0=500000 y_0=0
3470|P|NAD83(NSRS2007) / Alaska zone 3|862|330|0|en|proj=tmerc lat_0=54 lon_0=-146 k=0.9999 x_0=500000 y_0=0
3471|P|NAD83(NSRS2007) / Alaska zone 4|863|330|0|en|proj=tmerc lat_0=54 lon_0=-150 k=0.9999 x_0=500000 y_0=0
3472|P|NAD83(NSRS2007) / Alaska zone 5|864|330|0|en|proj=tmerc lat_0=54 lon_0=-154 k=0.9999 x_0=500000 y_0=0
3473|P|NAD83(NSRS2007) / Alaska zone 6|865|330|0|en|proj=tmerc lat_0=54 lon_0=-158 k=0.9999 x_0=500000 y_0=0
3474|P|NAD83(NSRS2007) / Alaska zone 7|866|330|0|en|proj=tmerc lat_0=54 lon_0=-162 k=0.9999 x_0=500000 y_0=0
3475|P|NAD83(NSRS2007) / Alaska zone 8|867|330|0|en|proj=tmerc lat_0=54 lon_0=-166 k=0.9999 x_0=500000 y_0=0
3476|P|NAD83(NSRS2007) / Alaska zone 9|868|330|0|en|proj=tmerc lat_0=54 lon_0=-170 k=0.9999 x_0=500000 y_0=0
3477|P|NAD83(NSRS2007) / Alaska zone 10|869|330|0|en|proj=lcc lat_0=51 lon_0=-176 lat_1=53.8333333333333 lat_2=51.8333333333333 x_0=1000000 y_0=0
3478|P|NAD83(NSRS2007) / Arizona Central|168|330|0|en|proj=tmerc lat_0=31 lon_0=-111.916666666667 k=0.9999 x_0=213360 y_0=0
3479|P|NAD83(NSRS2007) / Arizona Central (ft)|168|330|4|en|proj=tmerc lat_0=31 lon_0=-111.916666666667 k=0.9999 x_0=213360 y_0=0
3480|P|NAD83(NSRS2007) / Arizona East|167|330|0|en|proj=tmerc lat_0=31 lon_0=-110.166666666667 k=0.9999 x_0=213360 y_0=0
3481|P|NAD83(NSRS2007) / Arizona East (ft)|167|330|4|en|proj=tmerc lat_0=31 lon_0=-110.166666666667 k=0.9999 x_0=213360 y_0=0
3482|P|NAD83(NSRS2007) / Arizona West|169|330|0|en|proj=tmerc lat_0=31 lon_0=-113.75 k=0.999933333 x_0=213360 y_0=0
3483|P|NAD83(NSRS2007) / Arizona West (ft)|169|330|4|en|proj=tmerc lat_0=31 lon_0=-113.75 k=0.999933333 x_0=213360 y_0=0
3484|P|NAD83(NSRS2007) / Arkansas North|440|330|0|en|proj=lcc lat_0=34.3333333333333 lon_0=-92 lat_1=36.2333333333333 lat_2=34.9333333333333 x_0=400000 y_0=0
3485|P|NAD83(NSRS2007) / Arkansas North (ftUS)|440|330|3|en|proj=lcc lat_0=34.3333333333333 lon_0=-92 lat_1=36.2333333333333 lat_2=34.9333333333333 x_0=399999.99998984 y_0=0
3486|P|NAD83(NSRS2007) / Arkansas South|441|330|0|en|proj=lcc lat_0=32.6666666666667 lon_0=-92 lat_1=34.7666666666667 lat_2=33.3 x_0=400000 y_0=400000
3487|P|NAD83(NSRS2007) / Arkansas South (ftUS)|441|330|3|en|proj=lcc lat_0=32.6666666666667 lon_0=-92 lat_1=34.7666666666667 lat_2=33.3 x_0=399999.99998984 y_0=399999.99998984
3488|P|NAD83(NSRS2007) / California Albers|782|330|0|en|proj=aea lat_0=0 lon_0=-120 lat_1=34 lat_2=40.5 x_0=0 y_0=-4000000
3489|P|NAD83(NSRS2007) / California zone 1|170|330|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-122 lat_1=41.6666666666667 lat_2=40 x_0=2000000 y_0=500000
3490|P|NAD83(NSRS2007) / California zone 1 (ftUS)|170|330|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-122 lat_1=41.6666666666667 lat_2=40 x_0=2000000.0001016 y_0=500000.0001016
3491|P|NAD83(NSRS2007) / California zone 2|171|330|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-122 lat_1=39.8333333333333 lat_2=38.3333333333333 x_0=2000000 y_0=500000
3492|P|NAD83(NSRS2007) / California zone 2 (ftUS)|171|330|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-122 lat_1=39.8333333333333 lat_2=38.3333333333333 x_0=2000000.0001016 y_0=500000.0001016
3493|P|NAD83(NSRS2007) / California zone 3|172|330|0|en|proj=lcc lat_0=36.5 lon_0=-120.5 lat_1=38.4333333333333 lat_2=37.0666666666667 x_0=2000000 y_0=500000
3494|P|NAD83(NSRS2007) / California zone 3 (ftUS)|172|330|3|en|proj=lcc lat_0=36.5 lon_0=-120.5 lat_1=38.4333333333333 lat_2=37.0666666666667 x_0=2000000.0001016 y_0=500000.0001016
3495|P|NAD83(NSRS2007) / California zone 4|173|330|0|en|proj=lcc lat_0=35.3333333333333 lon_0=-119 lat_1=37.25 lat_2=36 x_0=2000000 y_0=500000
3496|P|NAD83(NSRS2007) / California zone 4 (ftUS)|173|330|3|en|proj=lcc lat_0=35.3333333333333 lon_0=-119 lat_1=37.25 lat_2=36 x_0=2000000.0001016 y_0=500000.0001016
3497|P|NAD83(NSRS2007) / California zone 5|174|330|0|en|proj=lcc lat_0=33.5 lon_0=-118 lat_1=35.4666666666667 lat_2=34.0333333333333 x_0=2000000 y_0=500000
3498|P|NAD83(NSRS2007) / California zone 5 (ftUS)|174|330|3|en|proj=lcc lat_0=33.5 lon_0=-118 lat_1=35.4666666666667 lat_2=34.0333333333333 x_0=2000000.0001016 y_0=500000.0001016
3499|P|NAD83(NSRS2007) / California zone 6|175|330|0|en|proj=lcc lat_0=32.1666666666667 lon_0=-116.25 lat_1=33.8833333333333 lat_2=32.7833333333333 x_0=2000000 y_0=500000
3500|P|NAD83(NSRS2007) / California zone 6 (ftUS)|175|330|3|en|proj=lcc lat_0=32.1666666666667 lon_0=-116.25 lat_1=33.8833333333333 lat_2=32.7833333333333 x_0=2000000.0001016 y_0=500000.0001016
3501|P|NAD83(NSRS2007) / Colorado Central|177|330|0|en|proj=lcc lat_0=37.8333333333333 lon_0=-105.5 lat_1=39.75 lat_2=38.45 x_0=914401.8289 y_0=304800.6096
3502|P|NAD83(NSRS2007) / Colorado Central (ftUS)|177|330|3|en|proj=lcc lat_0=37.8333333333333 lon_0=-105.5 lat_1=39.75 lat_2=38.45 x_0=914401.828803657 y_0=304800.609601219
3503|P|NAD83(NSRS2007) / Colorado North|176|330|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-105.5 lat_1=40.7833333333333 lat_2=39.7166666666667 x_0=914401.8289 y_0=304800.6096
3504|P|NAD83(NSRS2007) / Colorado North (ftUS)|176|330|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-105.5 lat_1=40.7833333333333 lat_2=39.7166666666667 x_0=914401.828803657 y_0=304800.609601219
3505|P|NAD83(NSRS2007) / Colorado South|178|330|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-105.5 lat_1=38.4333333333333 lat_2=37.2333333333333 x_0=914401.8289 y_0=304800.6096
3506|P|NAD83(NSRS2007) / Colorado South (ftUS)|178|330|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-105.5 lat_1=38.4333333333333 lat_2=37.2333333333333 x_0=914401.828803657 y_0=304800.609601219
3507|P|NAD83(NSRS2007) / Connecticut|179|330|0|en|proj=lcc lat_0=40.8333333333333 lon_0=-72.75 lat_1=41.8666666666667 lat_2=41.2 x_0=304800.6096 y_0=152400.3048
3508|P|NAD83(NSRS2007) / Connecticut (ftUS)|179|330|3|en|proj=lcc lat_0=40.8333333333333 lon_0=-72.75 lat_1=41.8666666666667 lat_2=41.2 x_0=304800.609601219 y_0=152400.30480061
3509|P|NAD83(NSRS2007) / Delaware|180|330|0|en|proj=tmerc lat_0=38 lon_0=-75.4166666666667 k=0.999995 x_0=200000 y_0=0
3510|P|NAD83(NSRS2007) / Delaware (ftUS)|180|330|3|en|proj=tmerc lat_0=38 lon_0=-75.4166666666667 k=0.999995 x_0=200000.0001016 y_0=0
3511|P|NAD83(NSRS2007) / Florida East|181|330|0|en|proj=tmerc lat_0=24.3333333333333 lon_0=-81 k=0.999941177 x_0=200000 y_0=0
3512|P|NAD83(NSRS2007) / Florida East (ftUS)|181|330|3|en|proj=tmerc lat_0=24.3333333333333 lon_0=-81 k=0.999941177 x_0=200000.0001016 y_0=0
3513|P|NAD83(NSRS2007) / Florida GDL Albers|591|330|0|en|proj=aea lat_0=24 lon_0=-84 lat_1=24 lat_2=31.5 x_0=400000 y_0=0
3514|P|NAD83(NSRS2007) / Florida North|183|330|0|en|proj=lcc lat_0=29 lon_0=-84.5 lat_1=30.75 lat_2=29.5833333333333 x_0=600000 y_0=0
3515|P|NAD83(NSRS2007) / Florida North (ftUS)|183|330|3|en|proj=lcc lat_0=29 lon_0=-84.5 lat_1=30.75 lat_2=29.5833333333333 x_0=600000 y_0=0
3516|P|NAD83(NSRS2007) / Florida West|182|330|0|en|proj=tmerc lat_0=24.3333333333333 lon_0=-82 k=0.999941177 x_0=200000 y_0=0
3517|P|NAD83(NSRS2007) / Florida West (ftUS)|182|330|3|en|proj=tmerc lat_0=24.3333333333333 lon_0=-82 k=0.999941177 x_0=200000.0001016 y_0=0
3518|P|NAD83(NSRS2007) / Georgia East|184|330|0|en|proj=tmerc lat_0=30 lon_0=-82.1666666666667 k=0.9999 x_0=200000 y_0=0
3519|P|NAD83(NSRS2007) / Georgia East (ftUS)|184|330|3|en|proj=tmerc lat_0=30 lon_0=-82.1666666666667 k=0.9999 x_0=200000.0001016 y_0=0
3520|P|NAD83(NSRS2007) / Georgia West|185|330|0|en|proj=tmerc lat_0=30 lon_0=-84.1666666666667 k=0.9999 x_0=700000 y_0=0
3521|P|NAD83(NSRS2007) / Georgia West (ftUS)|185|330|3|en|proj=tmerc lat_0=30 lon_0=-84.1666666666667 k=0.9999 x_0=699999.999898399 y_0=0
3522|P|NAD83(NSRS2007) / Idaho Central|187|330|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-114 k=0.999947368 x_0=500000 y_0=0
3523|P|NAD83(NSRS2007) / Idaho Central (ftUS)|187|330|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-114 k=0.999947368 x_0=500000.0001016 y_0=0
3524|P|NAD83(NSRS2007) / Idaho East|186|330|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-112.166666666667 k=0.999947368 x_0=200000 y_0=0
3525|P|NAD83(NSRS2007) / Idaho East (ftUS)|186|330|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-112.166666666667 k=0.999947368 x_0=200000.0001016 y_0=0
3526|P|NAD83(NSRS2007) / Idaho West|188|330|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-115.75 k=0.999933333 x_0=800000 y_0=0
3527|P|NAD83(NSRS2007) / Idaho West (ftUS)|188|330|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-115.75 k=0.999933333 x_0=800000.0001016 y_0=0
3528|P|NAD83(NSRS2007) / Illinois East|447|330|0|en|proj=tmerc lat_0=36.6666666666667 lon_0=-88.3333333333333 k=0.999975 x_0=300000 y_0=0
3529|P|NAD83(NSRS2007) / Illinois East (ftUS)|447|330|3|en|proj=tmerc lat_0=36.6666666666667 lon_0=-88.3333333333333 k=0.999975 x_0=300000 y_0=0
3530|P|NAD83(NSRS2007) / Illinois West|448|330|0|en|proj=tmerc lat_0=36.6666666666667 lon_0=-90.1666666666667 k=0.999941177 x_0=700000 y_0=0
3531|P|NAD83(NSRS2007) / Illinois West (ftUS)|448|330|3|en|proj=tmerc lat_0=36.6666666666667 lon_0=-90.1666666666667 k=0.999941177 x_0=699999.99998984 y_0=0
3532|P|NAD83(NSRS2007) / Indiana East|449|330|0|en|proj=tmerc lat_0=37.5 lon_0=-85.6666666666667 k=0.999966667 x_0=100000 y_0=250000
3533|P|NAD83(NSRS2007) / Indiana East (ftUS)|449|330|3|en|proj=tmerc lat_0=37.5 lon_0=-85.6666666666667 k=0.999966667 x_0=99999.9998983997 y_0=249999.9998984
3534|P|NAD83(NSRS2007) / Indiana West|450|330|0|en|proj=tmerc lat_0=37.5 lon_0=-87.0833333333333 k=0.999966667 x_0=900000 y_0=250000
3535|P|NAD83(NSRS2007) / Indiana West (ftUS)|450|330|3|en|proj=tmerc lat_0=37.5 lon_0=-87.0833333333333 k=0.999966667 x_0=900000 y_0=249999.9998984
3536|P|NAD83(NSRS2007) / Iowa North|451|330|0|en|proj=lcc lat_0=41.5 lon_0=-93.5 lat_1=43.2666666666667 lat_2=42.0666666666667 x_0=1500000 y_0=1000000
3537|P|NAD83(NSRS2007) / Iowa North (ftUS)|451|330|3|en|proj=lcc lat_0=41.5 lon_0=-93.5 lat_1=43.2666666666667 lat_2=42.0666666666667 x_0=1500000 y_0=999999.999989839
3538|P|NAD83(NSRS2007) / Iowa South|452|330|0|en|proj=lcc lat_0=40 lon_0=-93.5 lat_1=41.7833333333333 lat_2=40.6166666666667 x_0=500000 y_0=0
3539|P|NAD83(NSRS2007) / Iowa South (ftUS)|452|330|3|en|proj=lcc lat_0=40 lon_0=-93.5 lat_1=41.7833333333333 lat_2=40.6166666666667 x_0=500000.00001016 y_0=0
3540|P|NAD83(NSRS2007) / Kansas North|453|330|0|en|proj=lcc lat_0=38.3333333333333 lon_0=-98 lat_1=39.7833333333333 lat_2=38.7166666666667 x_0=400000 y_0=0
3541|P|NAD83(NSRS2007) / Kansas North (ftUS)|453|330|3|en|proj=lcc lat_0=38.3333333333333 lon_0=-98 lat_1=39.7833333333333 lat_2=38.7166666666667 x_0=399999.99998984 y_0=0
3542|P|NAD83(NSRS2007) / Kansas South|454|330|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-98.5 lat_1=38.5666666666667 lat_2=37.2666666666667 x_0=400000 y_0=400000
3543|P|NAD83(NSRS2007) / Kansas South (ftUS)|454|330|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-98.5 lat_1=38.5666666666667 lat_2=37.2666666666667 x_0=399999.99998984 y_0=399999.99998984
3544|P|NAD83(NSRS2007) / Kentucky North|151|330|0|en|proj=lcc lat_0=37.5 lon_0=-84.25 lat_1=37.9666666666667 lat_2=38.9666666666667 x_0=500000 y_0=0
3545|P|NAD83(NSRS2007) / Kentucky North (ftUS)|151|330|3|en|proj=lcc lat_0=37.5 lon_0=-84.25 lat_1=37.9666666666667 lat_2=38.9666666666667 x_0=500000.0001016 y_0=0
3546|P|NAD83(NSRS2007) / Kentucky Single Zone|592|330|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.0833333333333 lat_2=38.6666666666667 x_0=1500000 y_0=1000000
3547|P|NAD83(NSRS2007) / Kentucky Single Zone (ftUS)|592|330|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.0833333333333 lat_2=38.6666666666667 x_0=1500000 y_0=999999.999898399
3548|P|NAD83(NSRS2007) / Kentucky South|189|330|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.9333333333333 lat_2=36.7333333333333 x_0=500000 y_0=500000
3549|P|NAD83(NSRS2007) / Kentucky South (ftUS)|189|330|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.9333333333333 lat_2=36.7333333333333 x_0=500000.0001016 y_0=500000.0001016
3550|P|NAD83(NSRS2007) / Louisiana North|455|330|0|en|proj=lcc lat_0=30.5 lon_0=-92.5 lat_1=32.6666666666667 lat_2=31.1666666666667 x_0=1000000 y_0=0
3551|P|NAD83(NSRS2007) / Louisiana North (ftUS)|455|330|3|en|proj=lcc lat_0=30.5 lon_0=-92.5 lat_1=32.6666666666667 lat_2=31.1666666666667 x_0=999999.999989839 y_0=0
3552|P|NAD83(NSRS2007) / Louisiana South|456|330|0|en|proj=lcc lat_0=28.5 lon_0=-91.3333333333333 lat_1=30.7 lat_2=29.3 x_0=1000000 y_0=0
3553|P|NAD83(NSRS2007) / Louisiana South (ftUS)|456|330|3|en|proj=lcc lat_0=28.5 lon_0=-91.3333333333333 lat_1=30.7 lat_2=29.3 x_0=999999.999989839 y_0=0
3554|P|NAD83(NSRS2007) / Maine CS2000 Central|859|330|0|en|proj=tmerc lat_0=43.5 lon_0=-69.125 k=0.99998 x_0=500000 y_0=0
3555|P|NAD83(NSRS2007) / Maine CS2000 East|587|330|0|en|proj=tmerc lat_0=43.8333333333333 lon_0=-67.875 k=0.99998 x_0=700000 y_0=0
3556|P|NAD83(NSRS2007) / Maine CS2000 West|588|330|0|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.375 k=0.99998 x_0=300000 y_0=0
3557|P|NAD83(NSRS2007) / Maine East|457|330|0|en|proj=tmerc lat_0=43.6666666666667 lon_0=-68.5 k=0.9999 x_0=300000 y_0=0
3558|P|NAD83(NSRS2007) / Maine West|458|330|0|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.1666666666667 k=0.999966667 x_0=900000 y_0=0
3559|P|NAD83(NSRS2007) / Maryland|190|330|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-77 lat_1=39.45 lat_2=38.3 x_0=400000 y_0=0
3560|P|NAD83 / Utah North (ftUS)|221|138|3|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000.00001016 y_0=999999.999989839
3561|P|Old Hawaiian / Hawaii zone 1|442|22|3|en|proj=tmerc lat_0=18.8333333333333 lon_0=-155.5 k=0.999966667 x_0=152400.30480061 y_0=0
3562|P|Old Hawaiian / Hawaii zone 2|443|22|3|en|proj=tmerc lat_0=20.3333333333333 lon_0=-156.666666666667 k=0.999966667 x_0=152400.30480061 y_0=0
3563|P|Old Hawaiian / Hawaii zone 3|444|22|3|en|proj=tmerc lat_0=21.1666666666667 lon_0=-158 k=0.99999 x_0=152400.30480061 y_0=0
3564|P|Old Hawaiian / Hawaii zone 4|445|22|3|en|proj=tmerc lat_0=21.8333333333333 lon_0=-159.5 k=0.99999 x_0=152400.30480061 y_0=0
3565|P|Old Hawaiian / Hawaii zone 5|446|22|3|en|proj=tmerc lat_0=21.6666666666667 lon_0=-160.166666666667 k=1 x_0=152400.30480061 y_0=0
3566|P|NAD83 / Utah Central (ftUS)|222|138|3|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000.00001016 y_0=2000000.00001016
3567|P|NAD83 / Utah South (ftUS)|223|138|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000.00001016 y_0=3000000
3568|P|NAD83(HARN) / Utah North (ftUS)|221|35|3|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000.00001016 y_0=999999.999989839
3569|P|NAD83(HARN) / Utah Central (ftUS)|222|35|3|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000.00001016 y_0=2000000.00001016
3570|P|NAD83(HARN) / Utah South (ftUS)|223|35|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000.00001016 y_0=3000000
3571|P|WGS 84 / North Pole LAEA Bering Sea|870|183|0|en|proj=laea lat_0=90 lon_0=180 x_0=0 y_0=0
3572|P|WGS 84 / North Pole LAEA Alaska|870|183|0|en|proj=laea lat_0=90 lon_0=-150 x_0=0 y_0=0
3573|P|WGS 84 / North Pole LAEA Canada|870|183|0|en|proj=laea lat_0=90 lon_0=-100 x_0=0 y_0=0
3574|P|WGS 84 / North Pole LAEA Atlantic|870|183|0|en|proj=laea lat_0=90 lon_0=-40 x_0=0 y_0=0
3575|P|WGS 84 / North Pole LAEA Europe|870|183|0|en|proj=laea lat_0=90 lon_0=10 x_0=0 y_0=0
3576|P|WGS 84 / North Pole LAEA Russia|870|183|0|en|proj=laea lat_0=90 lon_0=90 x_0=0 y_0=0
3577|P|GDA94 / Australian Albers|609|151|0|en|proj=aea lat_0=0 lon_0=132 lat_1=-18 lat_2=-36 x_0=0 y_0=0
3578|P|NAD83 / Yukon Albers|871|138|0|en|proj=aea lat_0=59 lon_0=-132.5 lat_1=61.6666666666667 lat_2=68 x_0=500000 y_0=500000
3579|P|NAD83(CSRS) / Yukon Albers|871|207|0|en|proj=aea lat_0=59 lon_0=-132.5 lat_1=61.6666666666667 lat_2=68 x_0=500000 y_0=500000
3580|P|NAD83 / NWT Lambert|872|138|0|en|proj=lcc lat_0=0 lon_0=-112 lat_1=62 lat_2=70 x_0=0 y_0=0
3581|P|NAD83(CSRS) / NWT Lambert|872|207|0|en|proj=lcc lat_0=0 lon_0=-112 lat_1=62 lat_2=70 x_0=0 y_0=0
3582|P|NAD83(NSRS2007) / Maryland (ftUS)|190|330|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-77 lat_1=39.45 lat_2=38.3 x_0=399999.9998984 y_0=0
3583|P|NAD83(NSRS2007) / Massachusetts Island|192|330|0|en|proj=lcc lat_0=41 lon_0=-70.5 lat_1=41.4833333333333 lat_2=41.2833333333333 x_0=500000 y_0=0
3584|P|NAD83(NSRS2007) / Massachusetts Island (ftUS)|192|330|3|en|proj=lcc lat_0=41 lon_0=-70.5 lat_1=41.4833333333333 lat_2=41.2833333333333 x_0=500000.0001016 y_0=0
3585|P|NAD83(NSRS2007) / Massachusetts Mainland|191|330|0|en|proj=lcc lat_0=41 lon_0=-71.5 lat_1=42.6833333333333 lat_2=41.7166666666667 x_0=200000 y_0=750000
3586|P|NAD83(NSRS2007) / Massachusetts Mainland (ftUS)|191|330|3|en|proj=lcc lat_0=41 lon_0=-71.5 lat_1=42.6833333333333 lat_2=41.7166666666667 x_0=200000.0001016 y_0=750000
3587|P|NAD83(NSRS2007) / Michigan Central|194|330|0|en|proj=lcc lat_0=43.3166666666667 lon_0=-84.3666666666667 lat_1=45.7 lat_2=44.1833333333333 x_0=6000000 y_0=0
3588|P|NAD83(NSRS2007) / Michigan Central (ft)|194|330|4|en|proj=lcc lat_0=43.3166666666667 lon_0=-84.3666666666667 lat_1=45.7 lat_2=44.1833333333333 x_0=5999999.999976 y_0=0
3589|P|NAD83(NSRS2007) / Michigan North|193|330|0|en|proj=lcc lat_0=44.7833333333333 lon_0=-87 lat_1=47.0833333333333 lat_2=45.4833333333333 x_0=8000000 y_0=0
3590|P|NAD83(NSRS2007) / Michigan North (ft)|193|330|4|en|proj=lcc lat_0=44.7833333333333 lon_0=-87 lat_1=47.0833333333333 lat_2=45.4833333333333 x_0=7999999.999968 y_0=0
3591|P|NAD83(NSRS2007) / Michigan Oblique Mercator|589|330|0|en|proj=omerc no_uoff lat_0=45.3091666666667 lonc=-86 alpha=337.25556 gamma=337.25556 k=0.9996 x_0=2546731.496 y_0=-4354009.816
3592|P|NAD83(NSRS2007) / Michigan South|195|330|0|en|proj=lcc lat_0=41.5 lon_0=-84.3666666666667 lat_1=43.6666666666667 lat_2=42.1 x_0=4000000 y_0=0
3593|P|NAD83(NSRS2007) / Michigan South (ft)|195|330|4|en|proj=lcc lat_0=41.5 lon_0=-84.3666666666667 lat_1=43.6666666666667 lat_2=42.1 x_0=3999999.999984 y_0=0
3594|P|NAD83(NSRS2007) / Minnesota Central|460|330|0|en|proj=lcc lat_0=45 lon_0=-94.25 lat_1=47.05 lat_2=45.6166666666667 x_0=800000 y_0=100000
3595|P|NAD83(NSRS2007) / Minnesota North|459|330|0|en|proj=lcc lat_0=46.5 lon_0=-93.1 lat_1=48.6333333333333 lat_2=47.0333333333333 x_0=800000 y_0=100000
3596|P|NAD83(NSRS2007) / Minnesota South|461|330|0|en|proj=lcc lat_0=43 lon_0=-94 lat_1=45.2166666666667 lat_2=43.7833333333333 x_0=800000 y_0=100000
3597|P|NAD83(NSRS2007) / Mississippi East|196|330|0|en|proj=tmerc lat_0=29.5 lon_0=-88.8333333333333 k=0.99995 x_0=300000 y_0=0
3598|P|NAD83(NSRS2007) / Mississippi East (ftUS)|196|330|3|en|proj=tmerc lat_0=29.5 lon_0=-88.8333333333333 k=0.99995 x_0=300000 y_0=0
3599|P|NAD83(NSRS2007) / Mississippi West|197|330|0|en|proj=tmerc lat_0=29.5 lon_0=-90.3333333333333 k=0.99995 x_0=700000 y_0=0
3600|P|NAD83(NSRS2007) / Mississippi West (ftUS)|197|330|3|en|proj=tmerc lat_0=29.5 lon_0=-90.3333333333333 k=0.99995 x_0=699999.999898399 y_0=0
3601|P|NAD83(NSRS2007) / Missouri Central|463|330|0|en|proj=tmerc lat_0=35.8333333333333 lon_0=-92.5 k=0.999933333 x_0=500000 y_0=0
3602|P|NAD83(NSRS2007) / Missouri East|462|330|0|en|proj=tmerc lat_0=35.8333333333333 lon_0=-90.5 k=0.999933333 x_0=250000 y_0=0
3603|P|NAD83(NSRS2007) / Missouri West|464|330|0|en|proj=tmerc lat_0=36.1666666666667 lon_0=-94.5 k=0.999941177 x_0=850000 y_0=0
3604|P|NAD83(NSRS2007) / Montana|198|330|0|en|proj=lcc lat_0=44.25 lon_0=-109.5 lat_1=49 lat_2=45 x_0=600000 y_0=0
3605|P|NAD83(NSRS2007) / Montana (ft)|198|330|4|en|proj=lcc lat_0=44.25 lon_0=-109.5 lat_1=49 lat_2=45 x_0=599999.9999976 y_0=0
3606|P|NAD83(NSRS2007) / Nebraska|465|330|0|en|proj=lcc lat_0=39.8333333333333 lon_0=-100 lat_1=43 lat_2=40 x_0=500000 y_0=0
3607|P|NAD83(NSRS2007) / Nevada Central|467|330|0|en|proj=tmerc lat_0=34.75 lon_0=-116.666666666667 k=0.9999 x_0=500000 y_0=6000000
3608|P|NAD83(NSRS2007) / Nevada Central (ftUS)|467|330|3|en|proj=tmerc lat_0=34.75 lon_0=-116.666666666667 k=0.9999 x_0=500000.00001016 y_0=6000000
3609|P|NAD83(NSRS2007) / Nevada East|466|330|0|en|proj=tmerc lat_0=34.75 lon_0=-115.583333333333 k=0.9999 x_0=200000 y_0=8000000
3610|P|NAD83(NSRS2007) / Nevada East (ftUS)|466|330|3|en|proj=tmerc lat_0=34.75 lon_0=-115.583333333333 k=0.9999 x_0=200000.00001016 y_0=8000000.00001016
3611|P|NAD83(NSRS2007) / Nevada West|468|330|0|en|proj=tmerc lat_0=34.75 lon_0=-118.583333333333 k=0.9999 x_0=800000 y_0=4000000
3612|P|NAD83(NSRS2007) / Nevada West (ftUS)|468|330|3|en|proj=tmerc lat_0=34.75 lon_0=-118.583333333333 k=0.9999 x_0=800000.00001016 y_0=3999999.99998984
3613|P|NAD83(NSRS2007) / New Hampshire|469|330|0|en|proj=tmerc lat_0=42.5 lon_0=-71.6666666666667 k=0.999966667 x_0=300000 y_0=0
3614|P|NAD83(NSRS2007) / New Hampshire (ftUS)|469|330|3|en|proj=tmerc lat_0=42.5 lon_0=-71.6666666666667 k=0.999966667 x_0=300000 y_0=0
3615|P|NAD83(NSRS2007) / New Jersey|470|330|0|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
3616|P|NAD83(NSRS2007) / New Jersey (ftUS)|470|330|3|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
3617|P|NAD83(NSRS2007) / New Mexico Central|200|330|0|en|proj=tmerc lat_0=31 lon_0=-106.25 k=0.9999 x_0=500000 y_0=0
3618|P|NAD83(NSRS2007) / New Mexico Central (ftUS)|200|330|3|en|proj=tmerc lat_0=31 lon_0=-106.25 k=0.9999 x_0=500000.0001016 y_0=0
3619|P|NAD83(NSRS2007) / New Mexico East|199|330|0|en|proj=tmerc lat_0=31 lon_0=-104.333333333333 k=0.999909091 x_0=165000 y_0=0
3620|P|NAD83(NSRS2007) / New Mexico East (ftUS)|199|330|3|en|proj=tmerc lat_0=31 lon_0=-104.333333333333 k=0.999909091 x_0=165000 y_0=0
3621|P|NAD83(NSRS2007) / New Mexico West|201|330|0|en|proj=tmerc lat_0=31 lon_0=-107.833333333333 k=0.999916667 x_0=830000 y_0=0
3622|P|NAD83(NSRS2007) / New Mexico West (ftUS)|201|330|3|en|proj=tmerc lat_0=31 lon_0=-107.833333333333 k=0.999916667 x_0=830000.0001016 y_0=0
3623|P|NAD83(NSRS2007) / New York Central|203|330|0|en|proj=tmerc lat_0=40 lon_0=-76.5833333333333 k=0.9999375 x_0=250000 y_0=0
3624|P|NAD83(NSRS2007) / New York Central (ftUS)|203|330|3|en|proj=tmerc lat_0=40 lon_0=-76.5833333333333 k=0.9999375 x_0=249999.9998984 y_0=0
3625|P|NAD83(NSRS2007) / New York East|202|330|0|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
3626|P|NAD83(NSRS2007) / New York East (ftUS)|202|330|3|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
3627|P|NAD83(NSRS2007) / New York Long Island|205|330|0|en|proj=lcc lat_0=40.1666666666667 lon_0=-74 lat_1=41.0333333333333 lat_2=40.6666666666667 x_0=300000 y_0=0
3628|P|NAD83(NSRS2007) / New York Long Island (ftUS)|205|330|3|en|proj=lcc lat_0=40.1666666666667 lon_0=-74 lat_1=41.0333333333333 lat_2=40.6666666666667 x_0=300000 y_0=0
3629|P|NAD83(NSRS2007) / New York West|204|330|0|en|proj=tmerc lat_0=40 lon_0=-78.5833333333333 k=0.9999375 x_0=350000 y_0=0
3630|P|NAD83(NSRS2007) / New York West (ftUS)|204|330|3|en|proj=tmerc lat_0=40 lon_0=-78.5833333333333 k=0.9999375 x_0=350000.0001016 y_0=0
3631|P|NAD83(NSRS2007) / North Carolina|206|330|0|en|proj=lcc lat_0=33.75 lon_0=-79 lat_1=36.1666666666667 lat_2=34.3333333333333 x_0=609601.22 y_0=0
3632|P|NAD83(NSRS2007) / North Carolina (ftUS)|206|330|3|en|proj=lcc lat_0=33.75 lon_0=-79 lat_1=36.1666666666667 lat_2=34.3333333333333 x_0=609601.219202438 y_0=0
3633|P|NAD83(NSRS2007) / North Dakota North|207|330|0|en|proj=lcc lat_0=47 lon_0=-100.5 lat_1=48.7333333333333 lat_2=47.4333333333333 x_0=600000 y_0=0
3634|P|NAD83(NSRS2007) / North Dakota North (ft)|207|330|4|en|proj=lcc lat_0=47 lon_0=-100.5 lat_1=48.7333333333333 lat_2=47.4333333333333 x_0=599999.9999976 y_0=0
3635|P|NAD83(NSRS2007) / North Dakota South|208|330|0|en|proj=lcc lat_0=45.6666666666667 lon_0=-100.5 lat_1=47.4833333333333 lat_2=46.1833333333333 x_0=600000 y_0=0
3636|P|NAD83(NSRS2007) / North Dakota South (ft)|208|330|4|en|proj=lcc lat_0=45.6666666666667 lon_0=-100.5 lat_1=47.4833333333333 lat_2=46.1833333333333 x_0=599999.9999976 y_0=0
3637|P|NAD83(NSRS2007) / Ohio North|471|330|0|en|proj=lcc lat_0=39.6666666666667 lon_0=-82.5 lat_1=41.7 lat_2=40.4333333333333 x_0=600000 y_0=0
3638|P|NAD83(NSRS2007) / Ohio South|472|330|0|en|proj=lcc lat_0=38 lon_0=-82.5 lat_1=40.0333333333333 lat_2=38.7333333333333 x_0=600000 y_0=0
3639|P|NAD83(NSRS2007) / Oklahoma North|209|330|0|en|proj=lcc lat_0=35 lon_0=-98 lat_1=36.7666666666667 lat_2=35.5666666666667 x_0=600000 y_0=0
3640|P|NAD83(NSRS2007) / Oklahoma North (ftUS)|209|330|3|en|proj=lcc lat_0=35 lon_0=-98 lat_1=36.7666666666667 lat_2=35.5666666666667 x_0=600000 y_0=0
3641|P|NAD83(NSRS2007) / Oklahoma South|210|330|0|en|proj=lcc lat_0=33.3333333333333 lon_0=-98 lat_1=35.2333333333333 lat_2=33.9333333333333 x_0=600000 y_0=0
3642|P|NAD83(NSRS2007) / Oklahoma South (ftUS)|210|330|3|en|proj=lcc lat_0=33.3333333333333 lon_0=-98 lat_1=35.2333333333333 lat_2=33.9333333333333 x_0=600000 y_0=0
3643|P|NAD83(NSRS2007) / Oregon LCC (m)|527|330|0|en|proj=lcc lat_0=41.75 lon_0=-120.5 lat_1=43 lat_2=45.5 x_0=400000 y_0=0
3644|P|NAD83(NSRS2007) / Oregon GIC Lambert (ft)|527|330|4|en|proj=lcc lat_0=41.75 lon_0=-120.5 lat_1=43 lat_2=45.5 x_0=399999.9999984 y_0=0
3645|P|NAD83(NSRS2007) / Oregon North|211|330|0|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=46 lat_2=44.3333333333333 x_0=2500000 y_0=0
3646|P|NAD83(NSRS2007) / Oregon North (ft)|211|330|4|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=46 lat_2=44.3333333333333 x_0=2500000.0001424 y_0=0
3647|P|NAD83(NSRS2007) / Oregon South|212|330|0|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=44 lat_2=42.3333333333333 x_0=1500000 y_0=0
3648|P|NAD83(NSRS2007) / Oregon South (ft)|212|330|4|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=44 lat_2=42.3333333333333 x_0=1500000.0001464 y_0=0
3649|P|NAD83(NSRS2007) / Pennsylvania North|213|330|0|en|proj=lcc lat_0=40.1666666666667 lon_0=-77.75 lat_1=41.95 lat_2=40.8833333333333 x_0=600000 y_0=0
3650|P|NAD83(NSRS2007) / Pennsylvania North (ftUS)|213|330|3|en|proj=lcc lat_0=40.1666666666667 lon_0=-77.75 lat_1=41.95 lat_2=40.8833333333333 x_0=600000 y_0=0
3651|P|NAD83(NSRS2007) / Pennsylvania South|214|330|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-77.75 lat_1=40.9666666666667 lat_2=39.9333333333333 x_0=600000 y_0=0
3652|P|NAD83(NSRS2007) / Pennsylvania South (ftUS)|214|330|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-77.75 lat_1=40.9666666666667 lat_2=39.9333333333333 x_0=600000 y_0=0
3653|P|NAD83(NSRS2007) / Rhode Island|473|330|0|en|proj=tmerc lat_0=41.0833333333333 lon_0=-71.5 k=0.99999375 x_0=100000 y_0=0
3654|P|NAD83(NSRS2007) / Rhode Island (ftUS)|473|330|3|en|proj=tmerc lat_0=41.0833333333333 lon_0=-71.5 k=0.99999375 x_0=99999.9999898399 y_0=0
3655|P|NAD83(NSRS2007) / South Carolina|215|330|0|en|proj=lcc lat_0=31.8333333333333 lon_0=-81 lat_1=34.8333333333333 lat_2=32.5 x_0=609600 y_0=0
3656|P|NAD83(NSRS2007) / South Carolina (ft)|215|330|4|en|proj=lcc lat_0=31.8333333333333 lon_0=-81 lat_1=34.8333333333333 lat_2=32.5 x_0=609600 y_0=0
3657|P|NAD83(NSRS2007) / South Dakota North|474|330|0|en|proj=lcc lat_0=43.8333333333333 lon_0=-100 lat_1=45.6833333333333 lat_2=44.4166666666667 x_0=600000 y_0=0
3658|P|NAD83(NSRS2007) / South Dakota North (ftUS)|474|330|3|en|proj=lcc lat_0=43.8333333333333 lon_0=-100 lat_1=45.6833333333333 lat_2=44.4166666666667 x_0=600000 y_0=0
3659|P|NAD83(NSRS2007) / South Dakota South|475|330|0|en|proj=lcc lat_0=42.3333333333333 lon_0=-100.333333333333 lat_1=44.4 lat_2=42.8333333333333 x_0=600000 y_0=0
3660|P|NAD83(NSRS2007) / South Dakota South (ftUS)|475|330|3|en|proj=lcc lat_0=42.3333333333333 lon_0=-100.333333333333 lat_1=44.4 lat_2=42.8333333333333 x_0=600000 y_0=0
3661|P|NAD83(NSRS2007) / Tennessee|150|330|0|en|proj=lcc lat_0=34.3333333333333 lon_0=-86 lat_1=36.4166666666667 lat_2=35.25 x_0=600000 y_0=0
3662|P|NAD83(NSRS2007) / Tennessee (ftUS)|150|330|3|en|proj=lcc lat_0=34.3333333333333 lon_0=-86 lat_1=36.4166666666667 lat_2=35.25 x_0=600000 y_0=0
3663|P|NAD83(NSRS2007) / Texas Central|218|330|0|en|proj=lcc lat_0=29.6666666666667 lon_0=-100.333333333333 lat_1=31.8833333333333 lat_2=30.1166666666667 x_0=700000 y_0=3000000
3664|P|NAD83(NSRS2007) / Texas Central (ftUS)|218|330|3|en|proj=lcc lat_0=29.6666666666667 lon_0=-100.333333333333 lat_1=31.8833333333333 lat_2=30.1166666666667 x_0=699999.999898399 y_0=3000000
3665|P|NAD83(NSRS2007) / Texas Centric Albers Equal Area|590|330|0|en|proj=aea lat_0=18 lon_0=-100 lat_1=27.5 lat_2=35 x_0=1500000 y_0=6000000
3666|P|NAD83(NSRS2007) / Texas Centric Lambert Conformal|590|330|0|en|proj=lcc lat_0=18 lon_0=-100 lat_1=27.5 lat_2=35 x_0=1500000 y_0=5000000
3667|P|NAD83(NSRS2007) / Texas North|216|330|0|en|proj=lcc lat_0=34 lon_0=-101.5 lat_1=36.1833333333333 lat_2=34.65 x_0=200000 y_0=1000000
3668|P|NAD83(NSRS2007) / Texas North (ftUS)|216|330|3|en|proj=lcc lat_0=34 lon_0=-101.5 lat_1=36.1833333333333 lat_2=34.65 x_0=200000.0001016 y_0=999999.999898399
3669|P|NAD83(NSRS2007) / Texas North Central|217|330|0|en|proj=lcc lat_0=31.6666666666667 lon_0=-98.5 lat_1=33.9666666666667 lat_2=32.1333333333333 x_0=600000 y_0=2000000
3670|P|NAD83(NSRS2007) / Texas North Central (ftUS)|217|330|3|en|proj=lcc lat_0=31.6666666666667 lon_0=-98.5 lat_1=33.9666666666667 lat_2=32.1333333333333 x_0=600000 y_0=2000000.0001016
3671|P|NAD83(NSRS2007) / Texas South|220|330|0|en|proj=lcc lat_0=25.6666666666667 lon_0=-98.5 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=300000 y_0=5000000
3672|P|NAD83(NSRS2007) / Texas South (ftUS)|220|330|3|en|proj=lcc lat_0=25.6666666666667 lon_0=-98.5 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=300000 y_0=5000000.0001016
3673|P|NAD83(NSRS2007) / Texas South Central|219|330|0|en|proj=lcc lat_0=27.8333333333333 lon_0=-99 lat_1=30.2833333333333 lat_2=28.3833333333333 x_0=600000 y_0=4000000
3674|P|NAD83(NSRS2007) / Texas South Central (ftUS)|219|330|3|en|proj=lcc lat_0=27.8333333333333 lon_0=-99 lat_1=30.2833333333333 lat_2=28.3833333333333 x_0=600000 y_0=3999999.9998984
3675|P|NAD83(NSRS2007) / Utah Central|222|330|0|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000 y_0=2000000
3676|P|NAD83(NSRS2007) / Utah Central (ft)|222|330|4|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000.0001504 y_0=1999999.999992
3677|P|NAD83(NSRS2007) / Utah Central (ftUS)|222|330|3|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000.00001016 y_0=2000000.00001016
3678|P|NAD83(NSRS2007) / Utah North|221|330|0|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000 y_0=1000000
3679|P|NAD83(NSRS2007) / Utah North (ft)|221|330|4|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000.0001504 y_0=999999.999996
3680|P|NAD83(NSRS2007) / Utah North (ftUS)|221|330|3|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000.00001016 y_0=999999.999989839
3681|P|NAD83(NSRS2007) / Utah South|223|330|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000 y_0=3000000
3682|P|NAD83(NSRS2007) / Utah South (ft)|223|330|4|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000.0001504 y_0=2999999.999988
3683|P|NAD83(NSRS2007) / Utah South (ftUS)|223|330|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000.00001016 y_0=3000000
3684|P|NAD83(NSRS2007) / Vermont|476|330|0|en|proj=tmerc lat_0=42.5 lon_0=-72.5 k=0.999964286 x_0=500000 y_0=0
3685|P|NAD83(NSRS2007) / Virginia North|224|330|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-78.5 lat_1=39.2 lat_2=38.0333333333333 x_0=3500000 y_0=2000000
3686|P|NAD83(NSRS2007) / Virginia North (ftUS)|224|330|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-78.5 lat_1=39.2 lat_2=38.0333333333333 x_0=3500000.0001016 y_0=2000000.0001016
3687|P|NAD83(NSRS2007) / Virginia South|225|330|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-78.5 lat_1=37.9666666666667 lat_2=36.7666666666667 x_0=3500000 y_0=1000000
3688|P|NAD83(NSRS2007) / Virginia South (ftUS)|225|330|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-78.5 lat_1=37.9666666666667 lat_2=36.7666666666667 x_0=3500000.0001016 y_0=999999.999898399
3689|P|NAD83(NSRS2007) / Washington North|226|330|0|en|proj=lcc lat_0=47 lon_0=-120.833333333333 lat_1=48.7333333333333 lat_2=47.5 x_0=500000 y_0=0
3690|P|NAD83(NSRS2007) / Washington North (ftUS)|226|330|3|en|proj=lcc lat_0=47 lon_0=-120.833333333333 lat_1=48.7333333333333 lat_2=47.5 x_0=500000.0001016 y_0=0
3691|P|NAD83(NSRS2007) / Washington South|227|330|0|en|proj=lcc lat_0=45.3333333333333 lon_0=-120.5 lat_1=47.3333333333333 lat_2=45.8333333333333 x_0=500000 y_0=0
3692|P|NAD83(NSRS2007) / Washington South (ftUS)|227|330|3|en|proj=lcc lat_0=45.3333333333333 lon_0=-120.5 lat_1=47.3333333333333 lat_2=45.8333333333333 x_0=500000.0001016 y_0=0
3693|P|NAD83(NSRS2007) / West Virginia North|477|330|0|en|proj=lcc lat_0=38.5 lon_0=-79.5 lat_1=40.25 lat_2=39 x_0=600000 y_0=0
3694|P|NAD83(NSRS2007) / West Virginia South|478|330|0|en|proj=lcc lat_0=37 lon_0=-81 lat_1=38.8833333333333 lat_2=37.4833333333333 x_0=600000 y_0=0
3695|P|NAD83(NSRS2007) / Wisconsin Central|229|330|0|en|proj=lcc lat_0=43.8333333333333 lon_0=-90 lat_1=45.5 lat_2=44.25 x_0=600000 y_0=0
3696|P|NAD83(NSRS2007) / Wisconsin Central (ftUS)|229|330|3|en|proj=lcc lat_0=43.8333333333333 lon_0=-90 lat_1=45.5 lat_2=44.25 x_0=600000 y_0=0
3697|P|NAD83(NSRS2007) / Wisconsin North|228|330|0|en|proj=lcc lat_0=45.1666666666667 lon_0=-90 lat_1=46.7666666666667 lat_2=45.5666666666667 x_0=600000 y_0=0
3698|P|NAD83(NSRS2007) / Wisconsin North (ftUS)|228|330|3|en|proj=lcc lat_0=45.1666666666667 lon_0=-90 lat_1=46.7666666666667 lat_2=45.5666666666667 x_0=600000 y_0=0
3699|P|NAD83(NSRS2007) / Wisconsin South|230|330|0|en|proj=lcc lat_0=42 lon_0=-90 lat_1=44.0666666666667 lat_2=42.7333333333333 x_0=600000 y_0=0
3700|P|NAD83(NSRS2007) / Wisconsin South (ftUS)|230|330|3|en|proj=lcc lat_0=42 lon_0=-90 lat_1=44.0666666666667 lat_2=42.7333333333333 x_0=600000 y_0=0
3701|P|NAD83(NSRS2007) / Wisconsin Transverse Mercator|586|330|0|en|proj=tmerc lat_0=0 lon_0=-90 k=0.9996 x_0=520000 y_0=-4480000
3702|P|NAD83(NSRS2007) / Wyoming East|479|330|0|en|proj=tmerc lat_0=40.5 lon_0=-105.166666666667 k=0.9999375 x_0=200000 y_0=0
3703|P|NAD83(NSRS2007) / Wyoming East Central|480|330|0|en|proj=tmerc lat_0=40.5 lon_0=-107.333333333333 k=0.9999375 x_0=400000 y_0=100000
3704|P|NAD83(NSRS2007) / Wyoming West Central|481|330|0|en|proj=tmerc lat_0=40.5 lon_0=-108.75 k=0.9999375 x_0=600000 y_0=0
3705|P|NAD83(NSRS2007) / Wyoming West|482|330|0|en|proj=tmerc lat_0=40.5 lon_0=-110.083333333333 k=0.9999375 x_0=800000 y_0=100000
3706|P|NAD83(NSRS2007) / UTM zone 59N|820|330|0|en|proj=utm zone=59
3707|P|NAD83(NSRS2007) / UTM zone 60N|821|330|0|en|proj=utm zone=60
3708|P|NAD83(NSRS2007) / UTM zone 1N|873|330|0|en|proj=utm zone=1
3709|P|NAD83(NSRS2007) / UTM zone 2N|874|330|0|en|proj=utm zone=2
3710|P|NAD83(NSRS2007) / UTM zone 3N|875|330|0|en|proj=utm zone=3
3711|P|NAD83(NSRS2007) / UTM zone 4N|876|330|0|en|proj=utm zone=4
3712|P|NAD83(NSRS2007) / UTM zone 5N|877|330|0|en|proj=utm zone=5
3713|P|NAD83(NSRS2007) / UTM zone 6N|878|330|0|en|proj=utm zone=6
3714|P|NAD83(NSRS2007) / UTM zone 7N|879|330|0|en|proj=utm zone=7
3715|P|NAD83(NSRS2007) / UTM zone 8N|880|330|0|en|proj=utm zone=8
3716|P|NAD83(NSRS2007) / UTM zone 9N|881|330|0|en|proj=utm zone=9
3717|P|NAD83(NSRS2007) / UTM zone 10N|882|330|0|en|proj=utm zone=10
3718|P|NAD83(NSRS2007) / UTM zone 11N|883|330|0|en|proj=utm zone=11
3719|P|NAD83(NSRS2007) / UTM zone 12N|884|330|0|en|proj=utm zone=12
3720|P|NAD83(NSRS2007) / UTM zone 13N|885|330|0|en|proj=utm zone=13
3721|P|NAD83(NSRS2007) / UTM zone 14N|886|330|0|en|proj=utm zone=14
3722|P|NAD83(NSRS2007) / UTM zone 15N|887|330|0|en|proj=utm zone=15
3723|P|NAD83(NSRS2007) / UTM zone 16N|888|330|0|en|proj=utm zone=16
3724|P|NAD83(NSRS2007) / UTM zone 17N|889|330|0|en|proj=utm zone=17
3725|P|NAD83(NSRS2007) / UTM zone 18N|890|330|0|en|proj=utm zone=18
3726|P|NAD83(NSRS2007) / UTM zone 19N|891|330|0|en|proj=utm zone=19
3727|P|Reunion 1947 / TM Reunion|892|216|0|en|proj=tmerc lat_0=-21.1166666666667 lon_0=55.5333333333333 k=1 x_0=160000 y_0=50000
3728|P|NAD83(NSRS2007) / Ohio North (ftUS)|471|330|3|en|proj=lcc lat_0=39.6666666666667 lon_0=-82.5 lat_1=41.7 lat_2=40.4333333333333 x_0=600000 y_0=0
3729|P|NAD83(NSRS2007) / Ohio South (ftUS)|472|330|3|en|proj=lcc lat_0=38 lon_0=-82.5 lat_1=40.0333333333333 lat_2=38.7333333333333 x_0=600000 y_0=0
3730|P|NAD83(NSRS2007) / Wyoming East (ftUS)|479|330|3|en|proj=tmerc lat_0=40.5 lon_0=-105.166666666667 k=0.9999375 x_0=200000.00001016 y_0=0
3731|P|NAD83(NSRS2007) / Wyoming East Central (ftUS)|480|330|3|en|proj=tmerc lat_0=40.5 lon_0=-107.333333333333 k=0.9999375 x_0=399999.99998984 y_0=99999.9999898399
3732|P|NAD83(NSRS2007) / Wyoming West Central (ftUS)|481|330|3|en|proj=tmerc lat_0=40.5 lon_0=-108.75 k=0.9999375 x_0=600000 y_0=0
3733|P|NAD83(NSRS2007) / Wyoming West (ftUS)|482|330|3|en|proj=tmerc lat_0=40.5 lon_0=-110.083333333333 k=0.9999375 x_0=800000.00001016 y_0=99999.9999898399
3734|P|NAD83 / Ohio North (ftUS)|471|138|3|en|proj=lcc lat_0=39.6666666666667 lon_0=-82.5 lat_1=41.7 lat_2=40.4333333333333 x_0=600000 y_0=0
3735|P|NAD83 / Ohio South (ftUS)|472|138|3|en|proj=lcc lat_0=38 lon_0=-82.5 lat_1=40.0333333333333 lat_2=38.7333333333333 x_0=600000 y_0=0
3736|P|NAD83 / Wyoming East (ftUS)|479|138|3|en|proj=tmerc lat_0=40.5 lon_0=-105.166666666667 k=0.9999375 x_0=200000.00001016 y_0=0
3737|P|NAD83 / Wyoming East Central (ftUS)|480|138|3|en|proj=tmerc lat_0=40.5 lon_0=-107.333333333333 k=0.9999375 x_0=399999.99998984 y_0=99999.9999898399
3738|P|NAD83 / Wyoming West Central (ftUS)|481|138|3|en|proj=tmerc lat_0=40.5 lon_0=-108.75 k=0.9999375 x_0=600000 y_0=0
3739|P|NAD83 / Wyoming West (ftUS)|482|138|3|en|proj=tmerc lat_0=40.5 lon_0=-110.083333333333 k=0.9999375 x_0=800000.00001016 y_0=99999.9999898399
3740|P|NAD83(HARN) / UTM zone 10N|893|35|0|en|proj=utm zone=10
3741|P|NAD83(HARN) / UTM zone 11N|894|35|0|en|proj=utm zone=11
3742|P|NAD83(HARN) / UTM zone 12N|884|35|0|en|proj=utm zone=12
3743|P|NAD83(HARN) / UTM zone 13N|885|35|0|en|proj=utm zone=13
3744|P|NAD83(HARN) / UTM zone 14N|895|35|0|en|proj=utm zone=14
3745|P|NAD83(HARN) / UTM zone 15N|896|35|0|en|proj=utm zone=15
3746|P|NAD83(HARN) / UTM zone 16N|897|35|0|en|proj=utm zone=16
3747|P|NAD83(HARN) / UTM zone 17N|898|35|0|en|proj=utm zone=17
3748|P|NAD83(HARN) / UTM zone 18N|899|35|0|en|proj=utm zone=18
3749|P|NAD83(HARN) / UTM zone 19N|900|35|0|en|proj=utm zone=19
3750|P|NAD83(HARN) / UTM zone 4N|901|35|0|en|proj=utm zone=4
3751|P|NAD83(HARN) / UTM zone 5N|902|35|0|en|proj=utm zone=5
3753|P|NAD83(HARN) / Ohio North (ftUS)|471|35|3|en|proj=lcc lat_0=39.6666666666667 lon_0=-82.5 lat_1=41.7 lat_2=40.4333333333333 x_0=600000 y_0=0
3754|P|NAD83(HARN) / Ohio South (ftUS)|472|35|3|en|proj=lcc lat_0=38 lon_0=-82.5 lat_1=40.0333333333333 lat_2=38.7333333333333 x_0=600000 y_0=0
3755|P|NAD83(HARN) / Wyoming East (ftUS)|479|35|3|en|proj=tmerc lat_0=40.5 lon_0=-105.166666666667 k=0.9999375 x_0=200000.00001016 y_0=0
3756|P|NAD83(HARN) / Wyoming East Central (ftUS)|480|35|3|en|proj=tmerc lat_0=40.5 lon_0=-107.333333333333 k=0.9999375 x_0=399999.99998984 y_0=99999.9999898399
3757|P|NAD83(HARN) / Wyoming West Central (ftUS)|481|35|3|en|proj=tmerc lat_0=40.5 lon_0=-108.75 k=0.9999375 x_0=600000 y_0=0
3758|P|NAD83(HARN) / Wyoming West (ftUS)|482|35|3|en|proj=tmerc lat_0=40.5 lon_0=-110.083333333333 k=0.9999375 x_0=800000.00001016 y_0=99999.9999898399
3759|P|NAD83 / Hawaii zone 3 (ftUS)|444|138|3|en|proj=tmerc lat_0=21.1666666666667 lon_0=-158 k=0.99999 x_0=500000.00001016 y_0=0
3760|P|NAD83(HARN) / Hawaii zone 3 (ftUS)|444|35|3|en|proj=tmerc lat_0=21.1666666666667 lon_0=-158 k=0.99999 x_0=500000.00001016 y_0=0
3761|P|NAD83(CSRS) / UTM zone 22N|903|207|0|en|proj=utm zone=22
3762|P|WGS 84 / South Georgia Lambert|904|183|0|en|proj=lcc lat_0=-55 lon_0=-37 lat_1=-54 lat_2=-54.75 x_0=0 y_0=0
3763|P|ETRS89 / Portugal TM06|510|130|0|en|proj=tmerc lat_0=39.6682583333333 lon_0=-8.13310833333333 k=1 x_0=0 y_0=0
3764|P|NZGD2000 / Chatham Island Circuit 2000|905|50|0|ne|proj=tmerc lat_0=-44 lon_0=-176.5 k=1 x_0=400000 y_0=800000
3765|P|HTRS96 / Croatia TM|906|332|0|en|proj=tmerc lat_0=0 lon_0=16.5 k=0.9999 x_0=500000 y_0=0
3766|P|HTRS96 / Croatia LCC|907|332|0|en|proj=lcc lat_0=0 lon_0=16.5 lat_1=45.9166666666667 lat_2=43.0833333333333 x_0=0 y_0=0
3767|P|HTRS96 / UTM zone 33N|908|332|0|en|proj=utm zone=33
3768|P|HTRS96 / UTM zone 34N|909|332|0|en|proj=utm zone=34
3769|P|Bermuda 1957 / UTM zone 20N|910|94|0|en|proj=utm zone=20
3770|P|BDA2000 / Bermuda 2000 National Grid|911|333|0|en|proj=tmerc lat_0=32 lon_0=-64.75 k=1 x_0=550000 y_0=100000
3771|P|NAD27 / Alberta 3TM ref merid 111 W|912|137|0|en|proj=tmerc lat_0=0 lon_0=-111 k=0.9999 x_0=0 y_0=0
3772|P|NAD27 / Alberta 3TM ref merid 114 W|913|137|0|en|proj=tmerc lat_0=0 lon_0=-114 k=0.9999 x_0=0 y_0=0
3773|P|NAD27 / Alberta 3TM ref merid 117 W|914|137|0|en|proj=tmerc lat_0=0 lon_0=-117 k=0.9999 x_0=0 y_0=0
3775|P|NAD83 / Alberta 3TM ref merid 111 W|912|138|0|en|proj=tmerc lat_0=0 lon_0=-111 k=0.9999 x_0=0 y_0=0
3776|P|NAD83 / Alberta 3TM ref merid 114 W|913|138|0|en|proj=tmerc lat_0=0 lon_0=-114 k=0.9999 x_0=0 y_0=0
3777|P|NAD83 / Alberta 3TM ref merid 117 W|914|138|0|en|proj=tmerc lat_0=0 lon_0=-117 k=0.9999 x_0=0 y_0=0
3779|P|NAD83(CSRS) / Alberta 3TM ref merid 111 W|912|207|0|en|proj=tmerc lat_0=0 lon_0=-111 k=0.9999 x_0=0 y_0=0
3780|P|NAD83(CSRS) / Alberta 3TM ref merid 114 W|913|207|0|en|proj=tmerc lat_0=0 lon_0=-114 k=0.9999 x_0=0 y_0=0
3781|P|NAD83(CSRS) / Alberta 3TM ref merid 117 W|914|207|0|en|proj=tmerc lat_0=0 lon_0=-117 k=0.9999 x_0=0 y_0=0
3783|P|Pitcairn 2006 / Pitcairn TM 2006|915|334|0|en|proj=tmerc lat_0=-25.0685526111111 lon_0=-130.112967111111 k=1 x_0=14200 y_0=15500
3784|P|Pitcairn 1967 / UTM zone 9S|915|301|0|en|proj=utm zone=9 south
3788|P|NZGD2000 / Auckland Islands TM 2000|916|50|0|ne|proj=tmerc lat_0=0 lon_0=166 k=1 x_0=3500000 y_0=10000000
3789|P|NZGD2000 / Campbell Island TM 2000|917|50|0|ne|proj=tmerc lat_0=0 lon_0=169 k=1 x_0=3500000 y_0=10000000
3790|P|NZGD2000 / Antipodes Islands TM 2000|918|50|0|ne|proj=tmerc lat_0=0 lon_0=179 k=1 x_0=3500000 y_0=10000000
3791|P|NZGD2000 / Raoul Island TM 2000|919|50|0|ne|proj=tmerc lat_0=0 lon_0=-178 k=1 x_0=3500000 y_0=10000000
3793|P|NZGD2000 / Chatham Islands TM 2000|905|50|0|ne|proj=tmerc lat_0=0 lon_0=-176.5 k=1 x_0=3500000 y_0=10000000
3794|P|Slovenia 1996 / Slovene National Grid|920|336|0|en|proj=tmerc lat_0=0 lon_0=15 k=0.9999 x_0=500000 y_0=-5000000
3795|P|NAD27 / Cuba Norte|921|137|0|ne|proj=lcc lat_0=22.35 lon_0=-81 lat_1=23 lat_2=21.7 x_0=500000 y_0=280296.016
3796|P|NAD27 / Cuba Sur|922|137|0|ne|proj=lcc lat_0=20.7166666666667 lon_0=-76.8333333333333 lat_1=21.3 lat_2=20.1333333333333 x_0=500000 y_0=229126.939
3797|P|NAD27 / MTQ Lambert|121|137|0|en|proj=lcc lat_0=44 lon_0=-70 lat_1=50 lat_2=46 x_0=800000 y_0=0
3798|P|NAD83 / MTQ Lambert|121|138|0|en|proj=lcc lat_0=44 lon_0=-70 lat_1=50 lat_2=46 x_0=800000 y_0=0
3799|P|NAD83(CSRS) / MTQ Lambert|121|207|0|en|proj=lcc lat_0=44 lon_0=-70 lat_1=50 lat_2=46 x_0=800000 y_0=0
3800|P|NAD27 / Alberta 3TM ref merid 120 W|923|137|0|en|proj=tmerc lat_0=0 lon_0=-120 k=0.9999 x_0=0 y_0=0
3801|P|NAD83 / Alberta 3TM ref merid 120 W|923|138|0|en|proj=tmerc lat_0=0 lon_0=-120 k=0.9999 x_0=0 y_0=0
3802|P|NAD83(CSRS) / Alberta 3TM ref merid 120 W|923|207|0|en|proj=tmerc lat_0=0 lon_0=-120 k=0.9999 x_0=0 y_0=0
3812|P|ETRS89 / Belgian Lambert 2008|851|130|0|en|proj=lcc lat_0=50.797815 lon_0=4.35921583333333 lat_1=49.8333333333333 lat_2=51.1666666666667 x_0=649328 y_0=665262
3814|P|NAD83 / Mississippi TM|924|138|0|en|proj=tmerc lat_0=32.5 lon_0=-89.75 k=0.9998335 x_0=500000 y_0=1300000
3815|P|NAD83(HARN) / Mississippi TM|924|35|0|en|proj=tmerc lat_0=32.5 lon_0=-89.75 k=0.9998335 x_0=500000 y_0=1300000
3816|P|NAD83(NSRS2007) / Mississippi TM|924|330|0|en|proj=tmerc lat_0=32.5 lon_0=-89.75 k=0.9998335 x_0=500000 y_0=1300000
3819|G|HD1909|925|0
3821|G|TWD67|926|1
3822|C|TWD97|927|2
3823|H|TWD97|927|2
3824|G|TWD97|927|2
3825|P|TWD97 / TM2 zone 119|928|2|0|en|proj=tmerc lat_0=0 lon_0=119 k=0.9999 x_0=250000 y_0=0
3826|P|TWD97 / TM2 zone 121|929|2|0|en|proj=tmerc lat_0=0 lon_0=121 k=0.9999 x_0=250000 y_0=0
3827|P|TWD67 / TM2 zone 119|930|1|0|en|proj=tmerc lat_0=0 lon_0=119 k=0.9999 x_0=250000 y_0=0
3828|P|TWD67 / TM2 zone 121|931|1|0|en|proj=tmerc lat_0=0 lon_0=121 k=0.9999 x_0=250000 y_0=0
3829|P|Hu Tzu Shan 1950 / UTM zone 51N|926|108|0|en|proj=utm zone=51
3832|P|WGS 84 / PDC Mercator|932|183|0|en|proj=merc lon_0=150 k=1 x_0=0 y_0=0
3833|P|Pulkovo 1942(58) / Gauss-Kruger zone 2|933|60|0|ne|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=2500000 y_0=0
3834|P|Pulkovo 1942(83) / Gauss-Kruger zone 2|933|59|0|ne|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=2500000 y_0=0
3835|P|Pulkovo 1942(83) / Gauss-Kruger zone 3|934|59|0|ne|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=3500000 y_0=0
3836|P|Pulkovo 1942(83) / Gauss-Kruger zone 4|935|59|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=4500000 y_0=0
3837|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 3|291|60|0|ne|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=3500000 y_0=0
3838|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 4|292|60|0|ne|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
3839|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 9|936|60|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=9500000 y_0=0
3840|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 10|937|60|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=10500000 y_0=0
3841|P|Pulkovo 1942(83) / 3-degree Gauss-Kruger zone 6|938|59|0|ne|proj=tmerc lat_0=0 lon_0=18 k=1 x_0=6500000 y_0=0
3844|P|Pulkovo 1942(58) / Stereo70|939|60|0|ne|proj=sterea lat_0=46 lon_0=25 k=0.99975 x_0=500000 y_0=500000
3845|P|SWEREF99 / RT90 7.5 gon V emulation|552|209|0|ne|proj=tmerc lat_0=0 lon_0=11.30625 k=1.000006 x_0=1500025.141 y_0=-667.282
3846|P|SWEREF99 / RT90 5 gon V emulation|553|209|0|ne|proj=tmerc lat_0=0 lon_0=13.5562666666667 k=1.0000058 x_0=1500044.695 y_0=-667.13
3847|P|SWEREF99 / RT90 2.5 gon V emulation|554|209|0|ne|proj=tmerc lat_0=0 lon_0=15.8062845294444 k=1.00000561024 x_0=1500064.274 y_0=-667.711
3848|P|SWEREF99 / RT90 0 gon emulation|555|209|0|ne|proj=tmerc lat_0=0 lon_0=18.0563 k=1.0000054 x_0=1500083.521 y_0=-668.844
3849|P|SWEREF99 / RT90 2.5 gon O emulation|556|209|0|ne|proj=tmerc lat_0=0 lon_0=20.3063166666667 k=1.0000052 x_0=1500102.765 y_0=-670.706
3850|P|SWEREF99 / RT90 5 gon O emulation|557|209|0|ne|proj=tmerc lat_0=0 lon_0=22.5563333333333 k=1.0000049 x_0=1500121.846 y_0=-672.557
3851|P|NZGD2000 / NZCS2000|940|50|0|ne|proj=lcc lat_0=-41 lon_0=173 lat_1=-37.5 lat_2=-44.5 x_0=3000000 y_0=7000000
3852|P|RSRGD2000 / DGLC2000|941|335|0|ne|proj=lcc lat_0=-90 lon_0=157 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=500000 y_0=0
3854|P|County ST74|942|209|0|ne|proj=tmerc lat_0=0 lon_0=18.05787 k=0.99999506 x_0=100182.7406 y_0=-6500620.1207
3855|V|EGM2008 height|943|EGM2008 geoid|0|u
3857|P|WGS 84 / Pseudo-Mercator|944|183|0|en|proj=merc lat_ts=0 lon_0=0 x_0=0 y_0=0 k=1 wktext
3873|P|ETRS89 / GK19FIN|945|130|0|ne|proj=tmerc lat_0=0 lon_0=19 k=1 x_0=19500000 y_0=0
3874|P|ETRS89 / GK20FIN|946|130|0|ne|proj=tmerc lat_0=0 lon_0=20 k=1 x_0=20500000 y_0=0
3875|P|ETRS89 / GK21FIN|947|130|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=21500000 y_0=0
3876|P|ETRS89 / GK22FIN|948|130|0|ne|proj=tmerc lat_0=0 lon_0=22 k=1 x_0=22500000 y_0=0
3877|P|ETRS89 / GK23FIN|949|130|0|ne|proj=tmerc lat_0=0 lon_0=23 k=1 x_0=23500000 y_0=0
3878|P|ETRS89 / GK24FIN|950|130|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=24500000 y_0=0
3879|P|ETRS89 / GK25FIN|951|130|0|ne|proj=tmerc lat_0=0 lon_0=25 k=1 x_0=25500000 y_0=0
3880|P|ETRS89 / GK26FIN|952|130|0|ne|proj=tmerc lat_0=0 lon_0=26 k=1 x_0=26500000 y_0=0
3881|P|ETRS89 / GK27FIN|953|130|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=27500000 y_0=0
3882|P|ETRS89 / GK28FIN|954|130|0|ne|proj=tmerc lat_0=0 lon_0=28 k=1 x_0=28500000 y_0=0
3883|P|ETRS89 / GK29FIN|955|130|0|ne|proj=tmerc lat_0=0 lon_0=29 k=1 x_0=29500000 y_0=0
3884|P|ETRS89 / GK30FIN|956|130|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=30500000 y_0=0
3885|P|ETRS89 / GK31FIN|957|130|0|ne|proj=tmerc lat_0=0 lon_0=31 k=1 x_0=31500000 y_0=0
3886|V|Fao 1979 height|958|Fao 1979|0|u
3887|C|IGRS|959|3
3888|H|IGRS|959|3
3889|G|IGRS|959|3
3890|P|IGRS / UTM zone 37N|835|3|0|en|proj=utm zone=37
3891|P|IGRS / UTM zone 38N|836|3|0|en|proj=utm zone=38
3892|P|IGRS / UTM zone 39N|960|3|0|en|proj=utm zone=39
3893|P|ED50 / Iraq National Grid|958|105|0|en|proj=tmerc lat_0=29.0262683333333 lon_0=46.5 k=0.9994 x_0=800000 y_0=0
3900|V|N2000 height|961|N2000|0|u
3901|K|KKJ / Finland Uniform Coordinate System + N60 height|961|2393|5717
3902|K|ETRS89 / TM35FIN(N,E) + N60 height|961|5048|5717
3903|K|ETRS89 / TM35FIN(N,E) + N2000 height|961|5048|3900
3906|G|MGI 1901|962|4
3912|P|MGI 1901 / Slovene National Grid|920|4|0|en|proj=tmerc lat_0=0 lon_0=15 k=0.9999 x_0=500000 y_0=-5000000
3920|P|Puerto Rico / UTM zone 20N|963|23|0|en|proj=utm zone=20
3942|P|RGF93 v1 / CC42|964|54|0|en|proj=lcc lat_0=42 lon_0=3 lat_1=41.25 lat_2=42.75 x_0=1700000 y_0=1200000
3943|P|RGF93 v1 / CC43|965|54|0|en|proj=lcc lat_0=43 lon_0=3 lat_1=42.25 lat_2=43.75 x_0=1700000 y_0=2200000
3944|P|RGF93 v1 / CC44|966|54|0|en|proj=lcc lat_0=44 lon_0=3 lat_1=43.25 lat_2=44.75 x_0=1700000 y_0=3200000
3945|P|RGF93 v1 / CC45|967|54|0|en|proj=lcc lat_0=45 lon_0=3 lat_1=44.25 lat_2=45.75 x_0=1700000 y_0=4200000
3946|P|RGF93 v1 / CC46|968|54|0|en|proj=lcc lat_0=46 lon_0=3 lat_1=45.25 lat_2=46.75 x_0=1700000 y_0=5200000
3947|P|RGF93 v1 / CC47|969|54|0|en|proj=lcc lat_0=47 lon_0=3 lat_1=46.25 lat_2=47.75 x_0=1700000 y_0=6200000
3948|P|RGF93 v1 / CC48|970|54|0|en|proj=lcc lat_0=48 lon_0=3 lat_1=47.25 lat_2=48.75 x_0=1700000 y_0=7200000
3949|P|RGF93 v1 / CC49|971|54|0|en|proj=lcc lat_0=49 lon_0=3 lat_1=48.25 lat_2=49.75 x_0=1700000 y_0=8200000
3950|P|RGF93 v1 / CC50|972|54|0|en|proj=lcc lat_0=50 lon_0=3 lat_1=49.25 lat_2=50.75 x_0=1700000 y_0=9200000
3968|P|NAD83 / Virginia Lambert|973|138|0|en|proj=lcc lat_0=36 lon_0=-79.5 lat_1=37 lat_2=39.5 x_0=0 y_0=0
3969|P|NAD83(HARN) / Virginia Lambert|973|35|0|en|proj=lcc lat_0=36 lon_0=-79.5 lat_1=37 lat_2=39.5 x_0=0 y_0=0
3970|P|NAD83(NSRS2007) / Virginia Lambert|973|330|0|en|proj=lcc lat_0=36 lon_0=-79.5 lat_1=37 lat_2=39.5 x_0=0 y_0=0
3976|P|WGS 84 / NSIDC Sea Ice Polar Stereographic South|974|183|0|en|proj=stere lat_0=-90 lat_ts=-70 lon_0=0 x_0=0 y_0=0
3978|P|NAD83 / Canada Atlas Lambert|812|138|0|en|proj=lcc lat_0=49 lon_0=-95 lat_1=49 lat_2=77 x_0=0 y_0=0
3979|P|NAD83(CSRS) / Canada Atlas Lambert|812|207|0|en|proj=lcc lat_0=49 lon_0=-95 lat_1=49 lat_2=77 x_0=0 y_0=0
3986|P|Katanga 1955 / Katanga Gauss zone A|975|267|0|en|proj=tmerc lat_0=-9 lon_0=30 k=1 x_0=200000 y_0=500000
3987|P|Katanga 1955 / Katanga Gauss zone B|976|267|0|en|proj=tmerc lat_0=-9 lon_0=28 k=1 x_0=200000 y_0=500000
3988|P|Katanga 1955 / Katanga Gauss zone C|977|267|0|en|proj=tmerc lat_0=-9 lon_0=26 k=1 x_0=200000 y_0=500000
3989|P|Katanga 1955 / Katanga Gauss zone D|978|267|0|en|proj=tmerc lat_0=-9 lon_0=24 k=1 x_0=200000 y_0=500000
3991|P|Puerto Rico State Plane CS of 1927|979|23|3|en|proj=lcc lat_0=17.8333333333333 lon_0=-66.4333333333333 lat_1=18.4333333333333 lat_2=18.0333333333333 x_0=152400.30480061 y_0=0
3992|P|Puerto Rico / St. Croix|980|23|3|en|proj=lcc lat_0=17.8333333333333 lon_0=-66.4333333333333 lat_1=18.4333333333333 lat_2=18.0333333333333 x_0=152400.30480061 y_0=30480.0609601219
3993|P|Guam 1963 / Guam SPCS|981||0|en|
3994|P|WGS 84 / Mercator 41|982|183|0|en|proj=merc lat_ts=-41 lon_0=100 x_0=0 y_0=0
3995|P|WGS 84 / Arctic Polar Stereographic|845|183|0|en|proj=stere lat_0=90 lat_ts=71 lon_0=0 x_0=0 y_0=0
3996|P|WGS 84 / IBCAO Polar Stereographic|845|183|0|en|proj=stere lat_0=90 lat_ts=75 lon_0=0 x_0=0 y_0=0
3997|P|WGS 84 / Dubai Local TM|983|183|0|en|proj=tmerc lat_0=0 lon_0=55.3333333333333 k=1 x_0=500000 y_0=0
4000|C|MOLDREF99|984|5
4017|H|MOLDREF99|984|5
4023|G|MOLDREF99|984|5
4026|P|MOLDREF99 / Moldova TM|984|5|0|ne|proj=tmerc lat_0=0 lon_0=28.4 k=0.99994 x_0=200000 y_0=-5000000
4037|P|WGS 84 / TMzn35N|985|183|0|ne|proj=utm zone=35
4038|P|WGS 84 / TMzn36N|986|183|0|ne|proj=utm zone=36
4039|C|RGRDC 2005|987|6
4040|H|RGRDC 2005|987|6
4046|G|RGRDC 2005|987|6
4048|P|RGRDC 2005 / Congo TM zone 12|988|6|0|en|proj=tmerc lat_0=0 lon_0=12 k=0.9999 x_0=500000 y_0=10000000
4049|P|RGRDC 2005 / Congo TM zone 14|788|6|0|en|proj=tmerc lat_0=0 lon_0=14 k=0.9999 x_0=500000 y_0=10000000
4050|P|RGRDC 2005 / Congo TM zone 16|989|6|0|en|proj=tmerc lat_0=0 lon_0=16 k=0.9999 x_0=500000 y_0=10000000
4051|P|RGRDC 2005 / Congo TM zone 18|990|6|0|en|proj=tmerc lat_0=0 lon_0=18 k=0.9999 x_0=500000 y_0=10000000
4056|P|RGRDC 2005 / Congo TM zone 20|991|6|0|en|proj=tmerc lat_0=0 lon_0=20 k=0.9999 x_0=500000 y_0=10000000
4057|P|RGRDC 2005 / Congo TM zone 22|992|6|0|en|proj=tmerc lat_0=0 lon_0=22 k=0.9999 x_0=500000 y_0=10000000
4058|P|RGRDC 2005 / Congo TM zone 24|993|6|0|en|proj=tmerc lat_0=0 lon_0=24 k=0.9999 x_0=500000 y_0=10000000
4059|P|RGRDC 2005 / Congo TM zone 26|994|6|0|en|proj=tmerc lat_0=0 lon_0=26 k=0.9999 x_0=500000 y_0=10000000
4060|P|RGRDC 2005 / Congo TM zone 28|995|6|0|en|proj=tmerc lat_0=0 lon_0=28 k=0.9999 x_0=500000 y_0=10000000
4061|P|RGRDC 2005 / UTM zone 33S|996|6|0|en|proj=utm zone=33 south
4062|P|RGRDC 2005 / UTM zone 34S|997|6|0|en|proj=utm zone=34 south
4063|P|RGRDC 2005 / UTM zone 35S|998|6|0|en|proj=utm zone=35 south
4071|P|Chua / UTM zone 23S|999|101|0|en|proj=utm zone=23 south
4073|C|SREF98|1000|7
4074|H|SREF98|1000|7
4075|G|SREF98|1000|7
4079|C|REGCAN95|1001|8
4080|H|REGCAN95|1001|8
4081|G|REGCAN95|1001|8
4082|P|REGCAN95 / UTM zone 27N|1002|8|0|en|proj=utm zone=27
4083|P|REGCAN95 / UTM zone 28N|1003|8|0|en|proj=utm zone=28
4087|P|WGS 84 / World Equidistant Cylindrical|943|183|0|en|proj=eqc lat_ts=0 lat_0=0 lon_0=0 x_0=0 y_0=0
4093|P|ETRS89 / DKTM1|1004|130|0|en|proj=tmerc lat_0=0 lon_0=9 k=0.99998 x_0=200000 y_0=-5000000
4094|P|ETRS89 / DKTM2|1005|130|0|en|proj=tmerc lat_0=0 lon_0=10 k=0.99998 x_0=400000 y_0=-5000000
4095|P|ETRS89 / DKTM3|144|130|0|en|proj=tmerc lat_0=0 lon_0=11.75 k=0.99998 x_0=600000 y_0=-5000000
4096|P|ETRS89 / DKTM4|145|130|0|en|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=800000 y_0=-5000000
4097|K|ETRS89 / DKTM1 + DVR90 height|1004|4093|5799
4098|K|ETRS89 / DKTM2 + DVR90 height|1005|4094|5799
4099|K|ETRS89 / DKTM3 + DVR90 height|144|4095|5799
4100|K|ETRS89 / DKTM4 + DVR90 height|145|4096|5799
4120|G|Greek|85|9
4121|G|GGRS87|85|10
4122|G|ATS77|1006|11
4123|G|KKJ|961|12
4124|G|RT90|539|13
4127|G|Tete|1007|14
4128|G|Madzansua|1008|15
4129|G|Observatario|1009|16
4130|G|Moznet|1010|17
4131|G|Indian 1960|1011|18
4132|G|FD58|673|19
4133|G|EST92|773|20
4134|G|PSD93|1012|21
4135|G|Old Hawaiian|1013|22
4136|G|St. Lawrence Island|1014|
4137|G|St. Paul Island|1015|
4138|G|St. George Island|1016|
4139|G|Puerto Rico|1017|23
4141|G|Israel 1993|33|24
4142|G|Locodjo 1965|1018|25
4143|G|Abidjan 1987|1018|26
4144|G|Kalianpur 1937|1019|27
4145|G|Kalianpur 1962|1020|28
4146|G|Kalianpur 1975|1021|29
4147|G|Hanoi 1972|1022|30
4148|G|Hartebeesthoek94|1023|31
4149|G|CH1903|48|32
4150|G|CH1903+|48|33
4151|G|CHTRS95|48|34
4152|G|NAD83(HARN)|1024|35
4153|G|Rassadiran|49|36
4154|G|ED50(ED77)|1025|37
4155|G|Dabola 1981|1026|38
4156|G|S-JTSK|55|39
4157|G|Mount Dillon|56|40
4158|G|Naparima 1955|57|41
4159|G|ELD79|659|42
4160|G|Chos Malal 1914|1027|43
4161|G|Pampa del Castillo|1028|44
4162|G|Korean 1985|1029|45
4163|G|Yemen NGN96|1030|46
4164|G|South Yemen|1031|47
4165|G|Bissau|80|48
4166|G|Korean 1995|1029|49
4167|G|NZGD2000|1032|50
4168|G|Accra|1033|51
4169|G|American Samoa 1962|603|52
4170|G|SIRGAS 1995|1034|53
4171|G|RGF93 v1|122|54
4173|G|IRENET95|123|55
4174|G|Sierra Leone 1924|124|56
4175|G|Sierra Leone 1968|1035|57
4176|G|Australian Antarctic|559|58
4178|G|Pulkovo 1942(83)|1036|59
4179|G|Pulkovo 1942(58)|1037|60
4180|G|EST97|774|61
4181|G|LUREF|128|62
4182|G|Azores Occidental 1939|138|63
4183|G|Azores Central 1948|139|64
4184|G|Azores Oriental 1940|140|65
4188|G|OSNI 1952|1038|66
4189|G|REGVEN|1039|67
4190|G|POSGAR 98|1040|68
4191|G|Albanian 1987|313|69
4192|G|Douala 1948|160|70
4193|G|Manoca 1962|160|71
4194|G|Qornoq 1927|1041|72
4195|G|Scoresbysund 1952|1042|73
4196|G|Ammassalik 1958|234|74
4197|G|Garoua|246|75
4198|G|Kousseri|247|76
4199|G|Egypt 1930|1043|77
4200|G|Pulkovo 1995|1044|78
4201|G|Adindan|1045|79
4202|G|AGD66|1046|80
4203|G|AGD84|1047|81
4204|G|Ain el Abd|1048|82
4205|G|Afgooye|1049|83
4206|G|Agadez|1050|84
4207|G|Lisbon|510|85
4208|G|Aratu|1051|86
4209|G|Arc 1950|1052|87
4210|G|Arc 1960|1053|88
4211|G|Batavia|1054|89
4212|G|Barbados 1938|1055|90
4213|G|Beduaram|484|91
4214|G|Beijing 1954|1056|92
4215|G|BD50|851|93
4216|G|Bermuda 1957|910|94
4217|P|NAD83 / BLM 59N (ftUS)|820|138|3|en|proj=tmerc lat_0=0 lon_0=171 k=0.9996 x_0=500000.001016002 y_0=0
4218|G|Bogota 1975|1057|95
4219|G|Bukit Rimpah|1058|96
4220|G|Camacupa 1948|1059|97
4221|G|Campo Inchauspe|1060|98
4222|G|Cape|1061|99
4223|G|Carthage|1062|100
4224|G|Chua|1063|101
4225|G|Corrego Alegre 1970-72|1064|102
4227|G|Deir ez Zor|1065|103
4229|G|Egypt 1907|1066|104
4230|G|ED50|1067|105
4231|G|ED87|1068|106
4232|G|Fahud|1069|107
4236|G|Hu Tzu Shan 1950|926|108
4237|G|HD72|925|109
4238|G|ID74|1070|110
4239|G|Indian 1954|1071|111
4240|G|Indian 1975|1072|112
4241|G|Jamaica 1875|852|113
4242|G|JAD69|852|114
4243|G|Kalianpur 1880|1073|115
4244|G|Kandawala|1074|116
4245|G|Kertau 1968|1075|117
4246|G|KOC|1076|118
4247|G|La Canoa|250|119
4248|G|PSAD56|1077|120
4249|G|Lake|1078|121
4250|G|Leigon|1033|122
4251|G|Liberia 1964|1079|123
4252|G|Lome|1080|124
4253|G|Luzon 1911|1081|125
4254|G|Hito XVIII 1963|1082|126
4255|G|Herat North|1083|127
4256|G|Mahe 1971|1084|128
4257|G|Makassar|535|129
4258|G|ETRS89|1085|130
4259|G|Malongo 1987|817|131
4261|G|Merchich|1086|132
4262|G|Massawa|1087|133
4263|G|Minna|1088|134
4265|G|Monte Mario|1089|135
4266|G|M'poraloko|1090|136
4267|G|NAD27|1091|137
4269|G|NAD83|1092|138
4270|G|Nahrwan 1967|1093|139
4271|G|Naparima 1972|56|140
4272|G|NZGD49|1094|141
4273|G|NGO 1948|1095|142
4274|G|Datum 73|510|143
4275|G|NTF|1096|144
4276|G|NSWC 9Z-2|943|145
4277|G|OSGB36|1097|146
4278|G|OSGB70|1098|147
4279|G|OS(SN)80|1099|148
4281|G|Palestine 1923|1100|149
4282|G|Pointe Noire|1101|150
4283|G|GDA94|1102|151
4284|G|Pulkovo 1942|1103|152
4285|G|Qatar 1974|1104|153
4286|G|Qatar 1948|84|154
4288|G|Loma Quintana|1105|155
4289|G|Amersfoort|1106|156
4292|G|Sapper Hill 1943|1107|157
4293|G|Schwarzeck|1108|158
4295|G|Serindung|1109|159
4297|G|Tananarive|1110|160
4298|G|Timbalai 1948|1111|161
4299|G|TM65|123|162
4300|G|TM75|123|163
4301|G|Tokyo|1112|164
4302|G|Trinidad 1903|248|165
4303|G|TC(1948)|1113|166
4304|G|Voirol 1875|1114|167
4306|G|Bern 1938|48|168
4307|G|Nord Sahara 1959|1115|169
4308|G|RT38|1116|170
4309|G|Yacare|1117|171
4310|G|Yoff|1118|172
4311|G|Zanderij|1119|173
4312|G|MGI|848|174
4313|G|BD72|851|175
4314|G|DHDN|1120|176
4315|G|Conakry 1905|1026|177
4316|G|Dealul Piscului 1930|1121|178
4318|G|NGN|1076|179
4319|G|KUDAMS|1122|180
4322|G|WGS 72|943|181
4324|G|WGS 72BE|943|182
4326|G|WGS 84|943|183
4390|P|Kertau 1968 / Johor Grid|824|117|0|en|proj=cass lat_0=2.04258333333333 lon_0=103.562758333333 x_0=0 y_0=0
4391|P|Kertau 1968 / Sembilan and Melaka Grid|825|117|0|en|proj=cass lat_0=2.71228333333333 lon_0=101.941166666667 x_0=-242.005 y_0=-948.547
4392|P|Kertau 1968 / Pahang Grid|826|117|0|en|proj=cass lat_0=3.71097222222222 lon_0=102.436177777778 x_0=0 y_0=0
4393|P|Kertau 1968 / Selangor Grid|827|117|0|en|proj=cass lat_0=3.68034444444444 lon_0=101.508244444444 x_0=-21759.438 y_0=55960.906
4394|P|Kertau 1968 / Terengganu Grid|828|117|0|en|proj=cass lat_0=4.94614166666667 lon_0=102.895208333333 x_0=0 y_0=0
4395|P|Kertau 1968 / Pinang Grid|829|117|0|en|proj=cass lat_0=5.421325 lon_0=100.345869444444 x_0=0 y_0=0
4396|P|Kertau 1968 / Kedah and Perlis Grid|830|117|0|en|proj=cass lat_0=5.96514722222222 lon_0=100.637594444444 x_0=0 y_0=0
4397|P|Kertau 1968 / Perak Revised Grid|831|117|0|en|proj=cass lat_0=4.85938055555556 lon_0=100.816766666667 x_0=0 y_0=133453.669
4398|P|Kertau 1968 / Kelantan Grid|832|117|0|en|proj=cass lat_0=5.89392222222222 lon_0=102.177291666667 x_0=0 y_0=0
4399|P|NAD27 / BLM 59N (ftUS)|820|137|3|en|proj=tmerc lat_0=0 lon_0=171 k=0.9996 x_0=500000.001016002 y_0=0
4400|P|NAD27 / BLM 60N (ftUS)|821|137|3|en|proj=tmerc lat_0=0 lon_0=177 k=0.9996 x_0=500000.001016002 y_0=0
4401|P|NAD27 / BLM 1N (ftUS)|873|137|3|en|proj=tmerc lat_0=0 lon_0=-177 k=0.9996 x_0=500000.001016002 y_0=0
4402|P|NAD27 / BLM 2N (ftUS)|874|137|3|en|proj=tmerc lat_0=0 lon_0=-171 k=0.9996 x_0=500000.001016002 y_0=0
4403|P|NAD27 / BLM 3N (ftUS)|875|137|3|en|proj=tmerc lat_0=0 lon_0=-165 k=0.9996 x_0=500000.001016002 y_0=0
4404|P|NAD27 / BLM 4N (ftUS)|876|137|3|en|proj=tmerc lat_0=0 lon_0=-159 k=0.9996 x_0=500000.001016002 y_0=0
4405|P|NAD27 / BLM 5N (ftUS)|877|137|3|en|proj=tmerc lat_0=0 lon_0=-153 k=0.9996 x_0=500000.001016002 y_0=0
4406|P|NAD27 / BLM 6N (ftUS)|878|137|3|en|proj=tmerc lat_0=0 lon_0=-147 k=0.9996 x_0=500000.001016002 y_0=0
4407|P|NAD27 / BLM 7N (ftUS)|879|137|3|en|proj=tmerc lat_0=0 lon_0=-141 k=0.9996 x_0=500000.001016002 y_0=0
4408|P|NAD27 / BLM 8N (ftUS)|880|137|3|en|proj=tmerc lat_0=0 lon_0=-135 k=0.9996 x_0=500000.001016002 y_0=0
4409|P|NAD27 / BLM 9N (ftUS)|881|137|3|en|proj=tmerc lat_0=0 lon_0=-129 k=0.9996 x_0=500000.001016002 y_0=0
4410|P|NAD27 / BLM 10N (ftUS)|882|137|3|en|proj=tmerc lat_0=0 lon_0=-123 k=0.9996 x_0=500000.001016002 y_0=0
4411|P|NAD27 / BLM 11N (ftUS)|883|137|3|en|proj=tmerc lat_0=0 lon_0=-117 k=0.9996 x_0=500000.001016002 y_0=0
4412|P|NAD27 / BLM 12N (ftUS)|884|137|3|en|proj=tmerc lat_0=0 lon_0=-111 k=0.9996 x_0=500000.001016002 y_0=0
4413|P|NAD27 / BLM 13N (ftUS)|885|137|3|en|proj=tmerc lat_0=0 lon_0=-105 k=0.9996 x_0=500000.001016002 y_0=0
4414|P|NAD83(HARN) / Guam Map Grid|981|35|0|en|proj=tmerc lat_0=13.5 lon_0=144.75 k=1 x_0=100000 y_0=200000
4415|P|Katanga 1955 / Katanga Lambert|1123|267|0|en|proj=lcc lat_0=-9 lon_0=26 lat_1=-6.5 lat_2=-11.5 x_0=500000 y_0=500000
4417|P|Pulkovo 1942(83) / 3-degree Gauss-Kruger zone 7|1124|59|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=7500000 y_0=0
4418|P|NAD27 / BLM 18N (ftUS)|890|137|3|en|proj=tmerc lat_0=0 lon_0=-75 k=0.9996 x_0=500000.001016002 y_0=0
4419|P|NAD27 / BLM 19N (ftUS)|891|137|3|en|proj=tmerc lat_0=0 lon_0=-69 k=0.9996 x_0=500000.001016002 y_0=0
4420|P|NAD83 / BLM 60N (ftUS)|821|138|3|en|proj=tmerc lat_0=0 lon_0=177 k=0.9996 x_0=500000.001016002 y_0=0
4421|P|NAD83 / BLM 1N (ftUS)|873|138|3|en|proj=tmerc lat_0=0 lon_0=-177 k=0.9996 x_0=500000.001016002 y_0=0
4422|P|NAD83 / BLM 2N (ftUS)|874|138|3|en|proj=tmerc lat_0=0 lon_0=-171 k=0.9996 x_0=500000.001016002 y_0=0
4423|P|NAD83 / BLM 3N (ftUS)|875|138|3|en|proj=tmerc lat_0=0 lon_0=-165 k=0.9996 x_0=500000.001016002 y_0=0
4424|P|NAD83 / BLM 4N (ftUS)|876|138|3|en|proj=tmerc lat_0=0 lon_0=-159 k=0.9996 x_0=500000.001016002 y_0=0
4425|P|NAD83 / BLM 5N (ftUS)|877|138|3|en|proj=tmerc lat_0=0 lon_0=-153 k=0.9996 x_0=500000.001016002 y_0=0
4426|P|NAD83 / BLM 6N (ftUS)|878|138|3|en|proj=tmerc lat_0=0 lon_0=-147 k=0.9996 x_0=500000.001016002 y_0=0
4427|P|NAD83 / BLM 7N (ftUS)|879|138|3|en|proj=tmerc lat_0=0 lon_0=-141 k=0.9996 x_0=500000.001016002 y_0=0
4428|P|NAD83 / BLM 8N (ftUS)|880|138|3|en|proj=tmerc lat_0=0 lon_0=-135 k=0.9996 x_0=500000.001016002 y_0=0
4429|P|NAD83 / BLM 9N (ftUS)|881|138|3|en|proj=tmerc lat_0=0 lon_0=-129 k=0.9996 x_0=500000.001016002 y_0=0
4430|P|NAD83 / BLM 10N (ftUS)|882|138|3|en|proj=tmerc lat_0=0 lon_0=-123 k=0.9996 x_0=500000.001016002 y_0=0
4431|P|NAD83 / BLM 11N (ftUS)|883|138|3|en|proj=tmerc lat_0=0 lon_0=-117 k=0.9996 x_0=500000.001016002 y_0=0
4432|P|NAD83 / BLM 12N (ftUS)|884|138|3|en|proj=tmerc lat_0=0 lon_0=-111 k=0.9996 x_0=500000.001016002 y_0=0
4433|P|NAD83 / BLM 13N (ftUS)|885|138|3|en|proj=tmerc lat_0=0 lon_0=-105 k=0.9996 x_0=500000.001016002 y_0=0
4434|P|Pulkovo 1942(83) / 3-degree Gauss-Kruger zone 8|1125|59|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=8500000 y_0=0
4437|P|NAD83(NSRS2007) / Puerto Rico and Virgin Is.|483|330|0|en|proj=lcc lat_0=17.8333333333333 lon_0=-66.4333333333333 lat_1=18.4333333333333 lat_2=18.0333333333333 x_0=200000 y_0=200000
4438|P|NAD83 / BLM 18N (ftUS)|890|138|3|en|proj=tmerc lat_0=0 lon_0=-75 k=0.9996 x_0=500000.001016002 y_0=0
4439|P|NAD83 / BLM 19N (ftUS)|891|138|3|en|proj=tmerc lat_0=0 lon_0=-69 k=0.9996 x_0=500000.001016002 y_0=0
4440|V|NZVD2009 height|1032|New Zealand Vertical Datum 2009|0|u
4455|P|NAD27 / Pennsylvania South|214|137|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-77.75 lat_1=40.9666666666667 lat_2=39.9333333333333 x_0=609601.219202438 y_0=0
4456|P|NAD27 / New York Long Island|205|137|3|en|proj=lcc lat_0=40.5 lon_0=-74 lat_1=41.0333333333333 lat_2=40.6666666666667 x_0=609601.219202438 y_0=30480.0609601219
4457|P|NAD83 / South Dakota North (ftUS)|474|138|3|en|proj=lcc lat_0=43.8333333333333 lon_0=-100 lat_1=45.6833333333333 lat_2=44.4166666666667 x_0=600000 y_0=0
4458|V|Dunedin-Bluff 1960 height|1126|Dunedin-Bluff 1960|0|u
4462|P|WGS 84 / Australian Centre for Remote Sensing Lambert|609|183|0|en|proj=lcc lat_0=-27 lon_0=132 lat_1=-18 lat_2=-36 x_0=0 y_0=0
4463|G|RGSPM06|1127|184
4465|C|RGSPM06|1127|184
4466|H|RGSPM06|1127|184
4467|P|RGSPM06 / UTM zone 21N|1127|184|0|en|proj=utm zone=21
4468|C|RGM04|1128|185
4469|H|RGM04|1128|185
4470|G|RGM04|1128|185
4471|P|RGM04 / UTM zone 38S|1128|185|0|en|proj=utm zone=38 south
4472|H|Cadastre 1997|521|186
4473|C|Cadastre 1997|521|186
4475|G|Cadastre 1997|521|186
4479|C|China Geodetic Coordinate System 2000|1056|188
4480|H|China Geodetic Coordinate System 2000|1056|188
4481|C|Mexico ITRF92|1129|187
4482|H|Mexico ITRF92|1129|187
4483|G|Mexico ITRF92|1129|187
4484|P|Mexico ITRF92 / UTM zone 11N|1130|187|0|en|proj=utm zone=11
4485|P|Mexico ITRF92 / UTM zone 12N|1131|187|0|en|proj=utm zone=12
4486|P|Mexico ITRF92 / UTM zone 13N|1132|187|0|en|proj=utm zone=13
4487|P|Mexico ITRF92 / UTM zone 14N|1133|187|0|en|proj=utm zone=14
4488|P|Mexico ITRF92 / UTM zone 15N|1134|187|0|en|proj=utm zone=15
4489|P|Mexico ITRF92 / UTM zone 16N|1135|187|0|en|proj=utm zone=16
4490|G|China Geodetic Coordinate System 2000|1056|188
4491|P|CGCS2000 / Gauss-Kruger zone 13|253|188|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=13500000 y_0=0
4492|P|CGCS2000 / Gauss-Kruger zone 14|254|188|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=14500000 y_0=0
4493|P|CGCS2000 / Gauss-Kruger zone 15|255|188|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=15500000 y_0=0
4494|P|CGCS2000 / Gauss-Kruger zone 16|256|188|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=16500000 y_0=0
4495|P|CGCS2000 / Gauss-Kruger zone 17|257|188|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=17500000 y_0=0
4496|P|CGCS2000 / Gauss-Kruger zone 18|1136|188|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=18500000 y_0=0
4497|P|CGCS2000 / Gauss-Kruger zone 19|1137|188|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=19500000 y_0=0
4498|P|CGCS2000 / Gauss-Kruger zone 20|1138|188|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=20500000 y_0=0
4499|P|CGCS2000 / Gauss-Kruger zone 21|1139|188|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=21500000 y_0=0
4500|P|CGCS2000 / Gauss-Kruger zone 22|1140|188|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=22500000 y_0=0
4501|P|CGCS2000 / Gauss-Kruger zone 23|263|188|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=23500000 y_0=0
4502|P|CGCS2000 / Gauss-Kruger CM 75E|253|188|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
4503|P|CGCS2000 / Gauss-Kruger CM 81E|254|188|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
4504|P|CGCS2000 / Gauss-Kruger CM 87E|255|188|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
4505|P|CGCS2000 / Gauss-Kruger CM 93E|256|188|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
4506|P|CGCS2000 / Gauss-Kruger CM 99E|257|188|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
4507|P|CGCS2000 / Gauss-Kruger CM 105E|1136|188|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
4508|P|CGCS2000 / Gauss-Kruger CM 111E|1137|188|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
4509|P|CGCS2000 / Gauss-Kruger CM 117E|1138|188|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
4510|P|CGCS2000 / Gauss-Kruger CM 123E|1139|188|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
4511|P|CGCS2000 / Gauss-Kruger CM 129E|1140|188|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
4512|P|CGCS2000 / Gauss-Kruger CM 135E|263|188|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
4513|P|CGCS2000 / 3-degree Gauss-Kruger zone 25|264|188|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=25500000 y_0=0
4514|P|CGCS2000 / 3-degree Gauss-Kruger zone 26|265|188|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=26500000 y_0=0
4515|P|CGCS2000 / 3-degree Gauss-Kruger zone 27|266|188|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=27500000 y_0=0
4516|P|CGCS2000 / 3-degree Gauss-Kruger zone 28|267|188|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=28500000 y_0=0
4517|P|CGCS2000 / 3-degree Gauss-Kruger zone 29|268|188|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=29500000 y_0=0
4518|P|CGCS2000 / 3-degree Gauss-Kruger zone 30|269|188|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=30500000 y_0=0
4519|P|CGCS2000 / 3-degree Gauss-Kruger zone 31|270|188|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=31500000 y_0=0
4520|P|CGCS2000 / 3-degree Gauss-Kruger zone 32|271|188|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=32500000 y_0=0
4521|P|CGCS2000 / 3-degree Gauss-Kruger zone 33|272|188|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=33500000 y_0=0
4522|P|CGCS2000 / 3-degree Gauss-Kruger zone 34|273|188|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=34500000 y_0=0
4523|P|CGCS2000 / 3-degree Gauss-Kruger zone 35|274|188|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=35500000 y_0=0
4524|P|CGCS2000 / 3-degree Gauss-Kruger zone 36|275|188|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=36500000 y_0=0
4525|P|CGCS2000 / 3-degree Gauss-Kruger zone 37|276|188|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=37500000 y_0=0
4526|P|CGCS2000 / 3-degree Gauss-Kruger zone 38|277|188|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=38500000 y_0=0
4527|P|CGCS2000 / 3-degree Gauss-Kruger zone 39|278|188|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=39500000 y_0=0
4528|P|CGCS2000 / 3-degree Gauss-Kruger zone 40|279|188|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=40500000 y_0=0
4529|P|CGCS2000 / 3-degree Gauss-Kruger zone 41|280|188|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=41500000 y_0=0
4530|P|CGCS2000 / 3-degree Gauss-Kruger zone 42|281|188|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=42500000 y_0=0
4531|P|CGCS2000 / 3-degree Gauss-Kruger zone 43|282|188|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=43500000 y_0=0
4532|P|CGCS2000 / 3-degree Gauss-Kruger zone 44|283|188|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=44500000 y_0=0
4533|P|CGCS2000 / 3-degree Gauss-Kruger zone 45|284|188|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=45500000 y_0=0
4534|P|CGCS2000 / 3-degree Gauss-Kruger CM 75E|264|188|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
4535|P|CGCS2000 / 3-degree Gauss-Kruger CM 78E|265|188|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=500000 y_0=0
4536|P|CGCS2000 / 3-degree Gauss-Kruger CM 81E|266|188|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
4537|P|CGCS2000 / 3-degree Gauss-Kruger CM 84E|267|188|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=500000 y_0=0
4538|P|CGCS2000 / 3-degree Gauss-Kruger CM 87E|268|188|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
4539|P|CGCS2000 / 3-degree Gauss-Kruger CM 90E|269|188|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=500000 y_0=0
4540|P|CGCS2000 / 3-degree Gauss-Kruger CM 93E|270|188|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
4541|P|CGCS2000 / 3-degree Gauss-Kruger CM 96E|271|188|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=500000 y_0=0
4542|P|CGCS2000 / 3-degree Gauss-Kruger CM 99E|272|188|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
4543|P|CGCS2000 / 3-degree Gauss-Kruger CM 102E|273|188|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=500000 y_0=0
4544|P|CGCS2000 / 3-degree Gauss-Kruger CM 105E|274|188|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
4545|P|CGCS2000 / 3-degree Gauss-Kruger CM 108E|275|188|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=500000 y_0=0
4546|P|CGCS2000 / 3-degree Gauss-Kruger CM 111E|276|188|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
4547|P|CGCS2000 / 3-degree Gauss-Kruger CM 114E|277|188|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=500000 y_0=0
4548|P|CGCS2000 / 3-degree Gauss-Kruger CM 117E|278|188|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
4549|P|CGCS2000 / 3-degree Gauss-Kruger CM 120E|279|188|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=500000 y_0=0
4550|P|CGCS2000 / 3-degree Gauss-Kruger CM 123E|280|188|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
4551|P|CGCS2000 / 3-degree Gauss-Kruger CM 126E|281|188|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=500000 y_0=0
4552|P|CGCS2000 / 3-degree Gauss-Kruger CM 129E|282|188|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
4553|P|CGCS2000 / 3-degree Gauss-Kruger CM 132E|283|188|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=500000 y_0=0
4554|P|CGCS2000 / 3-degree Gauss-Kruger CM 135E|284|188|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
4555|G|New Beijing|1141|189
4556|C|RRAF 1991|1142|190
4557|H|RRAF 1991|1142|190
4558|G|RRAF 1991|1142|190
4559|P|RRAF 1991 / UTM zone 20N|1143|190|0|en|proj=utm zone=20
4568|P|New Beijing / Gauss-Kruger zone 13|253|189|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=13500000 y_0=0
4569|P|New Beijing / Gauss-Kruger zone 14|254|189|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=14500000 y_0=0
4570|P|New Beijing / Gauss-Kruger zone 15|255|189|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=15500000 y_0=0
4571|P|New Beijing / Gauss-Kruger zone 16|256|189|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=16500000 y_0=0
4572|P|New Beijing / Gauss-Kruger zone 17|257|189|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=17500000 y_0=0
4573|P|New Beijing / Gauss-Kruger zone 18|258|189|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=18500000 y_0=0
4574|P|New Beijing / Gauss-Kruger zone 19|259|189|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=19500000 y_0=0
4575|P|New Beijing / Gauss-Kruger zone 20|260|189|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=20500000 y_0=0
4576|P|New Beijing / Gauss-Kruger zone 21|261|189|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=21500000 y_0=0
4577|P|New Beijing / Gauss-Kruger zone 22|262|189|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=22500000 y_0=0
4578|P|New Beijing / Gauss-Kruger zone 23|263|189|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=23500000 y_0=0
4579|P|New Beijing / Gauss-Kruger CM 75E|253|189|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
4580|P|New Beijing / Gauss-Kruger CM 81E|254|189|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
4581|P|New Beijing / Gauss-Kruger CM 87E|255|189|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
4582|P|New Beijing / Gauss-Kruger CM 93E|256|189|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
4583|P|New Beijing / Gauss-Kruger CM 99E|257|189|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
4584|P|New Beijing / Gauss-Kruger CM 105E|258|189|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
4585|P|New Beijing / Gauss-Kruger CM 111E|259|189|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
4586|P|New Beijing / Gauss-Kruger CM 117E|260|189|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
4587|P|New Beijing / Gauss-Kruger CM 123E|261|189|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
4588|P|New Beijing / Gauss-Kruger CM 129E|262|189|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
4589|P|New Beijing / Gauss-Kruger CM 135E|263|189|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
4600|G|Anguilla 1957|0|
4601|G|Antigua 1943|1|191
4602|G|Dominica 1945|2|192
4603|G|Grenada 1953|3|193
4604|G|Montserrat 1958|4|194
4605|G|St. Kitts 1955|5|195
4606|G|St. Lucia 1955|6|196
4607|G|St. Vincent 1945|7|197
4608|G|NAD27(76)|649|198
4609|G|NAD27(CGQ77)|121|199
4610|G|Xian 1980|1141|200
4611|G|Hong Kong 1980|252|201
4612|G|JGD2000|1144|202
4613|G|Segara|533|203
4614|G|QND95|84|204
4615|G|Porto Santo|493|205
4616|G|Selvagem Grande|494|206
4617|G|NAD83(CSRS)|812|207
4618|G|SAD69|1145|208
4619|G|SWEREF99|539|209
4620|G|Point 58|1146|210
4621|G|Fort Marigot|512|211
4622|G|Guadeloupe 1948|513|212
4623|G|CSG67|1147|213
4624|G|RGFG95|1148|214
4625|G|Martinique 1938|516|215
4626|G|Reunion 1947|892|216
4627|G|RGR92|1149|217
4628|G|Tahiti 52|518|218
4629|G|Tahaa 54|519|219
4630|G|IGN72 Nuku Hiva|520|220
4632|G|Combani 1950|521|221
4633|G|IGN56 Lifou|522|222
4636|G|Petrels 1972|523|223
4637|G|Perroud 1950|524|224
4638|G|Saint Pierre et Miquelon 1950|525|225
4639|G|MOP78|526|226
4641|G|IGN53 Mare|1150|227
4642|G|ST84 Ile des Pins|529|228
4643|G|ST71 Belep|530|229
4644|G|NEA74 Noumea|531|230
4646|G|Grand Comoros|532|231
4647|P|ETRS89 / UTM zone 32N (zE-N)|1151|130|0|en|proj=tmerc lat_0=0 lon_0=9 k=0.9996 x_0=32500000 y_0=0
4652|P|New Beijing / 3-degree Gauss-Kruger zone 25|264|189|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=25500000 y_0=0
4653|P|New Beijing / 3-degree Gauss-Kruger zone 26|265|189|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=26500000 y_0=0
4654|P|New Beijing / 3-degree Gauss-Kruger zone 27|266|189|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=27500000 y_0=0
4655|P|New Beijing / 3-degree Gauss-Kruger zone 28|267|189|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=28500000 y_0=0
4656|P|New Beijing / 3-degree Gauss-Kruger zone 29|268|189|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=29500000 y_0=0
4657|G|Reykjavik 1900|574|232
4658|G|Hjorsey 1955|574|233
4659|G|ISN93|578|234
4660|G|Helle 1954|579|235
4661|G|LKS92|580|236
4662|G|IGN72 Grande Terre|581|237
4663|G|Porto Santo 1995|493|238
4664|G|Azores Oriental 1995|140|239
4665|G|Azores Central 1995|139|240
4666|G|Lisbon 1890|510|241
4667|G|IKBD-92|1152|242
4668|G|ED79|1068|243
4669|G|LKS94|811|244
4670|G|IGM95|1089|245
4671|G|Voirol 1879|1114|246
4672|G|Chatham Islands 1971|905|247
4673|G|Chatham Islands 1979|905|248
4674|G|SIRGAS 2000|1153|249
4675|G|Guam 1963|1154|
4676|G|Vientiane 1982|1155|250
4677|G|Lao 1993|1155|251
4678|G|Lao 1997|1155|252
4679|G|Jouik 1961|1156|253
4680|G|Nouakchott 1965|1157|254
4682|G|Gulshan 303|1158|255
4683|G|PRS92|1159|256
4684|G|Gan 1970|1160|257
4686|G|MAGNA-SIRGAS|1161|258
4687|G|RGPF|1162|259
4688|G|Fatu Iva 72|776|260
4689|G|IGN63 Hiva Oa|775|261
4690|G|Tahiti 79|777|262
4691|G|Moorea 87|778|263
4692|G|Maupiti 83|779|264
4693|G|Nakhl-e Ghanem|780|265
4694|G|POSGAR 94|1040|266
4695|G|Katanga 1955|1123|267
4696|G|Kasai 1953|1163|268
4697|G|IGC 1962 6th Parallel South|1164|269
4698|G|IGN 1962 Kerguelen|804|270
4699|G|Le Pouce 1934|805|271
4700|G|IGN Astro 1960|1165|272
4701|G|IGCB 1955|807|273
4702|G|Mauritania 1999|1166|274
4703|G|Mhast 1951|1167|275
4704|G|Mhast (onshore)|816|276
4705|G|Mhast (offshore)|817|277
4706|G|Egypt Gulf of Suez S-650 TL|818|278
4707|G|Tern Island 1961|1168|279
4708|G|Cocos Islands 1965|1169|280
4709|G|Iwo Jima 1945|1170|281
4710|G|Astro DOS 71|1171|282
4711|G|Marcus Island 1952|312|283
4712|G|Ascension Island 1958|1172|284
4713|G|Ayabelle Lighthouse|1173|285
4714|G|Bellevue|1174|286
4715|G|Camp Area Astro|1175|287
4716|G|Phoenix Islands 1966|1176|288
4717|G|Cape Canaveral|1177|289
4718|G|Solomon 1968|1178|290
4719|G|Easter Island 1967|1179|291
4720|G|Fiji 1986|856|292
4721|G|Fiji 1956|1180|293
4722|G|South Georgia 1968|904|294
4723|G|GCGD59|1181|295
4724|G|Diego Garcia 1969|1182|296
4725|G|Johnston Island 1961|1183|297
4726|G|SIGD61|1184|298
4727|G|Midway 1961|1185|299
4728|G|PN84|1186|300
4729|G|Pitcairn 1967|915|301
4730|G|Santo 1965|1187|302
4732|G|Marshall Islands 1960|1188|303
4733|G|Wake Island 1952|1189|304
4734|G|Tristan 1968|1190|305
4735|G|Kusaie 1951|1191|306
4736|G|Deception Island|1192|307
4737|G|Korea 2000|1193|308
4738|G|Hong Kong 1963|252|309
4739|G|Hong Kong 1963(67)|252|310
4740|G|PZ-90|943|311
4741|G|FD54|639|312
4742|G|GDM2000|1194|313
4743|G|Karbala 1979|958|314
4744|G|Nahrwan 1934|838|315
4745|G|RD/83|1195|316
4746|G|PD/83|1196|317
4747|G|GR96|1197|318
4748|G|Vanua Levu 1915|635|319
4749|G|RGNC91-93|1198|320
4750|G|ST87 Ouvea|651|321
4751|G|Kertau (RSO)|1199|322
4752|G|Viti Levu 1912|636|323
4753|G|fk89|639|324
4754|G|LGD2006|659|325
4755|G|DGN95|1200|326
4756|G|VN-2000|1022|327
4757|G|SVY21|846|328
4758|G|JAD2001|1201|329
4759|G|NAD83(NSRS2007)|1202|330
4760|G|WGS 66|943|331
4761|G|HTRS96|907|332
4762|G|BDA2000|911|333
4763|G|Pitcairn 2006|915|334
4764|G|RSRGD2000|1203|335
4765|G|Slovenia 1996|920|336
4766|P|New Beijing / 3-degree Gauss-Kruger zone 30|269|189|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=30500000 y_0=0
4767|P|New Beijing / 3-degree Gauss-Kruger zone 31|270|189|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=31500000 y_0=0
4768|P|New Beijing / 3-degree Gauss-Kruger zone 32|271|189|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=32500000 y_0=0
4769|P|New Beijing / 3-degree Gauss-Kruger zone 33|272|189|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=33500000 y_0=0
4770|P|New Beijing / 3-degree Gauss-Kruger zone 34|273|189|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=34500000 y_0=0
4771|P|New Beijing / 3-degree Gauss-Kruger zone 35|274|189|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=35500000 y_0=0
4772|P|New Beijing / 3-degree Gauss-Kruger zone 36|275|189|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=36500000 y_0=0
4773|P|New Beijing / 3-degree Gauss-Kruger zone 37|276|189|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=37500000 y_0=0
4774|P|New Beijing / 3-degree Gauss-Kruger zone 38|277|189|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=38500000 y_0=0
4775|P|New Beijing / 3-degree Gauss-Kruger zone 39|278|189|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=39500000 y_0=0
4776|P|New Beijing / 3-degree Gauss-Kruger zone 40|279|189|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=40500000 y_0=0
4777|P|New Beijing / 3-degree Gauss-Kruger zone 41|280|189|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=41500000 y_0=0
4778|P|New Beijing / 3-degree Gauss-Kruger zone 42|281|189|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=42500000 y_0=0
4779|P|New Beijing / 3-degree Gauss-Kruger zone 43|282|189|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=43500000 y_0=0
4780|P|New Beijing / 3-degree Gauss-Kruger zone 44|283|189|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=44500000 y_0=0
4781|P|New Beijing / 3-degree Gauss-Kruger zone 45|284|189|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=45500000 y_0=0
4782|P|New Beijing / 3-degree Gauss-Kruger CM 75E|264|189|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
4783|P|New Beijing / 3-degree Gauss-Kruger CM 78E|265|189|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=500000 y_0=0
4784|P|New Beijing / 3-degree Gauss-Kruger CM 81E|266|189|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
4785|P|New Beijing / 3-degree Gauss-Kruger CM 84E|267|189|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=500000 y_0=0
4786|P|New Beijing / 3-degree Gauss-Kruger CM 87E|268|189|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
4787|P|New Beijing / 3-degree Gauss-Kruger CM 90E|269|189|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=500000 y_0=0
4788|P|New Beijing / 3-degree Gauss-Kruger CM 93E|270|189|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
4789|P|New Beijing / 3-degree Gauss-Kruger CM 96E|271|189|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=500000 y_0=0
4790|P|New Beijing / 3-degree Gauss-Kruger CM 99E|272|189|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
4791|P|New Beijing / 3-degree Gauss-Kruger CM 102E|273|189|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=500000 y_0=0
4792|P|New Beijing / 3-degree Gauss-Kruger CM 105E|274|189|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
4793|P|New Beijing / 3-degree Gauss-Kruger CM 108E|275|189|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=500000 y_0=0
4794|P|New Beijing / 3-degree Gauss-Kruger CM 111E|276|189|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
4795|P|New Beijing / 3-degree Gauss-Kruger CM 114E|277|189|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=500000 y_0=0
4796|P|New Beijing / 3-degree Gauss-Kruger CM 117E|278|189|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
4797|P|New Beijing / 3-degree Gauss-Kruger CM 120E|279|189|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=500000 y_0=0
4798|P|New Beijing / 3-degree Gauss-Kruger CM 123E|280|189|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
4799|P|New Beijing / 3-degree Gauss-Kruger CM 126E|281|189|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=500000 y_0=0
4800|P|New Beijing / 3-degree Gauss-Kruger CM 129E|282|189|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
4801|G|Bern 1898 (Bern)|48|337
4802|G|Bogota 1975 (Bogota)|1204|338
4803|G|Lisbon (Lisbon)|510|339
4804|G|Makassar (Jakarta)|535|340
4805|G|MGI (Ferro)|1205|341
4806|G|Monte Mario (Rome)|1089|342
4807|G|NTF (Paris)|1096|343
4809|G|BD50 (Brussels)|851|344
4810|G|Tananarive (Paris)|1206|345
4811|G|Voirol 1875 (Paris)|1114|346
4812|P|New Beijing / 3-degree Gauss-Kruger CM 132E|283|189|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=500000 y_0=0
4813|G|Batavia (Jakarta)|534|347
4814|G|RT38 (Stockholm)|1116|348
4815|G|Greek (Athens)|85|349
4816|G|Carthage (Paris)|1207|350
4817|G|NGO 1948 (Oslo)|1095|351
4818|G|S-JTSK (Ferro)|55|352
4820|G|Segara (Jakarta)|533|353
4821|G|Voirol 1879 (Paris)|1114|354
4822|P|New Beijing / 3-degree Gauss-Kruger CM 135E|284|189|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
4823|G|Sao Tome|1208|355
4824|G|Principe|1209|356
4826|P|WGS 84 / Cape Verde National|1210|183|0|en|proj=lcc lat_0=15.8333333333333 lon_0=-24 lat_1=15 lat_2=16.6666666666667 x_0=161587.83 y_0=128511.202
4839|P|ETRS89 / LCC Germany (N-E)|1211|130|0|ne|proj=lcc lat_0=51 lon_0=10.5 lat_1=48.6666666666667 lat_2=53.6666666666667 x_0=0 y_0=0
4882|C|Slovenia 1996|920|336
4883|H|Slovenia 1996|920|336
4884|C|RSRGD2000|1203|335
4885|H|RSRGD2000|1203|335
4886|C|BDA2000|911|333
4887|H|BDA2000|911|333
4888|C|HTRS96|907|332
4889|H|HTRS96|907|332
4890|C|WGS 66|943|331
4891|H|WGS 66|943|331
4892|C|NAD83(NSRS2007)|1202|330
4893|H|NAD83(NSRS2007)|1202|330
4894|C|JAD2001|1201|329
4895|H|JAD2001|1201|329
4896|C|ITRF2005|943|473
4897|C|DGN95|1200|326
4898|H|DGN95|1200|326
4899|C|LGD2006|659|325
4900|H|LGD2006|659|325
4901|G|ATF (Paris)|1212|357
4903|G|Madrid 1870 (Madrid)|54|358
4904|G|Lisbon 1890 (Lisbon)|510|359
4906|C|RGNC91-93|1198|320
4907|H|RGNC91-93|1198|320
4908|C|GR96|1197|318
4909|H|GR96|1197|318
4910|C|ITRF88|943|463
4911|C|ITRF89|943|464
4912|C|ITRF90|943|465
4913|C|ITRF91|943|466
4914|C|ITRF92|943|467
4915|C|ITRF93|943|468
4916|C|ITRF94|943|469
4917|C|ITRF96|943|470
4918|C|ITRF97|943|471
4919|C|ITRF2000|943|472
4920|C|GDM2000|1194|313
4921|H|GDM2000|1194|313
4922|C|PZ-90|943|311
4923|H|PZ-90|943|311
4924|C|Mauritania 1999|1166|274
4925|H|Mauritania 1999|1166|274
4926|C|Korea 2000|1193|308
4927|H|Korea 2000|1193|308
4928|C|POSGAR 94|1040|266
4929|H|POSGAR 94|1040|266
4930|C|Australian Antarctic|559|58
4931|H|Australian Antarctic|559|58
4932|C|CHTRS95|48|34
4933|H|CHTRS95|48|34
4934|C|EST97|774|61
4935|H|EST97|774|61
4936|C|ETRS89|1085|130
4937|H|ETRS89|1085|130
4938|C|GDA94|1102|151
4939|H|GDA94|1102|151
4940|C|Hartebeesthoek94|1023|31
4941|H|Hartebeesthoek94|1023|31
4942|C|IRENET95|123|55
4943|H|IRENET95|123|55
4944|C|ISN93|578|234
4945|H|ISN93|578|234
4946|C|JGD2000|1144|202
4947|H|JGD2000|1144|202
4948|C|LKS92|580|236
4949|H|LKS92|580|236
4950|C|LKS94|811|244
4951|H|LKS94|811|244
4952|C|Moznet|1010|17
4953|H|Moznet|1010|17
4954|C|NAD83(CSRS)|812|207
4955|H|NAD83(CSRS)|812|207
4956|C|NAD83(HARN)|1024|35
4957|H|NAD83(HARN)|1024|35
4958|C|NZGD2000|1032|50
4959|H|NZGD2000|1032|50
4960|C|POSGAR 98|1040|68
4961|H|POSGAR 98|1040|68
4962|C|REGVEN|1039|67
4963|H|REGVEN|1039|67
4964|C|RGF93 v1|122|54
4965|H|RGF93 v1|122|54
4966|C|RGFG95|1148|214
4967|H|RGFG95|1148|214
4970|C|RGR92|1149|217
4971|H|RGR92|1149|217
4974|C|SIRGAS 1995|1034|53
4975|H|SIRGAS 1995|1034|53
4976|C|SWEREF99|539|209
4977|H|SWEREF99|539|209
4978|C|WGS 84|943|183
4979|H|WGS 84|1213|183
4980|C|Yemen NGN96|1030|46
4981|H|Yemen NGN96|1030|46
4982|C|IGM95|1089|245
4983|H|IGM95|1089|245
4984|C|WGS 72|943|181
4985|H|WGS 72|943|181
4986|C|WGS 72BE|943|182
4987|H|WGS 72BE|943|182
4988|C|SIRGAS 2000|1153|249
4989|H|SIRGAS 2000|1153|249
4990|C|Lao 1993|1155|251
4991|H|Lao 1993|1155|251
4992|C|Lao 1997|1155|252
4993|H|Lao 1997|1155|252
4994|C|PRS92|1159|256
4995|H|PRS92|1159|256
4996|C|MAGNA-SIRGAS|1161|258
4997|H|MAGNA-SIRGAS|1161|258
4998|C|RGPF|1162|259
4999|H|RGPF|1162|259
5011|C|PTRA08|1214|360
5012|H|PTRA08|1214|360
5013|G|PTRA08|1214|360
5014|P|PTRA08 / UTM zone 25N|1215|360|0|en|proj=utm zone=25
5015|P|PTRA08 / UTM zone 26N|1216|360|0|en|proj=utm zone=26
5016|P|PTRA08 / UTM zone 28N|1217|360|0|en|proj=utm zone=28
5017|P|Lisbon 1890 / Portugal Bonne New|510|241|0|sw|
5018|P|Lisbon / Portuguese Grid New|510|85|0|en|proj=tmerc lat_0=39.6666666666667 lon_0=-8.13190611111111 k=1 x_0=0 y_0=0
5041|P|WGS 84 / UPS North (E,N)|845|183|0|en|proj=stere lat_0=90 lon_0=0 k=0.994 x_0=2000000 y_0=2000000
5042|P|WGS 84 / UPS South (E,N)|974|183|0|en|proj=stere lat_0=-90 lon_0=0 k=0.994 x_0=2000000 y_0=2000000
5048|P|ETRS89 / TM35FIN(N,E)|584|130|0|ne|proj=utm zone=35
5069|P|NAD27 / Conus Albers|1218|137|0|en|proj=aea lat_0=23 lon_0=-96 lat_1=29.5 lat_2=45.5 x_0=0 y_0=0
5070|P|NAD83 / Conus Albers|1218|138|0|en|proj=aea lat_0=23 lon_0=-96 lat_1=29.5 lat_2=45.5 x_0=0 y_0=0
5071|P|NAD83(HARN) / Conus Albers|1218|35|0|en|proj=aea lat_0=23 lon_0=-96 lat_1=29.5 lat_2=45.5 x_0=0 y_0=0
5072|P|NAD83(NSRS2007) / Conus Albers|1218|330|0|en|proj=aea lat_0=23 lon_0=-96 lat_1=29.5 lat_2=45.5 x_0=0 y_0=0
5105|P|ETRS89 / NTM zone 5|1219|130|0|ne|proj=tmerc lat_0=58 lon_0=5.5 k=1 x_0=100000 y_0=1000000
5106|P|ETRS89 / NTM zone 6|1220|130|0|ne|proj=tmerc lat_0=58 lon_0=6.5 k=1 x_0=100000 y_0=1000000
5107|P|ETRS89 / NTM zone 7|1221|130|0|ne|proj=tmerc lat_0=58 lon_0=7.5 k=1 x_0=100000 y_0=1000000
5108|P|ETRS89 / NTM zone 8|1222|130|0|ne|proj=tmerc lat_0=58 lon_0=8.5 k=1 x_0=100000 y_0=1000000
5109|P|ETRS89 / NTM zone 9|1223|130|0|ne|proj=tmerc lat_0=58 lon_0=9.5 k=1 x_0=100000 y_0=1000000
5110|P|ETRS89 / NTM zone 10|1224|130|0|ne|proj=tmerc lat_0=58 lon_0=10.5 k=1 x_0=100000 y_0=1000000
5111|P|ETRS89 / NTM zone 11|1225|130|0|ne|proj=tmerc lat_0=58 lon_0=11.5 k=1 x_0=100000 y_0=1000000
5112|P|ETRS89 / NTM zone 12|1226|130|0|ne|proj=tmerc lat_0=58 lon_0=12.5 k=1 x_0=100000 y_0=1000000
5113|P|ETRS89 / NTM zone 13|1227|130|0|ne|proj=tmerc lat_0=58 lon_0=13.5 k=1 x_0=100000 y_0=1000000
5114|P|ETRS89 / NTM zone 14|1228|130|0|ne|proj=tmerc lat_0=58 lon_0=14.5 k=1 x_0=100000 y_0=1000000
5115|P|ETRS89 / NTM zone 15|1229|130|0|ne|proj=tmerc lat_0=58 lon_0=15.5 k=1 x_0=100000 y_0=1000000
5116|P|ETRS89 / NTM zone 16|1230|130|0|ne|proj=tmerc lat_0=58 lon_0=16.5 k=1 x_0=100000 y_0=1000000
5117|P|ETRS89 / NTM zone 17|1231|130|0|ne|proj=tmerc lat_0=58 lon_0=17.5 k=1 x_0=100000 y_0=1000000
5118|P|ETRS89 / NTM zone 18|1232|130|0|ne|proj=tmerc lat_0=58 lon_0=18.5 k=1 x_0=100000 y_0=1000000
5119|P|ETRS89 / NTM zone 19|1233|130|0|ne|proj=tmerc lat_0=58 lon_0=19.5 k=1 x_0=100000 y_0=1000000
5120|P|ETRS89 / NTM zone 20|1234|130|0|ne|proj=tmerc lat_0=58 lon_0=20.5 k=1 x_0=100000 y_0=1000000
5121|P|ETRS89 / NTM zone 21|1235|130|0|ne|proj=tmerc lat_0=58 lon_0=21.5 k=1 x_0=100000 y_0=1000000
5122|P|ETRS89 / NTM zone 22|1236|130|0|ne|proj=tmerc lat_0=58 lon_0=22.5 k=1 x_0=100000 y_0=1000000
5123|P|ETRS89 / NTM zone 23|1237|130|0|ne|proj=tmerc lat_0=58 lon_0=23.5 k=1 x_0=100000 y_0=1000000
5124|P|ETRS89 / NTM zone 24|1238|130|0|ne|proj=tmerc lat_0=58 lon_0=24.5 k=1 x_0=100000 y_0=1000000
5125|P|ETRS89 / NTM zone 25|1239|130|0|ne|proj=tmerc lat_0=58 lon_0=25.5 k=1 x_0=100000 y_0=1000000
5126|P|ETRS89 / NTM zone 26|1240|130|0|ne|proj=tmerc lat_0=58 lon_0=26.5 k=1 x_0=100000 y_0=1000000
5127|P|ETRS89 / NTM zone 27|1241|130|0|ne|proj=tmerc lat_0=58 lon_0=27.5 k=1 x_0=100000 y_0=1000000
5128|P|ETRS89 / NTM zone 28|1242|130|0|ne|proj=tmerc lat_0=58 lon_0=28.5 k=1 x_0=100000 y_0=1000000
5129|P|ETRS89 / NTM zone 29|1243|130|0|ne|proj=tmerc lat_0=58 lon_0=29.5 k=1 x_0=100000 y_0=1000000
5130|P|ETRS89 / NTM zone 30|1244|130|0|ne|proj=tmerc lat_0=58 lon_0=30.5 k=1 x_0=100000 y_0=1000000
5132|G|Tokyo 1892|1112|361
5167|P|Korean 1985 / East Sea Belt|1245|45|0|ne|proj=tmerc lat_0=38 lon_0=131 k=1 x_0=200000 y_0=500000
5168|P|Korean 1985 / Central Belt Jeju|1246|45|0|ne|proj=tmerc lat_0=38 lon_0=127 k=1 x_0=200000 y_0=550000
5169|P|Tokyo 1892 / Korea West Belt|1247|361|0|ne|proj=tmerc lat_0=38 lon_0=125 k=1 x_0=200000 y_0=500000
5170|P|Tokyo 1892 / Korea Central Belt|1248|361|0|ne|proj=tmerc lat_0=38 lon_0=127 k=1 x_0=200000 y_0=500000
5171|P|Tokyo 1892 / Korea East Belt|1249|361|0|ne|proj=tmerc lat_0=38 lon_0=129 k=1 x_0=200000 y_0=500000
5172|P|Tokyo 1892 / Korea East Sea Belt|1250|361|0|ne|proj=tmerc lat_0=38 lon_0=131 k=1 x_0=200000 y_0=500000
5173|P|Korean 1985 / Modified West Belt|83|45|0|ne|proj=tmerc lat_0=38 lon_0=125.002890277778 k=1 x_0=200000 y_0=500000
5174|P|Korean 1985 / Modified Central Belt|82|45|0|ne|proj=tmerc lat_0=38 lon_0=127.002890277778 k=1 x_0=200000 y_0=500000
5175|P|Korean 1985 / Modified Central Belt Jeju|1246|45|0|ne|proj=tmerc lat_0=38 lon_0=127.002890277778 k=1 x_0=200000 y_0=550000
5176|P|Korean 1985 / Modified East Belt|81|45|0|ne|proj=tmerc lat_0=38 lon_0=129.002890277778 k=1 x_0=200000 y_0=500000
5177|P|Korean 1985 / Modified East Sea Belt|1245|45|0|ne|proj=tmerc lat_0=38 lon_0=131.002890277778 k=1 x_0=200000 y_0=500000
5178|P|Korean 1985 / Unified CS|1029|45|0|ne|proj=tmerc lat_0=38 lon_0=127.5 k=0.9996 x_0=1000000 y_0=2000000
5179|P|Korea 2000 / Unified CS|1193|308|0|ne|proj=tmerc lat_0=38 lon_0=127.5 k=0.9996 x_0=1000000 y_0=2000000
5180|P|Korea 2000 / West Belt|83|308|0|ne|proj=tmerc lat_0=38 lon_0=125 k=1 x_0=200000 y_0=500000
5181|P|Korea 2000 / Central Belt|82|308|0|ne|proj=tmerc lat_0=38 lon_0=127 k=1 x_0=200000 y_0=500000
5182|P|Korea 2000 / Central Belt Jeju|1246|308|0|ne|proj=tmerc lat_0=38 lon_0=127 k=1 x_0=200000 y_0=550000
5183|P|Korea 2000 / East Belt|81|308|0|ne|proj=tmerc lat_0=38 lon_0=129 k=1 x_0=200000 y_0=500000
5184|P|Korea 2000 / East Sea Belt|1245|308|0|ne|proj=tmerc lat_0=38 lon_0=131 k=1 x_0=200000 y_0=500000
5185|P|Korea 2000 / West Belt 2010|83|308|0|ne|proj=tmerc lat_0=38 lon_0=125 k=1 x_0=200000 y_0=600000
5186|P|Korea 2000 / Central Belt 2010|1251|308|0|ne|proj=tmerc lat_0=38 lon_0=127 k=1 x_0=200000 y_0=600000
5187|P|Korea 2000 / East Belt 2010|81|308|0|ne|proj=tmerc lat_0=38 lon_0=129 k=1 x_0=200000 y_0=600000
5188|P|Korea 2000 / East Sea Belt 2010|1245|308|0|ne|proj=tmerc lat_0=38 lon_0=131 k=1 x_0=200000 y_0=600000
5193|V|Incheon height|1252|Incheon|0|u
5195|V|Trieste height|962|Trieste|0|u
5214|V|Genoa 1942 height|1253|Genoa 1942|0|u
5221|P|S-JTSK (Ferro) / Krovak East North|55|352|0|en|proj=krovak lat_0=49.5 lon_0=42.5 alpha=30.2881397527778 k=0.9999 x_0=0 y_0=0
5223|P|WGS 84 / Gabon TM|1254|183|0|en|proj=tmerc lat_0=0 lon_0=12 k=0.9996 x_0=500000 y_0=500000
5224|P|S-JTSK/05 (Ferro) / Modified Krovak|1255|363|0|sw|
5225|P|S-JTSK/05 (Ferro) / Modified Krovak East North|1255|363|0|en|
5228|G|S-JTSK/05|1255|362
5229|G|S-JTSK/05 (Ferro)|1255|363
5233|G|SLD99|1074|364
5234|P|Kandawala / Sri Lanka Grid|1074|116|0|en|proj=tmerc lat_0=7.00048027777778 lon_0=80.7717111111111 k=0.9999238418 x_0=200000 y_0=200000
5235|P|SLD99 / Sri Lanka Grid 1999|1074|364|0|en|proj=tmerc lat_0=7.00047152777778 lon_0=80.7717130833333 k=0.9999238418 x_0=500000 y_0=500000
5237|V|SLVD height|1074|Sri Lanka Vertical Datum|0|u
5243|P|ETRS89 / LCC Germany (E-N)|1211|130|0|en|proj=lcc lat_0=51 lon_0=10.5 lat_1=48.6666666666667 lat_2=53.6666666666667 x_0=0 y_0=0
5244|C|GDBD2009|1256|365
5245|H|GDBD2009|1256|365
5246|G|GDBD2009|1256|365
5247|P|GDBD2009 / Brunei BRSO|1256|365|0|en|proj=omerc no_uoff lat_0=4 lonc=115 alpha=53.31580995 gamma=53.1301023611111 k=0.99984 x_0=0 y_0=0
5250|C|TUREF|1257|366
5251|H|TUREF|1257|366
5252|G|TUREF|1257|366
5253|P|TUREF / TM27|152|366|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=500000 y_0=0
5254|P|TUREF / TM30|153|366|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=500000 y_0=0
5255|P|TUREF / TM33|154|366|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=500000 y_0=0
5256|P|TUREF / TM36|155|366|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=500000 y_0=0
5257|P|TUREF / TM39|156|366|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=500000 y_0=0
5258|P|TUREF / TM42|157|366|0|ne|proj=tmerc lat_0=0 lon_0=42 k=1 x_0=500000 y_0=0
5259|P|TUREF / TM45|158|366|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=500000 y_0=0
5262|C|DRUKREF 03|1258|367
5263|H|DRUKREF 03|1258|367
5264|G|DRUKREF 03|1258|367
5266|P|DRUKREF 03 / Bhutan National Grid|1258|367|0|en|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=250000 y_0=0
5269|P|TUREF / 3-degree Gauss-Kruger zone 9|152|366|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=9500000 y_0=0
5270|P|TUREF / 3-degree Gauss-Kruger zone 10|153|366|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=10500000 y_0=0
5271|P|TUREF / 3-degree Gauss-Kruger zone 11|154|366|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=11500000 y_0=0
5272|P|TUREF / 3-degree Gauss-Kruger zone 12|155|366|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=12500000 y_0=0
5273|P|TUREF / 3-degree Gauss-Kruger zone 13|156|366|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=13500000 y_0=0
5274|P|TUREF / 3-degree Gauss-Kruger zone 14|157|366|0|ne|proj=tmerc lat_0=0 lon_0=42 k=1 x_0=14500000 y_0=0
5275|P|TUREF / 3-degree Gauss-Kruger zone 15|158|366|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=15500000 y_0=0
5292|P|DRUKREF 03 / Bumthang TM|1259|367|0|en|proj=tmerc lat_0=0 lon_0=90.7333333333333 k=1 x_0=250000 y_0=-2500000
5293|P|DRUKREF 03 / Chhukha TM|1260|367|0|en|proj=tmerc lat_0=0 lon_0=89.55 k=1 x_0=250000 y_0=-2500000
5294|P|DRUKREF 03 / Dagana TM|1261|367|0|en|proj=tmerc lat_0=0 lon_0=89.85 k=1 x_0=250000 y_0=-2500000
5295|P|DRUKREF 03 / Gasa TM|1262|367|0|en|proj=tmerc lat_0=0 lon_0=90.0333333333333 k=1 x_0=250000 y_0=-2500000
5296|P|DRUKREF 03 / Ha TM|1263|367|0|en|proj=tmerc lat_0=0 lon_0=90.15 k=1 x_0=250000 y_0=-2500000
5297|P|DRUKREF 03 / Lhuentse TM|1264|367|0|en|proj=tmerc lat_0=0 lon_0=91.1333333333333 k=1 x_0=250000 y_0=-2500000
5298|P|DRUKREF 03 / Mongar TM|1265|367|0|en|proj=tmerc lat_0=0 lon_0=91.2333333333333 k=1 x_0=250000 y_0=-2500000
5299|P|DRUKREF 03 / Paro TM|1266|367|0|en|proj=tmerc lat_0=0 lon_0=89.35 k=1 x_0=250000 y_0=-2500000
5300|P|DRUKREF 03 / Pemagatshel TM|1267|367|0|en|proj=tmerc lat_0=0 lon_0=91.35 k=1 x_0=250000 y_0=-2500000
5301|P|DRUKREF 03 / Punakha TM|1268|367|0|en|proj=tmerc lat_0=0 lon_0=89.85 k=1 x_0=250000 y_0=-2500000
5302|P|DRUKREF 03 / Samdrup Jongkhar TM|1269|367|0|en|proj=tmerc lat_0=0 lon_0=91.5666666666667 k=1 x_0=250000 y_0=-2500000
5303|P|DRUKREF 03 / Samtse TM|1270|367|0|en|proj=tmerc lat_0=0 lon_0=89.0666666666667 k=1 x_0=250000 y_0=-2500000
5304|P|DRUKREF 03 / Sarpang TM|1271|367|0|en|proj=tmerc lat_0=0 lon_0=90.2666666666667 k=1 x_0=250000 y_0=-2500000
5305|P|DRUKREF 03 / Thimphu TM|1272|367|0|en|proj=tmerc lat_0=0 lon_0=89.55 k=1 x_0=250000 y_0=-2500000
5306|P|DRUKREF 03 / Trashigang TM|1273|367|0|en|proj=tmerc lat_0=0 lon_0=91.75 k=1 x_0=250000 y_0=-2500000
5307|P|DRUKREF 03 / Trongsa TM|1274|367|0|en|proj=tmerc lat_0=0 lon_0=90.5 k=1 x_0=250000 y_0=-2500000
5308|P|DRUKREF 03 / Tsirang TM|1275|367|0|en|proj=tmerc lat_0=0 lon_0=90.1666666666667 k=1 x_0=250000 y_0=-2500000
5309|P|DRUKREF 03 / Wangdue Phodrang TM|1276|367|0|en|proj=tmerc lat_0=0 lon_0=90.1166666666667 k=1 x_0=250000 y_0=-2500000
5310|P|DRUKREF 03 / Yangtse TM|1277|367|0|en|proj=tmerc lat_0=0 lon_0=91.5666666666667 k=1 x_0=250000 y_0=-2500000
5311|P|DRUKREF 03 / Zhemgang TM|1278|367|0|en|proj=tmerc lat_0=0 lon_0=90.8666666666667 k=1 x_0=250000 y_0=-2500000
5316|P|ETRS89 / Faroe TM|1279|130|0|en|proj=tmerc lat_0=0 lon_0=-7 k=0.999997 x_0=200000 y_0=-6000000
5317|V|FVR09 height|639|Faroe Islands Vertical Reference 2009|0|u
5318|K|ETRS89 / Faroe TM + FVR09 height|639|5316|5317
5320|P|NAD83 / Teranet Ontario Lambert|649|138|0|en|proj=lcc lat_0=0 lon_0=-84 lat_1=44.5 lat_2=54.5 x_0=1000000 y_0=0
5321|P|NAD83(CSRS) / Teranet Ontario Lambert|649|207|0|en|proj=lcc lat_0=0 lon_0=-84 lat_1=44.5 lat_2=54.5 x_0=1000000 y_0=0
5322|C|ISN2004|578|368
5323|H|ISN2004|578|368
5324|G|ISN2004|578|368
5325|P|ISN2004 / Lambert 2004|578|368|0|en|proj=lcc lat_0=65 lon_0=-19 lat_1=64.25 lat_2=65.75 x_0=1700000 y_0=300000
5329|P|Segara (Jakarta) / NEIEZ|533|353|0|en|proj=merc lon_0=3.19228055555556 k=0.997 x_0=3900000 y_0=900000
5330|P|Batavia (Jakarta) / NEIEZ|534|347|0|en|proj=merc lon_0=3.19228055555556 k=0.997 x_0=3900000 y_0=900000
5331|P|Makassar (Jakarta) / NEIEZ|535|340|0|en|proj=merc lon_0=3.19228055555556 k=0.997 x_0=3900000 y_0=900000
5332|C|ITRF2008|943|474
5336|V|Black Sea depth|1280|Black Sea|0|d
5337|P|Aratu / UTM zone 25S|1281|86|0|en|proj=utm zone=25 south
5340|G|POSGAR 2007|1040|369
5341|C|POSGAR 2007|1040|369
5342|H|POSGAR 2007|1040|369
5343|P|POSGAR 2007 / Argentina 1|1282|369|0|ne|proj=tmerc lat_0=-90 lon_0=-72 k=1 x_0=1500000 y_0=0
5344|P|POSGAR 2007 / Argentina 2|1283|369|0|ne|proj=tmerc lat_0=-90 lon_0=-69 k=1 x_0=2500000 y_0=0
5345|P|POSGAR 2007 / Argentina 3|1284|369|0|ne|proj=tmerc lat_0=-90 lon_0=-66 k=1 x_0=3500000 y_0=0
5346|P|POSGAR 2007 / Argentina 4|1285|369|0|ne|proj=tmerc lat_0=-90 lon_0=-63 k=1 x_0=4500000 y_0=0
5347|P|POSGAR 2007 / Argentina 5|1286|369|0|ne|proj=tmerc lat_0=-90 lon_0=-60 k=1 x_0=5500000 y_0=0
5348|P|POSGAR 2007 / Argentina 6|1287|369|0|ne|proj=tmerc lat_0=-90 lon_0=-57 k=1 x_0=6500000 y_0=0
5349|P|POSGAR 2007 / Argentina 7|1288|369|0|ne|proj=tmerc lat_0=-90 lon_0=-54 k=1 x_0=7500000 y_0=0
5352|C|MARGEN|1289|370
5353|H|MARGEN|1289|370
5354|G|MARGEN|1289|370
5355|P|MARGEN / UTM zone 20S|1290|370|0|en|proj=utm zone=20 south
5356|P|MARGEN / UTM zone 19S|1291|370|0|en|proj=utm zone=19 south
5357|P|MARGEN / UTM zone 21S|1292|370|0|en|proj=utm zone=21 south
5358|C|SIRGAS-Chile 2002|1293|371
5359|H|SIRGAS-Chile 2002|1293|371
5360|G|SIRGAS-Chile 2002|1293|371
5361|P|SIRGAS-Chile 2002 / UTM zone 19S|1294|371|0|en|proj=utm zone=19 south
5362|P|SIRGAS-Chile 2002 / UTM zone 18S|1295|371|0|en|proj=utm zone=18 south
5363|C|CR05|1296|372
5364|H|CR05|1296|372
5365|G|CR05|1296|372
5367|P|CR05 / CRTM05|1297|372|0|ne|proj=tmerc lat_0=0 lon_0=-84 k=0.9999 x_0=500000 y_0=0
5368|C|MACARIO SOLIS|1298|373
5369|C|Peru96|1299|374
5370|H|MACARIO SOLIS|1298|373
5371|G|MACARIO SOLIS|1298|373
5372|H|Peru96|1299|374
5373|G|Peru96|1299|374
5379|C|SIRGAS-ROU98|1300|375
5380|H|SIRGAS-ROU98|1300|375
5381|G|SIRGAS-ROU98|1300|375
5382|P|SIRGAS-ROU98 / UTM zone 21S|1301|375|0|en|proj=utm zone=21 south
5383|P|SIRGAS-ROU98 / UTM zone 22S|1302|375|0|en|proj=utm zone=22 south
5387|P|Peru96 / UTM zone 18S|1303|374|0|en|proj=utm zone=18 south
5389|P|Peru96 / UTM zone 19S|1304|374|0|en|proj=utm zone=19 south
5391|C|SIRGAS_ES2007.8|1305|376
5392|H|SIRGAS_ES2007.8|1305|376
5393|G|SIRGAS_ES2007.8|1305|376
5396|P|SIRGAS 2000 / UTM zone 26S|1306|249|0|en|proj=utm zone=26 south
5451|G|Ocotepeque 1935|1307|377
5456|P|Ocotepeque 1935 / Costa Rica Norte|1308|377|0|en|proj=lcc lat_1=10.4666666666667 lat_0=10.4666666666667 lon_0=-84.3333333333333 k_0=0.99995696 x_0=500000 y_0=271820.522
5457|P|Ocotepeque 1935 / Costa Rica Sur|1309|377|0|en|proj=lcc lat_1=9 lat_0=9 lon_0=-83.6666666666667 k_0=0.99995696 x_0=500000 y_0=327987.436
5459|P|Ocotepeque 1935 / Guatemala Sur|1310|377|0|en|proj=lcc lat_1=14.9 lat_0=14.9 lon_0=-90.3333333333333 k_0=0.99989906 x_0=500000 y_0=325992.681
5460|P|Ocotepeque 1935 / El Salvador Lambert|1311|377|0|en|proj=lcc lat_1=13.7833333333333 lat_0=13.7833333333333 lon_0=-89 k_0=0.99996704 x_0=500000 y_0=295809.184
5461|P|Ocotepeque 1935 / Nicaragua Norte|1312|377|0|en|proj=lcc lat_1=13.8666666666667 lat_0=13.8666666666667 lon_0=-85.5 k_0=0.99990314 x_0=500000 y_0=359891.816
5462|P|Ocotepeque 1935 / Nicaragua Sur|1313|377|0|en|proj=lcc lat_1=11.7333333333333 lat_0=11.7333333333333 lon_0=-85.5 k_0=0.99992228 x_0=500000 y_0=288876.327
5463|P|SAD69 / UTM zone 17N|1314|208|0|en|proj=utm zone=17
5464|G|Sibun Gorge 1922|1315|378
5467|G|Panama-Colon 1911|1316|379
5469|P|Panama-Colon 1911 / Panama Lambert|1316|379|0|en|proj=lcc lat_1=8.41666666666667 lat_0=8.41666666666667 lon_0=-80 k_0=0.99989909 x_0=500000 y_0=294865.303
5472|P|Panama-Colon 1911 / Panama Polyconic|1316|379|8|en|proj=poly lat_0=8.25 lon_0=-81 x_0=914391.7962 y_0=999404.721715486
5479|P|RSRGD2000 / MSLC2000|1317|335|0|ne|proj=lcc lat_0=-78 lon_0=163 lat_1=-76.6666666666667 lat_2=-79.3333333333333 x_0=7000000 y_0=5000000
5480|P|RSRGD2000 / BCLC2000|1318|335|0|ne|proj=lcc lat_0=-74.5 lon_0=165 lat_1=-73.6666666666667 lat_2=-75.3333333333333 x_0=5000000 y_0=3000000
5481|P|RSRGD2000 / PCLC2000|1319|335|0|ne|proj=lcc lat_0=-71.5 lon_0=166 lat_1=-70.6666666666667 lat_2=-72.3333333333333 x_0=3000000 y_0=1000000
5482|P|RSRGD2000 / RSPS2000|1320|335|0|ne|proj=stere lat_0=-90 lon_0=180 k=0.994 x_0=5000000 y_0=1000000
5487|C|RGAF09|1142|380
5488|H|RGAF09|1142|380
5489|G|RGAF09|1142|380
5490|P|RGAF09 / UTM zone 20N|1143|380|0|en|proj=utm zone=20
5498|K|NAD83 + NAVD88 height|1321|4269|5703
5499|K|NAD83(HARN) + NAVD88 height|1218|4152|5703
5500|K|NAD83(NSRS2007) + NAVD88 height|1218|4759|5703
5513|P|S-JTSK / Krovak|55|39|0|sw|proj=krovak lat_0=49.5 lon_0=24.8333333333333 alpha=30.2881397527778 k=0.9999 x_0=0 y_0=0
5514|P|S-JTSK / Krovak East North|55|39|0|en|proj=krovak lat_0=49.5 lon_0=24.8333333333333 alpha=30.2881397527778 k=0.9999 x_0=0 y_0=0
5515|P|S-JTSK/05 / Modified Krovak|1255|362|0|sw|
5516|P|S-JTSK/05 / Modified Krovak East North|1255|362|0|en|
5518|P|CI1971 / Chatham Islands Map Grid|905|247|0|ne|proj=tmerc lat_0=-44 lon_0=-176.5 k=1 x_0=350000 y_0=650000
5519|P|CI1979 / Chatham Islands Map Grid|905|248|0|ne|proj=tmerc lat_0=-44 lon_0=-176.5 k=1 x_0=350000 y_0=650000
5520|P|DHDN / 3-degree Gauss-Kruger zone 1|1322|176|0|ne|proj=tmerc lat_0=0 lon_0=3 k=1 x_0=1500000 y_0=0
5523|P|WGS 84 / Gabon TM 2011|1090|183|0|en|proj=tmerc lat_0=0 lon_0=11.5 k=0.9996 x_0=1500000 y_0=5500000
5524|G|Corrego Alegre 1961|1323|381
5527|G|SAD69(96)|1324|382
5530|P|SAD69(96) / Brazil Polyconic|1324|382|0|en|proj=poly lat_0=0 lon_0=-54 x_0=5000000 y_0=10000000
5531|P|SAD69(96) / UTM zone 21S|1325|382|0|en|proj=utm zone=21 south
5533|P|SAD69(96) / UTM zone 23S|1326|382|0|en|proj=utm zone=23 south
5534|P|SAD69(96) / UTM zone 24S|1327|382|0|en|proj=utm zone=24 south
5535|P|SAD69(96) / UTM zone 25S|1328|382|0|en|proj=utm zone=25 south
5536|P|Corrego Alegre 1961 / UTM zone 21S|1329|381|0|en|proj=utm zone=21 south
5537|P|Corrego Alegre 1961 / UTM zone 22S|1330|381|0|en|proj=utm zone=22 south
5538|P|Corrego Alegre 1961 / UTM zone 23S|1331|381|0|en|proj=utm zone=23 south
5539|P|Corrego Alegre 1961 / UTM zone 24S|1332|381|0|en|proj=utm zone=24 south
5544|C|PNG94|1333|383
5545|H|PNG94|1333|383
5546|G|PNG94|1333|383
5550|P|PNG94 / PNGMG94 zone 54|1334|383|0|en|proj=utm zone=54 south
5551|P|PNG94 / PNGMG94 zone 55|1335|383|0|en|proj=utm zone=55 south
5552|P|PNG94 / PNGMG94 zone 56|1336|383|0|en|proj=utm zone=56 south
5554|K|ETRS89 / UTM zone 31N + DHHN92 height|1337|25831|5783
5555|K|ETRS89 / UTM zone 32N + DHHN92 height|1338|25832|5783
5556|K|ETRS89 / UTM zone 33N + DHHN92 height|1339|25833|5783
5558|C|UCS-2000|1340|384
5559|P|Ocotepeque 1935 / Guatemala Norte|1341|377|0|en|proj=lcc lat_1=16.8166666666667 lat_0=16.8166666666667 lon_0=-90.3333333333333 k_0=0.99992226 x_0=500000 y_0=292209.579
5560|H|UCS-2000|1340|384
5561|G|UCS-2000|1340|384
5562|P|UCS-2000 / Gauss-Kruger zone 4|1342|384|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=4500000 y_0=0
5563|P|UCS-2000 / Gauss-Kruger zone 5|1343|384|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=5500000 y_0=0
5564|P|UCS-2000 / Gauss-Kruger zone 6|1344|384|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=6500000 y_0=0
5565|P|UCS-2000 / Gauss-Kruger zone 7|1345|384|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=7500000 y_0=0
5566|P|UCS-2000 / Gauss-Kruger CM 21E|1342|384|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=500000 y_0=0
5567|P|UCS-2000 / Gauss-Kruger CM 27E|1343|384|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=500000 y_0=0
5568|P|UCS-2000 / Gauss-Kruger CM 33E|1344|384|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=500000 y_0=0
5569|P|UCS-2000 / Gauss-Kruger CM 39E|1345|384|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=500000 y_0=0
5588|P|NAD27 / New Brunswick Stereographic (NAD27)|146|137|4|ne|proj=sterea lat_0=46.5 lon_0=-66.5 k=0.999912 x_0=304800 y_0=304800
5589|P|Sibun Gorge 1922 / Colony Grid|1315|378|5|en|proj=tmerc lat_0=17.0612419444444 lon_0=-88.6318575 k=1 x_0=66220.0283308276 y_0=135779.50998853
5591|C|FEH2010|1346|385
5592|H|FEH2010|1346|385
5593|G|FEH2010|1346|385
5596|P|FEH2010 / Fehmarnbelt TM|1346|385|0|en|proj=tmerc lat_0=0 lon_0=11.3333333333333 k=1 x_0=1000000 y_0=0
5597|V|FCSVR10 height|1347|Fehmarnbelt Vertical Reference 2010|0|u
5598|K|FEH2010 / Fehmarnbelt TM + FCSVR10 height|1347|5596|5597
5600|V|NGPF height|1348|Nivellement General de Polynesie Francaise|0|u
5601|V|IGN 1966 height|777|IGN 1966|0|u
5602|V|Moorea SAU 1981 height|778|Moorea SAU 1981|0|u
5603|V|Raiatea SAU 2001 height|1349|Raiatea SAU 2001|0|u
5604|V|Maupiti SAU 2001 height|779|Maupiti SAU 2001|0|u
5605|V|Huahine SAU 2001 height|1350|Huahine SAU 2001|0|u
5606|V|Tahaa SAU 2001 height|1351|Tahaa SAU 2001|0|u
5607|V|Bora Bora SAU 2001 height|1352|Bora Bora SAU 2001|0|u
5608|V|IGLD 1955 height|658|International Great Lakes Datum 1955|0|u
5609|V|IGLD 1985 height|658|International Great Lakes Datum 1985|0|u
5610|V|HVRS71 height|906|Croatian Vertical Reference Datum 1971|0|u
5611|V|Caspian height|834|Caspian Sea|0|u
5612|V|Baltic 1977 depth|1103|Baltic 1977|0|d
5613|V|RH2000 height|1116|Rikets hojdsystem 2000|0|u
5614|V|KOC WD depth (ft)|1076|KOC Well Datum|4|d
5615|V|RH00 height|1116|Rikets hojdsystem 1900|0|u
5616|V|IGN 1988 LS height|1353|IGN 1988 LS|0|u
5617|V|IGN 1988 MG height|1354|IGN 1988 MG|0|u
5618|V|IGN 1992 LD height|1355|IGN 1992 LD|0|u
5619|V|IGN 1988 SB height|1356|IGN 1988 SB|0|u
5620|V|IGN 1988 SM height|1357|IGN 1988 SM|0|u
5621|V|EVRF2007 height|1358|European Vertical Reference Frame 2007|0|u
5623|P|NAD27 / Michigan East|1359|137|3|en|proj=tmerc lat_0=41.5 lon_0=-83.6666666666667 k=0.999942857 x_0=152400.30480061 y_0=0
5624|P|NAD27 / Michigan Old Central|1360|137|3|en|proj=tmerc lat_0=41.5 lon_0=-85.75 k=0.999909091 x_0=152400.30480061 y_0=0
5625|P|NAD27 / Michigan West|1361|137|3|en|proj=tmerc lat_0=41.5 lon_0=-88.75 k=0.999909091 x_0=152400.30480061 y_0=0
5627|P|ED50 / TM 6 NE|1362|105|0|en|proj=tmerc lat_0=0 lon_0=6 k=0.9996 x_0=500000 y_0=0
5628|K|SWEREF99 + RH2000 height|1116|4619|5613
5629|P|Moznet / UTM zone 38S|437|17|0|en|proj=utm zone=38 south
5631|P|Pulkovo 1942(58) / Gauss-Kruger zone 2 (E-N)|933|60|0|en|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=2500000 y_0=0
5632|P|PTRA08 / LCC Europe|1214|360|0|ne|proj=lcc lat_0=52 lon_0=10 lat_1=35 lat_2=65 x_0=4000000 y_0=2800000
5633|P|PTRA08 / LAEA Europe|1214|360|0|ne|proj=laea lat_0=52 lon_0=10 x_0=4321000 y_0=3210000
5634|P|REGCAN95 / LCC Europe|1001|8|0|ne|proj=lcc lat_0=52 lon_0=10 lat_1=35 lat_2=65 x_0=4000000 y_0=2800000
5635|P|REGCAN95 / LAEA Europe|1001|8|0|ne|proj=laea lat_0=52 lon_0=10 x_0=4321000 y_0=3210000
5636|P|TUREF / LAEA Europe|1257|366|0|ne|proj=laea lat_0=52 lon_0=10 x_0=4321000 y_0=3210000
5637|P|TUREF / LCC Europe|1257|366|0|ne|proj=lcc lat_0=52 lon_0=10 lat_1=35 lat_2=65 x_0=4000000 y_0=2800000
5638|P|ISN2004 / LAEA Europe|578|368|0|ne|proj=laea lat_0=52 lon_0=10 x_0=4321000 y_0=3210000
5639|P|ISN2004 / LCC Europe|578|368|0|ne|proj=lcc lat_0=52 lon_0=10 lat_1=35 lat_2=65 x_0=4000000 y_0=2800000
5641|P|SIRGAS 2000 / Brazil Mercator|1363|249|0|en|proj=merc lat_ts=-2 lon_0=-43 x_0=5000000 y_0=10000000
5643|P|ED50 / SPBA LCC|1364|105|0|en|proj=lcc lat_0=48 lon_0=10 lat_1=52.6666666666667 lat_2=54.3333333333333 x_0=815000 y_0=0
5644|P|RGR92 / UTM zone 39S|1365|217|0|en|proj=utm zone=39 south
5646|P|NAD83 / Vermont (ftUS)|476|138|3|en|proj=tmerc lat_0=42.5 lon_0=-72.5 k=0.999964286 x_0=500000.00001016 y_0=0
5649|P|ETRS89 / UTM zone 31N (zE-N)|1366|130|0|en|proj=tmerc lat_0=0 lon_0=3 k=0.9996 x_0=31500000 y_0=0
5650|P|ETRS89 / UTM zone 33N (zE-N)|1367|130|0|en|proj=tmerc lat_0=0 lon_0=15 k=0.9996 x_0=33500000 y_0=0
5651|P|ETRS89 / UTM zone 31N (N-zE)|1366|130|0|ne|proj=tmerc lat_0=0 lon_0=3 k=0.9996 x_0=31500000 y_0=0
5652|P|ETRS89 / UTM zone 32N (N-zE)|1151|130|0|ne|proj=tmerc lat_0=0 lon_0=9 k=0.9996 x_0=32500000 y_0=0
5653|P|ETRS89 / UTM zone 33N (N-zE)|1367|130|0|ne|proj=tmerc lat_0=0 lon_0=15 k=0.9996 x_0=33500000 y_0=0
5654|P|NAD83(HARN) / Vermont (ftUS)|476|35|3|en|proj=tmerc lat_0=42.5 lon_0=-72.5 k=0.999964286 x_0=500000.00001016 y_0=0
5655|P|NAD83(NSRS2007) / Vermont (ftUS)|476|330|3|en|proj=tmerc lat_0=42.5 lon_0=-72.5 k=0.999964286 x_0=500000.00001016 y_0=0
5659|P|Monte Mario / TM Emilia-Romagna|1368|135|0|en|proj=tmerc lat_0=0 lon_0=9 k=0.9996 x_0=500053 y_0=-3999820
5663|P|Pulkovo 1942(58) / Gauss-Kruger zone 3 (E-N)|801|60|0|en|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=3500000 y_0=0
5664|P|Pulkovo 1942(83) / Gauss-Kruger zone 2 (E-N)|933|59|0|en|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=2500000 y_0=0
5665|P|Pulkovo 1942(83) / Gauss-Kruger zone 3 (E-N)|934|59|0|en|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=3500000 y_0=0
5666|P|PD/83 / 3-degree Gauss-Kruger zone 3 (E-N)|840|317|0|en|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=3500000 y_0=0
5667|P|PD/83 / 3-degree Gauss-Kruger zone 4 (E-N)|841|317|0|en|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
5668|P|RD/83 / 3-degree Gauss-Kruger zone 4 (E-N)|842|316|0|en|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
5669|P|RD/83 / 3-degree Gauss-Kruger zone 5 (E-N)|843|316|0|en|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=5500000 y_0=0
5670|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 3 (E-N)|291|60|0|en|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=3500000 y_0=0
5671|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 4 (E-N)|292|60|0|en|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
5672|P|Pulkovo 1942(58) / 3-degree Gauss-Kruger zone 5 (E-N)|797|60|0|en|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=5500000 y_0=0
5673|P|Pulkovo 1942(83) / 3-degree Gauss-Kruger zone 3 (E-N)|291|59|0|en|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=3500000 y_0=0
5674|P|Pulkovo 1942(83) / 3-degree Gauss-Kruger zone 4 (E-N)|292|59|0|en|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
5675|P|Pulkovo 1942(83) / 3-degree Gauss-Kruger zone 5 (E-N)|293|59|0|en|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=5500000 y_0=0
5676|P|DHDN / 3-degree Gauss-Kruger zone 2 (E-N)|1369|176|0|en|proj=tmerc lat_0=0 lon_0=6 k=1 x_0=2500000 y_0=0
5677|P|DHDN / 3-degree Gauss-Kruger zone 3 (E-N)|1370|176|0|en|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=3500000 y_0=0
5678|P|DHDN / 3-degree Gauss-Kruger zone 4 (E-N)|1371|176|0|en|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
5679|P|DHDN / 3-degree Gauss-Kruger zone 5 (E-N)|1372|176|0|en|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=5500000 y_0=0
5680|P|DHDN / 3-degree Gauss-Kruger zone 1 (E-N)|1322|176|0|en|proj=tmerc lat_0=0 lon_0=3 k=1 x_0=1500000 y_0=0
5681|G|DB_REF|1211|386
5682|P|DB_REF / 3-degree Gauss-Kruger zone 2 (E-N)|1369|386|0|en|proj=tmerc lat_0=0 lon_0=6 k=1 x_0=2500000 y_0=0
5683|P|DB_REF / 3-degree Gauss-Kruger zone 3 (E-N)|1373|386|0|en|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=3500000 y_0=0
5684|P|DB_REF / 3-degree Gauss-Kruger zone 4 (E-N)|1374|386|0|en|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
5685|P|DB_REF / 3-degree Gauss-Kruger zone 5 (E-N)|1375|386|0|en|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=5500000 y_0=0
5698|K|RGF93 v1 / Lambert-93 + NGF-IGN69 height|1212|2154|5720
5699|K|RGF93 v1 / Lambert-93 + NGF-IGN78 height|1376|2154|5721
5700|P|NZGD2000 / UTM zone 1S|1377|50|0|en|proj=utm zone=1 south
5701|V|ODN height|1378|Ordnance Datum Newlyn|0|u
5702|V|NGVD29 height (ftUS)|1218|National Geodetic Vertical Datum 1929|3|u
5703|V|NAVD88 height|1379|North American Vertical Datum 1988|0|u
5705|V|Baltic 1977 height|1103|Baltic 1977|0|u
5706|V|Caspian depth|834|Caspian Sea|0|d
5707|K|NTF (Paris) / Lambert zone I + NGF-IGN69 height|1380|27571|5720
5708|K|NTF (Paris) / Lambert zone IV + NGF-IGN78 height|1376|27574|5721
5709|V|NAP height|1381|Normaal Amsterdams Peil|0|u
5710|V|Ostend height|851|Ostend|0|u
5711|V|AHD height|1382|Australian Height Datum|0|u
5712|V|AHD (Tasmania) height|1383|Australian Height Datum (Tasmania)|0|u
5713|V|CGVD28 height|1384|Canadian Geodetic Vertical Datum of 1928|0|u
5714|V|MSL height|943|Mean Sea Level|0|u
5715|V|MSL depth|943|Mean Sea Level|0|d
5716|V|Piraeus height|85|Piraeus Harbour 1986|0|u
5717|V|N60 height|961|Helsinki 1960|0|u
5718|V|RH70 height|1116|Rikets hojdsystem 1970|0|u
5719|V|NGF Lallemand height|1212|Nivellement General de la France - Lallemand|0|u
5720|V|NGF-IGN69 height|1212|Nivellement General de la France - IGN69|0|u
5721|V|NGF-IGN78 height|1376|Nivellement General de la France - IGN78|0|u
5722|V|Maputo height|1007|Maputo|0|u
5723|V|JSLD69 height|1385|Japanese Standard Levelling Datum 1969|0|u
5724|V|PHD93 height|1012|PDO Height Datum 1993|0|u
5725|V|Fahud HD height|1069|Fahud Height Datum|0|u
5726|V|Ha Tien 1960 height|1386|Ha Tien 1960|0|u
5727|V|Hon Dau 1992 height|1387|Hon Dau 1992|0|u
5728|V|LN02 height|48|Landesnivellement 1902|0|u
5729|V|LHN95 height|48|Landeshohennetz 1995|0|u
5730|V|EVRF2000 height|1388|European Vertical Reference Frame 2000|0|u
5731|V|Malin Head height|123|Malin Head|0|u
5732|V|Belfast height|1038|Belfast Lough|0|u
5733|V|DNN height|1389|Dansk Normal Nul|0|u
5734|V|AIOC95 depth|1390|AIOC 1995|0|d
5735|V|Black Sea height|1391|Black Sea|0|u
5736|V|Yellow Sea 1956 height|1141|Yellow Sea 1956|0|u
5737|V|Yellow Sea 1985 height|1141|Yellow Sea 1985|0|u
5738|V|HKPD height|1392|Hong Kong Principal Datum|0|u
5739|V|HKCD depth|1393|Hong Kong Chart Datum|0|d
5740|V|ODN Orkney height|1394|Ordnance Datum Newlyn (Orkney Isles)|0|u
5741|V|Fair Isle height|1395|Fair Isle|0|u
5742|V|Lerwick height|1396|Lerwick|0|u
5743|V|Foula height|1397|Foula|0|u
5744|V|Sule Skerry height|1398|Sule Skerry|0|u
5745|V|North Rona height|1399|North Rona|0|u
5746|V|Stornoway height|1400|Stornoway|0|u
5747|V|St. Kilda height|1401|St. Kilda|0|u
5748|V|Flannan Isles height|1402|Flannan Isles|0|u
5749|V|St. Marys height|1403|St. Marys|0|u
5750|V|Douglas height|1404|Douglas|0|u
5751|V|Fao height|1405|Fao|0|u
5752|V|Bandar Abbas height|1406|Bandar Abbas|0|u
5753|V|NGNC69 height|581|Nivellement General de Nouvelle Caledonie|0|u
5754|V|Poolbeg height (ft(Br36))|123|Poolbeg|9|u
5755|V|NGG1977 height|1407|Nivellement General Guyanais 1977|0|u
5756|V|Martinique 1987 height|516|Martinique 1987|0|u
5757|V|Guadeloupe 1988 height|1408|Guadeloupe 1988|0|u
5758|V|Reunion 1989 height|892|Reunion 1989|0|u
5759|V|Auckland 1946 height|1409|Auckland 1946|0|u
5760|V|Bluff 1955 height|1410|Bluff 1955|0|u
5761|V|Dunedin 1958 height|1411|Dunedin 1958|0|u
5762|V|Gisborne 1926 height|1412|Gisborne 1926|0|u
5763|V|Lyttelton 1937 height|1413|Lyttelton 1937|0|u
5764|V|Moturiki 1953 height|1414|Moturiki 1953|0|u
5765|V|Napier 1962 height|91|Napier 1962|0|u
5766|V|Nelson 1955 height|1415|Nelson 1955|0|u
5767|V|One Tree Point 1964 height|1416|One Tree Point 1964|0|u
5768|V|Tararu 1952 height|1417|Tararu 1952|0|u
5769|V|Taranaki 1970 height|1418|Taranaki 1970|0|u
5770|V|Wellington 1953 height|1419|Wellington 1953|0|u
5771|V|Chatham Island 1959 height|1420|Waitangi (Chatham Island) 1959|0|u
5772|V|Stewart Island 1977 height|1421|Stewart Island 1977|0|u
5773|V|EGM96 height|943|EGM96 geoid|0|u
5774|V|NG95 height|128|Nivellement General du Luxembourg 1995|0|u
5775|V|Antalya height|1422|Antalya|0|u
5776|V|NN54 height|1095|Norway Normal Null 1954|0|u
5777|V|Durres height|313|Durres|0|u
5778|V|GHA height|848|Gebrauchshohen ADRIA|0|u
5779|V|SVS2000 height|1423|Slovenian Vertical System 2000|0|u
5780|V|Cascais height|510|Cascais|0|u
5781|V|Constanta height|1121|Constanta|0|u
5782|V|Alicante height|1424|Alicante|0|u
5783|V|DHHN92 height|1211|Deutsches Haupthoehennetz 1992|0|u
5784|V|DHHN85 height|1120|Deutsches Haupthoehennetz 1985|0|u
5785|V|SNN76 height|1425|Staatlichen Nivellementnetzes 1976|0|u
5786|V|Baltic 1982 height|1426|Baltic 1982|0|u
5787|V|EOMA 1980 height|925|Baltic 1980|0|u
5788|V|Kuwait PWD height|1076|Kuwait PWD|0|u
5789|V|KOC WD depth|1076|KOC Well Datum|0|d
5790|V|KOC CD height|1076|KOC Construction Datum|0|u
5791|V|NGC 1948 height|1376|Nivellement General de la Corse 1948|0|u
5792|V|Danger 1950 height|525|Danger 1950|0|u
5793|V|Mayotte 1950 height|521|Mayotte 1950|0|u
5794|V|Martinique 1955 height|516|Martinique 1955|0|u
5795|V|Guadeloupe 1951 height|1408|Guadeloupe 1951|0|u
5796|V|Lagos 1955 height|1427|Lagos 1955|0|u
5797|V|AIOC95 height|1390|AIOC 1995|0|u
5798|V|EGM84 height|943|EGM84 geoid|0|u
5799|V|DVR90 height|1389|Dansk Vertikal Reference 1990|0|u
5825|P|AGD66 / ACT Standard Grid|1428|80|0|en|proj=tmerc lat_0=-35.3177362777778 lon_0=149.009294830556 k=1.000086 x_0=200000 y_0=600000
5828|C|DB_REF|1211|386
5829|V|Instantaneous Water Level height|943|Instantaneous Water Level|0|u
5830|H|DB_REF|1211|386
5831|V|Instantaneous Water Level depth|943|Instantaneous Water Level|0|d
5836|P|Yemen NGN96 / UTM zone 37N|1429|46|0|en|proj=utm zone=37
5837|P|Yemen NGN96 / UTM zone 40N|1430|46|0|en|proj=utm zone=40
5839|P|Peru96 / UTM zone 17S|1431|374|0|en|proj=utm zone=17 south
5842|P|WGS 84 / TM 12 SE|1432|183|0|en|proj=tmerc lat_0=0 lon_0=12 k=0.9996 x_0=500000 y_0=10000000
5843|V|Ras Ghumays height|1433|Ras Ghumays|0|u
5844|P|RGRDC 2005 / Congo TM zone 30|1434|6|0|en|proj=tmerc lat_0=0 lon_0=30 k=0.9999 x_0=500000 y_0=10000000
5845|K|SWEREF99 TM + RH2000 height|1116|3006|5613
5846|K|SWEREF99 12 00 + RH2000 height|540|3007|5613
5847|K|SWEREF99 13 30 + RH2000 height|541|3008|5613
5848|K|SWEREF99 15 00 + RH2000 height|542|3009|5613
5849|K|SWEREF99 16 30 + RH2000 height|543|3010|5613
5850|K|SWEREF99 18 00 + RH2000 height|544|3011|5613
5851|K|SWEREF99 14 15 + RH2000 height|545|3012|5613
5852|K|SWEREF99 15 45 + RH2000 height|546|3013|5613
5853|K|SWEREF99 17 15 + RH2000 height|547|3014|5613
5854|K|SWEREF99 18 45 + RH2000 height|548|3015|5613
5855|K|SWEREF99 20 15 + RH2000 height|549|3016|5613
5856|K|SWEREF99 21 45 + RH2000 height|550|3017|5613
5857|K|SWEREF99 23 15 + RH2000 height|551|3018|5613
5858|P|SAD69(96) / UTM zone 22S|1435|382|0|en|proj=utm zone=22 south
5861|V|LAT depth|943|Lowest Astronomical Tide|0|d
5862|V|LLWLT depth|943|Lower Low Water Large Tide|0|d
5863|V|ISLW depth|943|Indian Spring Low Water|0|d
5864|V|MLLWS depth|943|Mean Lower Low Water Spring Tides|0|d
5865|V|MLWS depth|943|Mean Low Water Spring Tides|0|d
5866|V|MLLW depth|943|Mean Lower Low Water|0|d
5867|V|MLW depth|943|Mean Low Water|0|d
5868|V|MHW height|943|Mean High Water|0|u
5869|V|MHHW height|943|Mean Higher High Water|0|u
5870|V|MHWS height|943|Mean High Water Spring Tides|0|u
5871|V|HHWLT height|943|Higher High Water Large Tide|0|u
5872|V|HAT height|943|Highest Astronomical Tide|0|u
5873|V|Low Water depth|943|Low Water|0|d
5874|V|High Water height|943|High Water|0|u
5875|P|SAD69(96) / UTM zone 18S|1436|382|0|en|proj=utm zone=18 south
5876|P|SAD69(96) / UTM zone 19S|1437|382|0|en|proj=utm zone=19 south
5877|P|SAD69(96) / UTM zone 20S|1438|382|0|en|proj=utm zone=20 south
5879|P|Cadastre 1997 / UTM zone 38S|521|186|0|en|proj=utm zone=38 south
5880|P|SIRGAS 2000 / Brazil Polyconic|1324|249|0|en|proj=poly lat_0=0 lon_0=-54 x_0=5000000 y_0=10000000
5884|C|TGD2005|1439|387
5885|H|TGD2005|1439|387
5886|G|TGD2005|1439|387
5887|P|TGD2005 / Tonga Map Grid|1439|387|0|en|proj=tmerc lat_0=0 lon_0=-177 k=0.9996 x_0=1500000 y_0=5000000
5896|P|VN-2000 / TM-3 zone 481|1440|327|0|en|proj=tmerc lat_0=0 lon_0=102 k=0.9999 x_0=500000 y_0=0
5897|P|VN-2000 / TM-3 zone 482|1441|327|0|en|proj=tmerc lat_0=0 lon_0=105 k=0.9999 x_0=500000 y_0=0
5898|P|VN-2000 / TM-3 zone 491|1442|327|0|en|proj=tmerc lat_0=0 lon_0=108 k=0.9999 x_0=500000 y_0=0
5899|P|VN-2000 / TM-3 107-45|1443|327|0|en|proj=tmerc lat_0=0 lon_0=107.75 k=0.9999 x_0=500000 y_0=0
5921|P|WGS 84 / EPSG Arctic Regional zone A1|1444|183|0|en|proj=lcc lat_0=81.317226 lon_0=-111 lat_1=85 lat_2=77 x_0=0 y_0=0
5922|P|WGS 84 / EPSG Arctic Regional zone A2|1445|183|0|en|proj=lcc lat_0=81.317226 lon_0=-39 lat_1=85 lat_2=77 x_0=0 y_0=0
5923|P|WGS 84 / EPSG Arctic Regional zone A3|1446|183|0|en|proj=lcc lat_0=81.317226 lon_0=33 lat_1=85 lat_2=77 x_0=0 y_0=0
5924|P|WGS 84 / EPSG Arctic Regional zone A4|1447|183|0|en|proj=lcc lat_0=81.317226 lon_0=105 lat_1=85 lat_2=77 x_0=0 y_0=0
5925|P|WGS 84 / EPSG Arctic Regional zone A5|1448|183|0|en|proj=lcc lat_0=81.317226 lon_0=177 lat_1=85 lat_2=77 x_0=0 y_0=0
5926|P|WGS 84 / EPSG Arctic Regional zone B1|1449|183|0|en|proj=lcc lat_0=73.1557408611111 lon_0=-111 lat_1=77 lat_2=69 x_0=0 y_0=0
5927|P|WGS 84 / EPSG Arctic Regional zone B2|1450|183|0|en|proj=lcc lat_0=73.1557408611111 lon_0=-39 lat_1=77 lat_2=69 x_0=0 y_0=0
5928|P|WGS 84 / EPSG Arctic Regional zone B3|1451|183|0|en|proj=lcc lat_0=73.1557408611111 lon_0=33 lat_1=77 lat_2=69 x_0=0 y_0=0
5929|P|WGS 84 / EPSG Arctic Regional zone B4|1452|183|0|en|proj=lcc lat_0=73.1557408611111 lon_0=105 lat_1=77 lat_2=69 x_0=0 y_0=0
5930|P|WGS 84 / EPSG Arctic Regional zone B5|1453|183|0|en|proj=lcc lat_0=73.1557408611111 lon_0=177 lat_1=77 lat_2=69 x_0=0 y_0=0
5931|P|WGS 84 / EPSG Arctic Regional zone C1|1454|183|0|en|proj=lcc lat_0=65.1012708888889 lon_0=-111 lat_1=69 lat_2=61 x_0=0 y_0=0
5932|P|WGS 84 / EPSG Arctic Regional zone C2|1455|183|0|en|proj=lcc lat_0=65.1012708888889 lon_0=-39 lat_1=69 lat_2=61 x_0=0 y_0=0
5933|P|WGS 84 / EPSG Arctic Regional zone C3|1456|183|0|en|proj=lcc lat_0=65.1012708888889 lon_0=33 lat_1=69 lat_2=61 x_0=0 y_0=0
5934|P|WGS 84 / EPSG Arctic Regional zone C4|1457|183|0|en|proj=lcc lat_0=65.1012708888889 lon_0=105 lat_1=69 lat_2=61 x_0=0 y_0=0
5935|P|WGS 84 / EPSG Arctic Regional zone C5|1458|183|0|en|proj=lcc lat_0=65.1012708888889 lon_0=177 lat_1=69 lat_2=61 x_0=0 y_0=0
5936|P|WGS 84 / EPSG Alaska Polar Stereographic|845|183|0|en|proj=stere lat_0=90 lon_0=-150 k=0.994 x_0=2000000 y_0=2000000
5937|P|WGS 84 / EPSG Canada Polar Stereographic|845|183|0|en|proj=stere lat_0=90 lon_0=-100 k=0.994 x_0=2000000 y_0=2000000
5938|P|WGS 84 / EPSG Greenland Polar Stereographic|845|183|0|en|proj=stere lat_0=90 lon_0=-33 k=0.994 x_0=2000000 y_0=2000000
5939|P|WGS 84 / EPSG Norway Polar Stereographic|845|183|0|en|proj=stere lat_0=90 lon_0=18 k=0.994 x_0=2000000 y_0=2000000
5940|P|WGS 84 / EPSG Russia Polar Stereographic|845|183|0|en|proj=stere lat_0=90 lon_0=105 k=0.994 x_0=2000000 y_0=2000000
5941|V|NN2000 height|1095|Norway Normal Null 2000|0|u
5942|K|ETRS89 + NN2000 height|1095|4258|5941
5945|K|ETRS89 / NTM zone 5 + NN2000 height|1219|5105|5941
5946|K|ETRS89 / NTM zone 6 + NN2000 height|1220|5106|5941
5947|K|ETRS89 / NTM zone 7 + NN2000 height|1221|5107|5941
5948|K|ETRS89 / NTM zone 8 + NN2000 height|1222|5108|5941
5949|K|ETRS89 / NTM zone 9 + NN2000 height|1223|5109|5941
5950|K|ETRS89 / NTM zone 10 + NN2000 height|1224|5110|5941
5951|K|ETRS89 / NTM zone 11 + NN2000 height|1225|5111|5941
5952|K|ETRS89 / NTM zone 12 + NN2000 height|1226|5112|5941
5953|K|ETRS89 / NTM zone 13 + NN2000 height|1227|5113|5941
5954|K|ETRS89 / NTM zone 14 + NN2000 height|1228|5114|5941
5955|K|ETRS89 / NTM zone 15 + NN2000 height|1229|5115|5941
5956|K|ETRS89 / NTM zone 16 + NN2000 height|1230|5116|5941
5957|K|ETRS89 / NTM zone 17 + NN2000 height|1231|5117|5941
5958|K|ETRS89 / NTM zone 18 + NN2000 height|1232|5118|5941
5959|K|ETRS89 / NTM zone 19 + NN2000 height|1233|5119|5941
5960|K|ETRS89 / NTM zone 20 + NN2000 height|1234|5120|5941
5961|K|ETRS89 / NTM zone 21 + NN2000 height|1235|5121|5941
5962|K|ETRS89 / NTM zone 22 + NN2000 height|1236|5122|5941
5963|K|ETRS89 / NTM zone 23 + NN2000 height|1237|5123|5941
5964|K|ETRS89 / NTM zone 24 + NN2000 height|1238|5124|5941
5965|K|ETRS89 / NTM zone 25 + NN2000 height|1239|5125|5941
5966|K|ETRS89 / NTM zone 26 + NN2000 height|1240|5126|5941
5967|K|ETRS89 / NTM zone 27 + NN2000 height|1241|5127|5941
5968|K|ETRS89 / NTM zone 28 + NN2000 height|1242|5128|5941
5969|K|ETRS89 / NTM zone 29 + NN2000 height|1243|5129|5941
5970|K|ETRS89 / NTM zone 30 + NN2000 height|1244|5130|5941
5971|K|ETRS89 / UTM zone 31N + NN2000 height|1219|25831|5941
5972|K|ETRS89 / UTM zone 32N + NN2000 height|1459|25832|5941
5973|K|ETRS89 / UTM zone 33N + NN2000 height|1460|25833|5941
5974|K|ETRS89 / UTM zone 34N + NN2000 height|1461|25834|5941
5975|K|ETRS89 / UTM zone 35N + NN2000 height|1462|25835|5941
5976|K|ETRS89 / UTM zone 36N + NN2000 height|1244|25836|5941
6050|P|GR96 / EPSG Arctic zone 1-25|1463|318|0|en|proj=lcc lat_0=85.4371183333333 lon_0=-30 lat_1=87 lat_2=83.6666666666667 x_0=25500000 y_0=1500000
6051|P|GR96 / EPSG Arctic zone 2-18|1464|318|0|en|proj=lcc lat_0=82.0584248888889 lon_0=-52 lat_1=83.6666666666667 lat_2=80.3333333333333 x_0=18500000 y_0=2500000
6052|P|GR96 / EPSG Arctic zone 2-20|1465|318|0|en|proj=lcc lat_0=82.0584248888889 lon_0=-12 lat_1=83.6666666666667 lat_2=80.3333333333333 x_0=20500000 y_0=2500000
6053|P|GR96 / EPSG Arctic zone 3-29|1466|318|0|en|proj=lcc lat_0=78.7073375277778 lon_0=-69 lat_1=80.3333333333333 lat_2=77 x_0=29500000 y_0=3500000
6054|P|GR96 / EPSG Arctic zone 3-31|1467|318|0|en|proj=lcc lat_0=78.7073375277778 lon_0=-39 lat_1=80.3333333333333 lat_2=77 x_0=31500000 y_0=3500000
6055|P|GR96 / EPSG Arctic zone 3-33|1468|318|0|en|proj=lcc lat_0=78.7073375277778 lon_0=-10 lat_1=80.3333333333333 lat_2=77 x_0=33500000 y_0=3500000
6056|P|GR96 / EPSG Arctic zone 4-20|1469|318|0|en|proj=lcc lat_0=75.3644033055556 lon_0=-64 lat_1=77 lat_2=73.6666666666667 x_0=20500000 y_0=4500000
6057|P|GR96 / EPSG Arctic zone 4-22|1470|318|0|en|proj=lcc lat_0=75.3644033055556 lon_0=-39 lat_1=77 lat_2=73.6666666666667 x_0=22500000 y_0=4500000
6058|P|GR96 / EPSG Arctic zone 4-24|1471|318|0|en|proj=lcc lat_0=75.3644033055556 lon_0=-14 lat_1=77 lat_2=73.6666666666667 x_0=24500000 y_0=4500000
6059|P|GR96 / EPSG Arctic zone 5-41|1472|318|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-62 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=41500000 y_0=5500000
6060|P|GR96 / EPSG Arctic zone 5-43|1473|318|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-42 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=43500000 y_0=5500000
6061|P|GR96 / EPSG Arctic zone 5-45|1474|318|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-22 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=45500000 y_0=5500000
6062|P|GR96 / EPSG Arctic zone 6-26|1475|318|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-56 lat_1=70.3333333333333 lat_2=67 x_0=26500000 y_0=6500000
6063|P|GR96 / EPSG Arctic zone 6-28|1476|318|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-38 lat_1=70.3333333333333 lat_2=67 x_0=28500000 y_0=6500000
6064|P|GR96 / EPSG Arctic zone 6-30|1477|318|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-20 lat_1=70.3333333333333 lat_2=67 x_0=30500000 y_0=6500000
6065|P|GR96 / EPSG Arctic zone 7-11|1478|318|0|en|proj=lcc lat_0=65.3510393055555 lon_0=-51 lat_1=67 lat_2=63.6666666666667 x_0=11500000 y_0=7500000
6066|P|GR96 / EPSG Arctic zone 7-13|1479|318|0|en|proj=lcc lat_0=65.3510393055555 lon_0=-34 lat_1=67 lat_2=63.6666666666667 x_0=13500000 y_0=7500000
6067|P|GR96 / EPSG Arctic zone 8-20|1480|318|0|en|proj=lcc lat_0=62.0153068888889 lon_0=-52 lat_1=63.6666666666667 lat_2=60.3333333333333 x_0=20500000 y_0=8500000
6068|P|GR96 / EPSG Arctic zone 8-22|1481|318|0|en|proj=lcc lat_0=62.0153068888889 lon_0=-37 lat_1=63.6666666666667 lat_2=60.3333333333333 x_0=22500000 y_0=8500000
6069|P|ETRS89 / EPSG Arctic zone 2-22|1482|130|0|en|proj=lcc lat_0=82.0584248888889 lon_0=16 lat_1=83.6666666666667 lat_2=80.3333333333333 x_0=22500000 y_0=2500000
6070|P|ETRS89 / EPSG Arctic zone 3-11|1483|130|0|en|proj=lcc lat_0=78.7073375277778 lon_0=21 lat_1=80.3333333333333 lat_2=77 x_0=11500000 y_0=3500000
6071|P|ETRS89 / EPSG Arctic zone 4-26|1484|130|0|en|proj=lcc lat_0=75.3644033055556 lon_0=10 lat_1=77 lat_2=73.6666666666667 x_0=26500000 y_0=4500000
6072|P|ETRS89 / EPSG Arctic zone 4-28|1485|130|0|en|proj=lcc lat_0=75.3644033055556 lon_0=34 lat_1=77 lat_2=73.6666666666667 x_0=28500000 y_0=4500000
6073|P|ETRS89 / EPSG Arctic zone 5-11|1486|130|0|en|proj=lcc lat_0=72.0250091944445 lon_0=14 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=11500000 y_0=5500000
6074|P|ETRS89 / EPSG Arctic zone 5-13|1487|130|0|en|proj=lcc lat_0=72.0250091944445 lon_0=34 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=13500000 y_0=5500000
6075|P|WGS 84 / EPSG Arctic zone 2-24|1488|183|0|en|proj=lcc lat_0=82.0584248888889 lon_0=53 lat_1=83.6666666666667 lat_2=80.3333333333333 x_0=24500000 y_0=2500000
6076|P|WGS 84 / EPSG Arctic zone 2-26|1489|183|0|en|proj=lcc lat_0=82.0584248888889 lon_0=93 lat_1=83.6666666666667 lat_2=80.3333333333333 x_0=26500000 y_0=2500000
6077|P|WGS 84 / EPSG Arctic zone 3-13|1490|183|0|en|proj=lcc lat_0=78.7073375277778 lon_0=52 lat_1=80.3333333333333 lat_2=77 x_0=13500000 y_0=3500000
6078|P|WGS 84 / EPSG Arctic zone 3-15|1491|183|0|en|proj=lcc lat_0=78.7073375277778 lon_0=83 lat_1=80.3333333333333 lat_2=77 x_0=15500000 y_0=3500000
6079|P|WGS 84 / EPSG Arctic zone 3-17|1492|183|0|en|proj=lcc lat_0=78.7073375277778 lon_0=114 lat_1=80.3333333333333 lat_2=77 x_0=17500000 y_0=3500000
6080|P|WGS 84 / EPSG Arctic zone 3-19|1493|183|0|en|proj=lcc lat_0=78.7073375277778 lon_0=145 lat_1=80.3333333333333 lat_2=77 x_0=19500000 y_0=3500000
6081|P|WGS 84 / EPSG Arctic zone 4-30|1494|183|0|en|proj=lcc lat_0=75.3644033055556 lon_0=58 lat_1=77 lat_2=73.6666666666667 x_0=30500000 y_0=4500000
6082|P|WGS 84 / EPSG Arctic zone 4-32|1495|183|0|en|proj=lcc lat_0=75.3644033055556 lon_0=82 lat_1=77 lat_2=73.6666666666667 x_0=32500000 y_0=4500000
6083|P|WGS 84 / EPSG Arctic zone 4-34|1496|183|0|en|proj=lcc lat_0=75.3644033055556 lon_0=106 lat_1=77 lat_2=73.6666666666667 x_0=34500000 y_0=4500000
6084|P|WGS 84 / EPSG Arctic zone 4-36|1497|183|0|en|proj=lcc lat_0=75.3644033055556 lon_0=130 lat_1=77 lat_2=73.6666666666667 x_0=36500000 y_0=4500000
6085|P|WGS 84 / EPSG Arctic zone 4-38|1498|183|0|en|proj=lcc lat_0=75.3644033055556 lon_0=154 lat_1=77 lat_2=73.6666666666667 x_0=38500000 y_0=4500000
6086|P|WGS 84 / EPSG Arctic zone 4-40|1499|183|0|en|proj=lcc lat_0=75.3644033055556 lon_0=179 lat_1=77 lat_2=73.6666666666667 x_0=40500000 y_0=4500000
6087|P|WGS 84 / EPSG Arctic zone 5-15|1500|183|0|en|proj=lcc lat_0=72.0250091944445 lon_0=54 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=15500000 y_0=5500000
6088|P|WGS 84 / EPSG Arctic zone 5-17|1501|183|0|en|proj=lcc lat_0=72.0250091944445 lon_0=74 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=17500000 y_0=5500000
6089|P|WGS 84 / EPSG Arctic zone 5-19|1502|183|0|en|proj=lcc lat_0=72.0250091944445 lon_0=95 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=19500000 y_0=5500000
6090|P|WGS 84 / EPSG Arctic zone 5-21|1503|183|0|en|proj=lcc lat_0=72.0250091944445 lon_0=116 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=21500000 y_0=5500000
6091|P|WGS 84 / EPSG Arctic zone 5-23|1504|183|0|en|proj=lcc lat_0=72.0250091944445 lon_0=137 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=23500000 y_0=5500000
6092|P|WGS 84 / EPSG Arctic zone 5-25|1505|183|0|en|proj=lcc lat_0=72.0250091944445 lon_0=158 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=25500000 y_0=5500000
6093|P|WGS 84 / EPSG Arctic zone 5-27|1506|183|0|en|proj=lcc lat_0=72.0250091944445 lon_0=179 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=27500000 y_0=5500000
6094|P|NAD83(NSRS2007) / EPSG Arctic zone 5-29|1507|330|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-163 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=29500000 y_0=5500000
6095|P|NAD83(NSRS2007) / EPSG Arctic zone 5-31|1508|330|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-147 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=31500000 y_0=5500000
6096|P|NAD83(NSRS2007) / EPSG Arctic zone 6-14|1509|330|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-165 lat_1=70.3333333333333 lat_2=67 x_0=14500000 y_0=6500000
6097|P|NAD83(NSRS2007) / EPSG Arctic zone 6-16|1510|330|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-147 lat_1=70.3333333333333 lat_2=67 x_0=16500000 y_0=6500000
6098|P|NAD83(CSRS) / EPSG Arctic zone 1-23|1511|207|0|en|proj=lcc lat_0=85.4371183333333 lon_0=-90 lat_1=87 lat_2=83.6666666666667 x_0=23500000 y_0=1500000
6099|P|NAD83(CSRS) / EPSG Arctic zone 2-14|1512|207|0|en|proj=lcc lat_0=82.0584248888889 lon_0=-115 lat_1=83.6666666666667 lat_2=80.3333333333333 x_0=14500000 y_0=2500000
6100|P|NAD83(CSRS) / EPSG Arctic zone 2-16|1513|207|0|en|proj=lcc lat_0=82.0584248888889 lon_0=-75 lat_1=83.6666666666667 lat_2=80.3333333333333 x_0=16500000 y_0=2500000
6101|P|NAD83(CSRS) / EPSG Arctic zone 3-25|1514|207|0|en|proj=lcc lat_0=78.7073375277778 lon_0=-129 lat_1=80.3333333333333 lat_2=77 x_0=25500000 y_0=3500000
6102|P|NAD83(CSRS) / EPSG Arctic zone 3-27|1515|207|0|en|proj=lcc lat_0=78.7073375277778 lon_0=-99 lat_1=80.3333333333333 lat_2=77 x_0=27500000 y_0=3500000
6103|P|NAD83(CSRS) / EPSG Arctic zone 3-29|1516|207|0|en|proj=lcc lat_0=78.7073375277778 lon_0=-69 lat_1=80.3333333333333 lat_2=77 x_0=29500000 y_0=3500000
6104|P|NAD83(CSRS) / EPSG Arctic zone 4-14|1517|207|0|en|proj=lcc lat_0=75.3644033055556 lon_0=-129 lat_1=77 lat_2=73.6666666666667 x_0=14500000 y_0=4500000
6105|P|NAD83(CSRS) / EPSG Arctic zone 4-16|1518|207|0|en|proj=lcc lat_0=75.3644033055556 lon_0=-104 lat_1=77 lat_2=73.6666666666667 x_0=16500000 y_0=4500000
6106|P|NAD83(CSRS) / EPSG Arctic zone 4-18|1519|207|0|en|proj=lcc lat_0=75.3644033055556 lon_0=-79 lat_1=77 lat_2=73.6666666666667 x_0=18500000 y_0=4500000
6107|P|NAD83(CSRS) / EPSG Arctic zone 5-33|1520|207|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-131 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=33500000 y_0=5500000
6108|P|NAD83(CSRS) / EPSG Arctic zone 5-35|1521|207|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-111 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=35500000 y_0=5500000
6109|P|NAD83(CSRS) / EPSG Arctic zone 5-37|1522|207|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-91 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=37500000 y_0=5500000
6110|P|NAD83(CSRS) / EPSG Arctic zone 5-39|1523|207|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-71 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=39500000 y_0=5500000
6111|P|NAD83(CSRS) / EPSG Arctic zone 6-18|1524|207|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-132 lat_1=70.3333333333333 lat_2=67 x_0=18500000 y_0=6500000
6112|P|NAD83(CSRS) / EPSG Arctic zone 6-20|1525|207|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-113 lat_1=70.3333333333333 lat_2=67 x_0=20500000 y_0=6500000
6113|P|NAD83(CSRS) / EPSG Arctic zone 6-22|1526|207|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-94 lat_1=70.3333333333333 lat_2=67 x_0=22500000 y_0=6500000
6114|P|NAD83(CSRS) / EPSG Arctic zone 6-24|1527|207|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-75 lat_1=70.3333333333333 lat_2=67 x_0=24500000 y_0=6500000
6115|P|WGS 84 / EPSG Arctic zone 1-27|1528|183|0|en|proj=lcc lat_0=85.4371183333333 lon_0=30 lat_1=87 lat_2=83.6666666666667 x_0=27500000 y_0=1500000
6116|P|WGS 84 / EPSG Arctic zone 1-29|1529|183|0|en|proj=lcc lat_0=85.4371183333333 lon_0=90 lat_1=87 lat_2=83.6666666666667 x_0=29500000 y_0=1500000
6117|P|WGS 84 / EPSG Arctic zone 1-31|1530|183|0|en|proj=lcc lat_0=85.4371183333333 lon_0=150 lat_1=87 lat_2=83.6666666666667 x_0=31500000 y_0=1500000
6118|P|WGS 84 / EPSG Arctic zone 1-21|1531|183|0|en|proj=lcc lat_0=85.4371183333333 lon_0=-150 lat_1=87 lat_2=83.6666666666667 x_0=21500000 y_0=1500000
6119|P|WGS 84 / EPSG Arctic zone 2-28|1532|183|0|en|proj=lcc lat_0=82.0584248888889 lon_0=133 lat_1=83.6666666666667 lat_2=80.3333333333333 x_0=28500000 y_0=2500000
6120|P|WGS 84 / EPSG Arctic zone 2-10|1533|183|0|en|proj=lcc lat_0=82.0584248888889 lon_0=166 lat_1=83.6666666666667 lat_2=80.3333333333333 x_0=10500000 y_0=2500000
6121|P|WGS 84 / EPSG Arctic zone 2-12|1534|183|0|en|proj=lcc lat_0=82.0584248888889 lon_0=-154 lat_1=83.6666666666667 lat_2=80.3333333333333 x_0=12500000 y_0=2500000
6122|P|WGS 84 / EPSG Arctic zone 3-21|1535|183|0|en|proj=lcc lat_0=78.7073375277778 lon_0=176 lat_1=80.3333333333333 lat_2=77 x_0=21500000 y_0=3500000
6123|P|WGS 84 / EPSG Arctic zone 3-23|1536|183|0|en|proj=lcc lat_0=78.7073375277778 lon_0=-153 lat_1=80.3333333333333 lat_2=77 x_0=23500000 y_0=3500000
6124|P|WGS 84 / EPSG Arctic zone 4-12|1537|183|0|en|proj=lcc lat_0=75.3644033055556 lon_0=-155 lat_1=77 lat_2=73.6666666666667 x_0=12500000 y_0=4500000
6125|P|ETRS89 / EPSG Arctic zone 5-47|1538|130|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-5 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=47500000 y_0=5500000
6128|P|Grand Cayman National Grid 1959|1181|295|4|en|proj=tmerc lat_0=0 lon_0=-81 k=0.9996 x_0=499999.999998 y_0=0
6129|P|Sister Islands National Grid 1961|1184|298|4|en|proj=tmerc lat_0=0 lon_0=-81 k=0.9996 x_0=499999.999998 y_0=0
6130|V|GCVD54 height (ft)|1181|Grand Cayman Vertical Datum 1954|4|u
6131|V|LCVD61 height (ft)|1539|Little Cayman Vertical Datum 1961|4|u
6132|V|CBVD61 height (ft)|1540|Cayman Brac Vertical Datum 1961|4|u
6133|C|CIGD11|1541|388
6134|H|CIGD11|1541|388
6135|G|CIGD11|1541|388
6144|K|ETRS89 + NN54 height|1095|4258|5776
6145|K|ETRS89 / NTM zone 5 + NN54 height|1219|5105|5776
6146|K|ETRS89 / NTM zone 6 + NN54 height|1220|5106|5776
6147|K|ETRS89 / NTM zone 7 + NN54 height|1221|5107|5776
6148|K|ETRS89 / NTM zone 8 + NN54 height|1222|5108|5776
6149|K|ETRS89 / NTM zone 9 + NN54 height|1223|5109|5776
6150|K|ETRS89 / NTM zone 10 + NN54 height|1224|5110|5776
6151|K|ETRS89 / NTM zone 11 + NN54 height|1225|5111|5776
6152|K|ETRS89 / NTM zone 12 + NN54 height|1226|5112|5776
6153|K|ETRS89 / NTM zone 13 + NN54 height|1227|5113|5776
6154|K|ETRS89 / NTM zone 14 + NN54 height|1228|5114|5776
6155|K|ETRS89 / NTM zone 15 + NN54 height|1229|5115|5776
6156|K|ETRS89 / NTM zone 16 + NN54 height|1230|5116|5776
6157|K|ETRS89 / NTM zone 17 + NN54 height|1231|5117|5776
6158|K|ETRS89 / NTM zone 18 + NN54 height|1232|5118|5776
6159|K|ETRS89 / NTM zone 19 + NN54 height|1233|5119|5776
6160|K|ETRS89 / NTM zone 20 + NN54 height|1234|5120|5776
6161|K|ETRS89 / NTM zone 21 + NN54 height|1235|5121|5776
6162|K|ETRS89 / NTM zone 22 + NN54 height|1236|5122|5776
6163|K|ETRS89 / NTM zone 23 + NN54 height|1237|5123|5776
6164|K|ETRS89 / NTM zone 24 + NN54 height|1238|5124|5776
6165|K|ETRS89 / NTM zone 25 + NN54 height|1239|5125|5776
6166|K|ETRS89 / NTM zone 26 + NN54 height|1240|5126|5776
6167|K|ETRS89 / NTM zone 27 + NN54 height|1241|5127|5776
6168|K|ETRS89 / NTM zone 28 + NN54 height|1242|5128|5776
6169|K|ETRS89 / NTM zone 29 + NN54 height|1243|5129|5776
6170|K|ETRS89 / NTM zone 30 + NN54 height|1244|5130|5776
6171|K|ETRS89 / UTM zone 31N + NN54 height|1219|25831|5776
6172|K|ETRS89 / UTM zone 32N + NN54 height|1459|25832|5776
6173|K|ETRS89 / UTM zone 33N + NN54 height|1460|25833|5776
6174|K|ETRS89 / UTM zone 34N + NN54 height|1461|25834|5776
6175|K|ETRS89 / UTM zone 35N + NN54 height|1462|25835|5776
6176|K|ETRS89 / UTM zone 36N + NN54 height|1244|25836|5776
6178|V|Cais da Pontinha - Funchal height|1542|Cais da Pontinha - Funchal|0|u
6179|V|Cais da Vila - Porto Santo height|1543|Cais da Vila - Porto Santo|0|u
6180|V|Cais das Velas height|1544|Cais das Velas|0|u
6181|V|Horta height|1545|Horta|0|u
6182|V|Cais da Madalena height|1546|Cais da Madalena|0|u
6183|V|Santa Cruz da Graciosa height|1547|Santa Cruz da Graciosa|0|u
6184|V|Cais da Figueirinha - Angra do Heroismo height|1548|Cais da Figueirinha - Angra do Heroismo|0|u
6185|V|Santa Cruz das Flores height|138|Santa Cruz das Flores|0|u
6186|V|Cais da Vila do Porto height|1549|Cais da Vila do Porto|0|u
6187|V|Ponta Delgada height|1550|Ponta Delgada|0|u
6190|K|BD72 / Belgian Lambert 72 + Ostend height|851|31370|5710
6201|P|NAD27 / Michigan Central|194|137|3|en|proj=lcc lat_0=43.3166666666667 lon_0=-84.3333333333333 lat_1=44.1833333333333 lat_2=45.7 x_0=609601.219202438 y_0=0 k_0=1.0000382
6202|P|NAD27 / Michigan South|195|137|3|en|proj=lcc lat_0=41.5 lon_0=-84.3333333333333 lat_1=42.1 lat_2=43.6666666666667 x_0=609601.219202438 y_0=0 k_0=1.0000382
6204|P|Macedonia State Coordinate System|1551|4|0|en|proj=tmerc lat_0=0 lon_0=21 k=0.9999 x_0=500000 y_0=0
6207|G|Nepal 1981|1552|389
6210|P|SIRGAS 2000 / UTM zone 23N|1553|249|0|en|proj=utm zone=23
6211|P|SIRGAS 2000 / UTM zone 24N|1554|249|0|en|proj=utm zone=24
6244|P|MAGNA-SIRGAS / Arauca urban grid|1555|258|0|ne|proj=col_urban lat_0=7.08760639166667 lon_0=-70.7583096555555 x_0=1035263.443 y_0=1275526.621 h_0=100
6245|P|MAGNA-SIRGAS / Armenia urban grid|1556|258|0|ne|proj=col_urban lat_0=4.532325 lon_0=-75.6734891666667 x_0=1155824.666 y_0=993087.465 h_0=1470
6246|P|MAGNA-SIRGAS / Barranquilla urban grid|1557|258|0|ne|proj=col_urban lat_0=10.9231830833333 lon_0=-74.8343313333333 x_0=917264.406 y_0=1699839.935 h_0=100
6247|P|MAGNA-SIRGAS / Bogota urban grid|1558|258|0|ne|proj=col_urban lat_0=4.68048611111111 lon_0=-74.1465916666667 x_0=92334.879 y_0=109320.965 h_0=2550
6248|P|MAGNA-SIRGAS / Bucaramanga urban grid|1559|258|0|ne|proj=col_urban lat_0=7.07888714166667 lon_0=-73.1973432222222 x_0=1097241.305 y_0=1274642.278 h_0=931
6249|P|MAGNA-SIRGAS / Cali urban grid|1560|258|0|ne|proj=col_urban lat_0=3.44188333333333 lon_0=-76.5205625 x_0=1061900.18 y_0=872364.63 h_0=1000
6250|P|MAGNA-SIRGAS / Cartagena urban grid|1561|258|0|ne|proj=col_urban lat_0=10.3970475 lon_0=-75.5112069444444 x_0=842981.41 y_0=1641887.09 h_0=0
6251|P|MAGNA-SIRGAS / Cucuta urban grid|1562|258|0|ne|proj=col_urban lat_0=7.88893673611111 lon_0=-72.50287095 x_0=842805.406 y_0=1364404.57 h_0=308
6252|P|MAGNA-SIRGAS / Florencia urban grid|1563|258|0|ne|proj=col_urban lat_0=1.62101229444444 lon_0=-75.6191176027778 x_0=1162300.348 y_0=671068.716 h_0=300
6253|P|MAGNA-SIRGAS / Ibague urban grid|1564|258|0|ne|proj=col_urban lat_0=4.41941282777778 lon_0=-75.1799259333333 x_0=877634.33 y_0=980541.348 h_0=1100
6254|P|MAGNA-SIRGAS / Inirida urban grid|1565|258|0|ne|proj=col_urban lat_0=3.84543818333333 lon_0=-67.9052320888889 x_0=1019177.687 y_0=491791.326 h_0=96
6255|P|MAGNA-SIRGAS / Leticia urban grid|1566|258|0|ne|proj=col_urban lat_0=-4.19768404722222 lon_0=-69.9428110583333 x_0=25978.217 y_0=27501.365 h_0=89.7
6256|P|MAGNA-SIRGAS / Manizales urban grid|1567|258|0|ne|proj=col_urban lat_0=5.06815388888889 lon_0=-75.5110947222222 x_0=1173727.04 y_0=1052391.13 h_0=2100
6257|P|MAGNA-SIRGAS / Medellin urban grid|1568|258|0|ne|proj=col_urban lat_0=6.22920888888889 lon_0=-75.5648869444444 x_0=835378.647 y_0=1180816.875 h_0=1510
6258|P|MAGNA-SIRGAS / Mitu urban grid|1569|258|0|ne|proj=col_urban lat_0=1.24996936666667 lon_0=-70.2354616555556 x_0=1093717.398 y_0=629997.236 h_0=170
6259|P|MAGNA-SIRGAS / Mocoa urban grid|1570|258|0|ne|proj=col_urban lat_0=1.14002335833333 lon_0=-76.6510212194444 x_0=1047467.388 y_0=617828.474 h_0=655.2
6260|P|MAGNA-SIRGAS / Monteria urban grid|1571|258|0|ne|proj=col_urban lat_0=8.77308575555556 lon_0=-75.8795533305556 x_0=1131814.934 y_0=1462131.119 h_0=15
6261|P|MAGNA-SIRGAS / Neiva urban grid|1572|258|0|ne|proj=col_urban lat_0=2.94241505555556 lon_0=-75.2964367222222 x_0=864476.923 y_0=817199.827 h_0=430
6262|P|MAGNA-SIRGAS / Pasto urban grid|1573|258|0|ne|proj=col_urban lat_0=1.20098951388889 lon_0=-77.2531256333333 x_0=980469.695 y_0=624555.332 h_0=2530
6263|P|MAGNA-SIRGAS / Pereira urban grid|1574|258|0|ne|proj=col_urban lat_0=4.81359361111111 lon_0=-75.6939513888889 x_0=1153492.012 y_0=1024195.255 h_0=1500
6264|P|MAGNA-SIRGAS / Popayan urban grid|1575|258|0|ne|proj=col_urban lat_0=2.45615988333333 lon_0=-76.6060916361111 x_0=1052430.525 y_0=763366.548 h_0=1740
6265|P|MAGNA-SIRGAS / Puerto Carreno urban grid|1576|258|0|ne|proj=col_urban lat_0=6.18072141388889 lon_0=-67.5007502472222 x_0=1063834.703 y_0=1175257.481 h_0=51.58
6266|P|MAGNA-SIRGAS / Quibdo urban grid|1577|258|0|ne|proj=col_urban lat_0=5.69424766111111 lon_0=-76.6507538583333 x_0=1047273.617 y_0=1121443.09 h_0=44
6267|P|MAGNA-SIRGAS / Riohacha urban grid|1578|258|0|ne|proj=col_urban lat_0=11.5369133277778 lon_0=-72.9027688694444 x_0=1128154.73 y_0=1767887.914 h_0=6
6268|P|MAGNA-SIRGAS / San Andres urban grid|1579|258|0|ne|proj=col_urban lat_0=12.523794325 lon_0=-81.72937595 x_0=820439.298 y_0=1877357.828 h_0=6
6269|P|MAGNA-SIRGAS / San Jose del Guaviare urban grid|1580|258|0|ne|proj=col_urban lat_0=2.56407894166667 lon_0=-72.640033325 x_0=1159876.62 y_0=775380.342 h_0=185
6270|P|MAGNA-SIRGAS / Santa Marta urban grid|1581|258|0|ne|proj=col_urban lat_0=11.2196430555556 lon_0=-74.2250052777778 x_0=983892.409 y_0=1732533.518 h_0=29
6271|P|MAGNA-SIRGAS / Sucre urban grid|1582|258|0|ne|proj=col_urban lat_0=8.81055036666667 lon_0=-74.722466825 x_0=929043.607 y_0=1466125.658 h_0=20
6272|P|MAGNA-SIRGAS / Tunja urban grid|1583|258|0|ne|proj=col_urban lat_0=5.53419473888889 lon_0=-73.3519389 x_0=1080514.91 y_0=1103772.028 h_0=2800
6273|P|MAGNA-SIRGAS / Valledupar urban grid|1584|258|0|ne|proj=col_urban lat_0=10.4472611111111 lon_0=-73.2465713888889 x_0=1090979.66 y_0=1647208.93 h_0=200
6274|P|MAGNA-SIRGAS / Villavicencio urban grid|1585|258|0|ne|proj=col_urban lat_0=4.1553751 lon_0=-73.6244859861111 x_0=1050678.757 y_0=950952.124 h_0=427.19
6275|P|MAGNA-SIRGAS / Yopal urban grid|1586|258|0|ne|proj=col_urban lat_0=5.35392722222222 lon_0=-72.4200402777778 x_0=851184.177 y_0=1083954.137 h_0=300
6307|P|NAD83(CORS96) / Puerto Rico and Virgin Is.|483|397|0|en|proj=lcc lat_0=17.8333333333333 lon_0=-66.4333333333333 lat_1=18.4333333333333 lat_2=18.0333333333333 x_0=200000 y_0=200000
6309|C|CGRS93|1587|390
6310|H|CGRS93|1587|390
6311|G|CGRS93|1587|390
6312|P|CGRS93 / Cyprus Local Transverse Mercator|1587|390|0|en|proj=tmerc lat_0=0 lon_0=33 k=0.99995 x_0=200000 y_0=-3500000
6316|P|MGI 1901 / Balkans zone 7|1588|4|0|en|proj=tmerc lat_0=0 lon_0=21 k=0.9999 x_0=7500000 y_0=0
6317|C|NAD83(2011)|1202|391
6318|G|NAD83(2011)|1202|391
6319|H|NAD83(2011)|1202|391
6320|C|NAD83(PA11)|1589|392
6321|H|NAD83(PA11)|1589|392
6322|G|NAD83(PA11)|1589|392
6323|C|NAD83(MA11)|1590|393
6324|H|NAD83(MA11)|1590|393
6325|G|NAD83(MA11)|1590|393
6328|P|NAD83(2011) / UTM zone 59N|820|391|0|en|proj=utm zone=59
6329|P|NAD83(2011) / UTM zone 60N|821|391|0|en|proj=utm zone=60
6330|P|NAD83(2011) / UTM zone 1N|873|391|0|en|proj=utm zone=1
6331|P|NAD83(2011) / UTM zone 2N|874|391|0|en|proj=utm zone=2
6332|P|NAD83(2011) / UTM zone 3N|875|391|0|en|proj=utm zone=3
6333|P|NAD83(2011) / UTM zone 4N|876|391|0|en|proj=utm zone=4
6334|P|NAD83(2011) / UTM zone 5N|877|391|0|en|proj=utm zone=5
6335|P|NAD83(2011) / UTM zone 6N|878|391|0|en|proj=utm zone=6
6336|P|NAD83(2011) / UTM zone 7N|879|391|0|en|proj=utm zone=7
6337|P|NAD83(2011) / UTM zone 8N|880|391|0|en|proj=utm zone=8
6338|P|NAD83(2011) / UTM zone 9N|881|391|0|en|proj=utm zone=9
6339|P|NAD83(2011) / UTM zone 10N|882|391|0|en|proj=utm zone=10
6340|P|NAD83(2011) / UTM zone 11N|883|391|0|en|proj=utm zone=11
6341|P|NAD83(2011) / UTM zone 12N|884|391|0|en|proj=utm zone=12
6342|P|NAD83(2011) / UTM zone 13N|885|391|0|en|proj=utm zone=13
6343|P|NAD83(2011) / UTM zone 14N|886|391|0|en|proj=utm zone=14
6344|P|NAD83(2011) / UTM zone 15N|887|391|0|en|proj=utm zone=15
6345|P|NAD83(2011) / UTM zone 16N|888|391|0|en|proj=utm zone=16
6346|P|NAD83(2011) / UTM zone 17N|889|391|0|en|proj=utm zone=17
6347|P|NAD83(2011) / UTM zone 18N|890|391|0|en|proj=utm zone=18
6348|P|NAD83(2011) / UTM zone 19N|891|391|0|en|proj=utm zone=19
6349|K|NAD83(2011) + NAVD88 height|1321|6318|5703
6350|P|NAD83(2011) / Conus Albers|1218|391|0|en|proj=aea lat_0=23 lon_0=-96 lat_1=29.5 lat_2=45.5 x_0=0 y_0=0
6351|P|NAD83(2011) / EPSG Arctic zone 5-29|1507|391|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-163 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=29500000 y_0=5500000
6352|P|NAD83(2011) / EPSG Arctic zone 5-31|1508|391|0|en|proj=lcc lat_0=72.0250091944445 lon_0=-147 lat_1=73.6666666666667 lat_2=70.3333333333333 x_0=31500000 y_0=5500000
6353|P|NAD83(2011) / EPSG Arctic zone 6-14|1509|391|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-165 lat_1=70.3333333333333 lat_2=67 x_0=14500000 y_0=6500000
6354|P|NAD83(2011) / EPSG Arctic zone 6-16|1510|391|0|en|proj=lcc lat_0=68.6874755555556 lon_0=-147 lat_1=70.3333333333333 lat_2=67 x_0=16500000 y_0=6500000
6355|P|NAD83(2011) / Alabama East|438|391|0|en|proj=tmerc lat_0=30.5 lon_0=-85.8333333333333 k=0.99996 x_0=200000 y_0=0
6356|P|NAD83(2011) / Alabama West|439|391|0|en|proj=tmerc lat_0=30 lon_0=-87.5 k=0.999933333 x_0=600000 y_0=0
6357|V|NAVD88 depth|1379|North American Vertical Datum 1988|0|d
6358|V|NAVD88 depth (ftUS)|1321|North American Vertical Datum 1988|3|d
6359|V|NGVD29 depth (ftUS)|1218|National Geodetic Vertical Datum 1929|3|d
6360|V|NAVD88 height (ftUS)|1321|North American Vertical Datum 1988|3|u
6362|P|Mexico ITRF92 / LCC|1129|187|0|ne|proj=lcc lat_0=12 lon_0=-102 lat_1=17.5 lat_2=29.5 x_0=2500000 y_0=0
6363|C|Mexico ITRF2008|1129|394
6364|H|Mexico ITRF2008|1129|394
6365|G|Mexico ITRF2008|1129|394
6366|P|Mexico ITRF2008 / UTM zone 11N|1130|394|0|en|proj=utm zone=11
6367|P|Mexico ITRF2008 / UTM zone 12N|1131|394|0|en|proj=utm zone=12
6368|P|Mexico ITRF2008 / UTM zone 13N|1132|394|0|en|proj=utm zone=13
6369|P|Mexico ITRF2008 / UTM zone 14N|1133|394|0|en|proj=utm zone=14
6370|P|Mexico ITRF2008 / UTM zone 15N|1134|394|0|en|proj=utm zone=15
6371|P|Mexico ITRF2008 / UTM zone 16N|1135|394|0|en|proj=utm zone=16
6372|P|Mexico ITRF2008 / LCC|1129|394|0|ne|proj=lcc lat_0=12 lon_0=-102 lat_1=17.5 lat_2=29.5 x_0=2500000 y_0=0
6381|P|UCS-2000 / Ukraine TM zone 7|1591|384|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=300000 y_0=0
6382|P|UCS-2000 / Ukraine TM zone 8|1592|384|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=300000 y_0=0
6383|P|UCS-2000 / Ukraine TM zone 9|1593|384|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=300000 y_0=0
6384|P|UCS-2000 / Ukraine TM zone 10|1594|384|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=300000 y_0=0
6385|P|UCS-2000 / Ukraine TM zone 11|1595|384|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=300000 y_0=0
6386|P|UCS-2000 / Ukraine TM zone 12|1596|384|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=300000 y_0=0
6387|P|UCS-2000 / Ukraine TM zone 13|1597|384|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=300000 y_0=0
6391|P|Cayman Islands National Grid 2011|1541|388|4|en|proj=lcc lat_0=19.3333333333333 lon_0=-80.5666666666667 lat_1=19.3333333333333 lat_2=19.7 x_0=899160 y_0=579120
6393|P|NAD83(2011) / Alaska Albers|511|391|0|en|proj=aea lat_0=50 lon_0=-154 lat_1=55 lat_2=65 x_0=0 y_0=0
6394|P|NAD83(2011) / Alaska zone 1|860|391|0|en|proj=omerc no_uoff lat_0=57 lonc=-133.666666666667 alpha=323.130102361111 gamma=323.130102361111 k=0.9999 x_0=5000000 y_0=-5000000
6395|P|NAD83(2011) / Alaska zone 2|861|391|0|en|proj=tmerc lat_0=54 lon_0=-142 k=0.9999 x_0=500000 y_0=0
6396|P|NAD83(2011) / Alaska zone 3|862|391|0|en|proj=tmerc lat_0=54 lon_0=-146 k=0.9999 x_0=500000 y_0=0
6397|P|NAD83(2011) / Alaska zone 4|863|391|0|en|proj=tmerc lat_0=54 lon_0=-150 k=0.9999 x_0=500000 y_0=0
6398|P|NAD83(2011) / Alaska zone 5|864|391|0|en|proj=tmerc lat_0=54 lon_0=-154 k=0.9999 x_0=500000 y_0=0
6399|P|NAD83(2011) / Alaska zone 6|865|391|0|en|proj=tmerc lat_0=54 lon_0=-158 k=0.9999 x_0=500000 y_0=0
6400|P|NAD83(2011) / Alaska zone 7|866|391|0|en|proj=tmerc lat_0=54 lon_0=-162 k=0.9999 x_0=500000 y_0=0
6401|P|NAD83(2011) / Alaska zone 8|867|391|0|en|proj=tmerc lat_0=54 lon_0=-166 k=0.9999 x_0=500000 y_0=0
6402|P|NAD83(2011) / Alaska zone 9|868|391|0|en|proj=tmerc lat_0=54 lon_0=-170 k=0.9999 x_0=500000 y_0=0
6403|P|NAD83(2011) / Alaska zone 10|869|391|0|en|proj=lcc lat_0=51 lon_0=-176 lat_1=53.8333333333333 lat_2=51.8333333333333 x_0=1000000 y_0=0
6404|P|NAD83(2011) / Arizona Central|168|391|0|en|proj=tmerc lat_0=31 lon_0=-111.916666666667 k=0.9999 x_0=213360 y_0=0
6405|P|NAD83(2011) / Arizona Central (ft)|168|391|4|en|proj=tmerc lat_0=31 lon_0=-111.916666666667 k=0.9999 x_0=213360 y_0=0
6406|P|NAD83(2011) / Arizona East|167|391|0|en|proj=tmerc lat_0=31 lon_0=-110.166666666667 k=0.9999 x_0=213360 y_0=0
6407|P|NAD83(2011) / Arizona East (ft)|167|391|4|en|proj=tmerc lat_0=31 lon_0=-110.166666666667 k=0.9999 x_0=213360 y_0=0
6408|P|NAD83(2011) / Arizona West|169|391|0|en|proj=tmerc lat_0=31 lon_0=-113.75 k=0.999933333 x_0=213360 y_0=0
6409|P|NAD83(2011) / Arizona West (ft)|169|391|4|en|proj=tmerc lat_0=31 lon_0=-113.75 k=0.999933333 x_0=213360 y_0=0
6410|P|NAD83(2011) / Arkansas North|440|391|0|en|proj=lcc lat_0=34.3333333333333 lon_0=-92 lat_1=36.2333333333333 lat_2=34.9333333333333 x_0=400000 y_0=0
6411|P|NAD83(2011) / Arkansas North (ftUS)|440|391|3|en|proj=lcc lat_0=34.3333333333333 lon_0=-92 lat_1=36.2333333333333 lat_2=34.9333333333333 x_0=399999.99998984 y_0=0
6412|P|NAD83(2011) / Arkansas South|441|391|0|en|proj=lcc lat_0=32.6666666666667 lon_0=-92 lat_1=34.7666666666667 lat_2=33.3 x_0=400000 y_0=400000
6413|P|NAD83(2011) / Arkansas South (ftUS)|441|391|3|en|proj=lcc lat_0=32.6666666666667 lon_0=-92 lat_1=34.7666666666667 lat_2=33.3 x_0=399999.99998984 y_0=399999.99998984
6414|P|NAD83(2011) / California Albers|782|391|0|en|proj=aea lat_0=0 lon_0=-120 lat_1=34 lat_2=40.5 x_0=0 y_0=-4000000
6415|P|NAD83(2011) / California zone 1|170|391|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-122 lat_1=41.6666666666667 lat_2=40 x_0=2000000 y_0=500000
6416|P|NAD83(2011) / California zone 1 (ftUS)|170|391|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-122 lat_1=41.6666666666667 lat_2=40 x_0=2000000.0001016 y_0=500000.0001016
6417|P|NAD83(2011) / California zone 2|171|391|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-122 lat_1=39.8333333333333 lat_2=38.3333333333333 x_0=2000000 y_0=500000
6418|P|NAD83(2011) / California zone 2 (ftUS)|171|391|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-122 lat_1=39.8333333333333 lat_2=38.3333333333333 x_0=2000000.0001016 y_0=500000.0001016
6419|P|NAD83(2011) / California zone 3|172|391|0|en|proj=lcc lat_0=36.5 lon_0=-120.5 lat_1=38.4333333333333 lat_2=37.0666666666667 x_0=2000000 y_0=500000
6420|P|NAD83(2011) / California zone 3 (ftUS)|172|391|3|en|proj=lcc lat_0=36.5 lon_0=-120.5 lat_1=38.4333333333333 lat_2=37.0666666666667 x_0=2000000.0001016 y_0=500000.0001016
6421|P|NAD83(2011) / California zone 4|173|391|0|en|proj=lcc lat_0=35.3333333333333 lon_0=-119 lat_1=37.25 lat_2=36 x_0=2000000 y_0=500000
6422|P|NAD83(2011) / California zone 4 (ftUS)|173|391|3|en|proj=lcc lat_0=35.3333333333333 lon_0=-119 lat_1=37.25 lat_2=36 x_0=2000000.0001016 y_0=500000.0001016
6423|P|NAD83(2011) / California zone 5|174|391|0|en|proj=lcc lat_0=33.5 lon_0=-118 lat_1=35.4666666666667 lat_2=34.0333333333333 x_0=2000000 y_0=500000
6424|P|NAD83(2011) / California zone 5 (ftUS)|174|391|3|en|proj=lcc lat_0=33.5 lon_0=-118 lat_1=35.4666666666667 lat_2=34.0333333333333 x_0=2000000.0001016 y_0=500000.0001016
6425|P|NAD83(2011) / California zone 6|175|391|0|en|proj=lcc lat_0=32.1666666666667 lon_0=-116.25 lat_1=33.8833333333333 lat_2=32.7833333333333 x_0=2000000 y_0=500000
6426|P|NAD83(2011) / California zone 6 (ftUS)|175|391|3|en|proj=lcc lat_0=32.1666666666667 lon_0=-116.25 lat_1=33.8833333333333 lat_2=32.7833333333333 x_0=2000000.0001016 y_0=500000.0001016
6427|P|NAD83(2011) / Colorado Central|177|391|0|en|proj=lcc lat_0=37.8333333333333 lon_0=-105.5 lat_1=39.75 lat_2=38.45 x_0=914401.8289 y_0=304800.6096
6428|P|NAD83(2011) / Colorado Central (ftUS)|177|391|3|en|proj=lcc lat_0=37.8333333333333 lon_0=-105.5 lat_1=39.75 lat_2=38.45 x_0=914401.828803657 y_0=304800.609601219
6429|P|NAD83(2011) / Colorado North|176|391|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-105.5 lat_1=40.7833333333333 lat_2=39.7166666666667 x_0=914401.8289 y_0=304800.6096
6430|P|NAD83(2011) / Colorado North (ftUS)|176|391|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-105.5 lat_1=40.7833333333333 lat_2=39.7166666666667 x_0=914401.828803657 y_0=304800.609601219
6431|P|NAD83(2011) / Colorado South|178|391|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-105.5 lat_1=38.4333333333333 lat_2=37.2333333333333 x_0=914401.8289 y_0=304800.6096
6432|P|NAD83(2011) / Colorado South (ftUS)|178|391|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-105.5 lat_1=38.4333333333333 lat_2=37.2333333333333 x_0=914401.828803657 y_0=304800.609601219
6433|P|NAD83(2011) / Connecticut|179|391|0|en|proj=lcc lat_0=40.8333333333333 lon_0=-72.75 lat_1=41.8666666666667 lat_2=41.2 x_0=304800.6096 y_0=152400.3048
6434|P|NAD83(2011) / Connecticut (ftUS)|179|391|3|en|proj=lcc lat_0=40.8333333333333 lon_0=-72.75 lat_1=41.8666666666667 lat_2=41.2 x_0=304800.609601219 y_0=152400.30480061
6435|P|NAD83(2011) / Delaware|180|391|0|en|proj=tmerc lat_0=38 lon_0=-75.4166666666667 k=0.999995 x_0=200000 y_0=0
6436|P|NAD83(2011) / Delaware (ftUS)|180|391|3|en|proj=tmerc lat_0=38 lon_0=-75.4166666666667 k=0.999995 x_0=200000.0001016 y_0=0
6437|P|NAD83(2011) / Florida East|181|391|0|en|proj=tmerc lat_0=24.3333333333333 lon_0=-81 k=0.999941177 x_0=200000 y_0=0
6438|P|NAD83(2011) / Florida East (ftUS)|181|391|3|en|proj=tmerc lat_0=24.3333333333333 lon_0=-81 k=0.999941177 x_0=200000.0001016 y_0=0
6439|P|NAD83(2011) / Florida GDL Albers|591|391|0|en|proj=aea lat_0=24 lon_0=-84 lat_1=24 lat_2=31.5 x_0=400000 y_0=0
6440|P|NAD83(2011) / Florida North|183|391|0|en|proj=lcc lat_0=29 lon_0=-84.5 lat_1=30.75 lat_2=29.5833333333333 x_0=600000 y_0=0
6441|P|NAD83(2011) / Florida North (ftUS)|183|391|3|en|proj=lcc lat_0=29 lon_0=-84.5 lat_1=30.75 lat_2=29.5833333333333 x_0=600000 y_0=0
6442|P|NAD83(2011) / Florida West|182|391|0|en|proj=tmerc lat_0=24.3333333333333 lon_0=-82 k=0.999941177 x_0=200000 y_0=0
6443|P|NAD83(2011) / Florida West (ftUS)|182|391|3|en|proj=tmerc lat_0=24.3333333333333 lon_0=-82 k=0.999941177 x_0=200000.0001016 y_0=0
6444|P|NAD83(2011) / Georgia East|184|391|0|en|proj=tmerc lat_0=30 lon_0=-82.1666666666667 k=0.9999 x_0=200000 y_0=0
6445|P|NAD83(2011) / Georgia East (ftUS)|184|391|3|en|proj=tmerc lat_0=30 lon_0=-82.1666666666667 k=0.9999 x_0=200000.0001016 y_0=0
6446|P|NAD83(2011) / Georgia West|185|391|0|en|proj=tmerc lat_0=30 lon_0=-84.1666666666667 k=0.9999 x_0=700000 y_0=0
6447|P|NAD83(2011) / Georgia West (ftUS)|185|391|3|en|proj=tmerc lat_0=30 lon_0=-84.1666666666667 k=0.9999 x_0=699999.999898399 y_0=0
6448|P|NAD83(2011) / Idaho Central|187|391|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-114 k=0.999947368 x_0=500000 y_0=0
6449|P|NAD83(2011) / Idaho Central (ftUS)|187|391|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-114 k=0.999947368 x_0=500000.0001016 y_0=0
6450|P|NAD83(2011) / Idaho East|186|391|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-112.166666666667 k=0.999947368 x_0=200000 y_0=0
6451|P|NAD83(2011) / Idaho East (ftUS)|186|391|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-112.166666666667 k=0.999947368 x_0=200000.0001016 y_0=0
6452|P|NAD83(2011) / Idaho West|188|391|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-115.75 k=0.999933333 x_0=800000 y_0=0
6453|P|NAD83(2011) / Idaho West (ftUS)|188|391|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-115.75 k=0.999933333 x_0=800000.0001016 y_0=0
6454|P|NAD83(2011) / Illinois East|447|391|0|en|proj=tmerc lat_0=36.6666666666667 lon_0=-88.3333333333333 k=0.999975 x_0=300000 y_0=0
6455|P|NAD83(2011) / Illinois East (ftUS)|447|391|3|en|proj=tmerc lat_0=36.6666666666667 lon_0=-88.3333333333333 k=0.999975 x_0=300000 y_0=0
6456|P|NAD83(2011) / Illinois West|448|391|0|en|proj=tmerc lat_0=36.6666666666667 lon_0=-90.1666666666667 k=0.999941177 x_0=700000 y_0=0
6457|P|NAD83(2011) / Illinois West (ftUS)|448|391|3|en|proj=tmerc lat_0=36.6666666666667 lon_0=-90.1666666666667 k=0.999941177 x_0=699999.99998984 y_0=0
6458|P|NAD83(2011) / Indiana East|449|391|0|en|proj=tmerc lat_0=37.5 lon_0=-85.6666666666667 k=0.999966667 x_0=100000 y_0=250000
6459|P|NAD83(2011) / Indiana East (ftUS)|449|391|3|en|proj=tmerc lat_0=37.5 lon_0=-85.6666666666667 k=0.999966667 x_0=99999.9998983997 y_0=249999.9998984
6460|P|NAD83(2011) / Indiana West|450|391|0|en|proj=tmerc lat_0=37.5 lon_0=-87.0833333333333 k=0.999966667 x_0=900000 y_0=250000
6461|P|NAD83(2011) / Indiana West (ftUS)|450|391|3|en|proj=tmerc lat_0=37.5 lon_0=-87.0833333333333 k=0.999966667 x_0=900000 y_0=249999.9998984
6462|P|NAD83(2011) / Iowa North|451|391|0|en|proj=lcc lat_0=41.5 lon_0=-93.5 lat_1=43.2666666666667 lat_2=42.0666666666667 x_0=1500000 y_0=1000000
6463|P|NAD83(2011) / Iowa North (ftUS)|451|391|3|en|proj=lcc lat_0=41.5 lon_0=-93.5 lat_1=43.2666666666667 lat_2=42.0666666666667 x_0=1500000 y_0=999999.999989839
6464|P|NAD83(2011) / Iowa South|452|391|0|en|proj=lcc lat_0=40 lon_0=-93.5 lat_1=41.7833333333333 lat_2=40.6166666666667 x_0=500000 y_0=0
6465|P|NAD83(2011) / Iowa South (ftUS)|452|391|3|en|proj=lcc lat_0=40 lon_0=-93.5 lat_1=41.7833333333333 lat_2=40.6166666666667 x_0=500000.00001016 y_0=0
6466|P|NAD83(2011) / Kansas North|453|391|0|en|proj=lcc lat_0=38.3333333333333 lon_0=-98 lat_1=39.7833333333333 lat_2=38.7166666666667 x_0=400000 y_0=0
6467|P|NAD83(2011) / Kansas North (ftUS)|453|391|3|en|proj=lcc lat_0=38.3333333333333 lon_0=-98 lat_1=39.7833333333333 lat_2=38.7166666666667 x_0=399999.99998984 y_0=0
6468|P|NAD83(2011) / Kansas South|454|391|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-98.5 lat_1=38.5666666666667 lat_2=37.2666666666667 x_0=400000 y_0=400000
6469|P|NAD83(2011) / Kansas South (ftUS)|454|391|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-98.5 lat_1=38.5666666666667 lat_2=37.2666666666667 x_0=399999.99998984 y_0=399999.99998984
6470|P|NAD83(2011) / Kentucky North|151|391|0|en|proj=lcc lat_0=37.5 lon_0=-84.25 lat_1=37.9666666666667 lat_2=38.9666666666667 x_0=500000 y_0=0
6471|P|NAD83(2011) / Kentucky North (ftUS)|151|391|3|en|proj=lcc lat_0=37.5 lon_0=-84.25 lat_1=37.9666666666667 lat_2=38.9666666666667 x_0=500000.0001016 y_0=0
6472|P|NAD83(2011) / Kentucky Single Zone|592|391|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.0833333333333 lat_2=38.6666666666667 x_0=1500000 y_0=1000000
6473|P|NAD83(2011) / Kentucky Single Zone (ftUS)|592|391|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.0833333333333 lat_2=38.6666666666667 x_0=1500000 y_0=999999.999898399
6474|P|NAD83(2011) / Kentucky South|189|391|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.9333333333333 lat_2=36.7333333333333 x_0=500000 y_0=500000
6475|P|NAD83(2011) / Kentucky South (ftUS)|189|391|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.9333333333333 lat_2=36.7333333333333 x_0=500000.0001016 y_0=500000.0001016
6476|P|NAD83(2011) / Louisiana North|455|391|0|en|proj=lcc lat_0=30.5 lon_0=-92.5 lat_1=32.6666666666667 lat_2=31.1666666666667 x_0=1000000 y_0=0
6477|P|NAD83(2011) / Louisiana North (ftUS)|455|391|3|en|proj=lcc lat_0=30.5 lon_0=-92.5 lat_1=32.6666666666667 lat_2=31.1666666666667 x_0=999999.999989839 y_0=0
6478|P|NAD83(2011) / Louisiana South|456|391|0|en|proj=lcc lat_0=28.5 lon_0=-91.3333333333333 lat_1=30.7 lat_2=29.3 x_0=1000000 y_0=0
6479|P|NAD83(2011) / Louisiana South (ftUS)|456|391|3|en|proj=lcc lat_0=28.5 lon_0=-91.3333333333333 lat_1=30.7 lat_2=29.3 x_0=999999.999989839 y_0=0
6480|P|NAD83(2011) / Maine CS2000 Central|859|391|0|en|proj=tmerc lat_0=43.5 lon_0=-69.125 k=0.99998 x_0=500000 y_0=0
6481|P|NAD83(2011) / Maine CS2000 East|587|391|0|en|proj=tmerc lat_0=43.8333333333333 lon_0=-67.875 k=0.99998 x_0=700000 y_0=0
6482|P|NAD83(2011) / Maine CS2000 West|588|391|0|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.375 k=0.99998 x_0=300000 y_0=0
6483|P|NAD83(2011) / Maine East|457|391|0|en|proj=tmerc lat_0=43.6666666666667 lon_0=-68.5 k=0.9999 x_0=300000 y_0=0
6484|P|NAD83(2011) / Maine East (ftUS)|457|391|3|en|proj=tmerc lat_0=43.6666666666667 lon_0=-68.5 k=0.9999 x_0=300000 y_0=0
6485|P|NAD83(2011) / Maine West|458|391|0|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.1666666666667 k=0.999966667 x_0=900000 y_0=0
6486|P|NAD83(2011) / Maine West (ftUS)|458|391|3|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.1666666666667 k=0.999966667 x_0=900000 y_0=0
6487|P|NAD83(2011) / Maryland|190|391|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-77 lat_1=39.45 lat_2=38.3 x_0=400000 y_0=0
6488|P|NAD83(2011) / Maryland (ftUS)|190|391|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-77 lat_1=39.45 lat_2=38.3 x_0=399999.9998984 y_0=0
6489|P|NAD83(2011) / Massachusetts Island|192|391|0|en|proj=lcc lat_0=41 lon_0=-70.5 lat_1=41.4833333333333 lat_2=41.2833333333333 x_0=500000 y_0=0
6490|P|NAD83(2011) / Massachusetts Island (ftUS)|192|391|3|en|proj=lcc lat_0=41 lon_0=-70.5 lat_1=41.4833333333333 lat_2=41.2833333333333 x_0=500000.0001016 y_0=0
6491|P|NAD83(2011) / Massachusetts Mainland|191|391|0|en|proj=lcc lat_0=41 lon_0=-71.5 lat_1=42.6833333333333 lat_2=41.7166666666667 x_0=200000 y_0=750000
6492|P|NAD83(2011) / Massachusetts Mainland (ftUS)|191|391|3|en|proj=lcc lat_0=41 lon_0=-71.5 lat_1=42.6833333333333 lat_2=41.7166666666667 x_0=200000.0001016 y_0=750000
6493|P|NAD83(2011) / Michigan Central|194|391|0|en|proj=lcc lat_0=43.3166666666667 lon_0=-84.3666666666667 lat_1=45.7 lat_2=44.1833333333333 x_0=6000000 y_0=0
6494|P|NAD83(2011) / Michigan Central (ft)|194|391|4|en|proj=lcc lat_0=43.3166666666667 lon_0=-84.3666666666667 lat_1=45.7 lat_2=44.1833333333333 x_0=5999999.999976 y_0=0
6495|P|NAD83(2011) / Michigan North|193|391|0|en|proj=lcc lat_0=44.7833333333333 lon_0=-87 lat_1=47.0833333333333 lat_2=45.4833333333333 x_0=8000000 y_0=0
6496|P|NAD83(2011) / Michigan North (ft)|193|391|4|en|proj=lcc lat_0=44.7833333333333 lon_0=-87 lat_1=47.0833333333333 lat_2=45.4833333333333 x_0=7999999.999968 y_0=0
6497|P|NAD83(2011) / Michigan Oblique Mercator|589|391|0|en|proj=omerc no_uoff lat_0=45.3091666666667 lonc=-86 alpha=337.25556 gamma=337.25556 k=0.9996 x_0=2546731.496 y_0=-4354009.816
6498|P|NAD83(2011) / Michigan South|195|391|0|en|proj=lcc lat_0=41.5 lon_0=-84.3666666666667 lat_1=43.6666666666667 lat_2=42.1 x_0=4000000 y_0=0
6499|P|NAD83(2011) / Michigan South (ft)|195|391|4|en|proj=lcc lat_0=41.5 lon_0=-84.3666666666667 lat_1=43.6666666666667 lat_2=42.1 x_0=3999999.999984 y_0=0
6500|P|NAD83(2011) / Minnesota Central|460|391|0|en|proj=lcc lat_0=45 lon_0=-94.25 lat_1=47.05 lat_2=45.6166666666667 x_0=800000 y_0=100000
6501|P|NAD83(2011) / Minnesota Central (ftUS)|460|391|3|en|proj=lcc lat_0=45 lon_0=-94.25 lat_1=47.05 lat_2=45.6166666666667 x_0=800000.00001016 y_0=99999.9999898399
6502|P|NAD83(2011) / Minnesota North|459|391|0|en|proj=lcc lat_0=46.5 lon_0=-93.1 lat_1=48.6333333333333 lat_2=47.0333333333333 x_0=800000 y_0=100000
6503|P|NAD83(2011) / Minnesota North (ftUS)|459|391|3|en|proj=lcc lat_0=46.5 lon_0=-93.1 lat_1=48.6333333333333 lat_2=47.0333333333333 x_0=800000.00001016 y_0=99999.9999898399
6504|P|NAD83(2011) / Minnesota South|461|391|0|en|proj=lcc lat_0=43 lon_0=-94 lat_1=45.2166666666667 lat_2=43.7833333333333 x_0=800000 y_0=100000
6505|P|NAD83(2011) / Minnesota South (ftUS)|461|391|3|en|proj=lcc lat_0=43 lon_0=-94 lat_1=45.2166666666667 lat_2=43.7833333333333 x_0=800000.00001016 y_0=99999.9999898399
6506|P|NAD83(2011) / Mississippi East|196|391|0|en|proj=tmerc lat_0=29.5 lon_0=-88.8333333333333 k=0.99995 x_0=300000 y_0=0
6507|P|NAD83(2011) / Mississippi East (ftUS)|196|391|3|en|proj=tmerc lat_0=29.5 lon_0=-88.8333333333333 k=0.99995 x_0=300000 y_0=0
6508|P|NAD83(2011) / Mississippi TM|924|391|0|en|proj=tmerc lat_0=32.5 lon_0=-89.75 k=0.9998335 x_0=500000 y_0=1300000
6509|P|NAD83(2011) / Mississippi West|197|391|0|en|proj=tmerc lat_0=29.5 lon_0=-90.3333333333333 k=0.99995 x_0=700000 y_0=0
6510|P|NAD83(2011) / Mississippi West (ftUS)|197|391|3|en|proj=tmerc lat_0=29.5 lon_0=-90.3333333333333 k=0.99995 x_0=699999.999898399 y_0=0
6511|P|NAD83(2011) / Missouri Central|463|391|0|en|proj=tmerc lat_0=35.8333333333333 lon_0=-92.5 k=0.999933333 x_0=500000 y_0=0
6512|P|NAD83(2011) / Missouri East|462|391|0|en|proj=tmerc lat_0=35.8333333333333 lon_0=-90.5 k=0.999933333 x_0=250000 y_0=0
6513|P|NAD83(2011) / Missouri West|464|391|0|en|proj=tmerc lat_0=36.1666666666667 lon_0=-94.5 k=0.999941177 x_0=850000 y_0=0
6514|P|NAD83(2011) / Montana|198|391|0|en|proj=lcc lat_0=44.25 lon_0=-109.5 lat_1=49 lat_2=45 x_0=600000 y_0=0
6515|P|NAD83(2011) / Montana (ft)|198|391|4|en|proj=lcc lat_0=44.25 lon_0=-109.5 lat_1=49 lat_2=45 x_0=599999.9999976 y_0=0
6516|P|NAD83(2011) / Nebraska|465|391|0|en|proj=lcc lat_0=39.8333333333333 lon_0=-100 lat_1=43 lat_2=40 x_0=500000 y_0=0
6518|P|NAD83(2011) / Nevada Central|467|391|0|en|proj=tmerc lat_0=34.75 lon_0=-116.666666666667 k=0.9999 x_0=500000 y_0=6000000
6519|P|NAD83(2011) / Nevada Central (ftUS)|467|391|3|en|proj=tmerc lat_0=34.75 lon_0=-116.666666666667 k=0.9999 x_0=500000.00001016 y_0=6000000
6520|P|NAD83(2011) / Nevada East|466|391|0|en|proj=tmerc lat_0=34.75 lon_0=-115.583333333333 k=0.9999 x_0=200000 y_0=8000000
6521|P|NAD83(2011) / Nevada East (ftUS)|466|391|3|en|proj=tmerc lat_0=34.75 lon_0=-115.583333333333 k=0.9999 x_0=200000.00001016 y_0=8000000.00001016
6522|P|NAD83(2011) / Nevada West|468|391|0|en|proj=tmerc lat_0=34.75 lon_0=-118.583333333333 k=0.9999 x_0=800000 y_0=4000000
6523|P|NAD83(2011) / Nevada West (ftUS)|468|391|3|en|proj=tmerc lat_0=34.75 lon_0=-118.583333333333 k=0.9999 x_0=800000.00001016 y_0=3999999.99998984
6524|P|NAD83(2011) / New Hampshire|469|391|0|en|proj=tmerc lat_0=42.5 lon_0=-71.6666666666667 k=0.999966667 x_0=300000 y_0=0
6525|P|NAD83(2011) / New Hampshire (ftUS)|469|391|3|en|proj=tmerc lat_0=42.5 lon_0=-71.6666666666667 k=0.999966667 x_0=300000 y_0=0
6526|P|NAD83(2011) / New Jersey|470|391|0|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
6527|P|NAD83(2011) / New Jersey (ftUS)|470|391|3|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
6528|P|NAD83(2011) / New Mexico Central|200|391|0|en|proj=tmerc lat_0=31 lon_0=-106.25 k=0.9999 x_0=500000 y_0=0
6529|P|NAD83(2011) / New Mexico Central (ftUS)|200|391|3|en|proj=tmerc lat_0=31 lon_0=-106.25 k=0.9999 x_0=500000.0001016 y_0=0
6530|P|NAD83(2011) / New Mexico East|199|391|0|en|proj=tmerc lat_0=31 lon_0=-104.333333333333 k=0.999909091 x_0=165000 y_0=0
6531|P|NAD83(2011) / New Mexico East (ftUS)|199|391|3|en|proj=tmerc lat_0=31 lon_0=-104.333333333333 k=0.999909091 x_0=165000 y_0=0
6532|P|NAD83(2011) / New Mexico West|201|391|0|en|proj=tmerc lat_0=31 lon_0=-107.833333333333 k=0.999916667 x_0=830000 y_0=0
6533|P|NAD83(2011) / New Mexico West (ftUS)|201|391|3|en|proj=tmerc lat_0=31 lon_0=-107.833333333333 k=0.999916667 x_0=830000.0001016 y_0=0
6534|P|NAD83(2011) / New York Central|203|391|0|en|proj=tmerc lat_0=40 lon_0=-76.5833333333333 k=0.9999375 x_0=250000 y_0=0
6535|P|NAD83(2011) / New York Central (ftUS)|203|391|3|en|proj=tmerc lat_0=40 lon_0=-76.5833333333333 k=0.9999375 x_0=249999.9998984 y_0=0
6536|P|NAD83(2011) / New York East|202|391|0|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
6537|P|NAD83(2011) / New York East (ftUS)|202|391|3|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
6538|P|NAD83(2011) / New York Long Island|205|391|0|en|proj=lcc lat_0=40.1666666666667 lon_0=-74 lat_1=41.0333333333333 lat_2=40.6666666666667 x_0=300000 y_0=0
6539|P|NAD83(2011) / New York Long Island (ftUS)|205|391|3|en|proj=lcc lat_0=40.1666666666667 lon_0=-74 lat_1=41.0333333333333 lat_2=40.6666666666667 x_0=300000 y_0=0
6540|P|NAD83(2011) / New York West|204|391|0|en|proj=tmerc lat_0=40 lon_0=-78.5833333333333 k=0.9999375 x_0=350000 y_0=0
6541|P|NAD83(2011) / New York West (ftUS)|204|391|3|en|proj=tmerc lat_0=40 lon_0=-78.5833333333333 k=0.9999375 x_0=350000.0001016 y_0=0
6542|P|NAD83(2011) / North Carolina|206|391|0|en|proj=lcc lat_0=33.75 lon_0=-79 lat_1=36.1666666666667 lat_2=34.3333333333333 x_0=609601.22 y_0=0
6543|P|NAD83(2011) / North Carolina (ftUS)|206|391|3|en|proj=lcc lat_0=33.75 lon_0=-79 lat_1=36.1666666666667 lat_2=34.3333333333333 x_0=609601.219202438 y_0=0
6544|P|NAD83(2011) / North Dakota North|207|391|0|en|proj=lcc lat_0=47 lon_0=-100.5 lat_1=48.7333333333333 lat_2=47.4333333333333 x_0=600000 y_0=0
6545|P|NAD83(2011) / North Dakota North (ft)|207|391|4|en|proj=lcc lat_0=47 lon_0=-100.5 lat_1=48.7333333333333 lat_2=47.4333333333333 x_0=599999.9999976 y_0=0
6546|P|NAD83(2011) / North Dakota South|208|391|0|en|proj=lcc lat_0=45.6666666666667 lon_0=-100.5 lat_1=47.4833333333333 lat_2=46.1833333333333 x_0=600000 y_0=0
6547|P|NAD83(2011) / North Dakota South (ft)|208|391|4|en|proj=lcc lat_0=45.6666666666667 lon_0=-100.5 lat_1=47.4833333333333 lat_2=46.1833333333333 x_0=599999.9999976 y_0=0
6548|P|NAD83(2011) / Ohio North|471|391|0|en|proj=lcc lat_0=39.6666666666667 lon_0=-82.5 lat_1=41.7 lat_2=40.4333333333333 x_0=600000 y_0=0
6549|P|NAD83(2011) / Ohio North (ftUS)|471|391|3|en|proj=lcc lat_0=39.6666666666667 lon_0=-82.5 lat_1=41.7 lat_2=40.4333333333333 x_0=600000 y_0=0
6550|P|NAD83(2011) / Ohio South|472|391|0|en|proj=lcc lat_0=38 lon_0=-82.5 lat_1=40.0333333333333 lat_2=38.7333333333333 x_0=600000 y_0=0
6551|P|NAD83(2011) / Ohio South (ftUS)|472|391|3|en|proj=lcc lat_0=38 lon_0=-82.5 lat_1=40.0333333333333 lat_2=38.7333333333333 x_0=600000 y_0=0
6552|P|NAD83(2011) / Oklahoma North|209|391|0|en|proj=lcc lat_0=35 lon_0=-98 lat_1=36.7666666666667 lat_2=35.5666666666667 x_0=600000 y_0=0
6553|P|NAD83(2011) / Oklahoma North (ftUS)|209|391|3|en|proj=lcc lat_0=35 lon_0=-98 lat_1=36.7666666666667 lat_2=35.5666666666667 x_0=600000 y_0=0
6554|P|NAD83(2011) / Oklahoma South|210|391|0|en|proj=lcc lat_0=33.3333333333333 lon_0=-98 lat_1=35.2333333333333 lat_2=33.9333333333333 x_0=600000 y_0=0
6555|P|NAD83(2011) / Oklahoma South (ftUS)|210|391|3|en|proj=lcc lat_0=33.3333333333333 lon_0=-98 lat_1=35.2333333333333 lat_2=33.9333333333333 x_0=600000 y_0=0
6556|P|NAD83(2011) / Oregon LCC (m)|527|391|0|en|proj=lcc lat_0=41.75 lon_0=-120.5 lat_1=43 lat_2=45.5 x_0=400000 y_0=0
6557|P|NAD83(2011) / Oregon GIC Lambert (ft)|527|391|4|en|proj=lcc lat_0=41.75 lon_0=-120.5 lat_1=43 lat_2=45.5 x_0=399999.9999984 y_0=0
6558|P|NAD83(2011) / Oregon North|211|391|0|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=46 lat_2=44.3333333333333 x_0=2500000 y_0=0
6559|P|NAD83(2011) / Oregon North (ft)|211|391|4|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=46 lat_2=44.3333333333333 x_0=2500000.0001424 y_0=0
6560|P|NAD83(2011) / Oregon South|212|391|0|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=44 lat_2=42.3333333333333 x_0=1500000 y_0=0
6561|P|NAD83(2011) / Oregon South (ft)|212|391|4|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=44 lat_2=42.3333333333333 x_0=1500000.0001464 y_0=0
6562|P|NAD83(2011) / Pennsylvania North|213|391|0|en|proj=lcc lat_0=40.1666666666667 lon_0=-77.75 lat_1=41.95 lat_2=40.8833333333333 x_0=600000 y_0=0
6563|P|NAD83(2011) / Pennsylvania North (ftUS)|213|391|3|en|proj=lcc lat_0=40.1666666666667 lon_0=-77.75 lat_1=41.95 lat_2=40.8833333333333 x_0=600000 y_0=0
6564|P|NAD83(2011) / Pennsylvania South|214|391|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-77.75 lat_1=40.9666666666667 lat_2=39.9333333333333 x_0=600000 y_0=0
6565|P|NAD83(2011) / Pennsylvania South (ftUS)|214|391|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-77.75 lat_1=40.9666666666667 lat_2=39.9333333333333 x_0=600000 y_0=0
6566|P|NAD83(2011) / Puerto Rico and Virgin Is.|483|391|0|en|proj=lcc lat_0=17.8333333333333 lon_0=-66.4333333333333 lat_1=18.4333333333333 lat_2=18.0333333333333 x_0=200000 y_0=200000
6567|P|NAD83(2011) / Rhode Island|473|391|0|en|proj=tmerc lat_0=41.0833333333333 lon_0=-71.5 k=0.99999375 x_0=100000 y_0=0
6568|P|NAD83(2011) / Rhode Island (ftUS)|473|391|3|en|proj=tmerc lat_0=41.0833333333333 lon_0=-71.5 k=0.99999375 x_0=99999.9999898399 y_0=0
6569|P|NAD83(2011) / South Carolina|215|391|0|en|proj=lcc lat_0=31.8333333333333 lon_0=-81 lat_1=34.8333333333333 lat_2=32.5 x_0=609600 y_0=0
6570|P|NAD83(2011) / South Carolina (ft)|215|391|4|en|proj=lcc lat_0=31.8333333333333 lon_0=-81 lat_1=34.8333333333333 lat_2=32.5 x_0=609600 y_0=0
6571|P|NAD83(2011) / South Dakota North|474|391|0|en|proj=lcc lat_0=43.8333333333333 lon_0=-100 lat_1=45.6833333333333 lat_2=44.4166666666667 x_0=600000 y_0=0
6572|P|NAD83(2011) / South Dakota North (ftUS)|474|391|3|en|proj=lcc lat_0=43.8333333333333 lon_0=-100 lat_1=45.6833333333333 lat_2=44.4166666666667 x_0=600000 y_0=0
6573|P|NAD83(2011) / South Dakota South|475|391|0|en|proj=lcc lat_0=42.3333333333333 lon_0=-100.333333333333 lat_1=44.4 lat_2=42.8333333333333 x_0=600000 y_0=0
6574|P|NAD83(2011) / South Dakota South (ftUS)|475|391|3|en|proj=lcc lat_0=42.3333333333333 lon_0=-100.333333333333 lat_1=44.4 lat_2=42.8333333333333 x_0=600000 y_0=0
6575|P|NAD83(2011) / Tennessee|150|391|0|en|proj=lcc lat_0=34.3333333333333 lon_0=-86 lat_1=36.4166666666667 lat_2=35.25 x_0=600000 y_0=0
6576|P|NAD83(2011) / Tennessee (ftUS)|150|391|3|en|proj=lcc lat_0=34.3333333333333 lon_0=-86 lat_1=36.4166666666667 lat_2=35.25 x_0=600000 y_0=0
6577|P|NAD83(2011) / Texas Central|218|391|0|en|proj=lcc lat_0=29.6666666666667 lon_0=-100.333333333333 lat_1=31.8833333333333 lat_2=30.1166666666667 x_0=700000 y_0=3000000
6578|P|NAD83(2011) / Texas Central (ftUS)|218|391|3|en|proj=lcc lat_0=29.6666666666667 lon_0=-100.333333333333 lat_1=31.8833333333333 lat_2=30.1166666666667 x_0=699999.999898399 y_0=3000000
6579|P|NAD83(2011) / Texas Centric Albers Equal Area|590|391|0|en|proj=aea lat_0=18 lon_0=-100 lat_1=27.5 lat_2=35 x_0=1500000 y_0=6000000
6580|P|NAD83(2011) / Texas Centric Lambert Conformal|590|391|0|en|proj=lcc lat_0=18 lon_0=-100 lat_1=27.5 lat_2=35 x_0=1500000 y_0=5000000
6581|P|NAD83(2011) / Texas North|216|391|0|en|proj=lcc lat_0=34 lon_0=-101.5 lat_1=36.1833333333333 lat_2=34.65 x_0=200000 y_0=1000000
6582|P|NAD83(2011) / Texas North (ftUS)|216|391|3|en|proj=lcc lat_0=34 lon_0=-101.5 lat_1=36.1833333333333 lat_2=34.65 x_0=200000.0001016 y_0=999999.999898399
6583|P|NAD83(2011) / Texas North Central|217|391|0|en|proj=lcc lat_0=31.6666666666667 lon_0=-98.5 lat_1=33.9666666666667 lat_2=32.1333333333333 x_0=600000 y_0=2000000
6584|P|NAD83(2011) / Texas North Central (ftUS)|217|391|3|en|proj=lcc lat_0=31.6666666666667 lon_0=-98.5 lat_1=33.9666666666667 lat_2=32.1333333333333 x_0=600000 y_0=2000000.0001016
6585|P|NAD83(2011) / Texas South|220|391|0|en|proj=lcc lat_0=25.6666666666667 lon_0=-98.5 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=300000 y_0=5000000
6586|P|NAD83(2011) / Texas South (ftUS)|220|391|3|en|proj=lcc lat_0=25.6666666666667 lon_0=-98.5 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=300000 y_0=5000000.0001016
6587|P|NAD83(2011) / Texas South Central|219|391|0|en|proj=lcc lat_0=27.8333333333333 lon_0=-99 lat_1=30.2833333333333 lat_2=28.3833333333333 x_0=600000 y_0=4000000
6588|P|NAD83(2011) / Texas South Central (ftUS)|219|391|3|en|proj=lcc lat_0=27.8333333333333 lon_0=-99 lat_1=30.2833333333333 lat_2=28.3833333333333 x_0=600000 y_0=3999999.9998984
6589|P|NAD83(2011) / Vermont|476|391|0|en|proj=tmerc lat_0=42.5 lon_0=-72.5 k=0.999964286 x_0=500000 y_0=0
6590|P|NAD83(2011) / Vermont (ftUS)|476|391|3|en|proj=tmerc lat_0=42.5 lon_0=-72.5 k=0.999964286 x_0=500000.00001016 y_0=0
6591|P|NAD83(2011) / Virginia Lambert|973|391|0|en|proj=lcc lat_0=36 lon_0=-79.5 lat_1=37 lat_2=39.5 x_0=0 y_0=0
6592|P|NAD83(2011) / Virginia North|224|391|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-78.5 lat_1=39.2 lat_2=38.0333333333333 x_0=3500000 y_0=2000000
6593|P|NAD83(2011) / Virginia North (ftUS)|224|391|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-78.5 lat_1=39.2 lat_2=38.0333333333333 x_0=3500000.0001016 y_0=2000000.0001016
6594|P|NAD83(2011) / Virginia South|225|391|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-78.5 lat_1=37.9666666666667 lat_2=36.7666666666667 x_0=3500000 y_0=1000000
6595|P|NAD83(2011) / Virginia South (ftUS)|225|391|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-78.5 lat_1=37.9666666666667 lat_2=36.7666666666667 x_0=3500000.0001016 y_0=999999.999898399
6596|P|NAD83(2011) / Washington North|226|391|0|en|proj=lcc lat_0=47 lon_0=-120.833333333333 lat_1=48.7333333333333 lat_2=47.5 x_0=500000 y_0=0
6597|P|NAD83(2011) / Washington North (ftUS)|226|391|3|en|proj=lcc lat_0=47 lon_0=-120.833333333333 lat_1=48.7333333333333 lat_2=47.5 x_0=500000.0001016 y_0=0
6598|P|NAD83(2011) / Washington South|227|391|0|en|proj=lcc lat_0=45.3333333333333 lon_0=-120.5 lat_1=47.3333333333333 lat_2=45.8333333333333 x_0=500000 y_0=0
6599|P|NAD83(2011) / Washington South (ftUS)|227|391|3|en|proj=lcc lat_0=45.3333333333333 lon_0=-120.5 lat_1=47.3333333333333 lat_2=45.8333333333333 x_0=500000.0001016 y_0=0
6600|P|NAD83(2011) / West Virginia North|477|391|0|en|proj=lcc lat_0=38.5 lon_0=-79.5 lat_1=40.25 lat_2=39 x_0=600000 y_0=0
6601|P|NAD83(2011) / West Virginia North (ftUS)|477|391|3|en|proj=lcc lat_0=38.5 lon_0=-79.5 lat_1=40.25 lat_2=39 x_0=600000 y_0=0
6602|P|NAD83(2011) / West Virginia South|478|391|0|en|proj=lcc lat_0=37 lon_0=-81 lat_1=38.8833333333333 lat_2=37.4833333333333 x_0=600000 y_0=0
6603|P|NAD83(2011) / West Virginia South (ftUS)|478|391|3|en|proj=lcc lat_0=37 lon_0=-81 lat_1=38.8833333333333 lat_2=37.4833333333333 x_0=600000 y_0=0
6605|P|NAD83(2011) / Wisconsin Central (ftUS)|229|391|3|en|proj=lcc lat_0=43.8333333333333 lon_0=-90 lat_1=45.5 lat_2=44.25 x_0=600000 y_0=0
6606|P|NAD83(2011) / Wisconsin North|228|391|0|en|proj=lcc lat_0=45.1666666666667 lon_0=-90 lat_1=46.7666666666667 lat_2=45.5666666666667 x_0=600000 y_0=0
6607|P|NAD83(2011) / Wisconsin North (ftUS)|228|391|3|en|proj=lcc lat_0=45.1666666666667 lon_0=-90 lat_1=46.7666666666667 lat_2=45.5666666666667 x_0=600000 y_0=0
6608|P|NAD83(2011) / Wisconsin South|230|391|0|en|proj=lcc lat_0=42 lon_0=-90 lat_1=44.0666666666667 lat_2=42.7333333333333 x_0=600000 y_0=0
6609|P|NAD83(2011) / Wisconsin South (ftUS)|230|391|3|en|proj=lcc lat_0=42 lon_0=-90 lat_1=44.0666666666667 lat_2=42.7333333333333 x_0=600000 y_0=0
6610|P|NAD83(2011) / Wisconsin Transverse Mercator|586|391|0|en|proj=tmerc lat_0=0 lon_0=-90 k=0.9996 x_0=520000 y_0=-4480000
6611|P|NAD83(2011) / Wyoming East|479|391|0|en|proj=tmerc lat_0=40.5 lon_0=-105.166666666667 k=0.9999375 x_0=200000 y_0=0
6612|P|NAD83(2011) / Wyoming East (ftUS)|479|391|3|en|proj=tmerc lat_0=40.5 lon_0=-105.166666666667 k=0.9999375 x_0=200000.00001016 y_0=0
6613|P|NAD83(2011) / Wyoming East Central|480|391|0|en|proj=tmerc lat_0=40.5 lon_0=-107.333333333333 k=0.9999375 x_0=400000 y_0=100000
6614|P|NAD83(2011) / Wyoming East Central (ftUS)|480|391|3|en|proj=tmerc lat_0=40.5 lon_0=-107.333333333333 k=0.9999375 x_0=399999.99998984 y_0=99999.9999898399
6615|P|NAD83(2011) / Wyoming West|482|391|0|en|proj=tmerc lat_0=40.5 lon_0=-110.083333333333 k=0.9999375 x_0=800000 y_0=100000
6616|P|NAD83(2011) / Wyoming West (ftUS)|482|391|3|en|proj=tmerc lat_0=40.5 lon_0=-110.083333333333 k=0.9999375 x_0=800000.00001016 y_0=99999.9999898399
6617|P|NAD83(2011) / Wyoming West Central|481|391|0|en|proj=tmerc lat_0=40.5 lon_0=-108.75 k=0.9999375 x_0=600000 y_0=0
6618|P|NAD83(2011) / Wyoming West Central (ftUS)|481|391|3|en|proj=tmerc lat_0=40.5 lon_0=-108.75 k=0.9999375 x_0=600000 y_0=0
6619|P|NAD83(2011) / Utah Central|222|391|0|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000 y_0=2000000
6620|P|NAD83(2011) / Utah North|221|391|0|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000 y_0=1000000
6621|P|NAD83(2011) / Utah South|223|391|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000 y_0=3000000
6622|P|NAD83(CSRS) / Quebec Lambert|121|207|0|en|proj=lcc lat_0=44 lon_0=-68.5 lat_1=60 lat_2=46 x_0=0 y_0=0
6623|P|NAD83 / Quebec Albers|121|138|0|en|proj=aea lat_0=44 lon_0=-68.5 lat_1=60 lat_2=46 x_0=0 y_0=0
6624|P|NAD83(CSRS) / Quebec Albers|121|207|0|en|proj=aea lat_0=44 lon_0=-68.5 lat_1=60 lat_2=46 x_0=0 y_0=0
6625|P|NAD83(2011) / Utah Central (ftUS)|222|391|3|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000.00001016 y_0=2000000.00001016
6626|P|NAD83(2011) / Utah North (ftUS)|221|391|3|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000.00001016 y_0=999999.999989839
6627|P|NAD83(2011) / Utah South (ftUS)|223|391|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000.00001016 y_0=3000000
6628|P|NAD83(PA11) / Hawaii zone 1|442|392|0|en|proj=tmerc lat_0=18.8333333333333 lon_0=-155.5 k=0.999966667 x_0=500000 y_0=0
6629|P|NAD83(PA11) / Hawaii zone 2|443|392|0|en|proj=tmerc lat_0=20.3333333333333 lon_0=-156.666666666667 k=0.999966667 x_0=500000 y_0=0
6630|P|NAD83(PA11) / Hawaii zone 3|444|392|0|en|proj=tmerc lat_0=21.1666666666667 lon_0=-158 k=0.99999 x_0=500000 y_0=0
6631|P|NAD83(PA11) / Hawaii zone 4|445|392|0|en|proj=tmerc lat_0=21.8333333333333 lon_0=-159.5 k=0.99999 x_0=500000 y_0=0
6632|P|NAD83(PA11) / Hawaii zone 5|446|392|0|en|proj=tmerc lat_0=21.6666666666667 lon_0=-160.166666666667 k=1 x_0=500000 y_0=0
6633|P|NAD83(PA11) / Hawaii zone 3 (ftUS)|444|392|3|en|proj=tmerc lat_0=21.1666666666667 lon_0=-158 k=0.99999 x_0=500000.00001016 y_0=0
6634|P|NAD83(PA11) / UTM zone 4N|901|392|0|en|proj=utm zone=4
6635|P|NAD83(PA11) / UTM zone 5N|902|392|0|en|proj=utm zone=5
6636|P|NAD83(PA11) / UTM zone 2S|142|392|0|en|proj=utm zone=2 south
6637|P|NAD83(MA11) / Guam Map Grid|981|393|0|en|proj=tmerc lat_0=13.5 lon_0=144.75 k=1 x_0=100000 y_0=200000
6638|V|Tutuila 1962 height|1598|Tutuila Vertical Datum of 1962|0|u
6639|V|Guam 1963 height|981|Guam Vertical Datum of 1963|0|u
6640|V|NMVD03 height|1599|Northern Marianas Vertical Datum of 2003|0|u
6641|V|PRVD02 height|979|Puerto Rico Vertical Datum of 2002|0|u
6642|V|VIVD09 height|980|Virgin Islands Vertical Datum of 2009|0|u
6643|V|ASVD02 height|1598|American Samoa Vertical Datum of 2002|0|u
6644|V|GUVD04 height|981|Guam Vertical Datum of 2004|0|u
6646|P|Karbala 1979 / Iraq National Grid|958|314|0|en|proj=tmerc lat_0=29.0262683333333 lon_0=46.5 k=0.9994 x_0=800000 y_0=0
6647|V|CGVD2013(CGG2013) height|812|Canadian Geodetic Vertical Datum of 2013 (CGG2013)|0|u
6649|K|NAD83(CSRS) + CGVD2013(CGG2013) height|812|4617|6647
6666|C|JGD2011|1144|395
6667|H|JGD2011|1144|395
6668|G|JGD2011|1144|395
6669|P|JGD2011 / Japan Plane Rectangular CS I|294|395|0|ne|proj=tmerc lat_0=33 lon_0=129.5 k=0.9999 x_0=0 y_0=0
6670|P|JGD2011 / Japan Plane Rectangular CS II|295|395|0|ne|proj=tmerc lat_0=33 lon_0=131 k=0.9999 x_0=0 y_0=0
6671|P|JGD2011 / Japan Plane Rectangular CS III|296|395|0|ne|proj=tmerc lat_0=36 lon_0=132.166666666667 k=0.9999 x_0=0 y_0=0
6672|P|JGD2011 / Japan Plane Rectangular CS IV|297|395|0|ne|proj=tmerc lat_0=33 lon_0=133.5 k=0.9999 x_0=0 y_0=0
6673|P|JGD2011 / Japan Plane Rectangular CS V|298|395|0|ne|proj=tmerc lat_0=36 lon_0=134.333333333333 k=0.9999 x_0=0 y_0=0
6674|P|JGD2011 / Japan Plane Rectangular CS VI|299|395|0|ne|proj=tmerc lat_0=36 lon_0=136 k=0.9999 x_0=0 y_0=0
6675|P|JGD2011 / Japan Plane Rectangular CS VII|300|395|0|ne|proj=tmerc lat_0=36 lon_0=137.166666666667 k=0.9999 x_0=0 y_0=0
6676|P|JGD2011 / Japan Plane Rectangular CS VIII|301|395|0|ne|proj=tmerc lat_0=36 lon_0=138.5 k=0.9999 x_0=0 y_0=0
6677|P|JGD2011 / Japan Plane Rectangular CS IX|302|395|0|ne|proj=tmerc lat_0=36 lon_0=139.833333333333 k=0.9999 x_0=0 y_0=0
6678|P|JGD2011 / Japan Plane Rectangular CS X|303|395|0|ne|proj=tmerc lat_0=40 lon_0=140.833333333333 k=0.9999 x_0=0 y_0=0
6679|P|JGD2011 / Japan Plane Rectangular CS XI|304|395|0|ne|proj=tmerc lat_0=44 lon_0=140.25 k=0.9999 x_0=0 y_0=0
6680|P|JGD2011 / Japan Plane Rectangular CS XII|305|395|0|ne|proj=tmerc lat_0=44 lon_0=142.25 k=0.9999 x_0=0 y_0=0
6681|P|JGD2011 / Japan Plane Rectangular CS XIII|306|395|0|ne|proj=tmerc lat_0=44 lon_0=144.25 k=0.9999 x_0=0 y_0=0
6682|P|JGD2011 / Japan Plane Rectangular CS XIV|307|395|0|ne|proj=tmerc lat_0=26 lon_0=142 k=0.9999 x_0=0 y_0=0
6683|P|JGD2011 / Japan Plane Rectangular CS XV|308|395|0|ne|proj=tmerc lat_0=26 lon_0=127.5 k=0.9999 x_0=0 y_0=0
6684|P|JGD2011 / Japan Plane Rectangular CS XVI|309|395|0|ne|proj=tmerc lat_0=26 lon_0=124 k=0.9999 x_0=0 y_0=0
6685|P|JGD2011 / Japan Plane Rectangular CS XVII|310|395|0|ne|proj=tmerc lat_0=26 lon_0=131 k=0.9999 x_0=0 y_0=0
6686|P|JGD2011 / Japan Plane Rectangular CS XVIII|311|395|0|ne|proj=tmerc lat_0=20 lon_0=136 k=0.9999 x_0=0 y_0=0
6687|P|JGD2011 / Japan Plane Rectangular CS XIX|312|395|0|ne|proj=tmerc lat_0=26 lon_0=154 k=0.9999 x_0=0 y_0=0
6688|P|JGD2011 / UTM zone 51N|598|395|0|en|proj=utm zone=51
6689|P|JGD2011 / UTM zone 52N|599|395|0|en|proj=utm zone=52
6690|P|JGD2011 / UTM zone 53N|600|395|0|en|proj=utm zone=53
6691|P|JGD2011 / UTM zone 54N|601|395|0|en|proj=utm zone=54
6692|P|JGD2011 / UTM zone 55N|602|395|0|en|proj=utm zone=55
6693|V|JSLD72 height|1600|Japanese Standard Levelling Datum 1972|0|u
6694|V|JGD2000 (vertical) height|1601|Japanese Geodetic Datum 2000 (vertical)|0|u
6695|V|JGD2011 (vertical) height|1601|Japanese Geodetic Datum 2011 (vertical)|0|u
6696|K|JGD2000 + JGD2000 (vertical) height|1601|4612|6694
6697|K|JGD2011 + JGD2011 (vertical) height|1601|6668|6695
6700|K|Tokyo + JSLD72 height|1600|4301|6693
6703|P|WGS 84 / TM 60 SW|1602|183|0|en|proj=tmerc lat_0=0 lon_0=-60 k=0.9996 x_0=500000 y_0=10000000
6704|C|RDN2008|1089|396
6705|H|RDN2008|1089|396
6706|G|RDN2008|1089|396
6707|P|RDN2008 / UTM zone 32N (N-E)|536|396|0|ne|proj=utm zone=32
6708|P|RDN2008 / UTM zone 33N (N-E)|582|396|0|ne|proj=utm zone=33
6709|P|RDN2008 / UTM zone 34N (N-E)|1603|396|0|ne|proj=utm zone=34
6720|P|WGS 84 / CIG92|1604|183|0|en|proj=tmerc lat_0=0 lon_0=105.625 k=1.000024 x_0=50000 y_0=1300000
6721|P|GDA94 / CIG94|1604|151|0|en|proj=tmerc lat_0=0 lon_0=105.625 k=1.00002514 x_0=50000 y_0=1300000
6722|P|WGS 84 / CKIG92|1169|183|0|en|proj=tmerc lat_0=0 lon_0=96.875 k=1 x_0=50000 y_0=1400000
6723|P|GDA94 / CKIG94|1169|151|0|en|proj=tmerc lat_0=0 lon_0=96.875 k=0.99999387 x_0=50000 y_0=1500000
6736|P|GDA94 / MGA zone 46|1605|151|0|en|proj=utm zone=46 south
6737|P|GDA94 / MGA zone 47|1606|151|0|en|proj=utm zone=47 south
6738|P|GDA94 / MGA zone 59|1607|151|0|en|proj=utm zone=59 south
6781|C|NAD83(CORS96)|1202|397
6782|H|NAD83(CORS96)|1202|397
6783|G|NAD83(CORS96)|1202|397
6784|P|NAD83(CORS96) / Oregon Baker zone (m)|1608|397|0|en|proj=tmerc lat_0=44.5 lon_0=-117.833333333333 k=1.00016 x_0=40000 y_0=0
6785|P|NAD83(CORS96) / Oregon Baker zone (ft)|1608|397|4|en|proj=tmerc lat_0=44.5 lon_0=-117.833333333333 k=1.00016 x_0=39999.99999984 y_0=0
6786|P|NAD83(2011) / Oregon Baker zone (m)|1608|391|0|en|proj=tmerc lat_0=44.5 lon_0=-117.833333333333 k=1.00016 x_0=40000 y_0=0
6787|P|NAD83(2011) / Oregon Baker zone (ft)|1608|391|4|en|proj=tmerc lat_0=44.5 lon_0=-117.833333333333 k=1.00016 x_0=39999.99999984 y_0=0
6788|P|NAD83(CORS96) / Oregon Bend-Klamath Falls zone (m)|1609|397|0|en|proj=tmerc lat_0=41.75 lon_0=-121.75 k=1.0002 x_0=80000 y_0=0
6789|P|NAD83(CORS96) / Oregon Bend-Klamath Falls zone (ft)|1609|397|4|en|proj=tmerc lat_0=41.75 lon_0=-121.75 k=1.0002 x_0=79999.99999968 y_0=0
6790|P|NAD83(2011) / Oregon Bend-Klamath Falls zone (m)|1609|391|0|en|proj=tmerc lat_0=41.75 lon_0=-121.75 k=1.0002 x_0=80000 y_0=0
6791|P|NAD83(2011) / Oregon Bend-Klamath Falls zone (ft)|1609|391|4|en|proj=tmerc lat_0=41.75 lon_0=-121.75 k=1.0002 x_0=79999.99999968 y_0=0
6792|P|NAD83(CORS96) / Oregon Bend-Redmond-Prineville zone (m)|1610|397|0|en|proj=lcc lat_1=44.6666666666667 lat_0=44.6666666666667 lon_0=-121.25 k_0=1.00012 x_0=80000 y_0=130000
6793|P|NAD83(CORS96) / Oregon Bend-Redmond-Prineville zone (ft)|1610|397|4|en|proj=lcc lat_1=44.6666666666667 lat_0=44.6666666666667 lon_0=-121.25 k_0=1.00012 x_0=79999.99999968 y_0=130000.00001472
6794|P|NAD83(2011) / Oregon Bend-Redmond-Prineville zone (m)|1610|391|0|en|proj=lcc lat_1=44.6666666666667 lat_0=44.6666666666667 lon_0=-121.25 k_0=1.00012 x_0=80000 y_0=130000
6795|P|NAD83(2011) / Oregon Bend-Redmond-Prineville zone (ft)|1610|391|4|en|proj=lcc lat_1=44.6666666666667 lat_0=44.6666666666667 lon_0=-121.25 k_0=1.00012 x_0=79999.99999968 y_0=130000.00001472
6796|P|NAD83(CORS96) / Oregon Bend-Burns zone (m)|1611|397|0|en|proj=lcc lat_1=43.6666666666667 lat_0=43.6666666666667 lon_0=-119.75 k_0=1.0002 x_0=120000 y_0=60000
6797|P|NAD83(CORS96) / Oregon Bend-Burns zone (ft)|1611|397|4|en|proj=lcc lat_1=43.6666666666667 lat_0=43.6666666666667 lon_0=-119.75 k_0=1.0002 x_0=119999.99999952 y_0=59999.99999976
6798|P|NAD83(2011) / Oregon Bend-Burns zone (m)|1611|391|0|en|proj=lcc lat_1=43.6666666666667 lat_0=43.6666666666667 lon_0=-119.75 k_0=1.0002 x_0=120000 y_0=60000
6799|P|NAD83(2011) / Oregon Bend-Burns zone (ft)|1611|391|4|en|proj=lcc lat_1=43.6666666666667 lat_0=43.6666666666667 lon_0=-119.75 k_0=1.0002 x_0=119999.99999952 y_0=59999.99999976
6800|P|NAD83(CORS96) / Oregon Canyonville-Grants Pass zone (m)|1612|397|0|en|proj=tmerc lat_0=42.5 lon_0=-123.333333333333 k=1.00007 x_0=40000 y_0=0
6801|P|NAD83(CORS96) / Oregon Canyonville-Grants Pass zone (ft)|1612|397|4|en|proj=tmerc lat_0=42.5 lon_0=-123.333333333333 k=1.00007 x_0=39999.99999984 y_0=0
6802|P|NAD83(2011) / Oregon Canyonville-Grants Pass zone (m)|1612|391|0|en|proj=tmerc lat_0=42.5 lon_0=-123.333333333333 k=1.00007 x_0=40000 y_0=0
6803|P|NAD83(2011) / Oregon Canyonville-Grants Pass zone (ft)|1612|391|4|en|proj=tmerc lat_0=42.5 lon_0=-123.333333333333 k=1.00007 x_0=39999.99999984 y_0=0
6804|P|NAD83(CORS96) / Oregon Columbia River East zone (m)|1613|397|0|en|proj=lcc lat_1=45.6666666666667 lat_0=45.6666666666667 lon_0=-120.5 k_0=1.000008 x_0=150000 y_0=30000
6805|P|NAD83(CORS96) / Oregon Columbia River East zone (ft)|1613|397|4|en|proj=lcc lat_1=45.6666666666667 lat_0=45.6666666666667 lon_0=-120.5 k_0=1.000008 x_0=150000.00001464 y_0=30000.00001512
6806|P|NAD83(2011) / Oregon Columbia River East zone (m)|1613|391|0|en|proj=lcc lat_1=45.6666666666667 lat_0=45.6666666666667 lon_0=-120.5 k_0=1.000008 x_0=150000 y_0=30000
6807|P|NAD83(2011) / Oregon Columbia River East zone (ft)|1613|391|4|en|proj=lcc lat_1=45.6666666666667 lat_0=45.6666666666667 lon_0=-120.5 k_0=1.000008 x_0=150000.00001464 y_0=30000.00001512
6808|P|NAD83(CORS96) / Oregon Columbia River West zone (m)|1614|397|0|en|proj=omerc no_uoff lat_0=45.9166666666667 lonc=-123 alpha=295 gamma=295 k=1 x_0=7000000 y_0=-3000000
6809|P|NAD83(CORS96) / Oregon Columbia River West zone (ft)|1614|397|4|en|proj=omerc no_uoff lat_0=45.9166666666667 lonc=-123 alpha=295 gamma=295 k=1 x_0=7000000.00000248 y_0=-2999999.999988
6810|P|NAD83(2011) / Oregon Columbia River West zone (m)|1614|391|0|en|proj=omerc no_uoff lat_0=45.9166666666667 lonc=-123 alpha=295 gamma=295 k=1 x_0=7000000 y_0=-3000000
6811|P|NAD83(2011) / Oregon Columbia River West zone (ft)|1614|391|4|en|proj=omerc no_uoff lat_0=45.9166666666667 lonc=-123 alpha=295 gamma=295 k=1 x_0=7000000.00000248 y_0=-2999999.999988
6812|P|NAD83(CORS96) / Oregon Cottage Grove-Canyonville zone (m)|1615|397|0|en|proj=tmerc lat_0=42.8333333333333 lon_0=-123.333333333333 k=1.000023 x_0=50000 y_0=0
6813|P|NAD83(CORS96) / Oregon Cottage Grove-Canyonville zone (ft)|1615|397|4|en|proj=tmerc lat_0=42.8333333333333 lon_0=-123.333333333333 k=1.000023 x_0=50000.00001504 y_0=0
6814|P|NAD83(2011) / Oregon Cottage Grove-Canyonville zone (m)|1615|391|0|en|proj=tmerc lat_0=42.8333333333333 lon_0=-123.333333333333 k=1.000023 x_0=50000 y_0=0
6815|P|NAD83(2011) / Oregon Cottage Grove-Canyonville zone (ft)|1615|391|4|en|proj=tmerc lat_0=42.8333333333333 lon_0=-123.333333333333 k=1.000023 x_0=50000.00001504 y_0=0
6816|P|NAD83(CORS96) / Oregon Dufur-Madras zone (m)|1616|397|0|en|proj=tmerc lat_0=44.5 lon_0=-121 k=1.00011 x_0=80000 y_0=0
6817|P|NAD83(CORS96) / Oregon Dufur-Madras zone (ft)|1616|397|4|en|proj=tmerc lat_0=44.5 lon_0=-121 k=1.00011 x_0=79999.99999968 y_0=0
6818|P|NAD83(2011) / Oregon Dufur-Madras zone (m)|1616|391|0|en|proj=tmerc lat_0=44.5 lon_0=-121 k=1.00011 x_0=80000 y_0=0
6819|P|NAD83(2011) / Oregon Dufur-Madras zone (ft)|1616|391|4|en|proj=tmerc lat_0=44.5 lon_0=-121 k=1.00011 x_0=79999.99999968 y_0=0
6820|P|NAD83(CORS96) / Oregon Eugene zone (m)|1617|397|0|en|proj=tmerc lat_0=43.75 lon_0=-123.166666666667 k=1.000015 x_0=50000 y_0=0
6821|P|NAD83(CORS96) / Oregon Eugene zone (ft)|1617|397|4|en|proj=tmerc lat_0=43.75 lon_0=-123.166666666667 k=1.000015 x_0=50000.00001504 y_0=0
6822|P|NAD83(2011) / Oregon Eugene zone (m)|1617|391|0|en|proj=tmerc lat_0=43.75 lon_0=-123.166666666667 k=1.000015 x_0=50000 y_0=0
6823|P|NAD83(2011) / Oregon Eugene zone (ft)|1617|391|4|en|proj=tmerc lat_0=43.75 lon_0=-123.166666666667 k=1.000015 x_0=50000.00001504 y_0=0
6824|P|NAD83(CORS96) / Oregon Grants Pass-Ashland zone (m)|1618|397|0|en|proj=tmerc lat_0=41.75 lon_0=-123.333333333333 k=1.000043 x_0=50000 y_0=0
6825|P|NAD83(CORS96) / Oregon Grants Pass-Ashland zone (ft)|1618|397|4|en|proj=tmerc lat_0=41.75 lon_0=-123.333333333333 k=1.000043 x_0=50000.00001504 y_0=0
6826|P|NAD83(2011) / Oregon Grants Pass-Ashland zone (m)|1618|391|0|en|proj=tmerc lat_0=41.75 lon_0=-123.333333333333 k=1.000043 x_0=50000 y_0=0
6827|P|NAD83(2011) / Oregon Grants Pass-Ashland zone (ft)|1618|391|4|en|proj=tmerc lat_0=41.75 lon_0=-123.333333333333 k=1.000043 x_0=50000.00001504 y_0=0
6828|P|NAD83(CORS96) / Oregon Gresham-Warm Springs zone (m)|1619|397|0|en|proj=tmerc lat_0=45 lon_0=-122.333333333333 k=1.00005 x_0=10000 y_0=0
6829|P|NAD83(CORS96) / Oregon Gresham-Warm Springs zone (ft)|1619|397|4|en|proj=tmerc lat_0=45 lon_0=-122.333333333333 k=1.00005 x_0=10000.0000152 y_0=0
6830|P|NAD83(2011) / Oregon Gresham-Warm Springs zone (m)|1619|391|0|en|proj=tmerc lat_0=45 lon_0=-122.333333333333 k=1.00005 x_0=10000 y_0=0
6831|P|NAD83(2011) / Oregon Gresham-Warm Springs zone (ft)|1619|391|4|en|proj=tmerc lat_0=45 lon_0=-122.333333333333 k=1.00005 x_0=10000.0000152 y_0=0
6832|P|NAD83(CORS96) / Oregon La Grande zone (m)|1620|397|0|en|proj=tmerc lat_0=45 lon_0=-118 k=1.00013 x_0=40000 y_0=0
6833|P|NAD83(CORS96) / Oregon La Grande zone (ft)|1620|397|4|en|proj=tmerc lat_0=45 lon_0=-118 k=1.00013 x_0=39999.99999984 y_0=0
6834|P|NAD83(2011) / Oregon La Grande zone (m)|1620|391|0|en|proj=tmerc lat_0=45 lon_0=-118 k=1.00013 x_0=40000 y_0=0
6835|P|NAD83(2011) / Oregon La Grande zone (ft)|1620|391|4|en|proj=tmerc lat_0=45 lon_0=-118 k=1.00013 x_0=39999.99999984 y_0=0
6836|P|NAD83(CORS96) / Oregon Ontario zone (m)|1621|397|0|en|proj=tmerc lat_0=43.25 lon_0=-117 k=1.0001 x_0=80000 y_0=0
6837|P|NAD83(CORS96) / Oregon Ontario zone (ft)|1621|397|4|en|proj=tmerc lat_0=43.25 lon_0=-117 k=1.0001 x_0=79999.99999968 y_0=0
6838|P|NAD83(2011) / Oregon Ontario zone (m)|1621|391|0|en|proj=tmerc lat_0=43.25 lon_0=-117 k=1.0001 x_0=80000 y_0=0
6839|P|NAD83(2011) / Oregon Ontario zone (ft)|1621|391|4|en|proj=tmerc lat_0=43.25 lon_0=-117 k=1.0001 x_0=79999.99999968 y_0=0
6840|P|NAD83(CORS96) / Oregon Coast zone (m)|1622|397|0|en|proj=omerc no_uoff lat_0=44.75 lonc=-124.05 alpha=5 gamma=5 k=1 x_0=-300000 y_0=-4600000
6841|P|NAD83(CORS96) / Oregon Coast zone (ft)|1622|397|4|en|proj=omerc no_uoff lat_0=44.75 lonc=-124.05 alpha=5 gamma=5 k=1 x_0=-299999.9999988 y_0=-4600000.00001208
6842|P|NAD83(2011) / Oregon Coast zone (m)|1622|391|0|en|proj=omerc no_uoff lat_0=44.75 lonc=-124.05 alpha=5 gamma=5 k=1 x_0=-300000 y_0=-4600000
6843|P|NAD83(2011) / Oregon Coast zone (ft)|1622|391|4|en|proj=omerc no_uoff lat_0=44.75 lonc=-124.05 alpha=5 gamma=5 k=1 x_0=-299999.9999988 y_0=-4600000.00001208
6844|P|NAD83(CORS96) / Oregon Pendleton zone (m)|1623|397|0|en|proj=tmerc lat_0=45.25 lon_0=-119.166666666667 k=1.000045 x_0=60000 y_0=0
6845|P|NAD83(CORS96) / Oregon Pendleton zone (ft)|1623|397|4|en|proj=tmerc lat_0=45.25 lon_0=-119.166666666667 k=1.000045 x_0=59999.99999976 y_0=0
6846|P|NAD83(2011) / Oregon Pendleton zone (m)|1623|391|0|en|proj=tmerc lat_0=45.25 lon_0=-119.166666666667 k=1.000045 x_0=60000 y_0=0
6847|P|NAD83(2011) / Oregon Pendleton zone (ft)|1623|391|4|en|proj=tmerc lat_0=45.25 lon_0=-119.166666666667 k=1.000045 x_0=59999.99999976 y_0=0
6848|P|NAD83(CORS96) / Oregon Pendleton-La Grande zone (m)|1624|397|0|en|proj=tmerc lat_0=45.0833333333333 lon_0=-118.333333333333 k=1.000175 x_0=30000 y_0=0
6849|P|NAD83(CORS96) / Oregon Pendleton-La Grande zone (ft)|1624|397|4|en|proj=tmerc lat_0=45.0833333333333 lon_0=-118.333333333333 k=1.000175 x_0=30000.00001512 y_0=0
6850|P|NAD83(2011) / Oregon Pendleton-La Grande zone (m)|1624|391|0|en|proj=tmerc lat_0=45.0833333333333 lon_0=-118.333333333333 k=1.000175 x_0=30000 y_0=0
6851|P|NAD83(2011) / Oregon Pendleton-La Grande zone (ft)|1624|391|4|en|proj=tmerc lat_0=45.0833333333333 lon_0=-118.333333333333 k=1.000175 x_0=30000.00001512 y_0=0
6852|P|NAD83(CORS96) / Oregon Portland zone (m)|1625|397|0|en|proj=lcc lat_1=45.5 lat_0=45.5 lon_0=-122.75 k_0=1.000002 x_0=100000 y_0=50000
6853|P|NAD83(CORS96) / Oregon Portland zone (ft)|1625|397|4|en|proj=lcc lat_1=45.5 lat_0=45.5 lon_0=-122.75 k_0=1.000002 x_0=99999.9999996 y_0=50000.00001504
6854|P|NAD83(2011) / Oregon Portland zone (m)|1625|391|0|en|proj=lcc lat_1=45.5 lat_0=45.5 lon_0=-122.75 k_0=1.000002 x_0=100000 y_0=50000
6855|P|NAD83(2011) / Oregon Portland zone (ft)|1625|391|4|en|proj=lcc lat_1=45.5 lat_0=45.5 lon_0=-122.75 k_0=1.000002 x_0=99999.9999996 y_0=50000.00001504
6856|P|NAD83(CORS96) / Oregon Salem zone (m)|1626|397|0|en|proj=tmerc lat_0=44.3333333333333 lon_0=-123.083333333333 k=1.00001 x_0=50000 y_0=0
6857|P|NAD83(CORS96) / Oregon Salem zone (ft)|1626|397|4|en|proj=tmerc lat_0=44.3333333333333 lon_0=-123.083333333333 k=1.00001 x_0=50000.00001504 y_0=0
6858|P|NAD83(2011) / Oregon Salem zone (m)|1626|391|0|en|proj=tmerc lat_0=44.3333333333333 lon_0=-123.083333333333 k=1.00001 x_0=50000 y_0=0
6859|P|NAD83(2011) / Oregon Salem zone (ft)|1626|391|4|en|proj=tmerc lat_0=44.3333333333333 lon_0=-123.083333333333 k=1.00001 x_0=50000.00001504 y_0=0
6860|P|NAD83(CORS96) / Oregon Santiam Pass zone (m)|1627|397|0|en|proj=tmerc lat_0=44.0833333333333 lon_0=-122.5 k=1.000155 x_0=0 y_0=0
6861|P|NAD83(CORS96) / Oregon Santiam Pass zone (ft)|1627|397|4|en|proj=tmerc lat_0=44.0833333333333 lon_0=-122.5 k=1.000155 x_0=0 y_0=0
6862|P|NAD83(2011) / Oregon Santiam Pass zone (m)|1627|391|0|en|proj=tmerc lat_0=44.0833333333333 lon_0=-122.5 k=1.000155 x_0=0 y_0=0
6863|P|NAD83(2011) / Oregon Santiam Pass zone (ft)|1627|391|4|en|proj=tmerc lat_0=44.0833333333333 lon_0=-122.5 k=1.000155 x_0=0 y_0=0
6867|P|NAD83(CORS96) / Oregon LCC (m)|527|397|0|en|proj=lcc lat_0=41.75 lon_0=-120.5 lat_1=43 lat_2=45.5 x_0=400000 y_0=0
6868|P|NAD83(CORS96) / Oregon GIC Lambert (ft)|527|397|4|en|proj=lcc lat_0=41.75 lon_0=-120.5 lat_1=43 lat_2=45.5 x_0=399999.9999984 y_0=0
6870|P|ETRS89 / Albania TM 2010|313|130|0|ne|proj=tmerc lat_0=0 lon_0=20 k=1 x_0=500000 y_0=0
6875|P|RDN2008 / Italy zone (N-E)|1628|396|0|ne|proj=tmerc lat_0=0 lon_0=12 k=0.9985 x_0=7000000 y_0=0
6876|P|RDN2008 / Zone 12 (N-E)|1628|396|0|ne|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=3000000 y_0=0
6879|P|NAD83(2011) / Wisconsin Central|229|391|0|en|proj=lcc lat_0=43.8333333333333 lon_0=-90 lat_1=45.5 lat_2=44.25 x_0=600000 y_0=0
6880|P|NAD83(2011) / Nebraska (ftUS)|465|391|3|en|proj=lcc lat_0=39.8333333333333 lon_0=-100 lat_1=43 lat_2=40 x_0=500000.00001016 y_0=0
6881|G|Aden 1925|1031|398
6882|G|Bekaa Valley 1920|1629|399
6883|G|Bioko|1630|400
6884|P|NAD83(CORS96) / Oregon North|211|397|0|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=46 lat_2=44.3333333333333 x_0=2500000 y_0=0
6885|P|NAD83(CORS96) / Oregon North (ft)|211|397|4|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=46 lat_2=44.3333333333333 x_0=2500000.0001424 y_0=0
6886|P|NAD83(CORS96) / Oregon South|212|397|0|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=44 lat_2=42.3333333333333 x_0=1500000 y_0=0
6887|P|NAD83(CORS96) / Oregon South (ft)|212|397|4|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=44 lat_2=42.3333333333333 x_0=1500000.0001464 y_0=0
6892|G|South East Island 1943|1631|401
6893|K|WGS 84 / World Mercator + EGM2008 height|943|3395|3855
6894|G|Gambia|1632|402
6915|P|South East Island 1943 / UTM zone 40N|1631|401|0|en|proj=utm zone=40
6916|V|SHD height|846|Singapore Height Datum|0|u
6917|K|SVY21 + SHD height|846|4757|6916
6922|P|NAD83 / Kansas LCC|1633|138|0|en|proj=lcc lat_0=36 lon_0=-98.25 lat_1=39.5 lat_2=37.5 x_0=400000 y_0=0
6923|P|NAD83 / Kansas LCC (ftUS)|1633|138|3|en|proj=lcc lat_0=36 lon_0=-98.25 lat_1=39.5 lat_2=37.5 x_0=399999.99998984 y_0=0
6924|P|NAD83(2011) / Kansas LCC|1633|391|0|en|proj=lcc lat_0=36 lon_0=-98.25 lat_1=39.5 lat_2=37.5 x_0=400000 y_0=0
6925|P|NAD83(2011) / Kansas LCC (ftUS)|1633|391|3|en|proj=lcc lat_0=36 lon_0=-98.25 lat_1=39.5 lat_2=37.5 x_0=399999.99998984 y_0=0
6927|K|SVY21 / Singapore TM + SHD height|846|3414|6916
6931|P|WGS 84 / NSIDC EASE-Grid 2.0 North|1634|183|0|en|proj=laea lat_0=90 lon_0=0 x_0=0 y_0=0
6932|P|WGS 84 / NSIDC EASE-Grid 2.0 South|1635|183|0|en|proj=laea lat_0=-90 lon_0=0 x_0=0 y_0=0
6933|P|WGS 84 / NSIDC EASE-Grid 2.0 Global|1636|183|0|en|proj=cea lat_ts=30 lon_0=0 x_0=0 y_0=0
6934|C|IGS08|943|480
6962|P|ETRS89 / Albania LCC 2010|313|130|0|ne|proj=lcc lat_0=41 lon_0=20 lat_1=39 lat_2=43 x_0=0 y_0=0
6966|P|NAD27 / Michigan North|193|137|3|en|proj=lcc lat_0=44.7833333333333 lon_0=-87 lat_1=45.4833333333333 lat_2=47.0833333333333 x_0=609601.219202438 y_0=0 k_0=1.0000382
6981|C|IG05 Intermediate CRS|33|403
6982|H|IG05 Intermediate CRS|33|403
6983|G|IG05 Intermediate CRS|33|403
6984|P|Israeli Grid 05|33|403|0|en|proj=tmerc lat_0=31.7343936111111 lon_0=35.2045169444444 k=1.0000067 x_0=219529.584 y_0=626907.39
6988|C|IG05/12 Intermediate CRS|33|404
6989|H|IG05/12 Intermediate CRS|33|404
6990|G|IG05/12 Intermediate CRS|33|404
6991|P|Israeli Grid 05/12|33|404|0|en|proj=tmerc lat_0=31.7343936111111 lon_0=35.2045169444444 k=1.0000067 x_0=219529.584 y_0=626907.39
7005|P|Nahrwan 1934 / UTM zone 37N|835|315|0|en|proj=utm zone=37
7006|P|Nahrwan 1934 / UTM zone 38N|836|315|0|en|proj=utm zone=38
7007|P|Nahrwan 1934 / UTM zone 39N|960|315|0|en|proj=utm zone=39
7034|H|RGSPM06 (lon-lat)|1127|405
7035|G|RGSPM06 (lon-lat)|1127|405
7036|H|RGR92 (lon-lat)|1149|406
7037|G|RGR92 (lon-lat)|1149|406
7038|H|RGM04 (lon-lat)|1128|407
7039|G|RGM04 (lon-lat)|1128|407
7040|H|RGFG95 (lon-lat)|1148|408
7041|G|RGFG95 (lon-lat)|1148|408
7042|H|RGF93 v1 (lon-lat)|122|410
7057|P|NAD83(2011) / IaRCS zone 1|1637|391|3|en|proj=lcc lat_1=43.2 lat_0=43.2 lon_0=-95.25 k_0=1.000052 x_0=3505207.01041402 y_0=2926085.8521717
7058|P|NAD83(2011) / IaRCS zone 2|1638|391|3|en|proj=lcc lat_1=43.1666666666667 lat_0=43.1666666666667 lon_0=-92.75 k_0=1.000043 x_0=3810007.62001524 y_0=2987045.97409195
7059|P|NAD83(2011) / IaRCS zone 3|1639|391|3|en|proj=tmerc lat_0=40.25 lon_0=-91.2 k=1.000035 x_0=4114808.22961646 y_0=2529845.05969012
7060|P|NAD83(2011) / IaRCS zone 4|1640|391|3|en|proj=lcc lat_1=42.5333333333333 lat_0=42.5333333333333 lon_0=-94.8333333333333 k_0=1.000045 x_0=4419608.83921768 y_0=2621285.24257048
7061|P|NAD83(2011) / IaRCS zone 5|1641|391|3|en|proj=lcc lat_1=42.65 lat_0=42.65 lon_0=-92.25 k_0=1.000032 x_0=4724409.4488189 y_0=2712725.42545085
7062|P|NAD83(2011) / IaRCS zone 6|1642|391|3|en|proj=tmerc lat_0=40.25 lon_0=-95.7333333333333 k=1.000039 x_0=5029210.05842011 y_0=2011684.02336805
7063|P|NAD83(2011) / IaRCS zone 7|1643|391|3|en|proj=tmerc lat_0=40.25 lon_0=-94.6333333333333 k=1.000045 x_0=5334010.66802133 y_0=2072644.14528829
7064|P|NAD83(2011) / IaRCS zone 8|1644|391|3|en|proj=tmerc lat_0=40.25 lon_0=-93.7166666666667 k=1.000033 x_0=5638811.27762255 y_0=2133604.26720853
7065|P|NAD83(2011) / IaRCS zone 9|1645|391|3|en|proj=tmerc lat_0=40.25 lon_0=-92.8166666666667 k=1.000027 x_0=5943611.88722377 y_0=2194564.38912878
7066|P|NAD83(2011) / IaRCS zone 10|1646|391|3|en|proj=lcc lat_1=41.8333333333333 lat_0=41.8333333333333 lon_0=-91.6666666666667 k_0=1.00002 x_0=6248412.49682499 y_0=2438404.87680975
7067|P|NAD83(2011) / IaRCS zone 11|1647|391|3|en|proj=tmerc lat_0=40.25 lon_0=-90.5333333333333 k=1.000027 x_0=6553213.10642621 y_0=2316484.63296926
7068|P|NAD83(2011) / IaRCS zone 12|1648|391|3|en|proj=lcc lat_1=40.9166666666667 lat_0=40.9166666666667 lon_0=-93.75 k_0=1.000037 x_0=6858013.71602743 y_0=1889763.77952756
7069|P|NAD83(2011) / IaRCS zone 13|1649|391|3|en|proj=tmerc lat_0=40.25 lon_0=-91.9166666666667 k=1.00002 x_0=7162814.32562865 y_0=1950723.9014478
7070|P|NAD83(2011) / IaRCS zone 14|1650|391|3|en|proj=tmerc lat_0=40.25 lon_0=-91.25 k=1.000018 x_0=7467614.93522987 y_0=1889763.77952756
7071|C|RGTAAF07|1651|409
7072|H|RGTAAF07|1651|409
7073|G|RGTAAF07|1651|409
7074|P|RGTAAF07 / UTM zone 37S|1652|409|0|en|proj=utm zone=37 south
7075|P|RGTAAF07 / UTM zone 38S|1653|409|0|en|proj=utm zone=38 south
7076|P|RGTAAF07 / UTM zone 39S|1654|409|0|en|proj=utm zone=39 south
7077|P|RGTAAF07 / UTM zone 40S|1655|409|0|en|proj=utm zone=40 south
7078|P|RGTAAF07 / UTM zone 41S|1656|409|0|en|proj=utm zone=41 south
7079|P|RGTAAF07 / UTM zone 42S|1657|409|0|en|proj=utm zone=42 south
7080|P|RGTAAF07 / UTM zone 43S|1658|409|0|en|proj=utm zone=43 south
7081|P|RGTAAF07 / UTM zone 44S|1659|409|0|en|proj=utm zone=44 south
7084|G|RGF93 v1 (lon-lat)|122|410
7085|H|RGAF09 (lon-lat)|1142|411
7086|G|RGAF09 (lon-lat)|1142|411
7087|H|RGTAAF07 (lon-lat)|1651|412
7109|P|NAD83(2011) / RMTCRS St Mary (m)|1660|391|0|en|proj=tmerc lat_0=48.5 lon_0=-112.5 k=1.00016 x_0=150000 y_0=0
7110|P|NAD83(2011) / RMTCRS Blackfeet (m)|1661|391|0|en|proj=tmerc lat_0=48 lon_0=-112.5 k=1.00019 x_0=100000 y_0=0
7111|P|NAD83(2011) / RMTCRS Milk River (m)|1662|391|0|en|proj=lcc lat_1=48.5 lat_0=48.5 lon_0=-111 k_0=1.000145 x_0=150000 y_0=200000
7112|P|NAD83(2011) / RMTCRS Fort Belknap (m)|1663|391|0|en|proj=lcc lat_1=48.5 lat_0=48.5 lon_0=-108.5 k_0=1.00012 x_0=200000 y_0=150000
7113|P|NAD83(2011) / RMTCRS Fort Peck Assiniboine (m)|1664|391|0|en|proj=lcc lat_1=48.3333333333333 lat_0=48.3333333333333 lon_0=-105.5 k_0=1.00012 x_0=200000 y_0=100000
7114|P|NAD83(2011) / RMTCRS Fort Peck Sioux (m)|1665|391|0|en|proj=lcc lat_1=48.3333333333333 lat_0=48.3333333333333 lon_0=-105.5 k_0=1.00009 x_0=100000 y_0=50000
7115|P|NAD83(2011) / RMTCRS Crow (m)|1666|391|0|en|proj=tmerc lat_0=44.75 lon_0=-107.75 k=1.000148 x_0=200000 y_0=0
7116|P|NAD83(2011) / RMTCRS Bobcat (m)|1667|391|0|en|proj=lcc lat_1=46.25 lat_0=46.25 lon_0=-111.25 k_0=1.000185 x_0=100000 y_0=100000
7117|P|NAD83(2011) / RMTCRS Billings (m)|1668|391|0|en|proj=lcc lat_1=45.7833333333333 lat_0=45.7833333333333 lon_0=-108.416666666667 k_0=1.0001515 x_0=200000 y_0=50000
7118|P|NAD83(2011) / RMTCRS Wind River (m)|1669|391|0|en|proj=tmerc lat_0=42.6666666666667 lon_0=-108.333333333333 k=1.00024 x_0=100000 y_0=0
7119|P|NAD83(2011) / RMTCRS St Mary (ft)|1660|391|4|en|proj=tmerc lat_0=48.5 lon_0=-112.5 k=1.00016 x_0=150000.00001464 y_0=0
7120|P|NAD83(2011) / RMTCRS Blackfeet (ft)|1661|391|4|en|proj=tmerc lat_0=48 lon_0=-112.5 k=1.00019 x_0=99999.9999996 y_0=0
7121|P|NAD83(2011) / RMTCRS Milk River (ft)|1662|391|4|en|proj=lcc lat_1=48.5 lat_0=48.5 lon_0=-111 k_0=1.000145 x_0=150000.00001464 y_0=199999.9999992
7122|P|NAD83(2011) / RMTCRS Fort Belknap (ft)|1663|391|4|en|proj=lcc lat_1=48.5 lat_0=48.5 lon_0=-108.5 k_0=1.00012 x_0=199999.9999992 y_0=150000.00001464
7123|P|NAD83(2011) / RMTCRS Fort Peck Assiniboine (ft)|1664|391|4|en|proj=lcc lat_1=48.3333333333333 lat_0=48.3333333333333 lon_0=-105.5 k_0=1.00012 x_0=199999.9999992 y_0=99999.9999996
7124|P|NAD83(2011) / RMTCRS Fort Peck Sioux (ft)|1665|391|4|en|proj=lcc lat_1=48.3333333333333 lat_0=48.3333333333333 lon_0=-105.5 k_0=1.00009 x_0=99999.9999996 y_0=49999.99971024
7125|P|NAD83(2011) / RMTCRS Crow (ft)|1666|391|4|en|proj=tmerc lat_0=44.75 lon_0=-107.75 k=1.000148 x_0=199999.9999992 y_0=0
7126|P|NAD83(2011) / RMTCRS Bobcat (ft)|1667|391|4|en|proj=lcc lat_1=46.25 lat_0=46.25 lon_0=-111.25 k_0=1.000185 x_0=99999.9999996 y_0=99999.9999996
7127|P|NAD83(2011) / RMTCRS Billings (ft)|1668|391|4|en|proj=lcc lat_1=45.7833333333333 lat_0=45.7833333333333 lon_0=-108.416666666667 k_0=1.0001515 x_0=199999.9999992 y_0=50000.00001504
7128|P|NAD83(2011) / RMTCRS Wind River (ftUS)|1669|391|3|en|proj=tmerc lat_0=42.6666666666667 lon_0=-108.333333333333 k=1.00024 x_0=99999.9999898399 y_0=0
7131|P|NAD83(2011) / San Francisco CS13|1670|391|0|en|proj=tmerc lat_0=37.75 lon_0=-122.45 k=1.000007 x_0=48000 y_0=24000
7132|P|NAD83(2011) / San Francisco CS13 (ftUS)|1670|391|3|en|proj=tmerc lat_0=37.75 lon_0=-122.45 k=1.000007 x_0=48000 y_0=24000
7133|G|RGTAAF07 (lon-lat)|1651|412
7134|C|IGD05|1671|413
7135|H|IGD05|1671|413
7136|G|IGD05|1671|413
7137|C|IGD05/12|1671|414
7138|H|IGD05/12|1671|414
7139|G|IGD05/12|1671|414
7142|P|Palestine 1923 / Palestine Grid modified|1100|149|0|en|proj=tmerc lat_0=31.7340969444444 lon_0=35.2120805555556 k=1 x_0=170251.555 y_0=126867.909
7257|P|NAD83(2011) / InGCS Adams (m)|1672|391|0|en|proj=tmerc lat_0=40.55 lon_0=-84.95 k=1.000034 x_0=240000 y_0=36000
7258|P|NAD83(2011) / InGCS Adams (ftUS)|1672|391|3|en|proj=tmerc lat_0=40.55 lon_0=-84.95 k=1.000034 x_0=240000 y_0=36000
7259|P|NAD83(2011) / InGCS Allen (m)|1673|391|0|en|proj=tmerc lat_0=40.9 lon_0=-85.05 k=1.000031 x_0=240000 y_0=36000
7260|P|NAD83(2011) / InGCS Allen (ftUS)|1673|391|3|en|proj=tmerc lat_0=40.9 lon_0=-85.05 k=1.000031 x_0=240000 y_0=36000
7261|P|NAD83(2011) / InGCS Bartholomew (m)|1674|391|0|en|proj=tmerc lat_0=39 lon_0=-85.85 k=1.000026 x_0=240000 y_0=36000
7262|P|NAD83(2011) / InGCS Bartholomew (ftUS)|1674|391|3|en|proj=tmerc lat_0=39 lon_0=-85.85 k=1.000026 x_0=240000 y_0=36000
7263|P|NAD83(2011) / InGCS Benton (m)|1675|391|0|en|proj=tmerc lat_0=40.45 lon_0=-87.3 k=1.000029 x_0=240000 y_0=36000
7264|P|NAD83(2011) / InGCS Benton (ftUS)|1675|391|3|en|proj=tmerc lat_0=40.45 lon_0=-87.3 k=1.000029 x_0=240000 y_0=36000
7265|P|NAD83(2011) / InGCS Blackford-Delaware (m)|1676|391|0|en|proj=tmerc lat_0=40.05 lon_0=-85.4 k=1.000038 x_0=240000 y_0=36000
7266|P|NAD83(2011) / InGCS Blackford-Delaware (ftUS)|1676|391|3|en|proj=tmerc lat_0=40.05 lon_0=-85.4 k=1.000038 x_0=240000 y_0=36000
7267|P|NAD83(2011) / InGCS Boone-Hendricks (m)|1677|391|0|en|proj=tmerc lat_0=39.6 lon_0=-86.5 k=1.000036 x_0=240000 y_0=36000
7268|P|NAD83(2011) / InGCS Boone-Hendricks (ftUS)|1677|391|3|en|proj=tmerc lat_0=39.6 lon_0=-86.5 k=1.000036 x_0=240000 y_0=36000
7269|P|NAD83(2011) / InGCS Brown (m)|1678|391|0|en|proj=tmerc lat_0=39 lon_0=-86.3 k=1.00003 x_0=240000 y_0=36000
7270|P|NAD83(2011) / InGCS Brown (ftUS)|1678|391|3|en|proj=tmerc lat_0=39 lon_0=-86.3 k=1.00003 x_0=240000 y_0=36000
7271|P|NAD83(2011) / InGCS Carroll (m)|1679|391|0|en|proj=tmerc lat_0=40.4 lon_0=-86.65 k=1.000026 x_0=240000 y_0=36000
7272|P|NAD83(2011) / InGCS Carroll (ftUS)|1679|391|3|en|proj=tmerc lat_0=40.4 lon_0=-86.65 k=1.000026 x_0=240000 y_0=36000
7273|P|NAD83(2011) / InGCS Cass (m)|1680|391|0|en|proj=tmerc lat_0=40.55 lon_0=-86.4 k=1.000028 x_0=240000 y_0=36000
7274|P|NAD83(2011) / InGCS Cass (ftUS)|1680|391|3|en|proj=tmerc lat_0=40.55 lon_0=-86.4 k=1.000028 x_0=240000 y_0=36000
7275|P|NAD83(2011) / InGCS Clark-Floyd-Scott (m)|1681|391|0|en|proj=tmerc lat_0=38.15 lon_0=-85.6 k=1.000021 x_0=240000 y_0=36000
7276|P|NAD83(2011) / InGCS Clark-Floyd-Scott (ftUS)|1681|391|3|en|proj=tmerc lat_0=38.15 lon_0=-85.6 k=1.000021 x_0=240000 y_0=36000
7277|P|NAD83(2011) / InGCS Clay (m)|1682|391|0|en|proj=tmerc lat_0=39.15 lon_0=-87.15 k=1.000024 x_0=240000 y_0=36000
7278|P|NAD83(2011) / InGCS Clay (ftUS)|1682|391|3|en|proj=tmerc lat_0=39.15 lon_0=-87.15 k=1.000024 x_0=240000 y_0=36000
7279|P|NAD83(2011) / InGCS Clinton (m)|1683|391|0|en|proj=tmerc lat_0=40.15 lon_0=-86.6 k=1.000032 x_0=240000 y_0=36000
7280|P|NAD83(2011) / InGCS Clinton (ftUS)|1683|391|3|en|proj=tmerc lat_0=40.15 lon_0=-86.6 k=1.000032 x_0=240000 y_0=36000
7281|P|NAD83(2011) / InGCS Crawford-Lawrence-Orange (m)|1684|391|0|en|proj=tmerc lat_0=38.1 lon_0=-86.5 k=1.000025 x_0=240000 y_0=36000
7282|P|NAD83(2011) / InGCS Crawford-Lawrence-Orange (ftUS)|1684|391|3|en|proj=tmerc lat_0=38.1 lon_0=-86.5 k=1.000025 x_0=240000 y_0=36000
7283|P|NAD83(2011) / InGCS Daviess-Greene (m)|1685|391|0|en|proj=tmerc lat_0=38.45 lon_0=-87.1 k=1.000018 x_0=240000 y_0=36000
7284|P|NAD83(2011) / InGCS Daviess-Greene (ftUS)|1685|391|3|en|proj=tmerc lat_0=38.45 lon_0=-87.1 k=1.000018 x_0=240000 y_0=36000
7285|P|NAD83(2011) / InGCS Dearborn-Ohio-Switzerland (m)|1686|391|0|en|proj=tmerc lat_0=38.65 lon_0=-84.9 k=1.000029 x_0=240000 y_0=36000
7286|P|NAD83(2011) / InGCS Dearborn-Ohio-Switzerland (ftUS)|1686|391|3|en|proj=tmerc lat_0=38.65 lon_0=-84.9 k=1.000029 x_0=240000 y_0=36000
7287|P|NAD83(2011) / InGCS Decatur-Rush (m)|1687|391|0|en|proj=tmerc lat_0=39.1 lon_0=-85.65 k=1.000036 x_0=240000 y_0=36000
7288|P|NAD83(2011) / InGCS Decatur-Rush (ftUS)|1687|391|3|en|proj=tmerc lat_0=39.1 lon_0=-85.65 k=1.000036 x_0=240000 y_0=36000
7289|P|NAD83(2011) / InGCS DeKalb (m)|1688|391|0|en|proj=tmerc lat_0=41.25 lon_0=-84.95 k=1.000036 x_0=240000 y_0=36000
7290|P|NAD83(2011) / InGCS DeKalb (ftUS)|1688|391|3|en|proj=tmerc lat_0=41.25 lon_0=-84.95 k=1.000036 x_0=240000 y_0=36000
7291|P|NAD83(2011) / InGCS Dubois-Martin (m)|1689|391|0|en|proj=tmerc lat_0=38.2 lon_0=-86.95 k=1.00002 x_0=240000 y_0=36000
7292|P|NAD83(2011) / InGCS Dubois-Martin (ftUS)|1689|391|3|en|proj=tmerc lat_0=38.2 lon_0=-86.95 k=1.00002 x_0=240000 y_0=36000
7293|P|NAD83(2011) / InGCS Elkhart-Kosciusko-Wabash (m)|1690|391|0|en|proj=tmerc lat_0=40.65 lon_0=-85.85 k=1.000033 x_0=240000 y_0=36000
7294|P|NAD83(2011) / InGCS Elkhart-Kosciusko-Wabash (ftUS)|1690|391|3|en|proj=tmerc lat_0=40.65 lon_0=-85.85 k=1.000033 x_0=240000 y_0=36000
7295|P|NAD83(2011) / InGCS Fayette-Franklin-Union (m)|1691|391|0|en|proj=tmerc lat_0=39.25 lon_0=-85.05 k=1.000038 x_0=240000 y_0=36000
7296|P|NAD83(2011) / InGCS Fayette-Franklin-Union (ftUS)|1691|391|3|en|proj=tmerc lat_0=39.25 lon_0=-85.05 k=1.000038 x_0=240000 y_0=36000
7297|P|NAD83(2011) / InGCS Fountain-Warren (m)|1692|391|0|en|proj=tmerc lat_0=39.95 lon_0=-87.3 k=1.000025 x_0=240000 y_0=36000
7298|P|NAD83(2011) / InGCS Fountain-Warren (ftUS)|1692|391|3|en|proj=tmerc lat_0=39.95 lon_0=-87.3 k=1.000025 x_0=240000 y_0=36000
7299|P|NAD83(2011) / InGCS Fulton-Marshall-St. Joseph (m)|1693|391|0|en|proj=tmerc lat_0=40.9 lon_0=-86.3 k=1.000031 x_0=240000 y_0=36000
7300|P|NAD83(2011) / InGCS Fulton-Marshall-St. Joseph (ftUS)|1693|391|3|en|proj=tmerc lat_0=40.9 lon_0=-86.3 k=1.000031 x_0=240000 y_0=36000
7301|P|NAD83(2011) / InGCS Gibson (m)|1694|391|0|en|proj=tmerc lat_0=38.15 lon_0=-87.65 k=1.000013 x_0=240000 y_0=36000
7302|P|NAD83(2011) / InGCS Gibson (ftUS)|1694|391|3|en|proj=tmerc lat_0=38.15 lon_0=-87.65 k=1.000013 x_0=240000 y_0=36000
7303|P|NAD83(2011) / InGCS Grant (m)|1695|391|0|en|proj=tmerc lat_0=40.35 lon_0=-85.7 k=1.000034 x_0=240000 y_0=36000
7304|P|NAD83(2011) / InGCS Grant (ftUS)|1695|391|3|en|proj=tmerc lat_0=40.35 lon_0=-85.7 k=1.000034 x_0=240000 y_0=36000
7305|P|NAD83(2011) / InGCS Hamilton-Tipton (m)|1696|391|0|en|proj=tmerc lat_0=39.9 lon_0=-86 k=1.000034 x_0=240000 y_0=36000
7306|P|NAD83(2011) / InGCS Hamilton-Tipton (ftUS)|1696|391|3|en|proj=tmerc lat_0=39.9 lon_0=-86 k=1.000034 x_0=240000 y_0=36000
7307|P|NAD83(2011) / InGCS Hancock-Madison (m)|1697|391|0|en|proj=tmerc lat_0=39.65 lon_0=-85.8 k=1.000036 x_0=240000 y_0=36000
7308|P|NAD83(2011) / InGCS Hancock-Madison (ftUS)|1697|391|3|en|proj=tmerc lat_0=39.65 lon_0=-85.8 k=1.000036 x_0=240000 y_0=36000
7309|P|NAD83(2011) / InGCS Harrison-Washington (m)|1698|391|0|en|proj=tmerc lat_0=37.95 lon_0=-86.15 k=1.000027 x_0=240000 y_0=36000
7310|P|NAD83(2011) / InGCS Harrison-Washington (ftUS)|1698|391|3|en|proj=tmerc lat_0=37.95 lon_0=-86.15 k=1.000027 x_0=240000 y_0=36000
7311|P|NAD83(2011) / InGCS Henry (m)|1699|391|0|en|proj=tmerc lat_0=39.75 lon_0=-85.45 k=1.000043 x_0=240000 y_0=36000
7312|P|NAD83(2011) / InGCS Henry (ftUS)|1699|391|3|en|proj=tmerc lat_0=39.75 lon_0=-85.45 k=1.000043 x_0=240000 y_0=36000
7313|P|NAD83(2011) / InGCS Howard-Miami (m)|1700|391|0|en|proj=tmerc lat_0=40.35 lon_0=-86.15 k=1.000031 x_0=240000 y_0=36000
7314|P|NAD83(2011) / InGCS Howard-Miami (ftUS)|1700|391|3|en|proj=tmerc lat_0=40.35 lon_0=-86.15 k=1.000031 x_0=240000 y_0=36000
7315|P|NAD83(2011) / InGCS Huntington-Whitley (m)|1701|391|0|en|proj=tmerc lat_0=40.65 lon_0=-85.5 k=1.000034 x_0=240000 y_0=36000
7316|P|NAD83(2011) / InGCS Huntington-Whitley (ftUS)|1701|391|3|en|proj=tmerc lat_0=40.65 lon_0=-85.5 k=1.000034 x_0=240000 y_0=36000
7317|P|NAD83(2011) / InGCS Jackson (m)|1702|391|0|en|proj=tmerc lat_0=38.7 lon_0=-85.95 k=1.000022 x_0=240000 y_0=36000
7318|P|NAD83(2011) / InGCS Jackson (ftUS)|1702|391|3|en|proj=tmerc lat_0=38.7 lon_0=-85.95 k=1.000022 x_0=240000 y_0=36000
7319|P|NAD83(2011) / InGCS Jasper-Porter (m)|1703|391|0|en|proj=tmerc lat_0=40.7 lon_0=-87.1 k=1.000027 x_0=240000 y_0=36000
7320|P|NAD83(2011) / InGCS Jasper-Porter (ftUS)|1703|391|3|en|proj=tmerc lat_0=40.7 lon_0=-87.1 k=1.000027 x_0=240000 y_0=36000
7321|P|NAD83(2011) / InGCS Jay (m)|1704|391|0|en|proj=tmerc lat_0=40.3 lon_0=-85 k=1.000038 x_0=240000 y_0=36000
7322|P|NAD83(2011) / InGCS Jay (ftUS)|1704|391|3|en|proj=tmerc lat_0=40.3 lon_0=-85 k=1.000038 x_0=240000 y_0=36000
7323|P|NAD83(2011) / InGCS Jefferson (m)|1705|391|0|en|proj=tmerc lat_0=38.55 lon_0=-85.35 k=1.000028 x_0=240000 y_0=36000
7324|P|NAD83(2011) / InGCS Jefferson (ftUS)|1705|391|3|en|proj=tmerc lat_0=38.55 lon_0=-85.35 k=1.000028 x_0=240000 y_0=36000
7325|P|NAD83(2011) / InGCS Jennings (m)|1706|391|0|en|proj=tmerc lat_0=38.8 lon_0=-85.8 k=1.000025 x_0=240000 y_0=36000
7326|P|NAD83(2011) / InGCS Jennings (ftUS)|1706|391|3|en|proj=tmerc lat_0=38.8 lon_0=-85.8 k=1.000025 x_0=240000 y_0=36000
7327|P|NAD83(2011) / InGCS Johnson-Marion (m)|1707|391|0|en|proj=tmerc lat_0=39.3 lon_0=-86.15 k=1.000031 x_0=240000 y_0=36000
7328|P|NAD83(2011) / InGCS Johnson-Marion (ftUS)|1707|391|3|en|proj=tmerc lat_0=39.3 lon_0=-86.15 k=1.000031 x_0=240000 y_0=36000
7329|P|NAD83(2011) / InGCS Knox (m)|1708|391|0|en|proj=tmerc lat_0=38.4 lon_0=-87.45 k=1.000015 x_0=240000 y_0=36000
7330|P|NAD83(2011) / InGCS Knox (ftUS)|1708|391|3|en|proj=tmerc lat_0=38.4 lon_0=-87.45 k=1.000015 x_0=240000 y_0=36000
7331|P|NAD83(2011) / InGCS LaGrange-Noble (m)|1709|391|0|en|proj=tmerc lat_0=41.25 lon_0=-85.45 k=1.000037 x_0=240000 y_0=36000
7332|P|NAD83(2011) / InGCS LaGrange-Noble (ftUS)|1709|391|3|en|proj=tmerc lat_0=41.25 lon_0=-85.45 k=1.000037 x_0=240000 y_0=36000
7333|P|NAD83(2011) / InGCS Lake-Newton (m)|1710|391|0|en|proj=tmerc lat_0=40.7 lon_0=-87.4 k=1.000026 x_0=240000 y_0=36000
7334|P|NAD83(2011) / InGCS Lake-Newton (ftUS)|1710|391|3|en|proj=tmerc lat_0=40.7 lon_0=-87.4 k=1.000026 x_0=240000 y_0=36000
7335|P|NAD83(2011) / InGCS LaPorte-Pulaski-Starke (m)|1711|391|0|en|proj=tmerc lat_0=40.9 lon_0=-86.75 k=1.000027 x_0=240000 y_0=36000
7336|P|NAD83(2011) / InGCS LaPorte-Pulaski-Starke (ftUS)|1711|391|3|en|proj=tmerc lat_0=40.9 lon_0=-86.75 k=1.000027 x_0=240000 y_0=36000
7337|P|NAD83(2011) / InGCS Monroe-Morgan (m)|1712|391|0|en|proj=tmerc lat_0=38.95 lon_0=-86.5 k=1.000028 x_0=240000 y_0=36000
7338|P|NAD83(2011) / InGCS Monroe-Morgan (ftUS)|1712|391|3|en|proj=tmerc lat_0=38.95 lon_0=-86.5 k=1.000028 x_0=240000 y_0=36000
7339|P|NAD83(2011) / InGCS Montgomery-Putnam (m)|1713|391|0|en|proj=tmerc lat_0=39.45 lon_0=-86.95 k=1.000031 x_0=240000 y_0=36000
7340|P|NAD83(2011) / InGCS Montgomery-Putnam (ftUS)|1713|391|3|en|proj=tmerc lat_0=39.45 lon_0=-86.95 k=1.000031 x_0=240000 y_0=36000
7341|P|NAD83(2011) / InGCS Owen (m)|1714|391|0|en|proj=tmerc lat_0=39.15 lon_0=-86.9 k=1.000026 x_0=240000 y_0=36000
7342|P|NAD83(2011) / InGCS Owen (ftUS)|1714|391|3|en|proj=tmerc lat_0=39.15 lon_0=-86.9 k=1.000026 x_0=240000 y_0=36000
7343|P|NAD83(2011) / InGCS Parke-Vermillion (m)|1715|391|0|en|proj=tmerc lat_0=39.6 lon_0=-87.35 k=1.000022 x_0=240000 y_0=36000
7344|P|NAD83(2011) / InGCS Parke-Vermillion (ftUS)|1715|391|3|en|proj=tmerc lat_0=39.6 lon_0=-87.35 k=1.000022 x_0=240000 y_0=36000
7345|P|NAD83(2011) / InGCS Perry (m)|1716|391|0|en|proj=tmerc lat_0=37.8 lon_0=-86.7 k=1.00002 x_0=240000 y_0=36000
7346|P|NAD83(2011) / InGCS Perry (ftUS)|1716|391|3|en|proj=tmerc lat_0=37.8 lon_0=-86.7 k=1.00002 x_0=240000 y_0=36000
7347|P|NAD83(2011) / InGCS Pike-Warrick (m)|1717|391|0|en|proj=tmerc lat_0=37.85 lon_0=-87.3 k=1.000015 x_0=240000 y_0=36000
7348|P|NAD83(2011) / InGCS Pike-Warrick (ftUS)|1717|391|3|en|proj=tmerc lat_0=37.85 lon_0=-87.3 k=1.000015 x_0=240000 y_0=36000
7349|P|NAD83(2011) / InGCS Posey (m)|1718|391|0|en|proj=tmerc lat_0=37.75 lon_0=-87.95 k=1.000013 x_0=240000 y_0=36000
7350|P|NAD83(2011) / InGCS Posey (ftUS)|1718|391|3|en|proj=tmerc lat_0=37.75 lon_0=-87.95 k=1.000013 x_0=240000 y_0=36000
7351|P|NAD83(2011) / InGCS Randolph-Wayne (m)|1719|391|0|en|proj=tmerc lat_0=39.7 lon_0=-85.05 k=1.000044 x_0=240000 y_0=36000
7352|P|NAD83(2011) / InGCS Randolph-Wayne (ftUS)|1719|391|3|en|proj=tmerc lat_0=39.7 lon_0=-85.05 k=1.000044 x_0=240000 y_0=36000
7353|P|NAD83(2011) / InGCS Ripley (m)|1720|391|0|en|proj=tmerc lat_0=38.9 lon_0=-85.3 k=1.000038 x_0=240000 y_0=36000
7354|P|NAD83(2011) / InGCS Ripley (ftUS)|1720|391|3|en|proj=tmerc lat_0=38.9 lon_0=-85.3 k=1.000038 x_0=240000 y_0=36000
7355|P|NAD83(2011) / InGCS Shelby (m)|1721|391|0|en|proj=tmerc lat_0=39.3 lon_0=-85.9 k=1.00003 x_0=240000 y_0=36000
7356|P|NAD83(2011) / InGCS Shelby (ftUS)|1721|391|3|en|proj=tmerc lat_0=39.3 lon_0=-85.9 k=1.00003 x_0=240000 y_0=36000
7357|P|NAD83(2011) / InGCS Spencer (m)|1722|391|0|en|proj=tmerc lat_0=37.75 lon_0=-87.05 k=1.000014 x_0=240000 y_0=36000
7358|P|NAD83(2011) / InGCS Spencer (ftUS)|1722|391|3|en|proj=tmerc lat_0=37.75 lon_0=-87.05 k=1.000014 x_0=240000 y_0=36000
7359|P|NAD83(2011) / InGCS Steuben (m)|1723|391|0|en|proj=tmerc lat_0=41.5 lon_0=-85 k=1.000041 x_0=240000 y_0=36000
7360|P|NAD83(2011) / InGCS Steuben (ftUS)|1723|391|3|en|proj=tmerc lat_0=41.5 lon_0=-85 k=1.000041 x_0=240000 y_0=36000
7361|P|NAD83(2011) / InGCS Sullivan (m)|1724|391|0|en|proj=tmerc lat_0=38.9 lon_0=-87.5 k=1.000017 x_0=240000 y_0=36000
7362|P|NAD83(2011) / InGCS Sullivan (ftUS)|1724|391|3|en|proj=tmerc lat_0=38.9 lon_0=-87.5 k=1.000017 x_0=240000 y_0=36000
7363|P|NAD83(2011) / InGCS Tippecanoe-White (m)|1725|391|0|en|proj=tmerc lat_0=40.2 lon_0=-86.9 k=1.000026 x_0=240000 y_0=36000
7364|P|NAD83(2011) / InGCS Tippecanoe-White (ftUS)|1725|391|3|en|proj=tmerc lat_0=40.2 lon_0=-86.9 k=1.000026 x_0=240000 y_0=36000
7365|P|NAD83(2011) / InGCS Vanderburgh (m)|1726|391|0|en|proj=tmerc lat_0=37.8 lon_0=-87.55 k=1.000015 x_0=240000 y_0=36000
7366|P|NAD83(2011) / InGCS Vanderburgh (ftUS)|1726|391|3|en|proj=tmerc lat_0=37.8 lon_0=-87.55 k=1.000015 x_0=240000 y_0=36000
7367|P|NAD83(2011) / InGCS Vigo (m)|1727|391|0|en|proj=tmerc lat_0=39.25 lon_0=-87.45 k=1.00002 x_0=240000 y_0=36000
7368|P|NAD83(2011) / InGCS Vigo (ftUS)|1727|391|3|en|proj=tmerc lat_0=39.25 lon_0=-87.45 k=1.00002 x_0=240000 y_0=36000
7369|P|NAD83(2011) / InGCS Wells (m)|1728|391|0|en|proj=tmerc lat_0=40.55 lon_0=-85.25 k=1.000034 x_0=240000 y_0=36000
7370|P|NAD83(2011) / InGCS Wells (ftUS)|1728|391|3|en|proj=tmerc lat_0=40.55 lon_0=-85.25 k=1.000034 x_0=240000 y_0=36000
7371|C|ONGD14|1729|415
7372|H|ONGD14|1729|415
7373|G|ONGD14|1729|415
7374|P|ONGD14 / UTM zone 39N|1730|415|0|en|proj=utm zone=39
7375|P|ONGD14 / UTM zone 40N|1731|415|0|en|proj=utm zone=40
7376|P|ONGD14 / UTM zone 41N|1732|415|0|en|proj=utm zone=41
7404|K|RT90 + RH70 height|1116|4124|5718
7405|K|OSGB36 / British National Grid + ODN height|1378|27700|5701
7406|K|NAD27 + NGVD29 height (ftUS)|1218|4267|5702
7407|K|NAD27 / Texas North + NGVD29 height (ftUS)|216|32037|5702
7409|K|ETRS89 + EVRF2000 height|1388|4258|5730
7411|K|NTF (Paris) / Lambert zone II + NGF Lallemand height|1212|27572|5719
7414|K|Tokyo + JSLD69 height|1385|4301|5723
7415|K|Amersfoort / RD New + NAP height|1106|28992|5709
7416|K|ETRS89 / UTM zone 32N + DVR90 height|1733|25832|5799
7417|K|ETRS89 / UTM zone 33N + DVR90 height|1734|25833|5799
7418|K|ETRS89 / Kp2000 Jutland + DVR90 height|143|2196|5799
7419|K|ETRS89 / Kp2000 Zealand + DVR90 height|144|2197|5799
7420|K|ETRS89 / Kp2000 Bornholm + DVR90 height|145|2198|5799
7421|K|NTF (Paris) / Lambert zone II + NGF-IGN69 height|1212|27572|5720
7422|K|NTF (Paris) / Lambert zone III + NGF-IGN69 height|1735|27573|5720
7423|K|ETRS89 + EVRF2007 height|1358|4258|5621
7446|V|Famagusta 1960 height|1587|Famagusta 1960|0|u
7447|V|PNG08 height|1736|PNG08|0|u
7528|P|NAD83(2011) / WISCRS Adams and Juneau (m)|1737|391|0|en|proj=tmerc lat_0=43.3666666666667 lon_0=-90 k=1.0000365285 x_0=147218.6942 y_0=0.0037
7529|P|NAD83(2011) / WISCRS Ashland (m)|1738|391|0|en|proj=tmerc lat_0=45.7061111111111 lon_0=-90.6222222222222 k=1.0000495683 x_0=172821.9461 y_0=0.0017
7530|P|NAD83(2011) / WISCRS Barron (m)|1739|391|0|en|proj=tmerc lat_0=45.1333333333333 lon_0=-91.85 k=1.0000486665 x_0=93150 y_0=0.0029
7531|P|NAD83(2011) / WISCRS Bayfield (m)|1740|391|0|en|proj=lcc lat_1=46.6696483772222 lat_0=46.6696483772222 lon_0=-91.1527777777778 k_0=1.0000331195 x_0=228600.4575 y_0=148551.4837
7532|P|NAD83(2011) / WISCRS Brown (m)|1741|391|0|en|proj=tmerc lat_0=43 lon_0=-88 k=1.00002 x_0=31600 y_0=4600
7533|P|NAD83(2011) / WISCRS Buffalo (m)|1742|391|0|en|proj=tmerc lat_0=43.4813888888889 lon_0=-91.7972222222222 k=1.0000382778 x_0=175260.3502 y_0=0.0048
7534|P|NAD83(2011) / WISCRS Burnett (m)|1743|391|0|en|proj=lcc lat_1=45.8987148658333 lat_0=45.8987148658333 lon_0=-92.4577777777778 k_0=1.0000383841 x_0=64008.1276 y_0=59445.9043
7535|P|NAD83(2011) / WISCRS Calumet, Fond du Lac, Outagamie and Winnebago (m)|1744|391|0|en|proj=tmerc lat_0=42.7194444444444 lon_0=-88.5 k=1.0000286569 x_0=244754.8893 y_0=0.0049
7536|P|NAD83(2011) / WISCRS Chippewa (m)|1745|391|0|en|proj=lcc lat_1=44.9778568986111 lat_0=44.9778568986111 lon_0=-91.2944444444444 k_0=1.0000391127 x_0=60045.72 y_0=44091.4346
7537|P|NAD83(2011) / WISCRS Clark (m)|1746|391|0|en|proj=tmerc lat_0=43.6 lon_0=-90.7083333333333 k=1.0000463003 x_0=199949.1989 y_0=0.0086
7538|P|NAD83(2011) / WISCRS Columbia (m)|1747|391|0|en|proj=lcc lat_1=43.4625466458333 lat_0=43.4625466458333 lon_0=-89.3944444444444 k_0=1.00003498 x_0=169164.3381 y_0=111569.6134
7539|P|NAD83(2011) / WISCRS Crawford (m)|1748|391|0|en|proj=lcc lat_1=43.200055605 lat_0=43.200055605 lon_0=-90.9388888888889 k_0=1.0000349151 x_0=113690.6274 y_0=53703.1201
7540|P|NAD83(2011) / WISCRS Dane (m)|1749|391|0|en|proj=lcc lat_1=43.0695160375 lat_0=43.0695160375 lon_0=-89.4222222222222 k_0=1.0000384786 x_0=247193.2944 y_0=146591.9896
7541|P|NAD83(2011) / WISCRS Dodge and Jefferson (m)|1750|391|0|en|proj=tmerc lat_0=41.4722222222222 lon_0=-88.775 k=1.0000346418 x_0=263347.7263 y_0=0.0076
7542|P|NAD83(2011) / WISCRS Door (m)|1751|391|0|en|proj=tmerc lat_0=44.4 lon_0=-87.2722222222222 k=1.0000187521 x_0=158801.1176 y_0=0.0023
7543|P|NAD83(2011) / WISCRS Douglas (m)|1752|391|0|en|proj=tmerc lat_0=45.8833333333333 lon_0=-91.9166666666667 k=1.0000385418 x_0=59131.3183 y_0=0.0041
7544|P|NAD83(2011) / WISCRS Dunn (m)|1753|391|0|en|proj=tmerc lat_0=44.4083333333333 lon_0=-91.8944444444444 k=1.0000410324 x_0=51816.104 y_0=0.003
7545|P|NAD83(2011) / WISCRS Eau Claire (m)|1754|391|0|en|proj=lcc lat_1=44.8722811263889 lat_0=44.8722811263889 lon_0=-91.2888888888889 k_0=1.000035079 x_0=120091.4402 y_0=91687.9239
7546|P|NAD83(2011) / WISCRS Florence (m)|1755|391|0|en|proj=tmerc lat_0=45.4388888888889 lon_0=-88.1416666666667 k=1.0000552095 x_0=133502.6683 y_0=0.0063
7547|P|NAD83(2011) / WISCRS Forest (m)|1756|391|0|en|proj=tmerc lat_0=44.0055555555556 lon_0=-88.6333333333333 k=1.0000673004 x_0=275844.5533 y_0=0.0157
7548|P|NAD83(2011) / WISCRS Grant (m)|1757|391|0|en|proj=tmerc lat_0=41.4111111111111 lon_0=-90.8 k=1.0000349452 x_0=242316.4841 y_0=0.01
7549|P|NAD83(2011) / WISCRS Green and Lafayette (m)|1758|391|0|en|proj=lcc lat_1=42.6375622769444 lat_0=42.6375622769444 lon_0=-89.8388888888889 k_0=1.0000390487 x_0=170078.7403 y_0=45830.2947
7550|P|NAD83(2011) / WISCRS Green Lake and Marquette (m)|1759|391|0|en|proj=lcc lat_1=43.8070001177778 lat_0=43.8070001177778 lon_0=-89.2416666666667 k_0=1.0000344057 x_0=150876.3018 y_0=79170.7795
7551|P|NAD83(2011) / WISCRS Iowa (m)|1760|391|0|en|proj=tmerc lat_0=42.5388888888889 lon_0=-90.1611111111111 k=1.0000394961 x_0=113081.0261 y_0=0.0045
7552|P|NAD83(2011) / WISCRS Iron (m)|1761|391|0|en|proj=tmerc lat_0=45.4333333333333 lon_0=-90.2555555555556 k=1.0000677153 x_0=220980.4419 y_0=0.0085
7553|P|NAD83(2011) / WISCRS Jackson (m)|1762|391|0|en|proj=tmerc lat_0=44.2533351277778 lon_0=-90.8442965194444 k=1.0000353 x_0=27000 y_0=25000
7554|P|NAD83(2011) / WISCRS Kenosha, Milwaukee, Ozaukee and Racine (m)|1763|391|0|en|proj=tmerc lat_0=42.2166666666667 lon_0=-87.8944444444444 k=1.0000260649 x_0=185928.3728 y_0=0.0009
7555|P|NAD83(2011) / WISCRS Kewaunee, Manitowoc and Sheboygan (m)|1764|391|0|en|proj=tmerc lat_0=43.2666666666667 lon_0=-87.55 k=1.0000233704 x_0=79857.7614 y_0=0.0012
7556|P|NAD83(2011) / WISCRS La Crosse (m)|1765|391|0|en|proj=tmerc lat_0=43.4511111111111 lon_0=-91.3166666666667 k=1.0000319985 x_0=130454.6598 y_0=0.0033
7557|P|NAD83(2011) / WISCRS Langlade (m)|1766|391|0|en|proj=lcc lat_1=45.1542371052778 lat_0=45.1542371052778 lon_0=-89.0333333333333 k_0=1.0000627024 x_0=198425.197 y_0=105279.7829
7558|P|NAD83(2011) / WISCRS Lincoln (m)|1767|391|0|en|proj=tmerc lat_0=44.8444444444444 lon_0=-89.7333333333333 k=1.0000599003 x_0=116129.0323 y_0=0.0058
7559|P|NAD83(2011) / WISCRS Marathon (m)|1768|391|0|en|proj=lcc lat_1=44.9009044236111 lat_0=44.9009044236111 lon_0=-89.77 k_0=1.000053289 x_0=74676.1493 y_0=55049.2669
7560|P|NAD83(2011) / WISCRS Marinette (m)|1769|391|0|en|proj=tmerc lat_0=44.6916666666667 lon_0=-87.7111111111111 k=1.0000234982 x_0=238658.8794 y_0=0.0032
7561|P|NAD83(2011) / WISCRS Menominee (m)|1770|391|0|en|proj=tmerc lat_0=44.7166666666667 lon_0=-88.4166666666667 k=1.0000362499 x_0=105461.0121 y_0=0.0029
7562|P|NAD83(2011) / WISCRS Monroe (m)|1771|391|0|en|proj=lcc lat_1=44.0000739286111 lat_0=44.0000739286111 lon_0=-90.6416666666667 k_0=1.0000434122 x_0=204521.209 y_0=121923.9861
7563|P|NAD83(2011) / WISCRS Oconto (m)|1772|391|0|en|proj=tmerc lat_0=44.3972222222222 lon_0=-87.9083333333333 k=1.0000236869 x_0=182880.3676 y_0=0.0033
7564|P|NAD83(2011) / WISCRS Oneida (m)|1773|391|0|en|proj=lcc lat_1=45.7042237702778 lat_0=45.7042237702778 lon_0=-89.5444444444444 k_0=1.0000686968 x_0=70104.1401 y_0=57588.0346
7565|P|NAD83(2011) / WISCRS Pepin and Pierce (m)|1774|391|0|en|proj=lcc lat_1=44.6361488719444 lat_0=44.6361488719444 lon_0=-92.2277777777778 k_0=1.0000362977 x_0=167640.3354 y_0=86033.0876
7566|P|NAD83(2011) / WISCRS Polk (m)|1775|391|0|en|proj=tmerc lat_0=44.6611111111111 lon_0=-92.6333333333333 k=1.0000433849 x_0=141732.2823 y_0=0.0059
7567|P|NAD83(2011) / WISCRS Portage (m)|1776|391|0|en|proj=lcc lat_1=44.4168239752778 lat_0=44.4168239752778 lon_0=-89.5 k_0=1.000039936 x_0=56388.1128 y_0=50022.1874
7568|P|NAD83(2011) / WISCRS Price (m)|1777|391|0|en|proj=tmerc lat_0=44.5555555555556 lon_0=-90.4888888888889 k=1.0000649554 x_0=227990.8546 y_0=0.0109
7569|P|NAD83(2011) / WISCRS Richland (m)|1778|391|0|en|proj=lcc lat_1=43.3223129275 lat_0=43.3223129275 lon_0=-90.4305555555556 k_0=1.0000375653 x_0=202387.6048 y_0=134255.4253
7570|P|NAD83(2011) / WISCRS Rock (m)|1779|391|0|en|proj=tmerc lat_0=41.9444444444444 lon_0=-89.0722222222222 k=1.0000337311 x_0=146304.2926 y_0=0.0068
7571|P|NAD83(2011) / WISCRS Rusk (m)|1780|391|0|en|proj=tmerc lat_0=43.9194444444444 lon_0=-91.0666666666667 k=1.0000495976 x_0=250546.1013 y_0=0.0234
7572|P|NAD83(2011) / WISCRS Sauk (m)|1781|391|0|en|proj=tmerc lat_0=42.8194444444444 lon_0=-89.9 k=1.0000373868 x_0=185623.5716 y_0=0.0051
7573|P|NAD83(2011) / WISCRS Sawyer (m)|1782|391|0|en|proj=lcc lat_1=45.9000991313889 lat_0=45.9000991313889 lon_0=-91.1166666666667 k_0=1.0000573461 x_0=216713.2336 y_0=120734.1631
7574|P|NAD83(2011) / WISCRS Shawano (m)|1783|391|0|en|proj=tmerc lat_0=44.0361111111111 lon_0=-88.6055555555556 k=1.000032144 x_0=262433.3253 y_0=0.0096
7575|P|NAD83(2011) / WISCRS St. Croix (m)|1784|391|0|en|proj=tmerc lat_0=44.0361111111111 lon_0=-92.6333333333333 k=1.0000381803 x_0=165506.7302 y_0=0.0103
7576|P|NAD83(2011) / WISCRS Taylor (m)|1785|391|0|en|proj=lcc lat_1=45.1778220858333 lat_0=45.1778220858333 lon_0=-90.4833333333333 k_0=1.0000597566 x_0=187147.5744 y_0=107746.7522
7577|P|NAD83(2011) / WISCRS Trempealeau (m)|1786|391|0|en|proj=tmerc lat_0=43.1611111111111 lon_0=-91.3666666666667 k=1.0000361538 x_0=256946.9138 y_0=0.0041
7578|P|NAD83(2011) / WISCRS Vernon (m)|1787|391|0|en|proj=lcc lat_1=43.5750329397222 lat_0=43.5750329397222 lon_0=-90.7833333333333 k_0=1.0000408158 x_0=222504.4451 y_0=47532.0602
7579|P|NAD83(2011) / WISCRS Vilas (m)|1788|391|0|en|proj=lcc lat_1=46.0778440905556 lat_0=46.0778440905556 lon_0=-89.4888888888889 k_0=1.0000730142 x_0=134417.0689 y_0=50337.1092
7580|P|NAD83(2011) / WISCRS Walworth (m)|1789|391|0|en|proj=lcc lat_1=42.6694620969444 lat_0=42.6694620969444 lon_0=-88.5416666666667 k_0=1.0000367192 x_0=232562.8651 y_0=111088.2224
7581|P|NAD83(2011) / WISCRS Washburn (m)|1790|391|0|en|proj=lcc lat_1=45.9612198333333 lat_0=45.9612198333333 lon_0=-91.7833333333333 k_0=1.0000475376 x_0=234086.8682 y_0=188358.6058
7582|P|NAD83(2011) / WISCRS Washington (m)|1791|391|0|en|proj=tmerc lat_0=42.9180555555556 lon_0=-88.0638888888889 k=1.00003738 x_0=120091.4415 y_0=0.003
7583|P|NAD83(2011) / WISCRS Waukesha (m)|1792|391|0|en|proj=tmerc lat_0=42.5694444444444 lon_0=-88.225 k=1.0000346179 x_0=208788.418 y_0=0.0034
7584|P|NAD83(2011) / WISCRS Waupaca (m)|1793|391|0|en|proj=tmerc lat_0=43.4202777777778 lon_0=-88.8166666666667 k=1.0000333645 x_0=185013.9709 y_0=0.007
7585|P|NAD83(2011) / WISCRS Waushara (m)|1794|391|0|en|proj=lcc lat_1=44.1139440458333 lat_0=44.1139440458333 lon_0=-89.2416666666667 k_0=1.0000392096 x_0=120091.4402 y_0=45069.7587
7586|P|NAD83(2011) / WISCRS Wood (m)|1795|391|0|en|proj=lcc lat_1=44.3625954694444 lat_0=44.3625954694444 lon_0=-90 k_0=1.0000421209 x_0=208483.6173 y_0=134589.754
7587|P|NAD83(2011) / WISCRS Adams and Juneau (ftUS)|1737|391|3|en|proj=tmerc lat_0=43.3666666666667 lon_0=-90 k=1.0000365285 x_0=147218.694132588 y_0=0.00365760731521463
7588|P|NAD83(2011) / WISCRS Ashland (ftUS)|1738|391|3|en|proj=tmerc lat_0=45.7061111111111 lon_0=-90.6222222222222 k=1.0000495683 x_0=172821.945948692 y_0=0.00182880365760731
7589|P|NAD83(2011) / WISCRS Barron (ftUS)|1739|391|3|en|proj=tmerc lat_0=45.1333333333333 lon_0=-91.85 k=1.0000486665 x_0=93150 y_0=0.00304800609601219
7590|P|NAD83(2011) / WISCRS Bayfield (ftUS)|1740|391|3|en|proj=lcc lat_1=46.6696483772222 lat_0=46.6696483772222 lon_0=-91.1527777777778 k_0=1.0000331195 x_0=228600.457505715 y_0=148551.483566167
7591|P|NAD83(2011) / WISCRS Brown (ftUS)|1741|391|3|en|proj=tmerc lat_0=43 lon_0=-88 k=1.00002 x_0=31599.9998983998 y_0=4599.99989839979
7592|P|NAD83(2011) / WISCRS Buffalo (ftUS)|1742|391|3|en|proj=tmerc lat_0=43.4813888888889 lon_0=-91.7972222222222 k=1.0000382778 x_0=175260.3502159 y_0=0.0048768097536195
7593|P|NAD83(2011) / WISCRS Burnett (ftUS)|1743|391|3|en|proj=lcc lat_1=45.8987148658333 lat_0=45.8987148658333 lon_0=-92.4577777777778 k_0=1.0000383841 x_0=64008.1277114554 y_0=59445.9041910083
7594|P|NAD83(2011) / WISCRS Calumet, Fond du Lac, Outagamie and Winnebago (ftUS)|1744|391|3|en|proj=tmerc lat_0=42.7194444444444 lon_0=-88.5 k=1.0000286569 x_0=244754.889204978 y_0=0.0048768097536195
7595|P|NAD83(2011) / WISCRS Chippewa (ftUS)|1745|391|3|en|proj=lcc lat_1=44.9778568986111 lat_0=44.9778568986111 lon_0=-91.2944444444444 k_0=1.0000391127 x_0=60045.7200914401 y_0=44091.434493269
7596|P|NAD83(2011) / WISCRS Clark (ftUS)|1746|391|3|en|proj=tmerc lat_0=43.6 lon_0=-90.7083333333333 k=1.0000463003 x_0=199949.198983998 y_0=0.00853441706883413
7597|P|NAD83(2011) / WISCRS Columbia (ftUS)|1747|391|3|en|proj=lcc lat_1=43.4625466458333 lat_0=43.4625466458333 lon_0=-89.3944444444444 k_0=1.00003498 x_0=169164.338023876 y_0=111569.613512827
7598|P|NAD83(2011) / WISCRS Crawford (ftUS)|1748|391|3|en|proj=lcc lat_1=43.200055605 lat_0=43.200055605 lon_0=-90.9388888888889 k_0=1.0000349151 x_0=113690.627381255 y_0=53703.1202438405
7599|P|NAD83(2011) / WISCRS Dane (ftUS)|1749|391|3|en|proj=lcc lat_1=43.0695160375 lat_0=43.0695160375 lon_0=-89.4222222222222 k_0=1.0000384786 x_0=247193.294386589 y_0=146591.989636779
7600|P|NAD83(2011) / WISCRS Dodge and Jefferson (ftUS)|1750|391|3|en|proj=tmerc lat_0=41.4722222222222 lon_0=-88.775 k=1.0000346418 x_0=263347.726390653 y_0=0.00762001524003048
7601|P|NAD83(2011) / WISCRS Door (ftUS)|1751|391|3|en|proj=tmerc lat_0=44.4 lon_0=-87.2722222222222 k=1.0000187521 x_0=158801.117602235 y_0=0.00243840487680975
7602|P|NAD83(2011) / WISCRS Douglas (ftUS)|1752|391|3|en|proj=tmerc lat_0=45.8833333333333 lon_0=-91.9166666666667 k=1.0000385418 x_0=59131.3182626365 y_0=0.00396240792481585
7603|P|NAD83(2011) / WISCRS Dunn (ftUS)|1753|391|3|en|proj=tmerc lat_0=44.4083333333333 lon_0=-91.8944444444444 k=1.0000410324 x_0=51816.1039370078 y_0=0.00304800609601219
7604|P|NAD83(2011) / WISCRS Eau Claire (ftUS)|1754|391|3|en|proj=lcc lat_1=44.8722811263889 lat_0=44.8722811263889 lon_0=-91.2888888888889 k_0=1.000035079 x_0=120091.44018288 y_0=91687.9239014477
7605|P|NAD83(2011) / WISCRS Florence (ftUS)|1755|391|3|en|proj=tmerc lat_0=45.4388888888889 lon_0=-88.1416666666667 k=1.0000552095 x_0=133502.668224536 y_0=0.0064008128016256
7606|P|NAD83(2011) / WISCRS Forest (ftUS)|1756|391|3|en|proj=tmerc lat_0=44.0055555555556 lon_0=-88.6333333333333 k=1.0000673004 x_0=275844.553213106 y_0=0.0158496316992634
7607|P|NAD83(2011) / WISCRS Grant (ftUS)|1757|391|3|en|proj=tmerc lat_0=41.4111111111111 lon_0=-90.8 k=1.0000349452 x_0=242316.484023368 y_0=0.0100584201168402
7608|P|NAD83(2011) / WISCRS Green and Lafayette (ftUS)|1758|391|3|en|proj=lcc lat_1=42.6375622769444 lat_0=42.6375622769444 lon_0=-89.8388888888889 k_0=1.0000390487 x_0=170078.74015748 y_0=45830.2948437897
7609|P|NAD83(2011) / WISCRS Green Lake and Marquette (ftUS)|1759|391|3|en|proj=lcc lat_1=43.8070001177778 lat_0=43.8070001177778 lon_0=-89.2416666666667 k_0=1.0000344057 x_0=150876.301752603 y_0=79170.7793751587
7610|P|NAD83(2011) / WISCRS Iowa (ftUS)|1760|391|3|en|proj=tmerc lat_0=42.5388888888889 lon_0=-90.1611111111111 k=1.0000394961 x_0=113081.026162052 y_0=0.00457200914401829
7611|P|NAD83(2011) / WISCRS Iron (ftUS)|1761|391|3|en|proj=tmerc lat_0=45.4333333333333 lon_0=-90.2555555555556 k=1.0000677153 x_0=220980.441960884 y_0=0.00853441706883413
7612|P|NAD83(2011) / WISCRS Jackson (ftUS)|1762|391|3|en|proj=tmerc lat_0=44.2533351277778 lon_0=-90.8442965194444 k=1.0000353 x_0=27000 y_0=24999.9998983998
7613|P|NAD83(2011) / WISCRS Kenosha, Milwaukee, Ozaukee and Racine (ftUS)|1763|391|3|en|proj=tmerc lat_0=42.2166666666667 lon_0=-87.8944444444444 k=1.0000260649 x_0=185928.372771145 y_0=0.000914401828803657
7614|P|NAD83(2011) / WISCRS Kewaunee, Manitowoc and Sheboygan (ftUS)|1764|391|3|en|proj=tmerc lat_0=43.2666666666667 lon_0=-87.55 k=1.0000233704 x_0=79857.761544323 y_0=0.00121920243840488
7615|P|NAD83(2011) / WISCRS La Crosse (ftUS)|1765|391|3|en|proj=tmerc lat_0=43.4511111111111 lon_0=-91.3166666666667 k=1.0000319985 x_0=130454.659690119 y_0=0.00335280670561341
7616|P|NAD83(2011) / WISCRS Langlade (ftUS)|1766|391|3|en|proj=lcc lat_1=45.1542371052778 lat_0=45.1542371052778 lon_0=-89.0333333333333 k_0=1.0000627024 x_0=198425.196850394 y_0=105279.782880366
7617|P|NAD83(2011) / WISCRS Lincoln (ftUS)|1767|391|3|en|proj=tmerc lat_0=44.8444444444444 lon_0=-89.7333333333333 k=1.0000599003 x_0=116129.032258064 y_0=0.00579121158242316
7618|P|NAD83(2011) / WISCRS Marathon (ftUS)|1768|391|3|en|proj=lcc lat_1=44.9009044236111 lat_0=44.9009044236111 lon_0=-89.77 k_0=1.000053289 x_0=74676.1493522987 y_0=55049.2669545339
7619|P|NAD83(2011) / WISCRS Marinette (ftUS)|1769|391|3|en|proj=tmerc lat_0=44.6916666666667 lon_0=-87.7111111111111 k=1.0000234982 x_0=238658.879451359 y_0=0.00304800609601219
7620|P|NAD83(2011) / WISCRS Menominee (ftUS)|1770|391|3|en|proj=tmerc lat_0=44.7166666666667 lon_0=-88.4166666666667 k=1.0000362499 x_0=105461.012141224 y_0=0.00304800609601219
7621|P|NAD83(2011) / WISCRS Monroe (ftUS)|1771|391|3|en|proj=lcc lat_1=44.0000739286111 lat_0=44.0000739286111 lon_0=-90.6416666666667 k_0=1.0000434122 x_0=204521.209042418 y_0=121923.986182372
7622|P|NAD83(2011) / WISCRS Oconto (ftUS)|1772|391|3|en|proj=tmerc lat_0=44.3972222222222 lon_0=-87.9083333333333 k=1.0000236869 x_0=182880.367589535 y_0=0.00335280670561341
7623|P|NAD83(2011) / WISCRS Oneida (ftUS)|1773|391|3|en|proj=lcc lat_1=45.7042237702778 lat_0=45.7042237702778 lon_0=-89.5444444444444 k_0=1.0000686968 x_0=70104.1402082804 y_0=57588.0347472695
7624|P|NAD83(2011) / WISCRS Pepin and Pierce (ftUS)|1774|391|3|en|proj=lcc lat_1=44.6361488719444 lat_0=44.6361488719444 lon_0=-92.2277777777778 k_0=1.0000362977 x_0=167640.33528067 y_0=86033.0877317754
7625|P|NAD83(2011) / WISCRS Polk (ftUS)|1775|391|3|en|proj=tmerc lat_0=44.6611111111111 lon_0=-92.6333333333333 k=1.0000433849 x_0=141732.282245364 y_0=0.00579121158242316
7626|P|NAD83(2011) / WISCRS Portage (ftUS)|1776|391|3|en|proj=lcc lat_1=44.4168239752778 lat_0=44.4168239752778 lon_0=-89.5 k_0=1.000039936 x_0=56388.1127762255 y_0=50022.1874523749
7627|P|NAD83(2011) / WISCRS Price (ftUS)|1777|391|3|en|proj=tmerc lat_0=44.5555555555556 lon_0=-90.4888888888889 k=1.0000649554 x_0=227990.854457709 y_0=0.0109728219456439
7628|P|NAD83(2011) / WISCRS Richland (ftUS)|1778|391|3|en|proj=lcc lat_1=43.3223129275 lat_0=43.3223129275 lon_0=-90.4305555555556 k_0=1.0000375653 x_0=202387.604775209 y_0=134255.425450851
7629|P|NAD83(2011) / WISCRS Rock (ftUS)|1779|391|3|en|proj=tmerc lat_0=41.9444444444444 lon_0=-89.0722222222222 k=1.0000337311 x_0=146304.292608585 y_0=0.00670561341122682
7630|P|NAD83(2011) / WISCRS Rusk (ftUS)|1780|391|3|en|proj=tmerc lat_0=43.9194444444444 lon_0=-91.0666666666667 k=1.0000495976 x_0=250546.101397003 y_0=0.0234696469392939
7631|P|NAD83(2011) / WISCRS Sauk (ftUS)|1781|391|3|en|proj=tmerc lat_0=42.8194444444444 lon_0=-89.9 k=1.0000373868 x_0=185623.571551943 y_0=0.00518161036322072
7632|P|NAD83(2011) / WISCRS Sawyer (ftUS)|1782|391|3|en|proj=lcc lat_1=45.9000991313889 lat_0=45.9000991313889 lon_0=-91.1166666666667 k_0=1.0000573461 x_0=216713.233731267 y_0=120734.163169926
7633|P|NAD83(2011) / WISCRS Shawano (ftUS)|1783|391|3|en|proj=tmerc lat_0=44.0361111111111 lon_0=-88.6055555555556 k=1.000032144 x_0=262433.32517145 y_0=0.00944881889763779
7634|P|NAD83(2011) / WISCRS St. Croix (ftUS)|1784|391|3|en|proj=tmerc lat_0=44.0361111111111 lon_0=-92.6333333333333 k=1.0000381803 x_0=165506.73009906 y_0=0.0103632207264414
7635|P|NAD83(2011) / WISCRS Taylor (ftUS)|1785|391|3|en|proj=lcc lat_1=45.1778220858333 lat_0=45.1778220858333 lon_0=-90.4833333333333 k_0=1.0000597566 x_0=187147.574295148 y_0=107746.752146304
7636|P|NAD83(2011) / WISCRS Trempealeau (ftUS)|1786|391|3|en|proj=tmerc lat_0=43.1611111111111 lon_0=-91.3666666666667 k=1.0000361538 x_0=256946.913893828 y_0=0.00396240792481585
7637|P|NAD83(2011) / WISCRS Vernon (ftUS)|1787|391|3|en|proj=lcc lat_1=43.5750329397222 lat_0=43.5750329397222 lon_0=-90.7833333333333 k_0=1.0000408158 x_0=222504.44500889 y_0=47532.0603505207
7638|P|NAD83(2011) / WISCRS Vilas (ftUS)|1788|391|3|en|proj=lcc lat_1=46.0778440905556 lat_0=46.0778440905556 lon_0=-89.4888888888889 k_0=1.0000730142 x_0=134417.068834138 y_0=50337.1092710185
7639|P|NAD83(2011) / WISCRS Walworth (ftUS)|1789|391|3|en|proj=lcc lat_1=42.6694620969444 lat_0=42.6694620969444 lon_0=-88.5416666666667 k_0=1.0000367192 x_0=232562.86512573 y_0=111088.222402845
7640|P|NAD83(2011) / WISCRS Washburn (ftUS)|1790|391|3|en|proj=lcc lat_1=45.9612198333333 lat_0=45.9612198333333 lon_0=-91.7833333333333 k_0=1.0000475376 x_0=234086.868173736 y_0=188358.605943612
7641|P|NAD83(2011) / WISCRS Washington (ftUS)|1791|391|3|en|proj=tmerc lat_0=42.9180555555556 lon_0=-88.0638888888889 k=1.00003738 x_0=120091.441402083 y_0=0.00304800609601219
7642|P|NAD83(2011) / WISCRS Waukesha (ftUS)|1792|391|3|en|proj=tmerc lat_0=42.5694444444444 lon_0=-88.225 k=1.0000346179 x_0=208788.417881636 y_0=0.00335280670561341
7643|P|NAD83(2011) / WISCRS Waupaca (ftUS)|1793|391|3|en|proj=tmerc lat_0=43.4202777777778 lon_0=-88.8166666666667 k=1.0000333645 x_0=185013.970942342 y_0=0.00701041402082804
7644|P|NAD83(2011) / WISCRS Waushara (ftUS)|1794|391|3|en|proj=lcc lat_1=44.1139440458333 lat_0=44.1139440458333 lon_0=-89.2416666666667 k_0=1.0000392096 x_0=120091.44018288 y_0=45069.7588011176
7645|P|NAD83(2011) / WISCRS Wood (ftUS)|1795|391|3|en|proj=lcc lat_1=44.3625954694444 lat_0=44.3625954694444 lon_0=-90 k_0=1.0000421209 x_0=208483.617272034 y_0=134589.753924308
7651|V|Kumul 34 height|1796|Kumul 34|0|u
7652|V|Kiunga height|1797|Kiunga|0|u
7656|C|WGS 84 (G730)|943|483
7657|H|WGS 84 (G730)|943|483
7658|C|WGS 84 (G873)|943|484
7659|H|WGS 84 (G873)|943|484
7660|C|WGS 84 (G1150)|943|485
7661|H|WGS 84 (G1150)|943|485
7662|C|WGS 84 (G1674)|943|486
7663|H|WGS 84 (G1674)|943|486
7664|C|WGS 84 (G1762)|943|487
7665|H|WGS 84 (G1762)|943|487
7677|C|PZ-90.02|943|518
7678|H|PZ-90.02|943|518
7679|C|PZ-90.11|943|519
7680|H|PZ-90.11|943|519
7681|C|GSK-2011|1044|416
7682|H|GSK-2011|1044|416
7683|G|GSK-2011|1044|416
7684|C|Kyrg-06|1798|417
7685|H|Kyrg-06|1798|417
7686|G|Kyrg-06|1798|417
7692|P|Kyrg-06 / zone 1|1799|417|0|en|proj=tmerc lat_0=0 lon_0=68.5166666666667 k=1 x_0=1300000 y_0=14743.5
7693|P|Kyrg-06 / zone 2|1800|417|0|en|proj=tmerc lat_0=0 lon_0=71.5166666666667 k=1 x_0=2300000 y_0=14743.5
7694|P|Kyrg-06 / zone 3|1801|417|0|en|proj=tmerc lat_0=0 lon_0=74.5166666666667 k=1 x_0=3300000 y_0=14743.5
7695|P|Kyrg-06 / zone 4|1802|417|0|en|proj=tmerc lat_0=0 lon_0=77.5166666666667 k=1 x_0=4300000 y_0=14743.5
7696|P|Kyrg-06 / zone 5|1803|417|0|en|proj=tmerc lat_0=0 lon_0=80.5166666666667 k=1 x_0=5300000 y_0=14743.5
7699|V|DHHN12 height|1211|Deutsches Haupthoehennetz 1912|0|u
7700|V|Latvia 2000 height|1804|Latvian Height System 2000|0|u
7707|V|ODN (Offshore) height|1805|Ordnance Datum Newlyn (Offshore)|0|u
7755|P|WGS 84 / India NSF LCC|1806|183|0|en|proj=lcc lat_0=24 lon_0=80 lat_1=12.472955 lat_2=35.1728044444444 x_0=4000000 y_0=4000000
7756|P|WGS 84 / Andhra Pradesh|1807|183|0|en|proj=lcc lat_0=16.25543298 lon_0=80.875 lat_1=13.75 lat_2=18.75 x_0=1000000 y_0=1000000
7757|P|WGS 84 / Arunachal Pradesh|1808|183|0|en|proj=lcc lat_0=28.00157897 lon_0=94.5 lat_1=27 lat_2=29 x_0=1000000 y_0=1000000
7758|P|WGS 84 / Assam|1809|183|0|en|proj=lcc lat_0=26.00257703 lon_0=92.75 lat_1=24.6666666666667 lat_2=27.3333333333333 x_0=1000000 y_0=1000000
7759|P|WGS 84 / Bihar|1810|183|0|en|proj=lcc lat_0=25.87725247 lon_0=85.875 lat_1=24.625 lat_2=27.125 x_0=1000000 y_0=1000000
7760|P|WGS 84 / Delhi|1811|183|0|en|proj=lcc lat_0=28.62510126 lon_0=77 lat_1=28.375 lat_2=28.875 x_0=1000000 y_0=1000000
7761|P|WGS 84 / Gujarat|1812|183|0|en|proj=lcc lat_0=22.37807121 lon_0=71.375 lat_1=20.7916666666667 lat_2=23.9583333333333 x_0=1000000 y_0=1000000
7762|P|WGS 84 / Haryana|1813|183|0|en|proj=lcc lat_0=29.25226266 lon_0=76 lat_1=28.0833333333333 lat_2=30.4166666666667 x_0=1000000 y_0=1000000
7763|P|WGS 84 / Himachal Pradesh|1814|183|0|en|proj=lcc lat_0=31.75183497 lon_0=77.375 lat_1=30.75 lat_2=32.75 x_0=1000000 y_0=1000000
7764|P|WGS 84 / Jammu and Kashmir|1815|183|0|en|proj=lcc lat_0=34.75570874 lon_0=76.5 lat_1=33.0833333333333 lat_2=36.4166666666667 x_0=1000000 y_0=1000000
7765|P|WGS 84 / Jharkhand|1816|183|0|en|proj=lcc lat_0=23.62652682 lon_0=85.625 lat_1=22.5416666666667 lat_2=24.7083333333333 x_0=1000000 y_0=1000000
7766|P|WGS 84 / Madhya Pradesh|1817|183|0|en|proj=lcc lat_0=24.00529821 lon_0=78.375 lat_1=22 lat_2=26 x_0=1000000 y_0=1000000
7767|P|WGS 84 / Maharashtra|1818|183|0|en|proj=lcc lat_0=18.88015774 lon_0=76.75 lat_1=16.625 lat_2=21.125 x_0=1000000 y_0=1000000
7768|P|WGS 84 / Manipur|1819|183|0|en|proj=lcc lat_0=24.75060911 lon_0=94 lat_1=24.0833333333333 lat_2=25.4166666666667 x_0=1000000 y_0=1000000
7769|P|WGS 84 / Meghalaya|1820|183|0|en|proj=lcc lat_0=25.62524747 lon_0=91.375 lat_1=25.2083333333333 lat_2=26.0416666666667 x_0=1000000 y_0=1000000
7770|P|WGS 84 / Nagaland|1821|183|0|en|proj=lcc lat_0=26.12581974 lon_0=94.375 lat_1=25.375 lat_2=26.875 x_0=1000000 y_0=1000000
7771|P|WGS 84 / India Northeast|1822|183|0|en|proj=lcc lat_0=25.63452135 lon_0=93.5 lat_1=23.0416666666667 lat_2=28.2083333333333 x_0=1000000 y_0=1000000
7772|P|WGS 84 / Orissa|1823|183|0|en|proj=lcc lat_0=20.25305174 lon_0=84.375 lat_1=18.5833333333333 lat_2=21.9166666666667 x_0=1000000 y_0=1000000
7773|P|WGS 84 / Punjab|1824|183|0|en|proj=lcc lat_0=31.00178226 lon_0=75.375 lat_1=30 lat_2=32 x_0=1000000 y_0=1000000
7774|P|WGS 84 / Rajasthan|1825|183|0|en|proj=lcc lat_0=26.88505546 lon_0=73.875 lat_1=24.2916666666667 lat_2=29.4583333333333 x_0=1000000 y_0=1000000
7775|P|WGS 84 / Uttar Pradesh|1826|183|0|en|proj=lcc lat_0=27.13270823 lon_0=80.875 lat_1=24.875 lat_2=29.375 x_0=1000000 y_0=1000000
7776|P|WGS 84 / Uttaranchal|1827|183|0|en|proj=lcc lat_0=30.0017132 lon_0=79.375 lat_1=29 lat_2=31 x_0=1000000 y_0=1000000
7777|P|WGS 84 / Andaman and Nicobar|1828|183|0|en|proj=tmerc lat_0=10.25 lon_0=93.25 k=0.9999428 x_0=1000000 y_0=1000000
7778|P|WGS 84 / Chhattisgarh|1829|183|0|en|proj=tmerc lat_0=21 lon_0=82.25 k=0.9998332 x_0=1000000 y_0=1000000
7779|P|WGS 84 / Goa|1830|183|0|en|proj=tmerc lat_0=15.375 lon_0=74 k=0.9999913 x_0=1000000 y_0=1000000
7780|P|WGS 84 / Karnataka|1831|183|0|en|proj=tmerc lat_0=15.125 lon_0=76.375 k=0.9998012 x_0=1000000 y_0=1000000
7781|P|WGS 84 / Kerala|1832|183|0|en|proj=tmerc lat_0=10.5 lon_0=76 k=0.9999177 x_0=1000000 y_0=1000000
7782|P|WGS 84 / Lakshadweep|1833|183|0|en|proj=tmerc lat_0=10 lon_0=73.125 k=0.9999536 x_0=1000000 y_0=1000000
7783|P|WGS 84 / Mizoram|1834|183|0|en|proj=tmerc lat_0=23.125 lon_0=92.75 k=0.9999821 x_0=1000000 y_0=1000000
7784|P|WGS 84 / Sikkim|1835|183|0|en|proj=tmerc lat_0=27.625 lon_0=88.5 k=0.9999926 x_0=1000000 y_0=1000000
7785|P|WGS 84 / Tamil Nadu|1836|183|0|en|proj=tmerc lat_0=10.875 lon_0=78.375 k=0.9997942 x_0=1000000 y_0=1000000
7786|P|WGS 84 / Tripura|1837|183|0|en|proj=tmerc lat_0=23.75 lon_0=91.75 k=0.9999822 x_0=1000000 y_0=1000000
7787|P|WGS 84 / West Bengal|1838|183|0|en|proj=tmerc lat_0=24.375 lon_0=87.875 k=0.9998584 x_0=1000000 y_0=1000000
7789|C|ITRF2014|943|475
7791|P|RDN2008 / UTM zone 32N|536|396|0|en|proj=utm zone=32
7792|P|RDN2008 / UTM zone 33N|582|396|0|en|proj=utm zone=33
7793|P|RDN2008 / UTM zone 34N|1603|396|0|en|proj=utm zone=34
7794|P|RDN2008 / Italy zone (E-N)|1628|396|0|en|proj=tmerc lat_0=0 lon_0=12 k=0.9985 x_0=7000000 y_0=0
7795|P|RDN2008 / Zone 12 (E-N)|1628|396|0|en|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=3000000 y_0=0
7796|C|BGS2005|1839|418
7797|H|BGS2005|1839|418
7798|G|BGS2005|1839|418
7799|P|BGS2005 / UTM zone 34N (N-E)|1840|418|0|ne|proj=utm zone=34
7800|P|BGS2005 / UTM zone 35N (N-E)|1841|418|0|ne|proj=utm zone=35
7801|P|BGS2005 / CCS2005|1426|418|0|ne|proj=lcc lat_0=42.6678756833333 lon_0=25.5 lat_1=42 lat_2=43.3333333333333 x_0=500000 y_0=4725824.3591
7803|P|BGS2005 / UTM zone 34N|1840|418|0|en|proj=utm zone=34
7805|P|BGS2005 / UTM zone 36N|1842|418|0|en|proj=utm zone=36
7815|C|WGS 84 (Transit)|943|442
7816|H|WGS 84 (Transit)|943|442
7825|P|Pulkovo 1942 / CS63 zone X1|1843|152|0|ne|proj=tmerc lat_0=0.0833333333333333 lon_0=23.5 k=1 x_0=1300000 y_0=0
7826|P|Pulkovo 1942 / CS63 zone X2|1844|152|0|ne|proj=tmerc lat_0=0.0833333333333333 lon_0=26.5 k=1 x_0=2300000 y_0=0
7827|P|Pulkovo 1942 / CS63 zone X3|1845|152|0|ne|proj=tmerc lat_0=0.0833333333333333 lon_0=29.5 k=1 x_0=3300000 y_0=0
7828|P|Pulkovo 1942 / CS63 zone X4|1846|152|0|ne|proj=tmerc lat_0=0.0833333333333333 lon_0=32.5 k=1 x_0=4300000 y_0=0
7829|P|Pulkovo 1942 / CS63 zone X5|1847|152|0|ne|proj=tmerc lat_0=0.0833333333333333 lon_0=35.5 k=1 x_0=5300000 y_0=0
7830|P|Pulkovo 1942 / CS63 zone X6|1848|152|0|ne|proj=tmerc lat_0=0.0833333333333333 lon_0=38.5 k=1 x_0=6300000 y_0=0
7831|P|Pulkovo 1942 / CS63 zone X7|1849|152|0|ne|proj=tmerc lat_0=0.0833333333333333 lon_0=41.5 k=1 x_0=7300000 y_0=0
7832|V|POM96 height|1850|Port Moresby 1996|0|u
7837|V|DHHN2016 height|1211|Deutsches Haupthoehennetz 2016|0|u
7839|V|NZVD2016 height|1032|New Zealand Vertical Datum 2016|0|u
7841|V|POM08 height|1850|Port Moresby 2008|0|u
7842|C|GDA2020|1102|419
7843|H|GDA2020|1102|419
7844|G|GDA2020|1102|419
7845|P|GDA2020 / GA LCC|609|419|0|en|proj=lcc lat_0=0 lon_0=134 lat_1=-18 lat_2=-36 x_0=0 y_0=0
7846|P|GDA2020 / MGA zone 46|1605|419|0|en|proj=utm zone=46 south
7847|P|GDA2020 / MGA zone 47|1606|419|0|en|proj=utm zone=47 south
7848|P|GDA2020 / MGA zone 48|1851|419|0|en|proj=utm zone=48 south
7849|P|GDA2020 / MGA zone 49|1852|419|0|en|proj=utm zone=49 south
7850|P|GDA2020 / MGA zone 50|1853|419|0|en|proj=utm zone=50 south
7851|P|GDA2020 / MGA zone 51|1854|419|0|en|proj=utm zone=51 south
7852|P|GDA2020 / MGA zone 52|1855|419|0|en|proj=utm zone=52 south
7853|P|GDA2020 / MGA zone 53|1856|419|0|en|proj=utm zone=53 south
7854|P|GDA2020 / MGA zone 54|1857|419|0|en|proj=utm zone=54 south
7855|P|GDA2020 / MGA zone 55|1858|419|0|en|proj=utm zone=55 south
7856|P|GDA2020 / MGA zone 56|1859|419|0|en|proj=utm zone=56 south
7857|P|GDA2020 / MGA zone 57|1860|419|0|en|proj=utm zone=57 south
7858|P|GDA2020 / MGA zone 58|1861|419|0|en|proj=utm zone=58 south
7859|P|GDA2020 / MGA zone 59|1607|419|0|en|proj=utm zone=59 south
7877|P|Astro DOS 71 / SHLG71|1171|282|0|en|proj=tmerc lat_0=-15.9666666666667 lon_0=-5.71666666666667 k=1 x_0=300000 y_0=2000000
7878|P|Astro DOS 71 / UTM zone 30S|1171|282|0|en|proj=utm zone=30 south
7879|C|St. Helena Tritan|1171|420
7880|H|St. Helena Tritan|1171|420
7881|G|St. Helena Tritan|1171|420
7882|P|St. Helena Tritan / SHLG(Tritan)|1171|420|0|en|proj=tmerc lat_0=-15.9666666666667 lon_0=-5.71666666666667 k=1 x_0=299483.737 y_0=2000527.879
7883|P|St. Helena Tritan / UTM zone 30S|1171|420|0|en|proj=utm zone=30 south
7884|C|SHGD2015|1171|421
7885|H|SHGD2015|1171|421
7886|G|SHGD2015|1171|421
7887|P|SHMG2015|1171|421|0|en|proj=utm zone=30 south
7888|V|Jamestown 1971 height|1171|Jamestown 1971|0|u
7889|V|St. Helena Tritan 2011 height|1171|St. Helena Tritan Vertical Datum 2011|0|u
7890|V|SHVD2015 height|1171|St. Helena Vertical Datum 2015|0|u
7899|P|GDA2020 / Vicgrid|608|419|0|en|proj=lcc lat_0=-37 lon_0=145 lat_1=-36 lat_2=-38 x_0=2500000 y_0=2500000
7900|H|ITRF88|943|463
7901|H|ITRF89|943|464
7902|H|ITRF90|943|465
7903|H|ITRF91|943|466
7904|H|ITRF92|943|467
7905|H|ITRF93|943|468
7906|H|ITRF94|943|469
7907|H|ITRF96|943|470
7908|H|ITRF97|943|471
7909|H|ITRF2000|943|472
7910|H|ITRF2005|943|473
7911|H|ITRF2008|943|474
7912|H|ITRF2014|943|475
7914|C|ETRF89|1085|488
7915|H|ETRF89|1085|488
7916|C|ETRF90|1085|489
7917|H|ETRF90|1085|489
7918|C|ETRF91|1085|490
7919|H|ETRF91|1085|490
7920|C|ETRF92|1085|491
7921|H|ETRF92|1085|491
7922|C|ETRF93|1085|492
7923|H|ETRF93|1085|492
7924|C|ETRF94|1085|493
7925|H|ETRF94|1085|493
7926|C|ETRF96|1085|494
7927|H|ETRF96|1085|494
7928|C|ETRF97|1085|495
7929|H|ETRF97|1085|495
7930|C|ETRF2000|1085|496
7931|H|ETRF2000|1085|496
7954|K|Astro DOS 71 / UTM zone 30S + Jamestown 1971 height|1171|7878|7888
7956|K|SHMG2015 + SHVD2015 height|1171|7887|7890
7962|V|Poolbeg height (m)|123|Poolbeg|0|u
7968|V|NGVD29 height (m)|1218|National Geodetic Vertical Datum 1929|0|u
7976|V|HKPD depth|1392|Hong Kong Principal Datum|0|d
7979|V|KOC WD height|1076|KOC Well Datum|0|u
7991|P|NAD27 / MTM zone 10|18|137|0|en|proj=tmerc lat_0=0 lon_0=-79.5 k=0.9999 x_0=304800 y_0=0
7992|P|Malongo 1987 / UTM zone 33S|1862|131|0|en|proj=utm zone=33 south
8013|P|GDA2020 / ALB2020|1863|419|0|en|proj=tmerc lat_0=0 lon_0=117.883333333333 k=1.0000044 x_0=50000 y_0=4100000
8014|P|GDA2020 / BIO2020|1864|419|0|en|proj=tmerc lat_0=0 lon_0=115.25 k=1.0000022 x_0=60000 y_0=2700000
8015|P|GDA2020 / BRO2020|1865|419|0|en|proj=tmerc lat_0=0 lon_0=122.333333333333 k=1.00000298 x_0=50000 y_0=2300000
8016|P|GDA2020 / BCG2020|1866|419|0|en|proj=tmerc lat_0=0 lon_0=115.433333333333 k=0.99999592 x_0=50000 y_0=4000000
8017|P|GDA2020 / CARN2020|1867|419|0|en|proj=tmerc lat_0=0 lon_0=113.666666666667 k=0.99999796 x_0=50000 y_0=3050000
8018|P|GDA2020 / CIG2020|1604|419|0|en|proj=tmerc lat_0=0 lon_0=105.625 k=1.00002514 x_0=50000 y_0=1400000
8019|P|GDA2020 / CKIG2020|1169|419|0|en|proj=tmerc lat_0=0 lon_0=96.875 k=0.99999387 x_0=50000 y_0=1600000
8020|P|GDA2020 / COL2020|1868|419|0|en|proj=tmerc lat_0=0 lon_0=115.933333333333 k=1.000019 x_0=40000 y_0=4100000
8021|P|GDA2020 / ESP2020|1869|419|0|en|proj=tmerc lat_0=0 lon_0=121.883333333333 k=1.0000055 x_0=50000 y_0=4050000
8022|P|GDA2020 / EXM2020|1870|419|0|en|proj=tmerc lat_0=0 lon_0=114.066666666667 k=1.00000236 x_0=50000 y_0=2750000
8023|P|GDA2020 / GCG2020|1871|419|0|en|proj=tmerc lat_0=0 lon_0=114.583333333333 k=1.00000628 x_0=50000 y_0=3450000
8024|P|GDA2020 / GOLD2020|1872|419|0|en|proj=tmerc lat_0=0 lon_0=121.5 k=1.00004949 x_0=60000 y_0=3800000
8025|P|GDA2020 / JCG2020|1873|419|0|en|proj=tmerc lat_0=0 lon_0=114.983333333333 k=1.00000314 x_0=50000 y_0=3650000
8026|P|GDA2020 / KALB2020|1874|419|0|en|proj=tmerc lat_0=0 lon_0=114.315277777778 k=1.000014 x_0=55000 y_0=3700000
8027|P|GDA2020 / KAR2020|1875|419|0|en|proj=tmerc lat_0=0 lon_0=116.933333333333 k=0.9999989 x_0=50000 y_0=2550000
8028|P|GDA2020 / KUN2020|1876|419|0|en|proj=tmerc lat_0=0 lon_0=128.75 k=1.0000165 x_0=50000 y_0=2100000
8029|P|GDA2020 / LCG2020|1877|419|0|en|proj=tmerc lat_0=0 lon_0=115.366666666667 k=1.00000157 x_0=50000 y_0=3750000
8030|P|GDA2020 / MRCG2020|1878|419|0|en|proj=tmerc lat_0=0 lon_0=115.166666666667 k=1.0000055 x_0=50000 y_0=4050000
8031|P|GDA2020 / PCG2020|1879|419|0|en|proj=tmerc lat_0=0 lon_0=115.816666666667 k=0.99999906 x_0=50000 y_0=3900000
8032|P|GDA2020 / PHG2020|1880|419|0|en|proj=tmerc lat_0=0 lon_0=118.6 k=1.00000135 x_0=50000 y_0=2500000
8035|P|WGS 84 / TM Zone 20N (ftUS)|1881|183|3|en|proj=tmerc lat_0=0 lon_0=-63 k=0.9996 x_0=500000.0001016 y_0=0
8036|P|WGS 84 / TM Zone 21N (ftUS)|1882|183|3|en|proj=tmerc lat_0=0 lon_0=-57 k=0.9996 x_0=500000.0001016 y_0=0
8042|G|Gusterberg (Ferro)|1883|422
8043|G|St. Stephen (Ferro)|1884|423
8044|P|Gusterberg Grid (Ferro)|1883|422|0|sw|proj=cass lat_0=48.0384638888889 lon_0=31.8041805555556 x_0=0 y_0=0
8045|P|St. Stephen Grid (Ferro)|1884|423|0|sw|proj=cass lat_0=48.2087611111111 lon_0=34.0409222222222 x_0=0 y_0=0
8050|V|MSL height (ft)|943|Mean Sea Level|4|u
8051|V|MSL depth (ft)|943|Mean Sea Level|4|d
8052|V|MSL height (ftUS)|1885|Mean Sea Level|3|u
8053|V|MSL depth (ftUS)|1885|Mean Sea Level|3|d
8058|P|GDA2020 / NSW Lambert|781|419|0|en|proj=lcc lat_0=-33.25 lon_0=147 lat_1=-30.75 lat_2=-35.75 x_0=9300000 y_0=4500000
8059|P|GDA2020 / SA Lambert|605|419|0|en|proj=lcc lat_0=-32 lon_0=135 lat_1=-28 lat_2=-36 x_0=1000000 y_0=2000000
8065|P|NAD83(2011) / PCCS zone 1 (ft)|1886|391|4|en|proj=omerc lat_0=32.25 lonc=-111.4 alpha=45 gamma=45 k=1.00011 x_0=48768 y_0=243840
8066|P|NAD83(2011) / PCCS zone 2 (ft)|1887|391|4|en|proj=tmerc lat_0=31.25 lon_0=-112.166666666667 k=1.00009 x_0=548640 y_0=304800
8067|P|NAD83(2011) / PCCS zone 3 (ft)|1888|391|4|en|proj=tmerc lat_0=31.5 lon_0=-113.166666666667 k=1.000055 x_0=182880 y_0=0
8068|P|NAD83(2011) / PCCS zone 4 (ft)|1889|391|4|en|proj=lcc lat_1=30.5 lat_0=30.5 lon_0=-110.75 k_0=0.9998 x_0=9144 y_0=-188976
8082|P|NAD83(CSRS)v6 / MTM NS 2010 zone 4|232|430|0|en|proj=tmerc lat_0=0 lon_0=-61.5 k=0.9999 x_0=24500000 y_0=0
8083|P|NAD83(CSRS)v6 / MTM NS 2010 zone 5|233|430|0|en|proj=tmerc lat_0=0 lon_0=-64.5 k=0.9999 x_0=25500000 y_0=0
8084|C|ISN2016|578|424
8085|H|ISN2016|578|424
8086|G|ISN2016|578|424
8088|P|ISN2016 / Lambert 2016|578|424|0|en|proj=lcc lat_0=65 lon_0=-19 lat_1=64.25 lat_2=65.75 x_0=2700000 y_0=300000
8089|V|ISH2004 height|1890|Landshaedarkerfi Islands 2004|0|u
8090|P|NAD83(HARN) / WISCRS Florence (m)|1755|35|0|en|proj=tmerc lat_0=45.4388888888889 lon_0=-88.1416666666667 k=1.0000552095 x_0=133502.6683 y_0=0.0063
8091|P|NAD83(HARN) / WISCRS Florence (ftUS)|1755|35|3|en|proj=tmerc lat_0=45.4388888888889 lon_0=-88.1416666666667 k=1.0000552095 x_0=133502.668224536 y_0=0.0064008128016256
8092|P|NAD83(HARN) / WISCRS Eau Claire (m)|1754|35|0|en|proj=lcc lat_1=44.8722811263889 lat_0=44.8722811263889 lon_0=-91.2888888888889 k_0=1.000035079 x_0=120091.4402 y_0=91687.9239
8093|P|NAD83(HARN) / WISCRS Eau Claire (ftUS)|1754|35|3|en|proj=lcc lat_1=44.8722811263889 lat_0=44.8722811263889 lon_0=-91.2888888888889 k_0=1.000035079 x_0=120091.44018288 y_0=91687.9239014477
8095|P|NAD83(HARN) / WISCRS Wood (m)|1795|35|0|en|proj=lcc lat_1=44.3625954694444 lat_0=44.3625954694444 lon_0=-90 k_0=1.0000421209 x_0=208483.6173 y_0=134589.754
8096|P|NAD83(HARN) / WISCRS Wood (ftUS)|1795|35|3|en|proj=lcc lat_1=44.3625954694444 lat_0=44.3625954694444 lon_0=-90 k_0=1.0000421209 x_0=208483.617272034 y_0=134589.753924308
8097|P|NAD83(HARN) / WISCRS Waushara (m)|1794|35|0|en|proj=lcc lat_1=44.1139440458333 lat_0=44.1139440458333 lon_0=-89.2416666666667 k_0=1.0000392096 x_0=120091.4402 y_0=45069.7587
8098|P|NAD83(HARN) / WISCRS Waushara (ftUS)|1794|35|3|en|proj=lcc lat_1=44.1139440458333 lat_0=44.1139440458333 lon_0=-89.2416666666667 k_0=1.0000392096 x_0=120091.44018288 y_0=45069.7588011176
8099|P|NAD83(HARN) / WISCRS Waupaca (m)|1793|35|0|en|proj=tmerc lat_0=43.4202777777778 lon_0=-88.8166666666667 k=1.0000333645 x_0=185013.9709 y_0=0.007
8100|P|NAD83(HARN) / WISCRS Waupaca (ftUS)|1793|35|3|en|proj=tmerc lat_0=43.4202777777778 lon_0=-88.8166666666667 k=1.0000333645 x_0=185013.970942342 y_0=0.00701041402082804
8101|P|NAD83(HARN) / WISCRS Waukesha (m)|1792|35|0|en|proj=tmerc lat_0=42.5694444444444 lon_0=-88.225 k=1.0000346179 x_0=208788.418 y_0=0.0034
8102|P|NAD83(HARN) / WISCRS Waukesha (ftUS)|1792|35|3|en|proj=tmerc lat_0=42.5694444444444 lon_0=-88.225 k=1.0000346179 x_0=208788.417881636 y_0=0.00335280670561341
8103|P|NAD83(HARN) / WISCRS Washington (m)|1791|35|0|en|proj=tmerc lat_0=42.9180555555556 lon_0=-88.0638888888889 k=1.00003738 x_0=120091.4415 y_0=0.003
8104|P|NAD83(HARN) / WISCRS Washington (ftUS)|1791|35|3|en|proj=tmerc lat_0=42.9180555555556 lon_0=-88.0638888888889 k=1.00003738 x_0=120091.441402083 y_0=0.00304800609601219
8105|P|NAD83(HARN) / WISCRS Washburn (m)|1790|35|0|en|proj=lcc lat_1=45.9612198333333 lat_0=45.9612198333333 lon_0=-91.7833333333333 k_0=1.0000475376 x_0=234086.8682 y_0=188358.6058
8106|P|NAD83(HARN) / WISCRS Washburn (ftUS)|1790|35|3|en|proj=lcc lat_1=45.9612198333333 lat_0=45.9612198333333 lon_0=-91.7833333333333 k_0=1.0000475376 x_0=234086.868173736 y_0=188358.605943612
8107|P|NAD83(HARN) / WISCRS Walworth (m)|1789|35|0|en|proj=lcc lat_1=42.6694620969444 lat_0=42.6694620969444 lon_0=-88.5416666666667 k_0=1.0000367192 x_0=232562.8651 y_0=111088.2224
8108|P|NAD83(HARN) / WISCRS Walworth (ftUS)|1789|35|3|en|proj=lcc lat_1=42.6694620969444 lat_0=42.6694620969444 lon_0=-88.5416666666667 k_0=1.0000367192 x_0=232562.86512573 y_0=111088.222402845
8109|P|NAD83(HARN) / WISCRS Vilas (m)|1788|35|0|en|proj=lcc lat_1=46.0778440905556 lat_0=46.0778440905556 lon_0=-89.4888888888889 k_0=1.0000730142 x_0=134417.0689 y_0=50337.1092
8110|P|NAD83(HARN) / WISCRS Vilas (ftUS)|1788|35|3|en|proj=lcc lat_1=46.0778440905556 lat_0=46.0778440905556 lon_0=-89.4888888888889 k_0=1.0000730142 x_0=134417.068834138 y_0=50337.1092710185
8111|P|NAD83(HARN) / WISCRS Vernon (m)|1787|35|0|en|proj=lcc lat_1=43.5750329397222 lat_0=43.5750329397222 lon_0=-90.7833333333333 k_0=1.0000408158 x_0=222504.4451 y_0=47532.0602
8112|P|NAD83(HARN) / WISCRS Vernon (ftUS)|1787|35|3|en|proj=lcc lat_1=43.5750329397222 lat_0=43.5750329397222 lon_0=-90.7833333333333 k_0=1.0000408158 x_0=222504.44500889 y_0=47532.0603505207
8113|P|NAD83(HARN) / WISCRS Trempealeau (m)|1786|35|0|en|proj=tmerc lat_0=43.1611111111111 lon_0=-91.3666666666667 k=1.0000361538 x_0=256946.9138 y_0=0.0041
8114|P|NAD83(HARN) / WISCRS Trempealeau (ftUS)|1786|35|3|en|proj=tmerc lat_0=43.1611111111111 lon_0=-91.3666666666667 k=1.0000361538 x_0=256946.913893828 y_0=0.00396240792481585
8115|P|NAD83(HARN) / WISCRS Taylor (m)|1785|35|0|en|proj=lcc lat_1=45.1778220858333 lat_0=45.1778220858333 lon_0=-90.4833333333333 k_0=1.0000597566 x_0=187147.5744 y_0=107746.7522
8116|P|NAD83(HARN) / WISCRS Taylor (ftUS)|1785|35|3|en|proj=lcc lat_1=45.1778220858333 lat_0=45.1778220858333 lon_0=-90.4833333333333 k_0=1.0000597566 x_0=187147.574295148 y_0=107746.752146304
8117|P|NAD83(HARN) / WISCRS St. Croix (m)|1784|35|0|en|proj=tmerc lat_0=44.0361111111111 lon_0=-92.6333333333333 k=1.0000381803 x_0=165506.7302 y_0=0.0103
8118|P|NAD83(HARN) / WISCRS St. Croix (ftUS)|1784|35|3|en|proj=tmerc lat_0=44.0361111111111 lon_0=-92.6333333333333 k=1.0000381803 x_0=165506.73009906 y_0=0.0103632207264414
8119|P|NAD83(HARN) / WISCRS Shawano (m)|1783|35|0|en|proj=tmerc lat_0=44.0361111111111 lon_0=-88.6055555555556 k=1.000032144 x_0=262433.3253 y_0=0.0096
8120|P|NAD83(HARN) / WISCRS Shawano (ftUS)|1783|35|3|en|proj=tmerc lat_0=44.0361111111111 lon_0=-88.6055555555556 k=1.000032144 x_0=262433.32517145 y_0=0.00944881889763779
8121|P|NAD83(HARN) / WISCRS Sawyer (m)|1782|35|0|en|proj=lcc lat_1=45.9000991313889 lat_0=45.9000991313889 lon_0=-91.1166666666667 k_0=1.0000573461 x_0=216713.2336 y_0=120734.1631
8122|P|NAD83(HARN) / WISCRS Sawyer (ftUS)|1782|35|3|en|proj=lcc lat_1=45.9000991313889 lat_0=45.9000991313889 lon_0=-91.1166666666667 k_0=1.0000573461 x_0=216713.233731267 y_0=120734.163169926
8123|P|NAD83(HARN) / WISCRS Sauk (m)|1781|35|0|en|proj=tmerc lat_0=42.8194444444444 lon_0=-89.9 k=1.0000373868 x_0=185623.5716 y_0=0.0051
8124|P|NAD83(HARN) / WISCRS Sauk (ftUS)|1781|35|3|en|proj=tmerc lat_0=42.8194444444444 lon_0=-89.9 k=1.0000373868 x_0=185623.571551943 y_0=0.00518161036322072
8125|P|NAD83(HARN) / WISCRS Rusk (m)|1780|35|0|en|proj=tmerc lat_0=43.9194444444444 lon_0=-91.0666666666667 k=1.0000495976 x_0=250546.1013 y_0=0.0234
8126|P|NAD83(HARN) / WISCRS Rusk (ftUS)|1780|35|3|en|proj=tmerc lat_0=43.9194444444444 lon_0=-91.0666666666667 k=1.0000495976 x_0=250546.101397003 y_0=0.0234696469392939
8127|P|NAD83(HARN) / WISCRS Rock (m)|1779|35|0|en|proj=tmerc lat_0=41.9444444444444 lon_0=-89.0722222222222 k=1.0000337311 x_0=146304.2926 y_0=0.0068
8128|P|NAD83(HARN) / WISCRS Rock (ftUS)|1779|35|3|en|proj=tmerc lat_0=41.9444444444444 lon_0=-89.0722222222222 k=1.0000337311 x_0=146304.292608585 y_0=0.00670561341122682
8129|P|NAD83(HARN) / WISCRS Richland (m)|1778|35|0|en|proj=lcc lat_1=43.3223129275 lat_0=43.3223129275 lon_0=-90.4305555555556 k_0=1.0000375653 x_0=202387.6048 y_0=134255.4253
8130|P|NAD83(HARN) / WISCRS Richland (ftUS)|1778|35|3|en|proj=lcc lat_1=43.3223129275 lat_0=43.3223129275 lon_0=-90.4305555555556 k_0=1.0000375653 x_0=202387.604775209 y_0=134255.425450851
8131|P|NAD83(HARN) / WISCRS Price (m)|1777|35|0|en|proj=tmerc lat_0=44.5555555555556 lon_0=-90.4888888888889 k=1.0000649554 x_0=227990.8546 y_0=0.0109
8132|P|NAD83(HARN) / WISCRS Price (ftUS)|1777|35|3|en|proj=tmerc lat_0=44.5555555555556 lon_0=-90.4888888888889 k=1.0000649554 x_0=227990.854457709 y_0=0.0109728219456439
8133|P|NAD83(HARN) / WISCRS Portage (m)|1776|35|0|en|proj=lcc lat_1=44.4168239752778 lat_0=44.4168239752778 lon_0=-89.5 k_0=1.000039936 x_0=56388.1128 y_0=50022.1874
8134|P|NAD83(HARN) / WISCRS Portage (ftUS)|1776|35|3|en|proj=lcc lat_1=44.4168239752778 lat_0=44.4168239752778 lon_0=-89.5 k_0=1.000039936 x_0=56388.1127762255 y_0=50022.1874523749
8135|P|NAD83(HARN) / WISCRS Polk (m)|1775|35|0|en|proj=tmerc lat_0=44.6611111111111 lon_0=-92.6333333333333 k=1.0000433849 x_0=141732.2823 y_0=0.0059
8136|P|NAD83(HARN) / WISCRS Polk (ftUS)|1775|35|3|en|proj=tmerc lat_0=44.6611111111111 lon_0=-92.6333333333333 k=1.0000433849 x_0=141732.282245364 y_0=0.00579121158242316
8137|P|NAD83(HARN) / WISCRS Pepin and Pierce (m)|1774|35|0|en|proj=lcc lat_1=44.6361488719444 lat_0=44.6361488719444 lon_0=-92.2277777777778 k_0=1.0000362977 x_0=167640.3354 y_0=86033.0876
8138|P|NAD83(HARN) / WISCRS Pepin and Pierce (ftUS)|1774|35|3|en|proj=lcc lat_1=44.6361488719444 lat_0=44.6361488719444 lon_0=-92.2277777777778 k_0=1.0000362977 x_0=167640.33528067 y_0=86033.0877317754
8139|P|NAD83(HARN) / WISCRS Oneida (m)|1773|35|0|en|proj=lcc lat_1=45.7042237702778 lat_0=45.7042237702778 lon_0=-89.5444444444444 k_0=1.0000686968 x_0=70104.1401 y_0=57588.0346
8140|P|NAD83(HARN) / WISCRS Oneida (ftUS)|1773|35|3|en|proj=lcc lat_1=45.7042237702778 lat_0=45.7042237702778 lon_0=-89.5444444444444 k_0=1.0000686968 x_0=70104.1402082804 y_0=57588.0347472695
8141|P|NAD83(HARN) / WISCRS Oconto (m)|1772|35|0|en|proj=tmerc lat_0=44.3972222222222 lon_0=-87.9083333333333 k=1.0000236869 x_0=182880.3676 y_0=0.0033
8142|P|NAD83(HARN) / WISCRS Oconto (ftUS)|1772|35|3|en|proj=tmerc lat_0=44.3972222222222 lon_0=-87.9083333333333 k=1.0000236869 x_0=182880.367589535 y_0=0.00335280670561341
8143|P|NAD83(HARN) / WISCRS Monroe (m)|1771|35|0|en|proj=lcc lat_1=44.0000739286111 lat_0=44.0000739286111 lon_0=-90.6416666666667 k_0=1.0000434122 x_0=204521.209 y_0=121923.9861
8144|P|NAD83(HARN) / WISCRS Monroe (ftUS)|1771|35|3|en|proj=lcc lat_1=44.0000739286111 lat_0=44.0000739286111 lon_0=-90.6416666666667 k_0=1.0000434122 x_0=204521.209042418 y_0=121923.986182372
8145|P|NAD83(HARN) / WISCRS Menominee (m)|1770|35|0|en|proj=tmerc lat_0=44.7166666666667 lon_0=-88.4166666666667 k=1.0000362499 x_0=105461.0121 y_0=0.0029
8146|P|NAD83(HARN) / WISCRS Menominee (ftUS)|1770|35|3|en|proj=tmerc lat_0=44.7166666666667 lon_0=-88.4166666666667 k=1.0000362499 x_0=105461.012141224 y_0=0.00304800609601219
8147|P|NAD83(HARN) / WISCRS Marinette (m)|1769|35|0|en|proj=tmerc lat_0=44.6916666666667 lon_0=-87.7111111111111 k=1.0000234982 x_0=238658.8794 y_0=0.0032
8148|P|NAD83(HARN) / WISCRS Marinette (ftUS)|1769|35|3|en|proj=tmerc lat_0=44.6916666666667 lon_0=-87.7111111111111 k=1.0000234982 x_0=238658.879451359 y_0=0.00304800609601219
8149|P|NAD83(HARN) / WISCRS Marathon (m)|1768|35|0|en|proj=lcc lat_1=44.9009044236111 lat_0=44.9009044236111 lon_0=-89.77 k_0=1.000053289 x_0=74676.1493 y_0=55049.2669
8150|P|NAD83(HARN) / WISCRS Marathon (ftUS)|1768|35|3|en|proj=lcc lat_1=44.9009044236111 lat_0=44.9009044236111 lon_0=-89.77 k_0=1.000053289 x_0=74676.1493522987 y_0=55049.2669545339
8151|P|NAD83(HARN) / WISCRS Lincoln (m)|1767|35|0|en|proj=tmerc lat_0=44.8444444444444 lon_0=-89.7333333333333 k=1.0000599003 x_0=116129.0323 y_0=0.0058
8152|P|NAD83(HARN) / WISCRS Lincoln (ftUS)|1767|35|3|en|proj=tmerc lat_0=44.8444444444444 lon_0=-89.7333333333333 k=1.0000599003 x_0=116129.032258064 y_0=0.00579121158242316
8153|P|NAD83(HARN) / WISCRS Langlade (m)|1766|35|0|en|proj=lcc lat_1=45.1542371052778 lat_0=45.1542371052778 lon_0=-89.0333333333333 k_0=1.0000627024 x_0=198425.197 y_0=105279.7829
8154|P|NAD83(HARN) / WISCRS Langlade (ftUS)|1766|35|3|en|proj=lcc lat_1=45.1542371052778 lat_0=45.1542371052778 lon_0=-89.0333333333333 k_0=1.0000627024 x_0=198425.196850394 y_0=105279.782880366
8155|P|NAD83(HARN) / WISCRS La Crosse (m)|1765|35|0|en|proj=tmerc lat_0=43.4511111111111 lon_0=-91.3166666666667 k=1.0000319985 x_0=130454.6598 y_0=0.0033
8156|P|NAD83(HARN) / WISCRS La Crosse (ftUS)|1765|35|3|en|proj=tmerc lat_0=43.4511111111111 lon_0=-91.3166666666667 k=1.0000319985 x_0=130454.659690119 y_0=0.00335280670561341
8157|P|NAD83(HARN) / WISCRS Kewaunee, Manitowoc and Sheboygan (m)|1764|35|0|en|proj=tmerc lat_0=43.2666666666667 lon_0=-87.55 k=1.0000233704 x_0=79857.7614 y_0=0.0012
8158|P|NAD83(HARN) / WISCRS Kewaunee, Manitowoc and Sheboygan (ftUS)|1764|35|3|en|proj=tmerc lat_0=43.2666666666667 lon_0=-87.55 k=1.0000233704 x_0=79857.761544323 y_0=0.00121920243840488
8159|P|NAD83(HARN) / WISCRS Kenosha, Milwaukee, Ozaukee and Racine (m)|1763|35|0|en|proj=tmerc lat_0=42.2166666666667 lon_0=-87.8944444444444 k=1.0000260649 x_0=185928.3728 y_0=0.0009
8160|P|NAD83(HARN) / WISCRS Kenosha, Milwaukee, Ozaukee and Racine (ftUS)|1763|35|3|en|proj=tmerc lat_0=42.2166666666667 lon_0=-87.8944444444444 k=1.0000260649 x_0=185928.372771145 y_0=0.000914401828803657
8161|P|NAD83(HARN) / WISCRS Jackson (m)|1762|35|0|en|proj=tmerc lat_0=44.2533351277778 lon_0=-90.8442965194444 k=1.0000353 x_0=27000 y_0=25000
8162|P|NAD83(HARN) / WISCRS Jackson (ftUS)|1762|35|3|en|proj=tmerc lat_0=44.2533351277778 lon_0=-90.8442965194444 k=1.0000353 x_0=27000 y_0=24999.9998983998
8163|P|NAD83(HARN) / WISCRS Iron (m)|1761|35|0|en|proj=tmerc lat_0=45.4333333333333 lon_0=-90.2555555555556 k=1.0000677153 x_0=220980.4419 y_0=0.0085
8164|P|NAD83(HARN) / WISCRS Iron (ftUS)|1761|35|3|en|proj=tmerc lat_0=45.4333333333333 lon_0=-90.2555555555556 k=1.0000677153 x_0=220980.441960884 y_0=0.00853441706883413
8165|P|NAD83(HARN) / WISCRS Iowa (m)|1760|35|0|en|proj=tmerc lat_0=42.5388888888889 lon_0=-90.1611111111111 k=1.0000394961 x_0=113081.0261 y_0=0.0045
8166|P|NAD83(HARN) / WISCRS Iowa (ftUS)|1760|35|3|en|proj=tmerc lat_0=42.5388888888889 lon_0=-90.1611111111111 k=1.0000394961 x_0=113081.026162052 y_0=0.00457200914401829
8167|P|NAD83(HARN) / WISCRS Green Lake and Marquette (m)|1759|35|0|en|proj=lcc lat_1=43.8070001177778 lat_0=43.8070001177778 lon_0=-89.2416666666667 k_0=1.0000344057 x_0=150876.3018 y_0=79170.7795
8168|P|NAD83(HARN) / WISCRS Green Lake and Marquette (ftUS)|1759|35|3|en|proj=lcc lat_1=43.8070001177778 lat_0=43.8070001177778 lon_0=-89.2416666666667 k_0=1.0000344057 x_0=150876.301752603 y_0=79170.7793751587
8169|P|NAD83(HARN) / WISCRS Green and Lafayette (m)|1758|35|0|en|proj=lcc lat_1=42.6375622769444 lat_0=42.6375622769444 lon_0=-89.8388888888889 k_0=1.0000390487 x_0=170078.7403 y_0=45830.2947
8170|P|NAD83(HARN) / WISCRS Green and Lafayette (ftUS)|1758|35|3|en|proj=lcc lat_1=42.6375622769444 lat_0=42.6375622769444 lon_0=-89.8388888888889 k_0=1.0000390487 x_0=170078.74015748 y_0=45830.2948437897
8171|P|NAD83(HARN) / WISCRS Grant (m)|1757|35|0|en|proj=tmerc lat_0=41.4111111111111 lon_0=-90.8 k=1.0000349452 x_0=242316.4841 y_0=0.01
8172|P|NAD83(HARN) / WISCRS Grant (ftUS)|1757|35|3|en|proj=tmerc lat_0=41.4111111111111 lon_0=-90.8 k=1.0000349452 x_0=242316.484023368 y_0=0.0100584201168402
8173|P|NAD83(HARN) / WISCRS Forest (m)|1756|35|0|en|proj=tmerc lat_0=44.0055555555556 lon_0=-88.6333333333333 k=1.0000673004 x_0=275844.5533 y_0=0.0157
8177|P|NAD83(HARN) / WISCRS Forest (ftUS)|1756|35|3|en|proj=tmerc lat_0=44.0055555555556 lon_0=-88.6333333333333 k=1.0000673004 x_0=275844.553213106 y_0=0.0158496316992634
8179|P|NAD83(HARN) / WISCRS Dunn (m)|1753|35|0|en|proj=tmerc lat_0=44.4083333333333 lon_0=-91.8944444444444 k=1.0000410324 x_0=51816.104 y_0=0.003
8180|P|NAD83(HARN) / WISCRS Dunn (ftUS)|1753|35|3|en|proj=tmerc lat_0=44.4083333333333 lon_0=-91.8944444444444 k=1.0000410324 x_0=51816.1039370078 y_0=0.00304800609601219
8181|P|NAD83(HARN) / WISCRS Douglas (m)|1752|35|0|en|proj=tmerc lat_0=45.8833333333333 lon_0=-91.9166666666667 k=1.0000385418 x_0=59131.3183 y_0=0.0041
8182|P|NAD83(HARN) / WISCRS Douglas (ftUS)|1752|35|3|en|proj=tmerc lat_0=45.8833333333333 lon_0=-91.9166666666667 k=1.0000385418 x_0=59131.3182626365 y_0=0.00396240792481585
8184|P|NAD83(HARN) / WISCRS Door (m)|1751|35|0|en|proj=tmerc lat_0=44.4 lon_0=-87.2722222222222 k=1.0000187521 x_0=158801.1176 y_0=0.0023
8185|P|NAD83(HARN) / WISCRS Door (ftUS)|1751|35|3|en|proj=tmerc lat_0=44.4 lon_0=-87.2722222222222 k=1.0000187521 x_0=158801.117602235 y_0=0.00243840487680975
8187|P|NAD83(HARN) / WISCRS Dodge and Jefferson (m)|1750|35|0|en|proj=tmerc lat_0=41.4722222222222 lon_0=-88.775 k=1.0000346418 x_0=263347.7263 y_0=0.0076
8189|P|NAD83(HARN) / WISCRS Dodge and Jefferson (ftUS)|1750|35|3|en|proj=tmerc lat_0=41.4722222222222 lon_0=-88.775 k=1.0000346418 x_0=263347.726390653 y_0=0.00762001524003048
8191|P|NAD83(HARN) / WISCRS Dane (m)|1749|35|0|en|proj=lcc lat_1=43.0695160375 lat_0=43.0695160375 lon_0=-89.4222222222222 k_0=1.0000384786 x_0=247193.2944 y_0=146591.9896
8193|P|NAD83(HARN) / WISCRS Dane (ftUS)|1749|35|3|en|proj=lcc lat_1=43.0695160375 lat_0=43.0695160375 lon_0=-89.4222222222222 k_0=1.0000384786 x_0=247193.294386589 y_0=146591.989636779
8196|P|NAD83(HARN) / WISCRS Crawford (m)|1748|35|0|en|proj=lcc lat_1=43.200055605 lat_0=43.200055605 lon_0=-90.9388888888889 k_0=1.0000349151 x_0=113690.6274 y_0=53703.1201
8197|P|NAD83(HARN) / WISCRS Crawford (ftUS)|1748|35|3|en|proj=lcc lat_1=43.200055605 lat_0=43.200055605 lon_0=-90.9388888888889 k_0=1.0000349151 x_0=113690.627381255 y_0=53703.1202438405
8198|P|NAD83(HARN) / WISCRS Columbia (m)|1747|35|0|en|proj=lcc lat_1=43.4625466458333 lat_0=43.4625466458333 lon_0=-89.3944444444444 k_0=1.00003498 x_0=169164.3381 y_0=111569.6134
8200|P|NAD83(HARN) / WISCRS Columbia (ftUS)|1747|35|3|en|proj=lcc lat_1=43.4625466458333 lat_0=43.4625466458333 lon_0=-89.3944444444444 k_0=1.00003498 x_0=169164.338023876 y_0=111569.613512827
8201|P|NAD83(HARN) / WISCRS Clark (m)|1746|35|0|en|proj=tmerc lat_0=43.6 lon_0=-90.7083333333333 k=1.0000463003 x_0=199949.1989 y_0=0.0086
8202|P|NAD83(HARN) / WISCRS Clark (ftUS)|1746|35|3|en|proj=tmerc lat_0=43.6 lon_0=-90.7083333333333 k=1.0000463003 x_0=199949.198983998 y_0=0.00853441706883413
8203|P|NAD83(HARN) / WISCRS Chippewa (m)|1745|35|0|en|proj=lcc lat_1=44.9778568986111 lat_0=44.9778568986111 lon_0=-91.2944444444444 k_0=1.0000391127 x_0=60045.72 y_0=44091.4346
8204|P|NAD83(HARN) / WISCRS Chippewa (ftUS)|1745|35|3|en|proj=lcc lat_1=44.9778568986111 lat_0=44.9778568986111 lon_0=-91.2944444444444 k_0=1.0000391127 x_0=60045.7200914401 y_0=44091.434493269
8205|P|NAD83(HARN) / WISCRS Calumet, Fond du Lac, Outagamie and Winnebago (m)|1744|35|0|en|proj=tmerc lat_0=42.7194444444444 lon_0=-88.5 k=1.0000286569 x_0=244754.8893 y_0=0.0049
8206|P|NAD83(HARN) / WISCRS Calumet, Fond du Lac, Outagamie and Winnebago (ftUS)|1744|35|3|en|proj=tmerc lat_0=42.7194444444444 lon_0=-88.5 k=1.0000286569 x_0=244754.889204978 y_0=0.0048768097536195
8207|P|NAD83(HARN) / WISCRS Burnett (m)|1743|35|0|en|proj=lcc lat_1=45.8987148658333 lat_0=45.8987148658333 lon_0=-92.4577777777778 k_0=1.0000383841 x_0=64008.1276 y_0=59445.9043
8208|P|NAD83(HARN) / WISCRS Burnett (ftUS)|1743|35|3|en|proj=lcc lat_1=45.8987148658333 lat_0=45.8987148658333 lon_0=-92.4577777777778 k_0=1.0000383841 x_0=64008.1277114554 y_0=59445.9041910083
8209|P|NAD83(HARN) / WISCRS Buffalo (m)|1742|35|0|en|proj=tmerc lat_0=43.4813888888889 lon_0=-91.7972222222222 k=1.0000382778 x_0=175260.3502 y_0=0.0048
8210|P|NAD83(HARN) / WISCRS Buffalo (ftUS)|1742|35|3|en|proj=tmerc lat_0=43.4813888888889 lon_0=-91.7972222222222 k=1.0000382778 x_0=175260.3502159 y_0=0.0048768097536195
8212|P|NAD83(HARN) / WISCRS Brown (m)|1741|35|0|en|proj=tmerc lat_0=43 lon_0=-88 k=1.00002 x_0=31600 y_0=4600
8213|P|NAD83(HARN) / WISCRS Brown (ftUS)|1741|35|3|en|proj=tmerc lat_0=43 lon_0=-88 k=1.00002 x_0=31599.9998983998 y_0=4599.99989839979
8214|P|NAD83(HARN) / WISCRS Bayfield (m)|1740|35|0|en|proj=lcc lat_1=46.6696483772222 lat_0=46.6696483772222 lon_0=-91.1527777777778 k_0=1.0000331195 x_0=228600.4575 y_0=148551.4837
8216|P|NAD83(HARN) / WISCRS Bayfield (ftUS)|1740|35|3|en|proj=lcc lat_1=46.6696483772222 lat_0=46.6696483772222 lon_0=-91.1527777777778 k_0=1.0000331195 x_0=228600.457505715 y_0=148551.483566167
8218|P|NAD83(HARN) / WISCRS Barron (m)|1739|35|0|en|proj=tmerc lat_0=45.1333333333333 lon_0=-91.85 k=1.0000486665 x_0=93150 y_0=0.0029
8220|P|NAD83(HARN) / WISCRS Barron (ftUS)|1739|35|3|en|proj=tmerc lat_0=45.1333333333333 lon_0=-91.85 k=1.0000486665 x_0=93150 y_0=0.00304800609601219
8222|P|NAD83(HARN) / WISCRS Ashland (m)|1738|35|0|en|proj=tmerc lat_0=45.7061111111111 lon_0=-90.6222222222222 k=1.0000495683 x_0=172821.9461 y_0=0.0017
8224|P|NAD83(HARN) / WISCRS Ashland (ftUS)|1738|35|3|en|proj=tmerc lat_0=45.7061111111111 lon_0=-90.6222222222222 k=1.0000495683 x_0=172821.945948692 y_0=0.00182880365760731
8225|P|NAD83(HARN) / WISCRS Adams and Juneau (m)|1737|35|0|en|proj=tmerc lat_0=43.3666666666667 lon_0=-90 k=1.0000365285 x_0=147218.6942 y_0=0.0037
8226|P|NAD83(HARN) / WISCRS Adams and Juneau (ftUS)|1737|35|3|en|proj=tmerc lat_0=43.3666666666667 lon_0=-90 k=1.0000365285 x_0=147218.694132588 y_0=0.00365760731521463
8227|C|IGS14|943|482
8228|V|NAVD88 height (ft)|1891|North American Vertical Datum 1988|4|u
8230|C|NAD83(CSRS96)|812|425
8231|H|NAD83(CSRS96)|812|425
8232|G|NAD83(CSRS96)|812|425
8233|C|NAD83(CSRS)v2|812|426
8235|H|NAD83(CSRS)v2|812|426
8237|G|NAD83(CSRS)v2|812|426
8238|C|NAD83(CSRS)v3|812|427
8239|H|NAD83(CSRS)v3|812|427
8240|G|NAD83(CSRS)v3|812|427
8242|C|NAD83(CSRS)v4|812|428
8244|H|NAD83(CSRS)v4|812|428
8246|G|NAD83(CSRS)v4|812|428
8247|C|NAD83(CSRS)v5|812|429
8248|H|NAD83(CSRS)v5|812|429
8249|G|NAD83(CSRS)v5|812|429
8250|C|NAD83(CSRS)v6|812|430
8251|H|NAD83(CSRS)v6|812|430
8252|G|NAD83(CSRS)v6|812|430
8253|C|NAD83(CSRS)v7|812|431
8254|H|NAD83(CSRS)v7|812|431
8255|G|NAD83(CSRS)v7|812|431
8266|V|GVR2000 height|1892|Greenland Vertical Reference 2000|0|u
8267|V|GVR2016 height|1893|Greenland Vertical Reference 2016|0|u
8311|P|NAD83(2011) / Oregon Burns-Harper zone (m)|1894|391|0|en|proj=tmerc lat_0=43.5 lon_0=-117.666666666667 k=1.00014 x_0=90000 y_0=0
8312|P|NAD83(2011) / Oregon Burns-Harper zone (ft)|1894|391|4|en|proj=tmerc lat_0=43.5 lon_0=-117.666666666667 k=1.00014 x_0=90000.00001488 y_0=0
8313|P|NAD83(2011) / Oregon Canyon City-Burns zone (m)|1895|391|0|en|proj=tmerc lat_0=43.5 lon_0=-119 k=1.00022 x_0=20000 y_0=0
8314|P|NAD83(2011) / Oregon Canyon City-Burns zone (ft)|1895|391|4|en|proj=tmerc lat_0=43.5 lon_0=-119 k=1.00022 x_0=19999.99999992 y_0=0
8315|P|NAD83(2011) / Oregon Coast Range North zone (m)|1896|391|0|en|proj=lcc lat_1=45.5833333333333 lat_0=45.5833333333333 lon_0=-123.416666666667 k_0=1.000045 x_0=30000 y_0=20000
8316|P|NAD83(2011) / Oregon Coast Range North zone (ft)|1896|391|4|en|proj=lcc lat_1=45.5833333333333 lat_0=45.5833333333333 lon_0=-123.416666666667 k_0=1.000045 x_0=30000.00001512 y_0=19999.99999992
8317|P|NAD83(2011) / Oregon Dayville-Prairie City zone (m)|1897|391|0|en|proj=tmerc lat_0=44.25 lon_0=-119.633333333333 k=1.00012 x_0=20000 y_0=0
8318|P|NAD83(2011) / Oregon Dayville-Prairie City zone (ft)|1897|391|4|en|proj=tmerc lat_0=44.25 lon_0=-119.633333333333 k=1.00012 x_0=19999.99999992 y_0=0
8319|P|NAD83(2011) / Oregon Denio-Burns zone (m)|1898|391|0|en|proj=tmerc lat_0=41.75 lon_0=-118.416666666667 k=1.00019 x_0=80000 y_0=0
8320|P|NAD83(2011) / Oregon Denio-Burns zone (ft)|1898|391|4|en|proj=tmerc lat_0=41.75 lon_0=-118.416666666667 k=1.00019 x_0=79999.99999968 y_0=0
8321|P|NAD83(2011) / Oregon Halfway zone (m)|1899|391|0|en|proj=lcc lat_1=45.25 lat_0=45.25 lon_0=-117.25 k_0=1.000085 x_0=40000 y_0=70000
8322|P|NAD83(2011) / Oregon Halfway zone (ft)|1899|391|4|en|proj=lcc lat_1=45.25 lat_0=45.25 lon_0=-117.25 k_0=1.000085 x_0=39999.99999984 y_0=70000.00001496
8323|P|NAD83(2011) / Oregon Medford-Diamond Lake zone (m)|1900|391|0|en|proj=lcc lat_1=42 lat_0=42 lon_0=-122.25 k_0=1.00004 x_0=60000 y_0=-60000
8324|P|NAD83(2011) / Oregon Medford-Diamond Lake zone (ft)|1900|391|4|en|proj=lcc lat_1=42 lat_0=42 lon_0=-122.25 k_0=1.00004 x_0=59999.99999976 y_0=-59999.99999976
8325|P|NAD83(2011) / Oregon Mitchell zone (m)|1901|391|0|en|proj=lcc lat_1=47 lat_0=47 lon_0=-120.25 k_0=0.99927 x_0=30000 y_0=290000
8326|P|NAD83(2011) / Oregon Mitchell zone (ft)|1901|391|4|en|proj=lcc lat_1=47 lat_0=47 lon_0=-120.25 k_0=0.99927 x_0=30000.00001512 y_0=290000.00001408
8327|P|NAD83(2011) / Oregon North Central zone (m)|1902|391|0|en|proj=lcc lat_1=46.1666666666667 lat_0=46.1666666666667 lon_0=-120.5 k_0=1 x_0=100000 y_0=140000
8328|P|NAD83(2011) / Oregon North Central zone (ft)|1902|391|4|en|proj=lcc lat_1=46.1666666666667 lat_0=46.1666666666667 lon_0=-120.5 k_0=1 x_0=99999.9999996 y_0=139999.99999944
8329|P|NAD83(2011) / Oregon Ochoco Summit zone (m)|1903|391|0|en|proj=lcc lat_1=43.5 lat_0=43.5 lon_0=-120.5 k_0=1.00006 x_0=40000 y_0=-80000
8330|P|NAD83(2011) / Oregon Ochoco Summit zone (ft)|1903|391|4|en|proj=lcc lat_1=43.5 lat_0=43.5 lon_0=-120.5 k_0=1.00006 x_0=39999.99999984 y_0=-79999.99999968
8331|P|NAD83(2011) / Oregon Owyhee zone (m)|1904|391|0|en|proj=tmerc lat_0=41.75 lon_0=-117.583333333333 k=1.00018 x_0=70000 y_0=0
8332|P|NAD83(2011) / Oregon Owyhee zone (ft)|1904|391|4|en|proj=tmerc lat_0=41.75 lon_0=-117.583333333333 k=1.00018 x_0=70000.00001496 y_0=0
8333|P|NAD83(2011) / Oregon Pilot Rock-Ukiah zone (m)|1905|391|0|en|proj=lcc lat_1=46.1666666666667 lat_0=46.1666666666667 lon_0=-119 k_0=1.000025 x_0=50000 y_0=130000
8334|P|NAD83(2011) / Oregon Pilot Rock-Ukiah zone (ft)|1905|391|4|en|proj=lcc lat_1=46.1666666666667 lat_0=46.1666666666667 lon_0=-119 k_0=1.000025 x_0=50000.00001504 y_0=130000.00001472
8335|P|NAD83(2011) / Oregon Prairie City-Brogan zone (m)|1906|391|0|en|proj=lcc lat_1=44 lat_0=44 lon_0=-118 k_0=1.00017 x_0=60000 y_0=0
8336|P|NAD83(2011) / Oregon Prairie City-Brogan zone (ft)|1906|391|4|en|proj=lcc lat_1=44 lat_0=44 lon_0=-118 k_0=1.00017 x_0=59999.99999976 y_0=0
8337|P|NAD83(2011) / Oregon Riley-Lakeview zone (m)|1907|391|0|en|proj=tmerc lat_0=41.75 lon_0=-120.333333333333 k=1.000215 x_0=70000 y_0=0
8338|P|NAD83(2011) / Oregon Riley-Lakeview zone (ft)|1907|391|4|en|proj=tmerc lat_0=41.75 lon_0=-120.333333333333 k=1.000215 x_0=70000.00001496 y_0=0
8339|P|NAD83(2011) / Oregon Siskiyou Pass zone (m)|1908|391|0|en|proj=lcc lat_1=42.5 lat_0=42.5 lon_0=-122.583333333333 k_0=1.00015 x_0=10000 y_0=60000
8340|P|NAD83(2011) / Oregon Siskiyou Pass zone (ft)|1908|391|4|en|proj=lcc lat_1=42.5 lat_0=42.5 lon_0=-122.583333333333 k_0=1.00015 x_0=10000.0000152 y_0=59999.99999976
8341|P|NAD83(2011) / Oregon Ukiah-Fox zone (m)|1909|391|0|en|proj=lcc lat_1=45.25 lat_0=45.25 lon_0=-119 k_0=1.00014 x_0=30000 y_0=90000
8342|P|NAD83(2011) / Oregon Ukiah-Fox zone (ft)|1909|391|4|en|proj=lcc lat_1=45.25 lat_0=45.25 lon_0=-119 k_0=1.00014 x_0=30000.00001512 y_0=90000.00001488
8343|P|NAD83(2011) / Oregon Wallowa zone (m)|1910|391|0|en|proj=tmerc lat_0=45.25 lon_0=-117.5 k=1.000195 x_0=60000 y_0=0
8344|P|NAD83(2011) / Oregon Wallowa zone (ft)|1910|391|4|en|proj=tmerc lat_0=45.25 lon_0=-117.5 k=1.000195 x_0=59999.99999976 y_0=0
8345|P|NAD83(2011) / Oregon Warner Highway zone (m)|1911|391|0|en|proj=lcc lat_1=42.5 lat_0=42.5 lon_0=-120 k_0=1.000245 x_0=40000 y_0=60000
8346|P|NAD83(2011) / Oregon Warner Highway zone (ft)|1911|391|4|en|proj=lcc lat_1=42.5 lat_0=42.5 lon_0=-120 k_0=1.000245 x_0=39999.99999984 y_0=59999.99999976
8347|P|NAD83(2011) / Oregon Willamette Pass zone (m)|1912|391|0|en|proj=tmerc lat_0=43 lon_0=-122 k=1.000223 x_0=20000 y_0=0
8348|P|NAD83(2011) / Oregon Willamette Pass zone (ft)|1912|391|4|en|proj=tmerc lat_0=43 lon_0=-122 k=1.000223 x_0=19999.99999992 y_0=0
8349|K|GR96 + GVR2000 height|1892|4747|8266
8350|K|GR96 + GVR2016 height|1893|4747|8267
8351|G|S-JTSK [JTSK03]|1913|432
8352|P|S-JTSK [JTSK03] / Krovak|1913|432|0|sw|proj=krovak lat_0=49.5 lon_0=24.8333333333333 alpha=30.2881397527778 k=0.9999 x_0=0 y_0=0
8353|P|S-JTSK [JTSK03] / Krovak East North|1913|432|0|en|proj=krovak lat_0=49.5 lon_0=24.8333333333333 alpha=30.2881397527778 k=0.9999 x_0=0 y_0=0
8357|V|Baltic 1957 height|55|Baltic 1957|0|u
8358|V|Baltic 1957 depth|55|Baltic 1957|0|d
8360|K|ETRS89 + Baltic 1957 height|55|4258|8357
8370|K|ETRS89 / Belgian Lambert 2008 + Ostend height|851|3812|5710
8378|V|EPSG example wellbore local vertical CRS|1914|EPSG example wellbore vertical datum|0|d
8379|P|NAD83 / NCRS Las Vegas (m)|1915|138|0|en|proj=tmerc lat_0=36.25 lon_0=-114.966666666667 k=1.0001 x_0=100000 y_0=200000
8380|P|NAD83 / NCRS Las Vegas (ftUS)|1915|138|3|en|proj=tmerc lat_0=36.25 lon_0=-114.966666666667 k=1.0001 x_0=99999.9999898399 y_0=200000.00001016
8381|P|NAD83 / NCRS Las Vegas high (m)|1916|138|0|en|proj=tmerc lat_0=36.25 lon_0=-114.966666666667 k=1.000135 x_0=300000 y_0=400000
8382|P|NAD83 / NCRS Las Vegas high (ftUS)|1916|138|3|en|proj=tmerc lat_0=36.25 lon_0=-114.966666666667 k=1.000135 x_0=300000 y_0=399999.99998984
8383|P|NAD83(2011) / NCRS Las Vegas (m)|1915|391|0|en|proj=tmerc lat_0=36.25 lon_0=-114.966666666667 k=1.0001 x_0=100000 y_0=200000
8384|P|NAD83(2011) / NCRS Las Vegas (ftUS)|1915|391|3|en|proj=tmerc lat_0=36.25 lon_0=-114.966666666667 k=1.0001 x_0=99999.9999898399 y_0=200000.00001016
8385|P|NAD83(2011) / NCRS Las Vegas high (m)|1916|391|0|en|proj=tmerc lat_0=36.25 lon_0=-114.966666666667 k=1.000135 x_0=300000 y_0=400000
8387|P|NAD83(2011) / NCRS Las Vegas high (ftUS)|1916|391|3|en|proj=tmerc lat_0=36.25 lon_0=-114.966666666667 k=1.000135 x_0=300000 y_0=399999.99998984
8391|P|GDA94 / WEIPA94|1917|151|0|en|proj=tmerc lat_0=0 lon_0=141 k=0.999929 x_0=300000 y_0=2000000
8395|P|ETRS89 / Gauss-Kruger CM 9E|1918|130|0|en|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=500000 y_0=0
8397|C|ETRF2005|1085|497
8399|H|ETRF2005|1085|497
8401|C|ETRF2014|1085|498
8403|H|ETRF2014|1085|498
8425|C|Hong Kong Geodetic CS|252|433
8426|H|Hong Kong Geodetic CS|252|433
8427|G|Hong Kong Geodetic CS|252|433
8428|G|Macao 1920|1919|434
8429|C|Macao 2008|1919|435
8430|H|Macao 2008|1919|435
8431|G|Macao 2008|1919|435
8433|P|Macao 1920 / Macao Grid|1919|434|0|ne|proj=tmerc lat_0=22.2123972222222 lon_0=113.536469444444 k=1 x_0=20000 y_0=20000
8434|V|Macao height|1919|Macao Height Datum|0|u
8441|P|Tananarive / Laborde Grid|1206|160|0|ne|proj=labrd lat_0=-18.9 lon_0=46.4372291666667 azi=18.9 k=0.9995 x_0=400000 y_0=800000
8455|P|RGTAAF07 / UTM zone 53S|1920|409|0|en|proj=utm zone=53 south
8456|P|RGTAAF07 / UTM zone 54S|1921|409|0|en|proj=utm zone=54 south
8518|P|NAD83(2011) / KS RCS zone 1|1922|391|3|en|proj=tmerc lat_0=37.5 lon_0=-101.6 k=1.000156 x_0=457200.914401829 y_0=0
8519|P|NAD83(2011) / KS RCS zone 2|1923|391|3|en|proj=tmerc lat_0=37.5 lon_0=-100.95 k=1.000134 x_0=762001.524003047 y_0=0
8520|P|NAD83(2011) / KS RCS zone 3|1924|391|3|en|proj=tmerc lat_0=37.5 lon_0=-100.35 k=1.000116 x_0=1066802.13360427 y_0=0
8521|P|NAD83(2011) / KS RCS zone 4|1925|391|3|en|proj=tmerc lat_0=37.5 lon_0=-99.45 k=1.000082 x_0=1371602.74320549 y_0=0
8522|P|NAD83(2011) / KS RCS zone 5|1926|391|3|en|proj=tmerc lat_0=37.5 lon_0=-98.6666666666667 k=1.000078 x_0=1676403.3528067 y_0=0
8523|P|NAD83(2011) / KS RCS zone 6|1927|391|3|en|proj=tmerc lat_0=37.5 lon_0=-98.15 k=1.000068 x_0=1981203.96240792 y_0=0
8524|P|NAD83(2011) / KS RCS zone 7|1928|391|3|en|proj=tmerc lat_0=37.5 lon_0=-97.3333333333333 k=1.000049 x_0=2286004.57200914 y_0=0
8525|P|NAD83(2011) / KS RCS zone 8|1929|391|3|en|proj=lcc lat_1=39.1666666666667 lat_0=39.1666666666667 lon_0=-96.5 k_0=1.000044 x_0=2590805.18161036 y_0=182880.365760731
8526|P|NAD83(2011) / KS RCS zone 9|1930|391|3|en|proj=lcc lat_1=38.5 lat_0=38.5 lon_0=-96.5 k_0=1.00005 x_0=2895605.79121158 y_0=91440.1828803657
8527|P|NAD83(2011) / KS RCS zone 10|1931|391|3|en|proj=lcc lat_1=39.6333333333333 lat_0=39.6333333333333 lon_0=-95.75 k_0=1.00004 x_0=3200406.4008128 y_0=213360.426720853
8528|P|NAD83(2011) / KS RCS zone 11|1932|391|3|en|proj=lcc lat_1=39.1 lat_0=39.1 lon_0=-95.25 k_0=1.000033 x_0=3505207.01041402 y_0=182880.365760731
8529|P|NAD83(2011) / KS RCS zone 12|1933|391|3|en|proj=tmerc lat_0=36.75 lon_0=-101.416666666667 k=1.00014 x_0=3810007.62001524 y_0=0
8531|P|NAD83(2011) / KS RCS zone 13|1934|391|3|en|proj=tmerc lat_0=36.75 lon_0=-100.4 k=1.000109 x_0=4114808.22961646 y_0=0
8533|P|NAD83(2011) / KS RCS zone 14|1935|391|3|en|proj=tmerc lat_0=36.75 lon_0=-99.6666666666667 k=1.000097 x_0=4419608.83921768 y_0=0
8534|P|NAD83(2011) / KS RCS zone 15|1936|391|3|en|proj=tmerc lat_0=36.75 lon_0=-99.2 k=1.000087 x_0=4724409.4488189 y_0=0
8535|P|NAD83(2011) / KS RCS zone 16|1937|391|3|en|proj=tmerc lat_0=36.75 lon_0=-98.55 k=1.000069 x_0=5029210.05842011 y_0=0
8536|P|NAD83(2011) / KS RCS zone 17|1938|391|3|en|proj=lcc lat_1=37.7666666666667 lat_0=37.7666666666667 lon_0=-97.5 k_0=1.000059 x_0=5334010.66802133 y_0=121920.243840488
8538|P|NAD83(2011) / KS RCS zone 18|1939|391|3|en|proj=lcc lat_1=37.1833333333333 lat_0=37.1833333333333 lon_0=-97.5 k_0=1.000055 x_0=5638811.27762255 y_0=60960.1219202438
8539|P|NAD83(2011) / KS RCS zone 19|1940|391|3|en|proj=tmerc lat_0=36.75 lon_0=-95.9666666666667 k=1.000034 x_0=5943611.88722377 y_0=0
8540|P|NAD83(2011) / KS RCS zone 20|1941|391|3|en|proj=tmerc lat_0=36.75 lon_0=-95.0833333333333 k=1.000031 x_0=6248412.49682499 y_0=0
8541|C|NAD83(FBN)|1942|441
8542|H|NAD83(FBN)|1942|441
8543|C|NAD83(HARN Corrected)|483|436
8544|H|NAD83(HARN Corrected)|483|436
8545|G|NAD83(HARN Corrected)|483|436
8675|V|N43 height|1943|Helsinki 1943|0|u
8677|P|MGI 1901 / Balkans zone 5|1944|4|0|en|proj=tmerc lat_0=0 lon_0=15 k=0.9999 x_0=5500000 y_0=0
8678|P|MGI 1901 / Balkans zone 6|1945|4|0|en|proj=tmerc lat_0=0 lon_0=18 k=0.9999 x_0=6500000 y_0=0
8679|P|MGI 1901 / Balkans zone 8|1946|4|0|en|proj=tmerc lat_0=0 lon_0=24 k=0.9999 x_0=8500000 y_0=0
8682|P|SRB_ETRS89 / UTM zone 34N|1000|437|0|en|proj=utm zone=34
8683|C|SRB_ETRS89|1000|437
8684|H|SRB_ETRS89|1000|437
8685|G|SRB_ETRS89|1000|437
8686|P|MGI 1901 / Slovenia Grid|920|4|0|en|proj=tmerc lat_0=0 lon_0=15 k=0.9999 x_0=500000 y_0=0
8687|P|Slovenia 1996 / UTM zone 33N|920|336|0|en|proj=utm zone=33
8690|V|SVS2010 height|1423|Slovenian Vertical System 2010|0|u
8691|V|SRB_VRS12 height|1000|Serbian Vertical Reference System 2012|0|u
8692|P|NAD83(MA11) / UTM zone 54N|1947|393|0|en|proj=utm zone=54
8693|P|NAD83(MA11) / UTM zone 55N|1948|393|0|en|proj=utm zone=55
8694|G|Camacupa 2015|1949|438
8697|C|RSAO13|1949|439
8698|H|RSAO13|1949|439
8699|G|RSAO13|1949|439
8700|K|NAD83 / Arizona East (ft) + NAVD88 height (ft)|167|2222|8228
8701|K|NAD83 / Arizona Central (ft) + NAVD88 height (ft)|168|2223|8228
8702|K|NAD83 / Arizona West (ft) + NAVD88 height (ft)|169|2224|8228
8703|K|NAD83 / Michigan North (ft) + NAVD88 height (ft)|193|2251|8228
8704|K|NAD83 / Michigan Central (ft) + NAVD88 height (ft)|194|2252|8228
8705|K|NAD83 / Michigan South (ft) + NAVD88 height (ft)|195|2253|8228
8706|K|NAD83 / Montana (ft) + NAVD88 height (ft)|198|2256|8228
8707|K|NAD83 / North Dakota North (ft) + NAVD88 height (ft)|207|2265|8228
8708|K|NAD83 / North Dakota South (ft) + NAVD88 height (ft)|208|2266|8228
8709|K|NAD83 / Oregon North (ft) + NAVD88 height (ft)|211|2269|8228
8710|K|NAD83 / Oregon South (ft) + NAVD88 height (ft)|212|2270|8228
8711|K|NAD83 / South Carolina (ft) + NAVD88 height (ft)|215|2273|8228
8712|K|NAD83 / Arkansas North (ftUS) + NAVD88 height (ftUS)|440|3433|6360
8713|K|NAD83 / Arkansas South (ftUS) + NAVD88 height (ftUS)|441|3434|6360
8714|K|NAD83 / California zone 1 (ftUS) + NAVD88 height (ftUS)|170|2225|6360
8715|K|NAD83 / California zone 2 (ftUS) + NAVD88 height (ftUS)|171|2226|6360
8716|K|NAD83 / California zone 3 (ftUS) + NAVD88 height (ftUS)|172|2227|6360
8717|K|NAD83 / California zone 4 (ftUS) + NAVD88 height (ftUS)|173|2228|6360
8718|K|NAD83 / California zone 5 (ftUS) + NAVD88 height (ftUS)|174|2229|6360
8719|K|NAD83 / California zone 6 (ftUS) + NAVD88 height (ftUS)|175|2230|6360
8720|K|NAD83 / Colorado North (ftUS) + NAVD88 height (ftUS)|176|2231|6360
8721|K|NAD83 / Colorado Central (ftUS) + NAVD88 height (ftUS)|177|2232|6360
8722|K|NAD83 / Colorado South (ftUS) + NAVD88 height (ftUS)|178|2233|6360
8723|K|NAD83 / Connecticut (ftUS) + NAVD88 height (ftUS)|179|2234|6360
8724|K|NAD83 / Delaware (ftUS) + NAVD88 height (ftUS)|180|2235|6360
8725|K|NAD83 / Florida North (ftUS) + NAVD88 height (ftUS)|183|2238|6360
8726|K|NAD83 / Florida East (ftUS) + NAVD88 height (ftUS)|181|2236|6360
8727|K|NAD83 / Florida West (ftUS) + NAVD88 height (ftUS)|182|2237|6360
8728|K|NAD83 / Georgia East (ftUS) + NAVD88 height (ftUS)|184|2239|6360
8729|K|NAD83 / Georgia West (ftUS) + NAVD88 height (ftUS)|185|2240|6360
8730|K|NAD83 / Idaho East (ftUS) + NAVD88 height (ftUS)|186|2241|6360
8731|K|NAD83 / Idaho Central (ftUS) + NAVD88 height (ftUS)|187|2242|6360
8732|K|NAD83 / Idaho West (ftUS) + NAVD88 height (ftUS)|188|2243|6360
8733|K|NAD83 / Illinois East (ftUS) + NAVD88 height (ftUS)|447|3435|6360
8734|K|NAD83 / Illinois West (ftUS) + NAVD88 height (ftUS)|448|3436|6360
8735|K|NAD83 / Indiana East (ftUS) + NAVD88 height (ftUS)|449|2965|6360
8736|K|NAD83 / Indiana West (ftUS) + NAVD88 height (ftUS)|450|2966|6360
8737|K|NAD83 / Iowa North (ftUS) + NAVD88 height (ftUS)|451|3417|6360
8738|K|NAD83 / Iowa South (ftUS) + NAVD88 height (ftUS)|452|3418|6360
8739|K|NAD83 / Kansas North (ftUS) + NAVD88 height (ftUS)|453|3419|6360
8740|K|NAD83 / Kansas South (ftUS) + NAVD88 height (ftUS)|454|3420|6360
8741|K|NAD83 / Kentucky North (ftUS) + NAVD88 height (ftUS)|151|2246|6360
8742|K|NAD83 / Kentucky South (ftUS) + NAVD88 height (ftUS)|189|2247|6360
8743|K|NAD83 / Louisiana North (ftUS) + NAVD88 height (ftUS)|455|3451|6360
8744|K|NAD83 / Louisiana South (ftUS) + NAVD88 height (ftUS)|456|3452|6360
8745|K|NAD83 / Maine East (ftUS) + NAVD88 height (ftUS)|457|26847|6360
8746|K|NAD83 / Maine West (ftUS) + NAVD88 height (ftUS)|458|26848|6360
8747|K|NAD83 / Maryland (ftUS) + NAVD88 height (ftUS)|190|2248|6360
8748|K|NAD83 / Massachusetts Mainland (ftUS) + NAVD88 height (ftUS)|191|2249|6360
8749|K|NAD83 / Massachusetts Island (ftUS) + NAVD88 height (ftUS)|192|2250|6360
8750|K|NAD83 / Minnesota North (ftUS) + NAVD88 height (ftUS)|459|26849|6360
8751|K|NAD83 / Minnesota Central (ftUS) + NAVD88 height (ftUS)|460|26850|6360
8752|K|NAD83 / Minnesota South (ftUS) + NAVD88 height (ftUS)|461|26851|6360
8753|K|NAD83 / Mississippi East (ftUS) + NAVD88 height (ftUS)|196|2254|6360
8754|K|NAD83 / Mississippi West (ftUS) + NAVD88 height (ftUS)|197|2255|6360
8755|K|NAD83 / Nebraska (ftUS) + NAVD88 height (ftUS)|465|26852|6360
8756|K|NAD83 / Nevada East (ftUS) + NAVD88 height (ftUS)|466|3421|6360
8757|K|NAD83 / Nevada Central (ftUS) + NAVD88 height (ftUS)|467|3422|6360
8758|K|NAD83 / Nevada West (ftUS) + NAVD88 height (ftUS)|468|3423|6360
8759|K|NAD83 / New Hampshire (ftUS) + NAVD88 height (ftUS)|469|3437|6360
8760|K|NAD83 / New Jersey (ftUS) + NAVD88 height (ftUS)|470|3424|6360
8761|K|NAD83 / New Mexico East (ftUS) + NAVD88 height (ftUS)|199|2257|6360
8762|K|NAD83 / New Mexico Central (ftUS) + NAVD88 height (ftUS)|200|2258|6360
8763|K|NAD83 / New Mexico West (ftUS) + NAVD88 height (ftUS)|201|2259|6360
8764|K|NAD83 / New York East (ftUS) + NAVD88 height (ftUS)|202|2260|6360
8765|K|NAD83 / New York Central (ftUS) + NAVD88 height (ftUS)|203|2261|6360
8766|K|NAD83 / New York West (ftUS) + NAVD88 height (ftUS)|204|2262|6360
8767|K|NAD83 / New York Long Island (ftUS) + NAVD88 height (ftUS)|205|2263|6360
8768|K|NAD83 / North Carolina (ftUS) + NAVD88 height (ftUS)|206|2264|6360
8769|K|NAD83 / Ohio North (ftUS) + NAVD88 height (ftUS)|471|3734|6360
8770|K|NAD83 / Ohio South (ftUS) + NAVD88 height (ftUS)|472|3735|6360
8771|K|NAD83 / Oklahoma North (ftUS) + NAVD88 height (ftUS)|209|2267|6360
8772|K|NAD83 / Oklahoma South (ftUS) + NAVD88 height (ftUS)|210|2268|6360
8773|K|NAD83 / Pennsylvania North (ftUS) + NAVD88 height (ftUS)|213|2271|6360
8774|K|NAD83 / Pennsylvania South (ftUS) + NAVD88 height (ftUS)|214|2272|6360
8775|K|NAD83 / Rhode Island (ftUS) + NAVD88 height (ftUS)|473|3438|6360
8776|K|NAD83 / South Dakota North (ftUS) + NAVD88 height (ftUS)|474|4457|6360
8777|K|NAD83 / South Dakota South (ftUS) + NAVD88 height (ftUS)|475|3455|6360
8778|K|NAD83 / Tennessee (ftUS) + NAVD88 height (ftUS)|150|2274|6360
8779|K|NAD83 / Texas North (ftUS) + NAVD88 height (ftUS)|216|2275|6360
8780|K|NAD83 / Texas North Central (ftUS) + NAVD88 height (ftUS)|217|2276|6360
8781|K|NAD83 / Texas Central (ftUS) + NAVD88 height (ftUS)|218|2277|6360
8782|K|NAD83 / Texas South Central (ftUS) + NAVD88 height (ftUS)|219|2278|6360
8783|K|NAD83 / Texas South (ftUS) + NAVD88 height (ftUS)|220|2279|6360
8784|K|NAD83 / Utah North (ftUS) + NAVD88 height (ftUS)|221|3560|6360
8785|K|NAD83 / Utah Central (ftUS) + NAVD88 height (ftUS)|222|3566|6360
8786|K|NAD83 / Utah South (ftUS) + NAVD88 height (ftUS)|223|3567|6360
8787|K|NAD83 / Vermont (ftUS) + NAVD88 height (ftUS)|476|5646|6360
8788|K|NAD83 / Virginia North (ftUS) + NAVD88 height (ftUS)|224|2283|6360
8789|K|NAD83 / Virginia South (ftUS) + NAVD88 height (ftUS)|225|2284|6360
8790|K|NAD83 / Washington North (ftUS) + NAVD88 height (ftUS)|226|2285|6360
8791|K|NAD83 / Washington South (ftUS) + NAVD88 height (ftUS)|227|2286|6360
8792|K|NAD83 / West Virginia North (ftUS) + NAVD88 height (ftUS)|477|26853|6360
8793|K|NAD83 / West Virginia South (ftUS) + NAVD88 height (ftUS)|478|26854|6360
8794|K|NAD83 / Wisconsin North (ftUS) + NAVD88 height (ftUS)|228|2287|6360
8795|K|NAD83 / Wisconsin Central (ftUS) + NAVD88 height (ftUS)|229|2288|6360
8796|K|NAD83 / Wisconsin South (ftUS) + NAVD88 height (ftUS)|230|2289|6360
8797|K|NAD83 / Wyoming East (ftUS) + NAVD88 height (ftUS)|479|3736|6360
8798|K|NAD83 / Wyoming East Central (ftUS) + NAVD88 height (ftUS)|480|3737|6360
8799|K|NAD83 / Wyoming West Central (ftUS) + NAVD88 height (ftUS)|481|3738|6360
8800|K|NAD83 / Wyoming West (ftUS) + NAVD88 height (ftUS)|482|3739|6360
8801|K|NAD83 / Alabama East + NAVD88 height|438|26929|5703
8802|K|NAD83 / Alabama West + NAVD88 height|439|26930|5703
8803|K|NAD83 / Alaska zone 1 + NAVD88 height|860|26931|5703
8804|K|NAD83 / Alaska zone 2 + NAVD88 height|861|26932|5703
8805|K|NAD83 / Alaska zone 3 + NAVD88 height|862|26933|5703
8806|K|NAD83 / Alaska zone 4 + NAVD88 height|863|26934|5703
8807|K|NAD83 / Alaska zone 5 + NAVD88 height|864|26935|5703
8808|K|NAD83 / Alaska zone 6 + NAVD88 height|865|26936|5703
8809|K|NAD83 / Alaska zone 7 + NAVD88 height|866|26937|5703
8810|K|NAD83 / Alaska zone 8 + NAVD88 height|867|26938|5703
8811|K|NAD83 / Alaska zone 9 + NAVD88 height|868|26939|5703
8812|K|NAD83 / Alaska zone 10 + NAVD88 height|869|26940|5703
8813|K|NAD83 / Missouri East + NAVD88 height|462|26996|5703
8814|K|NAD83 / Missouri Central + NAVD88 height|463|26997|5703
8815|K|NAD83 / Missouri West + NAVD88 height|464|26998|5703
8816|C|MTRF-2000|1950|440
8817|H|MTRF-2000|1950|440
8818|G|MTRF-2000|1950|440
8826|P|NAD83 / Idaho Transverse Mercator|1951|138|0|en|proj=tmerc lat_0=42 lon_0=-114 k=0.9996 x_0=2500000 y_0=1200000
8836|P|MTRF-2000 / UTM zone 36N|1952|440|0|en|proj=utm zone=36
8837|P|MTRF-2000 / UTM zone 37N|1953|440|0|en|proj=utm zone=37
8838|P|MTRF-2000 / UTM zone 38N|1954|440|0|en|proj=utm zone=38
8839|P|MTRF-2000 / UTM zone 39N|1955|440|0|en|proj=utm zone=39
8840|P|MTRF-2000 / UTM zone 40N|1956|440|0|en|proj=utm zone=40
8841|V|MVGC height|251|MOMRA Vertical Geodetic Control|0|u
8857|P|WGS 84 / Equal Earth Greenwich|943|183|0|en|proj=eqearth lon_0=0 x_0=0 y_0=0
8858|P|WGS 84 / Equal Earth Americas|1957|183|0|en|proj=eqearth lon_0=-90 x_0=0 y_0=0
8859|P|WGS 84 / Equal Earth Asia-Pacific|1958|183|0|en|proj=eqearth lon_0=150 x_0=0 y_0=0
8860|G|NAD83(FBN)|1942|441
8881|V|Vienna height|1959|Wiener Null|0|u
8888|G|WGS 84 (Transit)|943|442
8897|V|EPSG example wellbore local vertical CRS (ft)|1914|EPSG example wellbore vertical datum|4|d
8898|C|RGWF96|1960|443
8899|H|RGWF96|1960|443
8900|G|RGWF96|1960|443
8901|H|RGWF96 (lon-lat)|1960|444
8902|G|RGWF96 (lon-lat)|1960|444
8903|P|RGWF96 / UTM zone 1S|1960|443|0|en|proj=utm zone=1 south
8904|V|TWVD 2001 height|931|Taiwan Vertical Datum 2001|0|u
8905|C|CR-SIRGAS|1296|445
8906|H|CR-SIRGAS|1296|445
8907|G|CR-SIRGAS|1296|445
8908|P|CR-SIRGAS / CRTM05|1961|445|0|en|proj=tmerc lat_0=0 lon_0=-84 k=0.9999 x_0=500000 y_0=0
8909|P|CR-SIRGAS / UTM zone 16N|1962|445|0|en|proj=utm zone=16
8910|P|CR-SIRGAS / UTM zone 17N|1963|445|0|en|proj=utm zone=17
8911|V|DACR52 height|1961|Datum Altimetrico de Costa Rica 1952|0|u
8912|K|CR-SIRGAS / CRTM05 + DACR52 height|1961|8908|8911
8915|C|SIRGAS-CON DGF00P01|1964|447
8916|H|SIRGAS-CON DGF00P01|1964|447
8917|C|SIRGAS-CON DGF01P01|1964|448
8918|H|SIRGAS-CON DGF01P01|1964|448
8919|C|SIRGAS-CON DGF01P02|1964|449
8920|H|SIRGAS-CON DGF01P02|1964|449
8921|C|SIRGAS-CON DGF02P01|1964|450
8922|H|SIRGAS-CON DGF02P01|1964|450
8923|C|SIRGAS-CON DGF04P01|1964|451
8924|H|SIRGAS-CON DGF04P01|1964|451
8925|C|SIRGAS-CON DGF05P01|1964|452
8926|H|SIRGAS-CON DGF05P01|1964|452
8927|C|SIRGAS-CON DGF06P01|1964|453
8928|H|SIRGAS-CON DGF06P01|1964|453
8929|C|SIRGAS-CON DGF07P01|1964|454
8930|H|SIRGAS-CON DGF07P01|1964|454
8931|C|SIRGAS-CON DGF08P01|1964|455
8932|H|SIRGAS-CON DGF08P01|1964|455
8933|C|SIRGAS-CON SIR09P01|1964|456
8934|H|SIRGAS-CON SIR09P01|1964|456
8935|C|SIRGAS-CON SIR10P01|1964|457
8936|H|SIRGAS-CON SIR10P01|1964|457
8937|C|SIRGAS-CON SIR11P01|1964|458
8938|H|SIRGAS-CON SIR11P01|1964|458
8939|C|SIRGAS-CON SIR13P01|1964|459
8940|H|SIRGAS-CON SIR13P01|1964|459
8941|C|SIRGAS-CON SIR14P01|1964|460
8942|H|SIRGAS-CON SIR14P01|1964|460
8943|C|SIRGAS-CON SIR15P01|1964|461
8944|H|SIRGAS-CON SIR15P01|1964|461
8945|C|SIRGAS-CON SIR17P01|1964|462
8946|H|SIRGAS-CON SIR17P01|1964|462
8947|C|SIRGAS-Chile 2010|1293|446
8948|H|SIRGAS-Chile 2010|1293|446
8949|G|SIRGAS-Chile 2010|1293|446
8950|P|SIRGAS-Chile 2010 / UTM zone 18S|1295|446|0|en|proj=utm zone=18 south
8951|P|SIRGAS-Chile 2010 / UTM zone 19S|1294|446|0|en|proj=utm zone=19 south
8972|G|SIRGAS-CON DGF00P01|1964|447
8973|G|SIRGAS-CON DGF01P01|1964|448
8974|G|SIRGAS-CON DGF01P02|1964|449
8975|G|SIRGAS-CON DGF02P01|1964|450
8976|G|SIRGAS-CON DGF04P01|1964|451
8977|G|SIRGAS-CON DGF05P01|1964|452
8978|G|SIRGAS-CON DGF06P01|1964|453
8979|G|SIRGAS-CON DGF07P01|1964|454
8980|G|SIRGAS-CON DGF08P01|1964|455
8981|G|SIRGAS-CON SIR09P01|1964|456
8982|G|SIRGAS-CON SIR10P01|1964|457
8983|G|SIRGAS-CON SIR11P01|1964|458
8984|G|SIRGAS-CON SIR13P01|1964|459
8985|G|SIRGAS-CON SIR14P01|1964|460
8986|G|SIRGAS-CON SIR15P01|1964|461
8987|G|SIRGAS-CON SIR17P01|1964|462
8988|G|ITRF88|943|463
8989|G|ITRF89|943|464
8990|G|ITRF90|943|465
8991|G|ITRF91|943|466
8992|G|ITRF92|943|467
8993|G|ITRF93|943|468
8994|G|ITRF94|943|469
8995|G|ITRF96|943|470
8996|G|ITRF97|943|471
8997|G|ITRF2000|943|472
8998|G|ITRF2005|943|473
8999|G|ITRF2008|943|474
9000|G|ITRF2014|943|475
9001|C|IGS97|943|476
9002|H|IGS97|943|476
9003|G|IGS97|943|476
9004|C|IGS00|943|477
9005|H|IGS00|943|477
9006|G|IGS00|943|477
9007|C|IGb00|943|478
9008|H|IGb00|943|478
9009|G|IGb00|943|478
9010|C|IGS05|943|479
9011|H|IGS05|943|479
9012|G|IGS05|943|479
9013|H|IGS08|943|480
9014|G|IGS08|943|480
9015|C|IGb08|943|481
9016|H|IGb08|943|481
9017|G|IGb08|943|481
9018|H|IGS14|943|482
9019|G|IGS14|943|482
9039|P|ISN2016 / LAEA Europe|578|424|0|ne|proj=laea lat_0=52 lon_0=10 x_0=4321000 y_0=3210000
9040|P|ISN2016 / LCC Europe|578|424|0|ne|proj=lcc lat_0=52 lon_0=10 lat_1=35 lat_2=65 x_0=4000000 y_0=2800000
9053|G|WGS 84 (G730)|943|483
9054|G|WGS 84 (G873)|943|484
9055|G|WGS 84 (G1150)|943|485
9056|G|WGS 84 (G1674)|943|486
9057|G|WGS 84 (G1762)|943|487
9059|G|ETRF89|1085|488
9060|G|ETRF90|1085|489
9061|G|ETRF91|1085|490
9062|G|ETRF92|1085|491
9063|G|ETRF93|1085|492
9064|G|ETRF94|1085|493
9065|G|ETRF96|1085|494
9066|G|ETRF97|1085|495
9067|G|ETRF2000|1085|496
9068|G|ETRF2005|1085|497
9069|G|ETRF2014|1085|498
9070|C|NAD83(MARP00)|1590|499
9071|H|NAD83(MARP00)|1590|499
9072|G|NAD83(MARP00)|1590|499
9073|C|NAD83(PACP00)|1589|500
9074|H|NAD83(PACP00)|1589|500
9075|G|NAD83(PACP00)|1589|500
9130|V|IGN 2008 LD height|1355|IGN 2008 LD|0|u
9138|C|KOSOVAREF01|1965|501
9139|H|KOSOVAREF01|1965|501
9140|G|KOSOVAREF01|1965|501
9141|P|KOSOVAREF01 / Balkans zone 7|1965|501|0|en|proj=tmerc lat_0=0 lon_0=21 k=0.9999 x_0=7500000 y_0=0
9146|C|SIRGAS-Chile 2013|1293|502
9147|H|SIRGAS-Chile 2013|1293|502
9148|G|SIRGAS-Chile 2013|1293|502
9149|P|SIRGAS-Chile 2013 / UTM zone 18S|1295|502|0|en|proj=utm zone=18 south
9150|P|SIRGAS-Chile 2013 / UTM zone 19S|1294|502|0|en|proj=utm zone=19 south
9151|C|SIRGAS-Chile 2016|1293|503
9152|H|SIRGAS-Chile 2016|1293|503
9153|G|SIRGAS-Chile 2016|1293|503
9154|P|SIRGAS-Chile 2016 / UTM zone 18S|1295|503|0|en|proj=utm zone=18 south
9155|P|SIRGAS-Chile 2016 / UTM zone 19S|1294|503|0|en|proj=utm zone=19 south
9156|P|RSAO13 / UTM zone 32S|1966|439|0|en|proj=utm zone=32 south
9157|P|RSAO13 / UTM zone 33S|1967|439|0|en|proj=utm zone=33 south
9158|P|RSAO13 / UTM zone 34S|1968|439|0|en|proj=utm zone=34 south
9159|P|RSAO13 / TM 12 SE|1969|439|0|en|proj=tmerc lat_0=0 lon_0=12 k=0.9996 x_0=500000 y_0=10000000
9191|P|WGS 84 / NIWA Albers|982|183|0|en|proj=aea lat_0=-40 lon_0=175 lat_1=-30 lat_2=-50 x_0=0 y_0=0
9205|P|VN-2000 / TM-3 103-00|1970|327|0|en|proj=tmerc lat_0=0 lon_0=103 k=0.9999 x_0=500000 y_0=0
9206|P|VN-2000 / TM-3 104-00|1971|327|0|en|proj=tmerc lat_0=0 lon_0=104 k=0.9999 x_0=500000 y_0=0
9207|P|VN-2000 / TM-3 104-30|1972|327|0|en|proj=tmerc lat_0=0 lon_0=104.5 k=0.9999 x_0=500000 y_0=0
9208|P|VN-2000 / TM-3 104-45|1973|327|0|en|proj=tmerc lat_0=0 lon_0=104.75 k=0.9999 x_0=500000 y_0=0
9209|P|VN-2000 / TM-3 105-30|1974|327|0|en|proj=tmerc lat_0=0 lon_0=105.5 k=0.9999 x_0=500000 y_0=0
9210|P|VN-2000 / TM-3 105-45|1975|327|0|en|proj=tmerc lat_0=0 lon_0=105.75 k=0.9999 x_0=500000 y_0=0
9211|P|VN-2000 / TM-3 106-00|1976|327|0|en|proj=tmerc lat_0=0 lon_0=106 k=0.9999 x_0=500000 y_0=0
9212|P|VN-2000 / TM-3 106-15|1977|327|0|en|proj=tmerc lat_0=0 lon_0=106.25 k=0.9999 x_0=500000 y_0=0
9213|P|VN-2000 / TM-3 106-30|1978|327|0|en|proj=tmerc lat_0=0 lon_0=106.5 k=0.9999 x_0=500000 y_0=0
9214|P|VN-2000 / TM-3 107-00|1979|327|0|en|proj=tmerc lat_0=0 lon_0=107 k=0.9999 x_0=500000 y_0=0
9215|P|VN-2000 / TM-3 107-15|1980|327|0|en|proj=tmerc lat_0=0 lon_0=107.25 k=0.9999 x_0=500000 y_0=0
9216|P|VN-2000 / TM-3 107-30|1981|327|0|en|proj=tmerc lat_0=0 lon_0=107.5 k=0.9999 x_0=500000 y_0=0
9217|P|VN-2000 / TM-3 108-15|1982|327|0|en|proj=tmerc lat_0=0 lon_0=108.25 k=0.9999 x_0=500000 y_0=0
9218|P|VN-2000 / TM-3 108-30|1983|327|0|en|proj=tmerc lat_0=0 lon_0=108.5 k=0.9999 x_0=500000 y_0=0
9221|P|Hartebeesthoek94 / ZAF BSU Albers 25E|1984|31|0|ne|proj=aea lat_0=-30 lon_0=25 lat_1=-22 lat_2=-38 x_0=1400000 y_0=1300000
9222|P|Hartebeesthoek94 / ZAF BSU Albers 44E|1985|31|0|ne|proj=aea lat_0=-42 lon_0=44 lat_1=-34 lat_2=-50 x_0=1200000 y_0=1300000
9245|V|CGVD2013a(2010) height|812|Canadian Geodetic Vertical Datum of 2013 (CGG2013a) epoch 2010|0|u
9248|G|Tapi Aike|1986|504
9249|P|Tapi Aike / Argentina 1|1987|504|0|ne|proj=tmerc lat_0=-90 lon_0=-72 k=1 x_0=1500000 y_0=0
9250|P|Tapi Aike / Argentina 2|1988|504|0|ne|proj=tmerc lat_0=-90 lon_0=-69 k=1 x_0=2500000 y_0=0
9251|G|MMN|1989|505
9252|P|MMN / Argentina 2|1989|505|0|ne|proj=tmerc lat_0=-90 lon_0=-69 k=1 x_0=2500000 y_0=0
9253|G|MMS|1989|506
9254|P|MMS / Argentina 2|1989|506|0|ne|proj=tmerc lat_0=-90 lon_0=-69 k=1 x_0=2500000 y_0=0
9255|V|SRVN16 height|1990|Sistema de Referencia Vertical Nacional 2016|0|u
9265|P|POSGAR 2007 / UTM zone 19S|73|369|0|en|proj=utm zone=19 south
9266|C|MGI|848|174
9267|H|MGI|848|174
9271|P|MGI / Austria West|1991|174|0|ne|proj=tmerc lat_0=0 lon_0=10.3333333333333 k=1 x_0=0 y_0=0
9272|P|MGI / Austria Central|1992|174|0|ne|proj=tmerc lat_0=0 lon_0=13.3333333333333 k=1 x_0=0 y_0=0
9273|P|MGI / Austria East|1993|174|0|ne|proj=tmerc lat_0=0 lon_0=16.3333333333333 k=1 x_0=0 y_0=0
9274|V|EVRF2000 Austria height|848|European Vertical Reference Frame 2000 Austria|0|u
9279|V|SA LLD height|1994|South Africa Land Levelling Datum|0|u
9284|P|Pampa del Castillo / Argentina 1|1995|44|0|ne|proj=tmerc lat_0=-90 lon_0=-72 k=1 x_0=1500000 y_0=0
9285|P|Pampa del Castillo / Argentina 3|1996|44|0|ne|proj=tmerc lat_0=-90 lon_0=-66 k=1 x_0=3500000 y_0=0
9286|K|ETRS89 + NAP height|1381|4258|5709
9287|V|LAT NL depth|1997|Lowest Astronomical Tide Netherlands|0|d
9288|V|MSL NL depth|1997|Mean Sea Level Netherlands|0|d
9289|K|ETRS89 + LAT NL depth|1997|4258|9287
9290|K|ETRS89 + MSL NL depth|1997|4258|9288
9292|C|ONGD17|1729|507
9293|H|ONGD17|1729|507
9294|G|ONGD17|1729|507
9295|P|ONGD17 / UTM zone 39N|1730|507|0|en|proj=utm zone=39
9296|P|ONGD17 / UTM zone 40N|1731|507|0|en|proj=utm zone=40
9297|P|ONGD17 / UTM zone 41N|1732|507|0|en|proj=utm zone=41
9299|G|HS2-IRF|1998|508
9300|P|HS2 Survey Grid|1998|508|0|en|proj=tmerc lat_0=52.3 lon_0=-1.5 k=1 x_0=198873.0046 y_0=375064.3871
9303|V|HS2-VRF height|1998|HS2 Vertical Reference Frame|0|u
9306|K|HS2 Survey Grid + HS2-VRF height|1998|9300|9303
9307|C|ATRF2014|1102|509
9308|H|ATRF2014|1102|509
9309|G|ATRF2014|1102|509
9311|P|NAD27 / US National Atlas Equal Area|1885|137|0|en|proj=laea lat_0=45 lon_0=-100 x_0=0 y_0=0
9331|C|KSA-GRF17|1950|510
9332|H|KSA-GRF17|1950|510
9333|G|KSA-GRF17|1950|510
9335|V|KSA-VRF14 height|251|Kingdom of Saudi Arabia Vertical Reference Frame Jeddah 2014|0|u
9351|V|NGNC08 height|650|Nivellement General de Nouvelle Caledonie 2008|0|u
9354|P|WGS 84 / IBCSO Polar Stereographic|1999|183|0|en|proj=stere lat_0=-90 lat_ts=-65 lon_0=0 x_0=0 y_0=0
9356|P|KSA-GRF17 / UTM zone 36N|1952|510|0|en|proj=utm zone=36
9357|P|KSA-GRF17 / UTM zone 37N|1953|510|0|en|proj=utm zone=37
9358|P|KSA-GRF17 / UTM zone 38N|1954|510|0|en|proj=utm zone=38
9359|P|KSA-GRF17 / UTM zone 39N|1955|510|0|en|proj=utm zone=39
9360|P|KSA-GRF17 / UTM zone 40N|1956|510|0|en|proj=utm zone=40
9364|G|TPEN11-IRF|2000|511
9367|P|TPEN11 Grid|2000|511|0|en|proj=tmerc lat_0=53.5 lon_0=-2.25 k=1 x_0=203252.175 y_0=407512.765
9368|K|TPEN11 Grid + ODN height|2000|9367|5701
9372|G|MML07-IRF|2001|512
9373|P|MML07 Grid|2001|512|0|en|proj=tmerc lat_0=52.45 lon_0=-0.85 k=1 x_0=49350.157 y_0=108398.212
9374|K|MML07 Grid + ODN height|2001|9373|5701
9377|P|MAGNA-SIRGAS / Origen-Nacional|1161|258|0|ne|proj=tmerc lat_0=4 lon_0=-73 k=0.9992 x_0=5000000 y_0=2000000
9378|C|IGb14|1213|513
9379|H|IGb14|943|513
9380|G|IGb14|943|513
9384|G|AbInvA96_2020-IRF|2002|514
9387|P|AbInvA96_2020 Grid|2002|514|0|en|proj=tmerc lat_0=57.4 lon_0=-3.2 k=1 x_0=155828.702 y_0=115225.707
9388|K|AbInvA96_2020 Grid + ODN height|2002|9387|5701
9389|V|EVRF2019 height|2003|European Vertical Reference Frame 2019|0|u
9390|V|EVRF2019 mean-tide height|2003|European Vertical Reference Frame 2019 mean tide|0|u
9391|P|BGS2005 / UTM zone 35N|1841|418|0|en|proj=utm zone=35
9392|V|Mallorca height|2004|Mallorca|0|u
9393|V|Menorca height|2005|Menorca|0|u
9394|V|Ibiza height|2006|Ibiza|0|u
9395|V|Lanzarote height|2007|Lanzarote|0|u
9396|V|Fuerteventura height|2008|Fuerteventura|0|u
9397|V|Gran Canaria height|2009|Gran Canaria|0|u
9398|V|Tenerife height|2010|Tenerife|0|u
9399|V|La Gomera height|2011|La Gomera|0|u
9400|V|La Palma height|2012|La Palma|0|u
9401|V|El Hierro height|2013|El Hierro|0|u
9402|V|Ceuta 2 height|2014|Ceuta 2|0|u
9403|G|PN68|2015|515
9404|P|PN68 / UTM zone 27N|2016|515|0|en|proj=utm zone=27
9405|P|PN68 / UTM zone 28N|2017|515|0|en|proj=utm zone=28
9406|P|PN84 / UTM zone 27N|2016|300|0|en|proj=utm zone=27
9407|P|PN84 / UTM zone 28N|2018|300|0|en|proj=utm zone=28
9422|K|ETRS89 + EVRF2019 height|2019|4258|9389
9423|K|ETRS89 + EVRF2019 mean-tide height|2019|4258|9390
9424|K|ETRS89 + ODN height|1378|4258|5701
9425|K|ETRS89 + ODN (Offshore) height|1805|4258|7707
9426|K|ETRS89 + ODN Orkney height|1394|4258|5740
9427|K|ETRS89 + Lerwick height|1396|4258|5742
9428|K|ETRS89 + Stornoway height|1400|4258|5746
9429|K|ETRS89 + Douglas height|1404|4258|5750
9430|K|ETRS89 + St. Marys height|1403|4258|5749
9449|K|ETRS89 + Malin Head height|123|4258|5731
9450|K|ETRS89 + Belfast height|1038|4258|5732
9451|V|BI height|2020|British Isles height ensemble|0|u
9452|K|ETRS89 + BI height|2020|4258|9451
9453|G|GBK19-IRF|2021|516
9456|P|GBK19 Grid|2021|516|0|en|proj=tmerc lat_0=55.75 lon_0=-4.35 k=1 x_0=93720.394 y_0=113870.493
9457|K|GBK19 Grid + ODN height|2021|9456|5701
9458|V|AVWS height|1102|Australian Vertical Working Surface|0|u
9462|K|GDA2020 + AVWS height|1102|7844|9458
9463|K|GDA2020 + AHD height|1382|7844|5711
9464|K|GDA94 + AHD height|1382|4283|5711
9468|C|SRGI2013|1200|517
9469|H|SRGI2013|1200|517
9470|G|SRGI2013|1200|517
9471|V|INAGeoid2020 v1 height|1200|Indonesian Geoid 2020 version 1|0|u
9473|P|GDA2020 / Australian Albers|609|419|0|en|proj=aea lat_0=0 lon_0=132 lat_1=-18 lat_2=-36 x_0=0 y_0=0
9474|G|PZ-90.02|943|518
9475|G|PZ-90.11|943|519
9476|P|SRGI2013 / UTM zone 46N|2022|517|0|en|proj=utm zone=46
9477|P|SRGI2013 / UTM zone 47N|2023|517|0|en|proj=utm zone=47
9478|P|SRGI2013 / UTM zone 48N|2024|517|0|en|proj=utm zone=48
9479|P|SRGI2013 / UTM zone 49N|2025|517|0|en|proj=utm zone=49
9480|P|SRGI2013 / UTM zone 50N|2026|517|0|en|proj=utm zone=50
9481|P|SRGI2013 / UTM zone 51N|2027|517|0|en|proj=utm zone=51
9482|P|SRGI2013 / UTM zone 52N|2028|517|0|en|proj=utm zone=52
9487|P|SRGI2013 / UTM zone 47S|2029|517|0|en|proj=utm zone=47 south
9488|P|SRGI2013 / UTM zone 48S|2030|517|0|en|proj=utm zone=48 south
9489|P|SRGI2013 / UTM zone 49S|2031|517|0|en|proj=utm zone=49 south
9490|P|SRGI2013 / UTM zone 50S|2032|517|0|en|proj=utm zone=50 south
9491|P|SRGI2013 / UTM zone 51S|2033|517|0|en|proj=utm zone=51 south
9492|P|SRGI2013 / UTM zone 52S|2034|517|0|en|proj=utm zone=52 south
9493|P|SRGI2013 / UTM zone 53S|2035|517|0|en|proj=utm zone=53 south
9494|P|SRGI2013 / UTM zone 54S|2036|517|0|en|proj=utm zone=54 south
9498|P|POSGAR 2007 / CABA 2019|2037|369|0|ne|proj=tmerc lat_0=-34.6292666666667 lon_0=-58.4633083333333 k=1 x_0=20000 y_0=70000
9500|K|ETRS89 + EVRF2000 Austria height|848|4258|9274
9501|K|MGI + EVRF2000 Austria height|848|4312|9274
9502|K|CIGD11 + CBVD61 height (ft)|1540|6135|6132
9503|K|CIGD11 + GCVD54 height (ft)|1181|6135|6130
9504|K|CIGD11 + LCVD61 height (ft)|1539|6135|6131
9505|K|ETRS89 + Alicante height|1424|4258|5782
9506|K|ETRS89 + Ceuta 2 height|2014|4258|9402
9507|K|ETRS89 + Ibiza height|2006|4258|9394
9508|K|ETRS89 + Mallorca height|2004|4258|9392
9509|K|ETRS89 + Menorca height|2005|4258|9393
9510|K|REGCAN95 + El Hierro height|2013|4081|9401
9511|K|REGCAN95 + Fuerteventura height|2008|4081|9396
9512|K|REGCAN95 + Gran Canaria height|2009|4081|9397
9513|K|REGCAN95 + La Gomera height|2011|4081|9399
9514|K|REGCAN95 + La Palma height|2012|4081|9400
9515|K|REGCAN95 + Lanzarote height|2007|4081|9395
9516|K|REGCAN95 + Tenerife height|2010|4081|9398
9517|K|SHGD2015 + SHVD2015 height|1171|7886|7890
9518|K|WGS 84 + EGM2008 height|943|4326|3855
9519|K|FEH2010 + FCSVR10 height|1347|5593|5597
9520|K|KSA-GRF17 + KSA-VRF14 height|251|9333|9335
9521|K|POSGAR 2007 + SRVN16 height|1990|5340|9255
9522|K|NAD83(2011) + PRVD02 height|979|6318|6641
9523|K|NAD83(2011) + VIVD09 height|980|6318|6642
9524|K|NAD83(MA11) + GUVD04 height|981|6325|6644
9525|K|NAD83(MA11) + NMVD03 height|2038|6325|6640
9526|K|NAD83(PA11) + ASVD02 height|1598|6322|6643
9527|K|NZGD2000 + NZVD2009 height|1032|4167|4440
9528|K|NZGD2000 + NZVD2016 height|1032|4167|7839
9529|K|SRGI2013 + INAGeoid2020 v1 height|1200|9470|9471
9530|K|RGFG95 + NGG1977 height|1407|4624|5755
9531|K|RGAF09 + Guadeloupe 1988 height|1408|5489|5757
9532|K|RGAF09 + IGN 1988 LS height|1353|5489|5616
9533|K|RGAF09 + IGN 1988 MG height|1354|5489|5617
9534|K|RGAF09 + IGN 1988 SB height|1356|5489|5619
9535|K|RGAF09 + IGN 1988 SM height|1357|5489|5620
9536|K|RGAF09 + IGN 2008 LD height|1355|5489|9130
9537|K|RGAF09 + Martinique 1987 height|516|5489|5756
9538|K|RGF93 v2 + NGF-IGN69 height|1212|9777|5720
9539|K|RGF93 v2 + NGF-IGN78 height|1376|9777|5721
9540|K|RGNC91-93 + NGNC08 height|650|4749|9351
9541|K|RGSPM06 + Danger 1950 height|525|4463|5792
9542|K|RRAF 1991 + IGN 2008 LD height|1355|4558|9130
9543|K|ITRF2005 + SA LLD height|1994|8998|9279
9544|K|NAD83(CSRS)v6 + CGVD2013a(2010) height|812|8252|9245
9545|C|LTF2004(G)|2039|520
9546|H|LTF2004(G)|2039|520
9547|G|LTF2004(G)|2039|520
9549|P|LTF2004(C)|2039||0|en|
9650|V|Baltic 1986 height|796|Baltic 1986|0|u
9651|V|EVRF2007-PL height|796|European Vertical Reference Frame 2007 Poland|0|u
9656|K|ETRF2000-PL + Baltic 1986 height|796|9702|9650
9657|K|ETRF2000-PL + EVRF2007-PL height|796|9702|9651
9663|V|EH2000 height|773|Estonian Height System 2000|0|u
9666|V|LAS07 height|2040|Lithuanian Height System 2007|0|u
9669|V|BGS2005 height|1426|Bulgarian Height System 2005|0|u
9672|V|CD Norway depth|2041|Norwegian Chart Datum|0|d
9674|P|NAD83 / USFS R6 Albers|2042|138|0|en|proj=aea lat_0=34 lon_0=-120 lat_1=43 lat_2=48 x_0=600000 y_0=0
9675|V|Pago Pago 2020 height|1598|Local Tidal Datum at Pago Pago 2020|0|u
9678|P|Gulshan 303 / Bangladesh Transverse Mercator|604|255|0|en|proj=tmerc lat_0=0 lon_0=90 k=0.9996 x_0=500000 y_0=-2000000
9680|P|WGS 84 / TM 90 NE|1158|183|0|en|proj=tmerc lat_0=0 lon_0=90 k=0.9996 x_0=500000 y_0=0
9681|V|NVD 1992 height|604|National Vertical Datum 1992|0|u
9694|C|REDGEOMIN|1293|521
9695|H|REDGEOMIN|1293|521
9696|G|REDGEOMIN|1293|521
9697|P|REDGEOMIN / UTM zone 12S|1179|521|0|en|proj=utm zone=12 south
9698|P|REDGEOMIN / UTM zone 18S|1295|521|0|en|proj=utm zone=18 south
9699|P|REDGEOMIN / UTM zone 19S|1294|521|0|en|proj=utm zone=19 south
9700|C|ETRF2000-PL|137|522
9701|H|ETRF2000-PL|137|522
9702|G|ETRF2000-PL|137|522
9705|K|WGS 84 + MSL height|943|4326|5714
9707|K|WGS 84 + EGM96 height|943|4326|5773
9709|P|NAD83(CSRS) / UTM zone 23N|2043|207|0|en|proj=utm zone=23
9712|P|NAD83 / UTM zone 24N|2044|138|0|en|proj=utm zone=24
9713|P|NAD83(CSRS) / UTM zone 24N|2044|207|0|en|proj=utm zone=24
9715|K|NAD83(CSRS) / UTM zone 15N + CGVD2013a(2010) height|647|3159|9245
9716|P|IGM95 / UTM zone 34N|1603|245|0|en|proj=utm zone=34
9721|V|Catania 1965 height|2045|Catania 1965|0|u
9722|V|Cagliari 1956 height|2046|Cagliari 1956|0|u
9723|K|ETRS89 + Genoa 1942 height|1253|4258|5214
9724|K|ETRS89 + Catania 1965 height|2045|4258|9721
9725|K|ETRS89 + Cagliari 1956 height|2046|4258|9722
9739|G|EOS21-IRF|2047|523
9741|P|EOS21 Grid|2047|523|0|en|proj=tmerc lat_0=56.35 lon_0=-2.75 k=1 x_0=74996.927 y_0=133508.35
9742|K|EOS21 Grid + ODN height|2047|9741|5701
9748|P|NAD83(2011) / Alabama East (ftUS)|438|391|3|en|proj=tmerc lat_0=30.5 lon_0=-85.8333333333333 k=0.99996 x_0=200000.0001016 y_0=0
9749|P|NAD83(2011) / Alabama West (ftUS)|439|391|3|en|proj=tmerc lat_0=30 lon_0=-87.5 k=0.999933333 x_0=600000 y_0=0
9753|C|WGS 84 (G2139)|943|524
9754|H|WGS 84 (G2139)|1213|524
9755|G|WGS 84 (G2139)|943|524
9758|G|ECML14_NB-IRF|2048|525
9761|P|ECML14_NB Grid|2048|525|0|en|proj=tmerc lat_0=55.05 lon_0=-1.55 k=1 x_0=112242.8512 y_0=402313.7432
9762|K|ECML14_NB Grid + ODN height|2048|9761|5701
9763|G|EWR2-IRF|2049|526
9766|P|EWR2 Grid|2049|526|0|en|proj=tmerc lat_0=51.95 lon_0=-0.9 k=1 x_0=192519.9715 y_0=146942.6806
9767|K|EWR2 Grid + ODN height|2049|9766|5701
9775|C|RGF93 v2|122|527
9776|H|RGF93 v2|122|527
9777|G|RGF93 v2|122|527
9778|H|RGF93 v2 (lon-lat)|122|528
9779|G|RGF93 v2 (lon-lat)|122|528
9780|C|RGF93 v2b|122|529
9781|H|RGF93 v2b|122|529
9782|G|RGF93 v2b|122|529
9783|H|RGF93 v2b (lon-lat)|122|530
9784|G|RGF93 v2b (lon-lat)|122|530
9785|K|RGF93 v2b + NGF-IGN69 height|1212|9782|5720
9793|P|RGF93 v2 / Lambert-93|122|527|0|en|proj=lcc lat_0=46.5 lon_0=3 lat_1=49 lat_2=44 x_0=700000 y_0=6600000
9794|P|RGF93 v2b / Lambert-93|122|529|0|en|proj=lcc lat_0=46.5 lon_0=3 lat_1=49 lat_2=44 x_0=700000 y_0=6600000
9821|P|UCS-2000 / LCS-32 Kyiv region|2050|384|0|ne|proj=tmerc lat_0=0 lon_0=30.5 k=1 x_0=300000 y_0=0
9822|P|RGF93 v2 / CC42|964|527|0|en|proj=lcc lat_0=42 lon_0=3 lat_1=41.25 lat_2=42.75 x_0=1700000 y_0=1200000
9823|P|RGF93 v2 / CC43|965|527|0|en|proj=lcc lat_0=43 lon_0=3 lat_1=42.25 lat_2=43.75 x_0=1700000 y_0=2200000
9824|P|RGF93 v2 / CC44|966|527|0|en|proj=lcc lat_0=44 lon_0=3 lat_1=43.25 lat_2=44.75 x_0=1700000 y_0=3200000
9825|P|RGF93 v2 / CC45|967|527|0|en|proj=lcc lat_0=45 lon_0=3 lat_1=44.25 lat_2=45.75 x_0=1700000 y_0=4200000
9826|P|RGF93 v2 / CC46|968|527|0|en|proj=lcc lat_0=46 lon_0=3 lat_1=45.25 lat_2=46.75 x_0=1700000 y_0=5200000
9827|P|RGF93 v2 / CC47|969|527|0|en|proj=lcc lat_0=47 lon_0=3 lat_1=46.25 lat_2=47.75 x_0=1700000 y_0=6200000
9828|P|RGF93 v2 / CC48|970|527|0|en|proj=lcc lat_0=48 lon_0=3 lat_1=47.25 lat_2=48.75 x_0=1700000 y_0=7200000
9829|P|RGF93 v2 / CC49|971|527|0|en|proj=lcc lat_0=49 lon_0=3 lat_1=48.25 lat_2=49.75 x_0=1700000 y_0=8200000
9830|P|RGF93 v2 / CC50|972|527|0|en|proj=lcc lat_0=50 lon_0=3 lat_1=49.25 lat_2=50.75 x_0=1700000 y_0=9200000
9831|P|UCS-2000 / LCS-01 Crimea|2051|384|0|ne|proj=tmerc lat_0=0 lon_0=34.5 k=1 x_0=300000 y_0=0
9832|P|UCS-2000 / LCS-05 Vinnytsia|2052|384|0|ne|proj=tmerc lat_0=0 lon_0=28.6666666666667 k=1 x_0=300000 y_0=0
9833|P|UCS-2000 / LCS-07 Volyn|2053|384|0|ne|proj=tmerc lat_0=0 lon_0=24.8333333333333 k=1 x_0=300000 y_0=0
9834|P|UCS-2000 / LCS-12 Dnipropetrovsk|2054|384|0|ne|proj=tmerc lat_0=0 lon_0=35 k=1 x_0=300000 y_0=0
9835|P|UCS-2000 / LCS-14 Donetsk|2055|384|0|ne|proj=tmerc lat_0=0 lon_0=37.5 k=1 x_0=300000 y_0=0
9836|P|UCS-2000 / LCS-18 Zhytomyr|2056|384|0|ne|proj=tmerc lat_0=0 lon_0=28.5 k=1 x_0=300000 y_0=0
9837|P|UCS-2000 / LCS-21 Zakarpattia|2057|384|0|ne|proj=tmerc lat_0=0 lon_0=23.5 k=1 x_0=300000 y_0=0
9838|P|UCS-2000 / LCS-23 Zaporizhzhia|2058|384|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=300000 y_0=0
9839|P|UCS-2000 / LCS-26 Ivano-Frankivsk|2059|384|0|ne|proj=tmerc lat_0=0 lon_0=24.75 k=1 x_0=300000 y_0=0
9840|P|UCS-2000 / LCS-35 Kirovohrad|2060|384|0|ne|proj=tmerc lat_0=0 lon_0=32 k=1 x_0=300000 y_0=0
9841|P|UCS-2000 / LCS-44 Luhansk|2061|384|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=300000 y_0=0
9842|P|RGF93 v2b / CC42|964|529|0|en|proj=lcc lat_0=42 lon_0=3 lat_1=41.25 lat_2=42.75 x_0=1700000 y_0=1200000
9843|P|RGF93 v2b / CC43|965|529|0|en|proj=lcc lat_0=43 lon_0=3 lat_1=42.25 lat_2=43.75 x_0=1700000 y_0=2200000
9844|P|RGF93 v2b / CC44|966|529|0|en|proj=lcc lat_0=44 lon_0=3 lat_1=43.25 lat_2=44.75 x_0=1700000 y_0=3200000
9845|P|RGF93 v2b / CC45|967|529|0|en|proj=lcc lat_0=45 lon_0=3 lat_1=44.25 lat_2=45.75 x_0=1700000 y_0=4200000
9846|P|RGF93 v2b / CC46|968|529|0|en|proj=lcc lat_0=46 lon_0=3 lat_1=45.25 lat_2=46.75 x_0=1700000 y_0=5200000
9847|P|RGF93 v2b / CC47|969|529|0|en|proj=lcc lat_0=47 lon_0=3 lat_1=46.25 lat_2=47.75 x_0=1700000 y_0=6200000
9848|P|RGF93 v2b / CC48|970|529|0|en|proj=lcc lat_0=48 lon_0=3 lat_1=47.25 lat_2=48.75 x_0=1700000 y_0=7200000
9849|P|RGF93 v2b / CC49|971|529|0|en|proj=lcc lat_0=49 lon_0=3 lat_1=48.25 lat_2=49.75 x_0=1700000 y_0=8200000
9850|P|RGF93 v2b / CC50|972|529|0|en|proj=lcc lat_0=50 lon_0=3 lat_1=49.25 lat_2=50.75 x_0=1700000 y_0=9200000
9851|P|UCS-2000 / LCS-46 Lviv|2062|384|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=300000 y_0=0
9852|P|UCS-2000 / LCS-48 Mykolaiv|2063|384|0|ne|proj=tmerc lat_0=0 lon_0=31.8333333333333 k=1 x_0=300000 y_0=0
9853|P|UCS-2000 / LCS-51 Odessa|2064|384|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=300000 y_0=0
9854|P|UCS-2000 / LCS-53 Poltava|2065|384|0|ne|proj=tmerc lat_0=0 lon_0=33.8333333333333 k=1 x_0=300000 y_0=0
9855|P|UCS-2000 / LCS-56 Rivne|2066|384|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=300000 y_0=0
9856|P|UCS-2000 / LCS-59 Sumy|2067|384|0|ne|proj=tmerc lat_0=0 lon_0=34.5 k=1 x_0=300000 y_0=0
9857|P|UCS-2000 / LCS-61 Ternopil|2068|384|0|ne|proj=tmerc lat_0=0 lon_0=25.5 k=1 x_0=300000 y_0=0
9858|P|UCS-2000 / LCS-63 Kharkiv|2069|384|0|ne|proj=tmerc lat_0=0 lon_0=36.5 k=1 x_0=300000 y_0=0
9859|P|UCS-2000 / LCS-65 Kherson|2070|384|0|ne|proj=tmerc lat_0=0 lon_0=33.5 k=1 x_0=300000 y_0=0
9860|P|UCS-2000 / LCS-68 Khmelnytsky|2071|384|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=300000 y_0=0
9861|P|UCS-2000 / LCS-71 Cherkasy|2072|384|0|ne|proj=tmerc lat_0=0 lon_0=31.5 k=1 x_0=300000 y_0=0
9862|P|UCS-2000 / LCS-73 Chernivtsi|2073|384|0|ne|proj=tmerc lat_0=0 lon_0=26 k=1 x_0=300000 y_0=0
9863|P|UCS-2000 / LCS-74 Chernihiv|2074|384|0|ne|proj=tmerc lat_0=0 lon_0=32 k=1 x_0=300000 y_0=0
9864|P|UCS-2000 / LCS-80 Kyiv city|2075|384|0|ne|proj=tmerc lat_0=0 lon_0=30.5 k=1 x_0=300000 y_0=0
9865|P|UCS-2000 / LCS-85 Sevastopol|2076|384|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=300000 y_0=0
9866|G|MRH21-IRF|2077|531
9869|P|MRH21 Grid|2077|531|0|en|proj=tmerc lat_0=52.3 lon_0=-1.8 k=1 x_0=227286.9881 y_0=265751.2874
9870|K|MRH21 Grid + ODN height|2077|9869|5701
9871|G|MOLDOR11-IRF|2078|532
9874|P|PNG94 / PNGMG94 zone 57|2079|383|0|en|proj=utm zone=57 south
9875|P|PNG94 / PNGMG94 zone 58|2080|383|0|en|proj=utm zone=58 south
9880|P|MOLDOR11 Grid|2078|532|0|en|proj=tmerc lat_0=53.35 lon_0=-1.9 k=1 x_0=226574.2032 y_0=390894.838
9881|K|MOLDOR11 Grid + ODN height|2078|9880|5701
9883|K|ETRS89 + CD Norway depth|2081|4258|9672
9892|C|LUREF|128|62
9893|H|LUREF|128|62
9895|P|LUREF / Luxembourg TM (3D)|128|62|0|ne|proj=tmerc lat_0=49.8333333333333 lon_0=6.16666666666667 k=1 x_0=80000 y_0=100000
9897|K|LUREF / Luxembourg TM + NG95 height|128|2169|5774
9907|K|ETRS89 + Ostend height|851|4258|5710
9920|K|OSGB36 / British National Grid + BI height|1097|27700|9451
9923|V|GNTRANS height|1211|GNTRANS|0|u
9924|K|ETRS89 + DHHN2016 height|1211|4258|7837
9927|V|GNTRANS2016 height|1211|GNTRANS2016|0|u
9939|G|EBBWV14-IRF|2082|533
9943|P|EBBWV14 Grid|2082|533|0|en|proj=tmerc lat_0=51.75 lon_0=-3.1 k=1 x_0=106702.326 y_0=119968.1395
9944|K|EBBWV14 Grid + ODN height|2082|9943|5701
9945|P|Macedonia State Coordinate System truncated|1551|4|0|en|proj=tmerc lat_0=0 lon_0=21 k=0.9999 x_0=500000 y_0=-4000000
9947|P|ISN2004 / LAEA Iceland|578|368|0|en|proj=laea lat_0=65 lon_0=-19 x_0=1700000 y_0=1300000
9949|K|ISN2004 + ISH2004 height|1890|5324|8089
9950|K|ISN2016 + ISH2004 height|1890|8086|8089
9951|K|ISN93 / Lambert 1993 + ISH2004 height|1890|3057|8089
9952|K|ISN2004 / Lambert 2004 + ISH2004 height|1890|5325|8089
9953|K|ISN2016 / Lambert 2016 + ISH2004 height|1890|8088|8089
9964|G|HULLEE13-IRF|2083|534
9967|P|HULLEE13 Grid|2083|534|0|en|proj=tmerc lat_0=53.75 lon_0=-0.95 k=1 x_0=140859.7394 y_0=247512.2812
9968|K|HULLEE13 Grid + ODN height|2083|9967|5701
9969|G|SCM22-IRF|2084|535
9972|P|SCM22 Grid|2084|535|0|en|proj=tmerc lat_0=56.6 lon_0=-3.85 k=1 x_0=108600.972 y_0=239087.349
9973|K|SCM22 Grid + ODN height|2084|9972|5701
9974|G|FNL22-IRF|2085|536
9977|P|FNL22 Grid|2085|536|0|en|proj=tmerc lat_0=58 lon_0=-3.8 k=1 x_0=139618.9493 y_0=183110.794
9978|K|FNL22 Grid + ODN height|2085|9977|5701
9988|C|ITRF2020|1213|537
9989|H|ITRF2020|943|537
9990|G|ITRF2020|943|537
20000|V|SVD2006 height|1483|Svalbard vertical datum 2006|0|u
20001|K|ETRS89 + SVD2006 height|1483|4258|20000
20002|P|MWC18 Grid|2086|538|0|en|proj=tmerc lat_0=53.35 lon_0=-2.55 k=1 x_0=171975.9382 y_0=116744.6938
20003|K|MWC18 Grid + ODN height|2086|20002|5701
20004|P|Pulkovo 1995 / Gauss-Kruger zone 4|314|78|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=4500000 y_0=0
20005|P|Pulkovo 1995 / Gauss-Kruger zone 5|315|78|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=5500000 y_0=0
20006|P|Pulkovo 1995 / Gauss-Kruger zone 6|316|78|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=6500000 y_0=0
20007|P|Pulkovo 1995 / Gauss-Kruger zone 7|317|78|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=7500000 y_0=0
20008|P|Pulkovo 1995 / Gauss-Kruger zone 8|318|78|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=8500000 y_0=0
20009|P|Pulkovo 1995 / Gauss-Kruger zone 9|319|78|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=9500000 y_0=0
20010|P|Pulkovo 1995 / Gauss-Kruger zone 10|320|78|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=10500000 y_0=0
20011|P|Pulkovo 1995 / Gauss-Kruger zone 11|321|78|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=11500000 y_0=0
20012|P|Pulkovo 1995 / Gauss-Kruger zone 12|322|78|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=12500000 y_0=0
20013|P|Pulkovo 1995 / Gauss-Kruger zone 13|323|78|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=13500000 y_0=0
20014|P|Pulkovo 1995 / Gauss-Kruger zone 14|324|78|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=14500000 y_0=0
20015|P|Pulkovo 1995 / Gauss-Kruger zone 15|325|78|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=15500000 y_0=0
20016|P|Pulkovo 1995 / Gauss-Kruger zone 16|326|78|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=16500000 y_0=0
20017|P|Pulkovo 1995 / Gauss-Kruger zone 17|327|78|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=17500000 y_0=0
20018|P|Pulkovo 1995 / Gauss-Kruger zone 18|328|78|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=18500000 y_0=0
20019|P|Pulkovo 1995 / Gauss-Kruger zone 19|329|78|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=19500000 y_0=0
20020|P|Pulkovo 1995 / Gauss-Kruger zone 20|330|78|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=20500000 y_0=0
20021|P|Pulkovo 1995 / Gauss-Kruger zone 21|331|78|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=21500000 y_0=0
20022|P|Pulkovo 1995 / Gauss-Kruger zone 22|332|78|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=22500000 y_0=0
20023|P|Pulkovo 1995 / Gauss-Kruger zone 23|333|78|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=23500000 y_0=0
20024|P|Pulkovo 1995 / Gauss-Kruger zone 24|334|78|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=24500000 y_0=0
20025|P|Pulkovo 1995 / Gauss-Kruger zone 25|335|78|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=25500000 y_0=0
20026|P|Pulkovo 1995 / Gauss-Kruger zone 26|336|78|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=26500000 y_0=0
20027|P|Pulkovo 1995 / Gauss-Kruger zone 27|337|78|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=27500000 y_0=0
20028|P|Pulkovo 1995 / Gauss-Kruger zone 28|338|78|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=28500000 y_0=0
20029|P|Pulkovo 1995 / Gauss-Kruger zone 29|339|78|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=29500000 y_0=0
20030|P|Pulkovo 1995 / Gauss-Kruger zone 30|340|78|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=30500000 y_0=0
20031|P|Pulkovo 1995 / Gauss-Kruger zone 31|341|78|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=31500000 y_0=0
20032|P|Pulkovo 1995 / Gauss-Kruger zone 32|342|78|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=32500000 y_0=0
20033|G|MWC18-IRF|2086|538
20034|V|CGVD2013a(2002) height|812|Canadian Geodetic Vertical Datum of 2013 (CGG2013a) epoch 2002|0|u
20035|V|CGVD2013a(1997) height|812|Canadian Geodetic Vertical Datum of 2013 (CGG2013a) epoch 1997|0|u
20036|V|INAGeoid2020 v2 height|1200|Indonesian Geoid 2020 version 2|0|u
20037|K|NAD83(CSRS)v4 + CGVD2013a(2002) height|812|8246|20034
20038|K|NAD83(CSRS)v3 + CGVD2013a(1997) height|812|8240|20035
20039|C|SIRGAS-Chile 2021|1293|539
20040|H|SIRGAS-Chile 2021|1293|539
20041|G|SIRGAS-Chile 2021|1293|539
20042|P|SIRGAS-Chile 2021 / UTM zone 12S|2087|539|0|en|proj=utm zone=12 south
20043|K|SRGI2013 + INAGeoid2020 v2 height|1200|9470|20036
20047|P|GDA2020 / BCSG2020|610|419|0|en|
20048|P|SIRGAS-Chile 2021 / UTM zone 18S|1295|539|0|en|proj=utm zone=18 south
20049|P|SIRGAS-Chile 2021 / UTM zone 19S|1294|539|0|en|proj=utm zone=19 south
20050|P|NAD83(2011) / Amtrak NECCS21 (ft)|2088|391|0|en|
20135|P|Adindan / UTM zone 35N|2089|79|0|en|proj=utm zone=35
20136|P|Adindan / UTM zone 36N|2090|79|0|en|proj=utm zone=36
20137|P|Adindan / UTM zone 37N|2091|79|0|en|proj=utm zone=37
20138|P|Adindan / UTM zone 38N|2092|79|0|en|proj=utm zone=38
20249|P|AGD66 / AMG zone 49|2093|80|0|en|proj=utm zone=49 south
20250|P|AGD66 / AMG zone 50|2094|80|0|en|proj=utm zone=50 south
20251|P|AGD66 / AMG zone 51|1854|80|0|en|proj=utm zone=51 south
20252|P|AGD66 / AMG zone 52|1855|80|0|en|proj=utm zone=52 south
20253|P|AGD66 / AMG zone 53|1856|80|0|en|proj=utm zone=53 south
20254|P|AGD66 / AMG zone 54|2095|80|0|en|proj=utm zone=54 south
20255|P|AGD66 / AMG zone 55|2096|80|0|en|proj=utm zone=55 south
20256|P|AGD66 / AMG zone 56|2097|80|0|en|proj=utm zone=56 south
20257|P|AGD66 / AMG zone 57|2098|80|0|en|proj=utm zone=57 south
20258|P|AGD66 / AMG zone 58|2099|80|0|en|proj=utm zone=58 south
20349|P|AGD84 / AMG zone 49|2093|81|0|en|proj=utm zone=49 south
20350|P|AGD84 / AMG zone 50|2094|81|0|en|proj=utm zone=50 south
20351|P|AGD84 / AMG zone 51|1854|81|0|en|proj=utm zone=51 south
20352|P|AGD84 / AMG zone 52|2100|81|0|en|proj=utm zone=52 south
20353|P|AGD84 / AMG zone 53|2101|81|0|en|proj=utm zone=53 south
20354|P|AGD84 / AMG zone 54|2102|81|0|en|proj=utm zone=54 south
20355|P|AGD84 / AMG zone 55|2103|81|0|en|proj=utm zone=55 south
20356|P|AGD84 / AMG zone 56|2104|81|0|en|proj=utm zone=56 south
20436|P|Ain el Abd / UTM zone 36N|2105|82|0|en|proj=utm zone=36
20437|P|Ain el Abd / UTM zone 37N|2106|82|0|en|proj=utm zone=37
20438|P|Ain el Abd / UTM zone 38N|2107|82|0|en|proj=utm zone=38
20439|P|Ain el Abd / UTM zone 39N|2108|82|0|en|proj=utm zone=39
20440|P|Ain el Abd / UTM zone 40N|1956|82|0|en|proj=utm zone=40
20499|P|Ain el Abd / Bahrain Grid|2109|82|0|en|proj=utm zone=39
20538|P|Afgooye / UTM zone 38N|2110|83|0|en|proj=utm zone=38
20539|P|Afgooye / UTM zone 39N|2111|83|0|en|proj=utm zone=39
20790|P|Lisbon (Lisbon) / Portuguese National Grid|510|339|0|en|proj=tmerc lat_0=39.6666666666667 lon_0=1 k=1 x_0=200000 y_0=300000
20791|P|Lisbon (Lisbon) / Portuguese Grid|510|339|0|en|proj=tmerc lat_0=39.6666666666667 lon_0=1 k=1 x_0=0 y_0=0
20822|P|Aratu / UTM zone 22S|2112|86|0|en|proj=utm zone=22 south
20823|P|Aratu / UTM zone 23S|2113|86|0|en|proj=utm zone=23 south
20824|P|Aratu / UTM zone 24S|2114|86|0|en|proj=utm zone=24 south
20904|P|GSK-2011 / Gauss-Kruger zone 4|314|416|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=4500000 y_0=0
20905|P|GSK-2011 / Gauss-Kruger zone 5|315|416|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=5500000 y_0=0
20906|P|GSK-2011 / Gauss-Kruger zone 6|316|416|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=6500000 y_0=0
20907|P|GSK-2011 / Gauss-Kruger zone 7|317|416|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=7500000 y_0=0
20908|P|GSK-2011 / Gauss-Kruger zone 8|318|416|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=8500000 y_0=0
20909|P|GSK-2011 / Gauss-Kruger zone 9|319|416|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=9500000 y_0=0
20910|P|GSK-2011 / Gauss-Kruger zone 10|320|416|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=10500000 y_0=0
20911|P|GSK-2011 / Gauss-Kruger zone 11|321|416|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=11500000 y_0=0
20912|P|GSK-2011 / Gauss-Kruger zone 12|322|416|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=12500000 y_0=0
20913|P|GSK-2011 / Gauss-Kruger zone 13|323|416|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=13500000 y_0=0
20914|P|GSK-2011 / Gauss-Kruger zone 14|324|416|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=14500000 y_0=0
20915|P|GSK-2011 / Gauss-Kruger zone 15|325|416|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=15500000 y_0=0
20916|P|GSK-2011 / Gauss-Kruger zone 16|326|416|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=16500000 y_0=0
20917|P|GSK-2011 / Gauss-Kruger zone 17|327|416|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=17500000 y_0=0
20918|P|GSK-2011 / Gauss-Kruger zone 18|328|416|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=18500000 y_0=0
20919|P|GSK-2011 / Gauss-Kruger zone 19|329|416|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=19500000 y_0=0
20920|P|GSK-2011 / Gauss-Kruger zone 20|330|416|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=20500000 y_0=0
20921|P|GSK-2011 / Gauss-Kruger zone 21|331|416|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=21500000 y_0=0
20922|P|GSK-2011 / Gauss-Kruger zone 22|332|416|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=22500000 y_0=0
20923|P|GSK-2011 / Gauss-Kruger zone 23|333|416|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=23500000 y_0=0
20924|P|GSK-2011 / Gauss-Kruger zone 24|334|416|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=24500000 y_0=0
20925|P|GSK-2011 / Gauss-Kruger zone 25|335|416|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=25500000 y_0=0
20926|P|GSK-2011 / Gauss-Kruger zone 26|336|416|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=26500000 y_0=0
20927|P|GSK-2011 / Gauss-Kruger zone 27|337|416|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=27500000 y_0=0
20928|P|GSK-2011 / Gauss-Kruger zone 28|338|416|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=28500000 y_0=0
20929|P|GSK-2011 / Gauss-Kruger zone 29|339|416|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=29500000 y_0=0
20930|P|GSK-2011 / Gauss-Kruger zone 30|340|416|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=30500000 y_0=0
20931|P|GSK-2011 / Gauss-Kruger zone 31|341|416|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=31500000 y_0=0
20932|P|GSK-2011 / Gauss-Kruger zone 32|342|416|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=32500000 y_0=0
20934|P|Arc 1950 / UTM zone 34S|2115|87|0|en|proj=utm zone=34 south
20935|P|Arc 1950 / UTM zone 35S|2116|87|0|en|proj=utm zone=35 south
20936|P|Arc 1950 / UTM zone 36S|2117|87|0|en|proj=utm zone=36 south
21004|P|GSK-2011 / Gauss-Kruger CM 21E|314|416|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=500000 y_0=0
21005|P|GSK-2011 / Gauss-Kruger CM 27E|315|416|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=500000 y_0=0
21006|P|GSK-2011 / Gauss-Kruger CM 33E|316|416|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=500000 y_0=0
21007|P|GSK-2011 / Gauss-Kruger CM 39E|317|416|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=500000 y_0=0
21008|P|GSK-2011 / Gauss-Kruger CM 45E|318|416|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=500000 y_0=0
21009|P|GSK-2011 / Gauss-Kruger CM 51E|319|416|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=500000 y_0=0
21010|P|GSK-2011 / Gauss-Kruger CM 57E|320|416|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=500000 y_0=0
21011|P|GSK-2011 / Gauss-Kruger CM 63E|321|416|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=500000 y_0=0
21012|P|GSK-2011 / Gauss-Kruger CM 69E|322|416|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=500000 y_0=0
21013|P|GSK-2011 / Gauss-Kruger CM 75E|323|416|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
21014|P|GSK-2011 / Gauss-Kruger CM 81E|324|416|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
21015|P|GSK-2011 / Gauss-Kruger CM 87E|325|416|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
21016|P|GSK-2011 / Gauss-Kruger CM 93E|326|416|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
21017|P|GSK-2011 / Gauss-Kruger CM 99E|327|416|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
21018|P|GSK-2011 / Gauss-Kruger CM 105E|328|416|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
21019|P|GSK-2011 / Gauss-Kruger CM 111E|329|416|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
21020|P|GSK-2011 / Gauss-Kruger CM 117E|330|416|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
21021|P|GSK-2011 / Gauss-Kruger CM 123E|331|416|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
21022|P|GSK-2011 / Gauss-Kruger CM 129E|332|416|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
21023|P|GSK-2011 / Gauss-Kruger CM 135E|333|416|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
21024|P|GSK-2011 / Gauss-Kruger CM 141E|334|416|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=500000 y_0=0
21025|P|GSK-2011 / Gauss-Kruger CM 147E|335|416|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=500000 y_0=0
21026|P|GSK-2011 / Gauss-Kruger CM 153E|336|416|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=500000 y_0=0
21027|P|GSK-2011 / Gauss-Kruger CM 159E|337|416|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=500000 y_0=0
21028|P|GSK-2011 / Gauss-Kruger CM 165E|338|416|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=500000 y_0=0
21029|P|GSK-2011 / Gauss-Kruger CM 171E|339|416|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=500000 y_0=0
21030|P|GSK-2011 / Gauss-Kruger CM 177E|340|416|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=500000 y_0=0
21031|P|GSK-2011 / Gauss-Kruger CM 177W|341|416|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=500000 y_0=0
21032|P|GSK-2011 / Gauss-Kruger CM 171W|342|416|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=500000 y_0=0
21035|P|Arc 1960 / UTM zone 35S|2118|88|0|en|proj=utm zone=35 south
21036|P|Arc 1960 / UTM zone 36S|2119|88|0|en|proj=utm zone=36 south
21037|P|Arc 1960 / UTM zone 37S|2120|88|0|en|proj=utm zone=37 south
21095|P|Arc 1960 / UTM zone 35N|2121|88|0|en|proj=utm zone=35
21096|P|Arc 1960 / UTM zone 36N|2122|88|0|en|proj=utm zone=36
21097|P|Arc 1960 / UTM zone 37N|2123|88|0|en|proj=utm zone=37
21148|P|Batavia / UTM zone 48S|2124|89|0|en|proj=utm zone=48 south
21149|P|Batavia / UTM zone 49S|2125|89|0|en|proj=utm zone=49 south
21150|P|Batavia / UTM zone 50S|2126|89|0|en|proj=utm zone=50 south
21207|P|GSK-2011 / GSK 3GK zone 7|413|416|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=7250000 y_0=0
21208|P|GSK-2011 / GSK 3GK zone 8|414|416|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=8250000 y_0=0
21209|P|GSK-2011 / GSK 3GK zone 9|415|416|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=9250000 y_0=0
21210|P|GSK-2011 / GSK 3GK zone 10|416|416|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=10250000 y_0=0
21211|P|GSK-2011 / GSK 3GK zone 11|417|416|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=11250000 y_0=0
21212|P|GSK-2011 / GSK 3GK zone 12|418|416|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=12250000 y_0=0
21213|P|GSK-2011 / GSK 3GK zone 13|419|416|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=13250000 y_0=0
21214|P|GSK-2011 / GSK 3GK zone 14|420|416|0|ne|proj=tmerc lat_0=0 lon_0=42 k=1 x_0=14250000 y_0=0
21215|P|GSK-2011 / GSK 3GK zone 15|421|416|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=15250000 y_0=0
21216|P|GSK-2011 / GSK 3GK zone 16|422|416|0|ne|proj=tmerc lat_0=0 lon_0=48 k=1 x_0=16250000 y_0=0
21217|P|GSK-2011 / GSK 3GK zone 17|423|416|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=17250000 y_0=0
21218|P|GSK-2011 / GSK 3GK zone 18|424|416|0|ne|proj=tmerc lat_0=0 lon_0=54 k=1 x_0=18250000 y_0=0
21219|P|GSK-2011 / GSK 3GK zone 19|425|416|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=19250000 y_0=0
21220|P|GSK-2011 / GSK 3GK zone 20|426|416|0|ne|proj=tmerc lat_0=0 lon_0=60 k=1 x_0=20250000 y_0=0
21221|P|GSK-2011 / GSK 3GK zone 21|427|416|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=21250000 y_0=0
21222|P|GSK-2011 / GSK 3GK zone 22|428|416|0|ne|proj=tmerc lat_0=0 lon_0=66 k=1 x_0=22250000 y_0=0
21223|P|GSK-2011 / GSK 3GK zone 23|429|416|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=23250000 y_0=0
21224|P|GSK-2011 / GSK 3GK zone 24|430|416|0|ne|proj=tmerc lat_0=0 lon_0=72 k=1 x_0=24250000 y_0=0
21225|P|GSK-2011 / GSK 3GK zone 25|431|416|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=25250000 y_0=0
21226|P|GSK-2011 / GSK 3GK zone 26|432|416|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=26250000 y_0=0
21227|P|GSK-2011 / GSK 3GK zone 27|433|416|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=27250000 y_0=0
21228|P|GSK-2011 / GSK 3GK zone 28|434|416|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=28250000 y_0=0
21229|P|GSK-2011 / GSK 3GK zone 29|435|416|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=29250000 y_0=0
21230|P|GSK-2011 / GSK 3GK zone 30|378|416|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=30250000 y_0=0
21231|P|GSK-2011 / GSK 3GK zone 31|379|416|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=31250000 y_0=0
21232|P|GSK-2011 / GSK 3GK zone 32|380|416|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=32250000 y_0=0
21233|P|GSK-2011 / GSK 3GK zone 33|381|416|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=33250000 y_0=0
21234|P|GSK-2011 / GSK 3GK zone 34|382|416|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=34250000 y_0=0
21235|P|GSK-2011 / GSK 3GK zone 35|383|416|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=35250000 y_0=0
21236|P|GSK-2011 / GSK 3GK zone 36|384|416|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=36250000 y_0=0
21237|P|GSK-2011 / GSK 3GK zone 37|385|416|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=37250000 y_0=0
21238|P|GSK-2011 / GSK 3GK zone 38|386|416|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=38250000 y_0=0
21239|P|GSK-2011 / GSK 3GK zone 39|387|416|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=39250000 y_0=0
21240|P|GSK-2011 / GSK 3GK zone 40|388|416|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=40250000 y_0=0
21241|P|GSK-2011 / GSK 3GK zone 41|389|416|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=41250000 y_0=0
21242|P|GSK-2011 / GSK 3GK zone 42|390|416|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=42250000 y_0=0
21243|P|GSK-2011 / GSK 3GK zone 43|391|416|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=43250000 y_0=0
21244|P|GSK-2011 / GSK 3GK zone 44|392|416|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=44250000 y_0=0
21245|P|GSK-2011 / GSK 3GK zone 45|393|416|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=45250000 y_0=0
21246|P|GSK-2011 / GSK 3GK zone 46|394|416|0|ne|proj=tmerc lat_0=0 lon_0=138 k=1 x_0=46250000 y_0=0
21247|P|GSK-2011 / GSK 3GK zone 47|395|416|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=47250000 y_0=0
21248|P|GSK-2011 / GSK 3GK zone 48|396|416|0|ne|proj=tmerc lat_0=0 lon_0=144 k=1 x_0=48250000 y_0=0
21249|P|GSK-2011 / GSK 3GK zone 49|397|416|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=49250000 y_0=0
21250|P|GSK-2011 / GSK 3GK zone 50|398|416|0|ne|proj=tmerc lat_0=0 lon_0=150 k=1 x_0=50250000 y_0=0
21251|P|GSK-2011 / GSK 3GK zone 51|399|416|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=51250000 y_0=0
21252|P|GSK-2011 / GSK 3GK zone 52|400|416|0|ne|proj=tmerc lat_0=0 lon_0=156 k=1 x_0=52250000 y_0=0
21253|P|GSK-2011 / GSK 3GK zone 53|401|416|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=53250000 y_0=0
21254|P|GSK-2011 / GSK 3GK zone 54|402|416|0|ne|proj=tmerc lat_0=0 lon_0=162 k=1 x_0=54250000 y_0=0
21255|P|GSK-2011 / GSK 3GK zone 55|403|416|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=55250000 y_0=0
21256|P|GSK-2011 / GSK 3GK zone 56|404|416|0|ne|proj=tmerc lat_0=0 lon_0=168 k=1 x_0=56250000 y_0=0
21257|P|GSK-2011 / GSK 3GK zone 57|405|416|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=57250000 y_0=0
21258|P|GSK-2011 / GSK 3GK zone 58|406|416|0|ne|proj=tmerc lat_0=0 lon_0=174 k=1 x_0=58250000 y_0=0
21259|P|GSK-2011 / GSK 3GK zone 59|407|416|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=59250000 y_0=0
21260|P|GSK-2011 / GSK 3GK zone 60|412|416|0|ne|proj=tmerc lat_0=0 lon_0=180 k=1 x_0=60250000 y_0=0
21261|P|GSK-2011 / GSK 3GK zone 61|408|416|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=61250000 y_0=0
21262|P|GSK-2011 / GSK 3GK zone 62|409|416|0|ne|proj=tmerc lat_0=0 lon_0=-174 k=1 x_0=62250000 y_0=0
21263|P|GSK-2011 / GSK 3GK zone 63|410|416|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=63250000 y_0=0
21264|P|GSK-2011 / GSK 3GK zone 64|411|416|0|ne|proj=tmerc lat_0=0 lon_0=-168 k=1 x_0=64250000 y_0=0
21291|P|Barbados 1938 / British West Indies Grid|1055|90|0|en|proj=tmerc lat_0=0 lon_0=-62 k=0.9995 x_0=400000 y_0=0
21292|P|Barbados 1938 / Barbados National Grid|1055|90|0|en|proj=tmerc lat_0=13.1763888888889 lon_0=-59.5597222222222 k=0.9999986 x_0=30000 y_0=75000
21307|P|GSK-2011 / GSK 3GK CM 21E|413|416|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=250000 y_0=0
21308|P|GSK-2011 / GSK 3GK CM 24E|414|416|0|ne|proj=tmerc lat_0=0 lon_0=24 k=1 x_0=250000 y_0=0
21309|P|GSK-2011 / GSK 3GK CM 27E|415|416|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=250000 y_0=0
21310|P|GSK-2011 / GSK 3GK CM 30E|416|416|0|ne|proj=tmerc lat_0=0 lon_0=30 k=1 x_0=250000 y_0=0
21311|P|GSK-2011 / GSK 3GK CM 33E|417|416|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=250000 y_0=0
21312|P|GSK-2011 / GSK 3GK CM 36E|418|416|0|ne|proj=tmerc lat_0=0 lon_0=36 k=1 x_0=250000 y_0=0
21313|P|GSK-2011 / GSK 3GK CM 39E|419|416|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=250000 y_0=0
21314|P|GSK-2011 / GSK 3GK CM 42E|420|416|0|ne|proj=tmerc lat_0=0 lon_0=42 k=1 x_0=250000 y_0=0
21315|P|GSK-2011 / GSK 3GK CM 45E|421|416|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=250000 y_0=0
21316|P|GSK-2011 / GSK 3GK CM 48E|422|416|0|ne|proj=tmerc lat_0=0 lon_0=48 k=1 x_0=250000 y_0=0
21317|P|GSK-2011 / GSK 3GK CM 51E|423|416|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=250000 y_0=0
21318|P|GSK-2011 / GSK 3GK CM 54E|424|416|0|ne|proj=tmerc lat_0=0 lon_0=54 k=1 x_0=250000 y_0=0
21319|P|GSK-2011 / GSK 3GK CM 57E|425|416|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=250000 y_0=0
21320|P|GSK-2011 / GSK 3GK CM 60E|426|416|0|ne|proj=tmerc lat_0=0 lon_0=60 k=1 x_0=250000 y_0=0
21321|P|GSK-2011 / GSK 3GK CM 63E|427|416|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=250000 y_0=0
21322|P|GSK-2011 / GSK 3GK CM 66E|428|416|0|ne|proj=tmerc lat_0=0 lon_0=66 k=1 x_0=250000 y_0=0
21323|P|GSK-2011 / GSK 3GK CM 69E|429|416|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=250000 y_0=0
21324|P|GSK-2011 / GSK 3GK CM 72E|430|416|0|ne|proj=tmerc lat_0=0 lon_0=72 k=1 x_0=250000 y_0=0
21325|P|GSK-2011 / GSK 3GK CM 75E|431|416|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=250000 y_0=0
21326|P|GSK-2011 / GSK 3GK CM 78E|432|416|0|ne|proj=tmerc lat_0=0 lon_0=78 k=1 x_0=250000 y_0=0
21327|P|GSK-2011 / GSK 3GK CM 81E|433|416|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=250000 y_0=0
21328|P|GSK-2011 / GSK 3GK CM 84E|434|416|0|ne|proj=tmerc lat_0=0 lon_0=84 k=1 x_0=250000 y_0=0
21329|P|GSK-2011 / GSK 3GK CM 87E|435|416|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=250000 y_0=0
21330|P|GSK-2011 / GSK 3GK CM 90E|378|416|0|ne|proj=tmerc lat_0=0 lon_0=90 k=1 x_0=250000 y_0=0
21331|P|GSK-2011 / GSK 3GK CM 93E|379|416|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=250000 y_0=0
21332|P|GSK-2011 / GSK 3GK CM 96E|380|416|0|ne|proj=tmerc lat_0=0 lon_0=96 k=1 x_0=250000 y_0=0
21333|P|GSK-2011 / GSK 3GK CM 99E|381|416|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=250000 y_0=0
21334|P|GSK-2011 / GSK 3GK CM 102E|382|416|0|ne|proj=tmerc lat_0=0 lon_0=102 k=1 x_0=250000 y_0=0
21335|P|GSK-2011 / GSK 3GK CM 105E|383|416|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=250000 y_0=0
21336|P|GSK-2011 / GSK 3GK CM 108E|384|416|0|ne|proj=tmerc lat_0=0 lon_0=108 k=1 x_0=250000 y_0=0
21337|P|GSK-2011 / GSK 3GK CM 111E|385|416|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=250000 y_0=0
21338|P|GSK-2011 / GSK 3GK CM 114E|386|416|0|ne|proj=tmerc lat_0=0 lon_0=114 k=1 x_0=250000 y_0=0
21339|P|GSK-2011 / GSK 3GK CM 117E|387|416|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=250000 y_0=0
21340|P|GSK-2011 / GSK 3GK CM 120E|388|416|0|ne|proj=tmerc lat_0=0 lon_0=120 k=1 x_0=250000 y_0=0
21341|P|GSK-2011 / GSK 3GK CM 123E|389|416|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=250000 y_0=0
21342|P|GSK-2011 / GSK 3GK CM 126E|390|416|0|ne|proj=tmerc lat_0=0 lon_0=126 k=1 x_0=250000 y_0=0
21343|P|GSK-2011 / GSK 3GK CM 129E|391|416|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=250000 y_0=0
21344|P|GSK-2011 / GSK 3GK CM 132E|392|416|0|ne|proj=tmerc lat_0=0 lon_0=132 k=1 x_0=250000 y_0=0
21345|P|GSK-2011 / GSK 3GK CM 135E|393|416|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=250000 y_0=0
21346|P|GSK-2011 / GSK 3GK CM 138E|394|416|0|ne|proj=tmerc lat_0=0 lon_0=138 k=1 x_0=250000 y_0=0
21347|P|GSK-2011 / GSK 3GK CM 141E|395|416|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=250000 y_0=0
21348|P|GSK-2011 / GSK 3GK CM 144E|396|416|0|ne|proj=tmerc lat_0=0 lon_0=144 k=1 x_0=250000 y_0=0
21349|P|GSK-2011 / GSK 3GK CM 147E|397|416|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=250000 y_0=0
21350|P|GSK-2011 / GSK 3GK CM 150E|398|416|0|ne|proj=tmerc lat_0=0 lon_0=150 k=1 x_0=250000 y_0=0
21351|P|GSK-2011 / GSK 3GK CM 153E|399|416|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=250000 y_0=0
21352|P|GSK-2011 / GSK 3GK CM 156E|400|416|0|ne|proj=tmerc lat_0=0 lon_0=156 k=1 x_0=250000 y_0=0
21353|P|GSK-2011 / GSK 3GK CM 159E|401|416|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=250000 y_0=0
21354|P|GSK-2011 / GSK 3GK CM 162E|402|416|0|ne|proj=tmerc lat_0=0 lon_0=162 k=1 x_0=250000 y_0=0
21355|P|GSK-2011 / GSK 3GK CM 165E|403|416|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=250000 y_0=0
21356|P|GSK-2011 / GSK 3GK CM 168E|404|416|0|ne|proj=tmerc lat_0=0 lon_0=168 k=1 x_0=250000 y_0=0
21357|P|GSK-2011 / GSK 3GK CM 171E|405|416|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=250000 y_0=0
21358|P|GSK-2011 / GSK 3GK CM 174E|406|416|0|ne|proj=tmerc lat_0=0 lon_0=174 k=1 x_0=250000 y_0=0
21359|P|GSK-2011 / GSK 3GK CM 177E|407|416|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=250000 y_0=0
21360|P|GSK-2011 / GSK 3GK CM 180E|412|416|0|ne|proj=tmerc lat_0=0 lon_0=180 k=1 x_0=250000 y_0=0
21361|P|GSK-2011 / GSK 3GK CM 177W|408|416|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=250000 y_0=0
21362|P|GSK-2011 / GSK 3GK CM 174W|409|416|0|ne|proj=tmerc lat_0=0 lon_0=-174 k=1 x_0=250000 y_0=0
21363|P|GSK-2011 / GSK 3GK CM 171W|410|416|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=250000 y_0=0
21364|P|GSK-2011 / GSK 3GK CM 168W|411|416|0|ne|proj=tmerc lat_0=0 lon_0=-168 k=1 x_0=250000 y_0=0
21413|P|Beijing 1954 / Gauss-Kruger zone 13|253|92|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=13500000 y_0=0
21414|P|Beijing 1954 / Gauss-Kruger zone 14|254|92|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=14500000 y_0=0
21415|P|Beijing 1954 / Gauss-Kruger zone 15|255|92|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=15500000 y_0=0
21416|P|Beijing 1954 / Gauss-Kruger zone 16|256|92|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=16500000 y_0=0
21417|P|Beijing 1954 / Gauss-Kruger zone 17|257|92|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=17500000 y_0=0
21418|P|Beijing 1954 / Gauss-Kruger zone 18|258|92|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=18500000 y_0=0
21419|P|Beijing 1954 / Gauss-Kruger zone 19|259|92|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=19500000 y_0=0
21420|P|Beijing 1954 / Gauss-Kruger zone 20|260|92|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=20500000 y_0=0
21421|P|Beijing 1954 / Gauss-Kruger zone 21|261|92|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=21500000 y_0=0
21422|P|Beijing 1954 / Gauss-Kruger zone 22|262|92|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=22500000 y_0=0
21423|P|Beijing 1954 / Gauss-Kruger zone 23|263|92|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=23500000 y_0=0
21453|P|Beijing 1954 / Gauss-Kruger CM 75E|253|92|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=500000 y_0=0
21454|P|Beijing 1954 / Gauss-Kruger CM 81E|254|92|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=500000 y_0=0
21455|P|Beijing 1954 / Gauss-Kruger CM 87E|255|92|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=500000 y_0=0
21456|P|Beijing 1954 / Gauss-Kruger CM 93E|256|92|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=500000 y_0=0
21457|P|Beijing 1954 / Gauss-Kruger CM 99E|257|92|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=500000 y_0=0
21458|P|Beijing 1954 / Gauss-Kruger CM 105E|258|92|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=500000 y_0=0
21459|P|Beijing 1954 / Gauss-Kruger CM 111E|259|92|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=500000 y_0=0
21460|P|Beijing 1954 / Gauss-Kruger CM 117E|260|92|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=500000 y_0=0
21461|P|Beijing 1954 / Gauss-Kruger CM 123E|261|92|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=500000 y_0=0
21462|P|Beijing 1954 / Gauss-Kruger CM 129E|262|92|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=500000 y_0=0
21463|P|Beijing 1954 / Gauss-Kruger CM 135E|263|92|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=500000 y_0=0
21500|P|BD50 (Brussels) / Belge Lambert 50|851|344|0|en|proj=lcc lat_0=90 lon_0=0 lat_1=49.8333333333333 lat_2=51.1666666666667 x_0=150000 y_0=5400000
21780|P|Bern 1898 (Bern) / LV03C|48|337|0|en|proj=somerc lat_0=46.9524055555556 lon_0=0 k_0=1 x_0=0 y_0=0
21781|P|CH1903 / LV03|48|32|0|en|proj=somerc lat_0=46.9524055555556 lon_0=7.43958333333333 k_0=1 x_0=600000 y_0=200000
21782|P|CH1903 / LV03C-G|2127|32|0|en|proj=somerc lat_0=46.9524055555556 lon_0=7.43958333333333 k_0=1 x_0=0 y_0=0
21818|P|Bogota 1975 / UTM zone 18N|2128|95|0|en|proj=utm zone=18
21896|P|Bogota 1975 / Colombia West zone|2129|95|0|ne|proj=tmerc lat_0=4.59904722222222 lon_0=-77.0809166666667 k=1 x_0=1000000 y_0=1000000
21897|P|Bogota 1975 / Colombia Bogota zone|613|95|0|ne|proj=tmerc lat_0=4.59904722222222 lon_0=-74.0809166666667 k=1 x_0=1000000 y_0=1000000
21898|P|Bogota 1975 / Colombia East Central zone|614|95|0|ne|proj=tmerc lat_0=4.59904722222222 lon_0=-71.0809166666667 k=1 x_0=1000000 y_0=1000000
21899|P|Bogota 1975 / Colombia East zone|615|95|0|ne|proj=tmerc lat_0=4.59904722222222 lon_0=-68.0809166666667 k=1 x_0=1000000 y_0=1000000
22032|P|Camacupa 1948 / UTM zone 32S|2130|97|0|en|proj=utm zone=32 south
22033|P|Camacupa 1948 / UTM zone 33S|2131|97|0|en|proj=utm zone=33 south
22091|P|Camacupa 1948 / TM 11.30 SE|2132|97|0|en|proj=tmerc lat_0=0 lon_0=11.5 k=0.9996 x_0=500000 y_0=10000000
22092|P|Camacupa 1948 / TM 12 SE|1969|97|0|en|proj=tmerc lat_0=0 lon_0=12 k=0.9996 x_0=500000 y_0=10000000
22171|P|POSGAR 98 / Argentina 1|1282|68|0|ne|proj=tmerc lat_0=-90 lon_0=-72 k=1 x_0=1500000 y_0=0
22172|P|POSGAR 98 / Argentina 2|1283|68|0|ne|proj=tmerc lat_0=-90 lon_0=-69 k=1 x_0=2500000 y_0=0
22173|P|POSGAR 98 / Argentina 3|1284|68|0|ne|proj=tmerc lat_0=-90 lon_0=-66 k=1 x_0=3500000 y_0=0
22174|P|POSGAR 98 / Argentina 4|1285|68|0|ne|proj=tmerc lat_0=-90 lon_0=-63 k=1 x_0=4500000 y_0=0
22175|P|POSGAR 98 / Argentina 5|1286|68|0|ne|proj=tmerc lat_0=-90 lon_0=-60 k=1 x_0=5500000 y_0=0
22176|P|POSGAR 98 / Argentina 6|1287|68|0|ne|proj=tmerc lat_0=-90 lon_0=-57 k=1 x_0=6500000 y_0=0
22177|P|POSGAR 98 / Argentina 7|1288|68|0|ne|proj=tmerc lat_0=-90 lon_0=-54 k=1 x_0=7500000 y_0=0
22181|P|POSGAR 94 / Argentina 1|1282|266|0|ne|proj=tmerc lat_0=-90 lon_0=-72 k=1 x_0=1500000 y_0=0
22182|P|POSGAR 94 / Argentina 2|1283|266|0|ne|proj=tmerc lat_0=-90 lon_0=-69 k=1 x_0=2500000 y_0=0
22183|P|POSGAR 94 / Argentina 3|1284|266|0|ne|proj=tmerc lat_0=-90 lon_0=-66 k=1 x_0=3500000 y_0=0
22184|P|POSGAR 94 / Argentina 4|1285|266|0|ne|proj=tmerc lat_0=-90 lon_0=-63 k=1 x_0=4500000 y_0=0
22185|P|POSGAR 94 / Argentina 5|1286|266|0|ne|proj=tmerc lat_0=-90 lon_0=-60 k=1 x_0=5500000 y_0=0
22186|P|POSGAR 94 / Argentina 6|1287|266|0|ne|proj=tmerc lat_0=-90 lon_0=-57 k=1 x_0=6500000 y_0=0
22187|P|POSGAR 94 / Argentina 7|1288|266|0|ne|proj=tmerc lat_0=-90 lon_0=-54 k=1 x_0=7500000 y_0=0
22191|P|Campo Inchauspe / Argentina 1|1282|98|0|ne|proj=tmerc lat_0=-90 lon_0=-72 k=1 x_0=1500000 y_0=0
22192|P|Campo Inchauspe / Argentina 2|2133|98|0|ne|proj=tmerc lat_0=-90 lon_0=-69 k=1 x_0=2500000 y_0=0
22193|P|Campo Inchauspe / Argentina 3|2134|98|0|ne|proj=tmerc lat_0=-90 lon_0=-66 k=1 x_0=3500000 y_0=0
22194|P|Campo Inchauspe / Argentina 4|2135|98|0|ne|proj=tmerc lat_0=-90 lon_0=-63 k=1 x_0=4500000 y_0=0
22195|P|Campo Inchauspe / Argentina 5|1286|98|0|ne|proj=tmerc lat_0=-90 lon_0=-60 k=1 x_0=5500000 y_0=0
22196|P|Campo Inchauspe / Argentina 6|1287|98|0|ne|proj=tmerc lat_0=-90 lon_0=-57 k=1 x_0=6500000 y_0=0
22197|P|Campo Inchauspe / Argentina 7|1288|98|0|ne|proj=tmerc lat_0=-90 lon_0=-54 k=1 x_0=7500000 y_0=0
22207|P|NAD83(CSRS)v2 / UTM zone 7N|642|426|0|en|proj=utm zone=7
22208|P|NAD83(CSRS)v2 / UTM zone 8N|643|426|0|en|proj=utm zone=8
22209|P|NAD83(CSRS)v2 / UTM zone 9N|644|426|0|en|proj=utm zone=9
22210|P|NAD83(CSRS)v2 / UTM zone 10N|645|426|0|en|proj=utm zone=10
22211|P|NAD83(CSRS)v2 / UTM zone 11N|502|426|0|en|proj=utm zone=11
22212|P|NAD83(CSRS)v2 / UTM zone 12N|503|426|0|en|proj=utm zone=12
22213|P|NAD83(CSRS)v2 / UTM zone 13N|504|426|0|en|proj=utm zone=13
22214|P|NAD83(CSRS)v2 / UTM zone 14N|646|426|0|en|proj=utm zone=14
22215|P|NAD83(CSRS)v2 / UTM zone 15N|647|426|0|en|proj=utm zone=15
22216|P|NAD83(CSRS)v2 / UTM zone 16N|648|426|0|en|proj=utm zone=16
22217|P|NAD83(CSRS)v2 / UTM zone 17N|505|426|0|en|proj=utm zone=17
22218|P|NAD83(CSRS)v2 / UTM zone 18N|506|426|0|en|proj=utm zone=18
22219|P|NAD83(CSRS)v2 / UTM zone 19N|507|426|0|en|proj=utm zone=19
22220|P|NAD83(CSRS)v2 / UTM zone 20N|508|426|0|en|proj=utm zone=20
22221|P|NAD83(CSRS)v2 / UTM zone 21N|509|426|0|en|proj=utm zone=21
22222|P|NAD83(CSRS)v2 / UTM zone 22N|903|426|0|en|proj=utm zone=22
22234|P|Cape / UTM zone 34S|2136|99|0|en|proj=utm zone=34 south
22235|P|Cape / UTM zone 35S|2137|99|0|en|proj=utm zone=35 south
22239|P|NAD83(CSRS)v2 / PEI Stereographic|231|426|0|en|proj=sterea lat_0=47.25 lon_0=-63 k=0.999912 x_0=400000 y_0=800000
22240|P|NAD83(CSRS)v2 / NB Stereographic|146|426|0|ne|proj=sterea lat_0=46.5 lon_0=-66.5 k=0.999912 x_0=2500000 y_0=7500000
22243|P|NAD83(CSRS)v2 / SCoPQ zone 3|8|426|0|en|proj=tmerc lat_0=0 lon_0=-58.5 k=0.9999 x_0=304800 y_0=0
22244|P|NAD83(CSRS)v2 / SCoPQ zone 4|9|426|0|en|proj=tmerc lat_0=0 lon_0=-61.5 k=0.9999 x_0=304800 y_0=0
22245|P|NAD83(CSRS)v2 / SCoPQ zone 5|10|426|0|en|proj=tmerc lat_0=0 lon_0=-64.5 k=0.9999 x_0=304800 y_0=0
22246|P|NAD83(CSRS)v2 / SCoPQ zone 6|11|426|0|en|proj=tmerc lat_0=0 lon_0=-67.5 k=0.9999 x_0=304800 y_0=0
22247|P|NAD83(CSRS)v2 / SCoPQ zone 7|12|426|0|en|proj=tmerc lat_0=0 lon_0=-70.5 k=0.9999 x_0=304800 y_0=0
22248|P|NAD83(CSRS)v2 / SCoPQ zone 8|13|426|0|en|proj=tmerc lat_0=0 lon_0=-73.5 k=0.9999 x_0=304800 y_0=0
22249|P|NAD83(CSRS)v2 / SCoPQ zone 9|14|426|0|en|proj=tmerc lat_0=0 lon_0=-76.5 k=0.9999 x_0=304800 y_0=0
22250|P|NAD83(CSRS)v2 / SCoPQ zone 10|15|426|0|en|proj=tmerc lat_0=0 lon_0=-79.5 k=0.9999 x_0=304800 y_0=0
22262|P|NAD83(CSRS)v2 / Alberta 3TM ref merid 111 W|912|426|0|en|proj=tmerc lat_0=0 lon_0=-111 k=0.9999 x_0=0 y_0=0
22263|P|NAD83(CSRS)v2 / Alberta 3TM ref merid 114 W|913|426|0|en|proj=tmerc lat_0=0 lon_0=-114 k=0.9999 x_0=0 y_0=0
22264|P|NAD83(CSRS)v2 / Alberta 3TM ref merid 117 W|914|426|0|en|proj=tmerc lat_0=0 lon_0=-117 k=0.9999 x_0=0 y_0=0
22265|P|NAD83(CSRS)v2 / Alberta 3TM ref merid 120 W|923|426|0|en|proj=tmerc lat_0=0 lon_0=-120 k=0.9999 x_0=0 y_0=0
22275|P|Cape / Lo15|38|99|0|ws|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=0 y_0=0
22277|P|Cape / Lo17|39|99|0|ws|proj=tmerc lat_0=0 lon_0=17 k=1 x_0=0 y_0=0
22279|P|Cape / Lo19|40|99|0|ws|proj=tmerc lat_0=0 lon_0=19 k=1 x_0=0 y_0=0
22281|P|Cape / Lo21|41|99|0|ws|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=0 y_0=0
22283|P|Cape / Lo23|42|99|0|ws|proj=tmerc lat_0=0 lon_0=23 k=1 x_0=0 y_0=0
22285|P|Cape / Lo25|43|99|0|ws|proj=tmerc lat_0=0 lon_0=25 k=1 x_0=0 y_0=0
22287|P|Cape / Lo27|44|99|0|ws|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=0 y_0=0
22289|P|Cape / Lo29|45|99|0|ws|proj=tmerc lat_0=0 lon_0=29 k=1 x_0=0 y_0=0
22291|P|Cape / Lo31|46|99|0|ws|proj=tmerc lat_0=0 lon_0=31 k=1 x_0=0 y_0=0
22293|P|Cape / Lo33|47|99|0|ws|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=0 y_0=0
22300|P|Carthage (Paris) / Tunisia Mining Grid|1207|350|0|en|
22307|P|NAD83(CSRS)v3 / UTM zone 7N|642|427|0|en|proj=utm zone=7
22308|P|NAD83(CSRS)v3 / UTM zone 8N|643|427|0|en|proj=utm zone=8
22309|P|NAD83(CSRS)v3 / UTM zone 9N|644|427|0|en|proj=utm zone=9
22310|P|NAD83(CSRS)v3 / UTM zone 10N|645|427|0|en|proj=utm zone=10
22311|P|NAD83(CSRS)v3 / UTM zone 11N|502|427|0|en|proj=utm zone=11
22312|P|NAD83(CSRS)v3 / UTM zone 12N|503|427|0|en|proj=utm zone=12
22313|P|NAD83(CSRS)v3 / UTM zone 13N|504|427|0|en|proj=utm zone=13
22314|P|NAD83(CSRS)v3 / UTM zone 14N|646|427|0|en|proj=utm zone=14
22315|P|NAD83(CSRS)v3 / UTM zone 15N|647|427|0|en|proj=utm zone=15
22316|P|NAD83(CSRS)v3 / UTM zone 16N|648|427|0|en|proj=utm zone=16
22317|P|NAD83(CSRS)v3 / UTM zone 17N|505|427|0|en|proj=utm zone=17
22318|P|NAD83(CSRS)v3 / UTM zone 18N|506|427|0|en|proj=utm zone=18
22319|P|NAD83(CSRS)v3 / UTM zone 19N|507|427|0|en|proj=utm zone=19
22320|P|NAD83(CSRS)v3 / UTM zone 20N|508|427|0|en|proj=utm zone=20
22321|P|NAD83(CSRS)v3 / UTM zone 21N|509|427|0|en|proj=utm zone=21
22322|P|NAD83(CSRS)v3 / UTM zone 22N|903|427|0|en|proj=utm zone=22
22332|P|Carthage / UTM zone 32N|75|100|0|en|proj=utm zone=32
22337|P|NAD83(CSRS)v3 / MTM NS 1997 zone 5|233|427|0|en|proj=tmerc lat_0=0 lon_0=-64.5 k=0.9999 x_0=15500000 y_0=0
22338|P|NAD83(CSRS)v3 / MTM NS 1997 zone 4|232|427|0|en|proj=tmerc lat_0=0 lon_0=-61.5 k=0.9999 x_0=14500000 y_0=0
22348|P|NAD83(CSRS)v3 / MTM zone 8|16|427|0|en|proj=tmerc lat_0=0 lon_0=-73.5 k=0.9999 x_0=304800 y_0=0
22349|P|NAD83(CSRS)v3 / MTM zone 9|17|427|0|en|proj=tmerc lat_0=0 lon_0=-76.5 k=0.9999 x_0=304800 y_0=0
22350|P|NAD83(CSRS)v3 / MTM zone 10|18|427|0|en|proj=tmerc lat_0=0 lon_0=-79.5 k=0.9999 x_0=304800 y_0=0
22351|P|NAD83(CSRS)v3 / MTM zone 11|19|427|0|en|proj=tmerc lat_0=0 lon_0=-82.5 k=0.9999 x_0=304800 y_0=0
22352|P|NAD83(CSRS)v3 / MTM zone 12|20|427|0|en|proj=tmerc lat_0=0 lon_0=-81 k=0.9999 x_0=304800 y_0=0
22353|P|NAD83(CSRS)v3 / MTM zone 13|21|427|0|en|proj=tmerc lat_0=0 lon_0=-84 k=0.9999 x_0=304800 y_0=0
22354|P|NAD83(CSRS)v3 / MTM zone 14|22|427|0|en|proj=tmerc lat_0=0 lon_0=-87 k=0.9999 x_0=304800 y_0=0
22355|P|NAD83(CSRS)v3 / MTM zone 15|23|427|0|en|proj=tmerc lat_0=0 lon_0=-90 k=0.9999 x_0=304800 y_0=0
22356|P|NAD83(CSRS)v3 / MTM zone 16|24|427|0|en|proj=tmerc lat_0=0 lon_0=-93 k=0.9999 x_0=304800 y_0=0
22357|P|NAD83(CSRS)v3 / MTM zone 17|25|427|0|en|proj=tmerc lat_0=0 lon_0=-96 k=0.9999 x_0=304800 y_0=0
22391|P|Carthage / Nord Tunisie|2138|100|0|en|proj=lcc lat_1=36 lat_0=36 lon_0=9.9 k_0=0.999625544 x_0=500000 y_0=300000
22392|P|Carthage / Sud Tunisie|2139|100|0|en|proj=lcc lat_1=33.3 lat_0=33.3 lon_0=9.9 k_0=0.999625769 x_0=500000 y_0=300000
22407|P|NAD83(CSRS)v4 / UTM zone 7N|642|428|0|en|proj=utm zone=7
22408|P|NAD83(CSRS)v4 / UTM zone 8N|643|428|0|en|proj=utm zone=8
22409|P|NAD83(CSRS)v4 / UTM zone 9N|644|428|0|en|proj=utm zone=9
22410|P|NAD83(CSRS)v4 / UTM zone 10N|645|428|0|en|proj=utm zone=10
22411|P|NAD83(CSRS)v4 / UTM zone 11N|502|428|0|en|proj=utm zone=11
22412|P|NAD83(CSRS)v4 / UTM zone 12N|503|428|0|en|proj=utm zone=12
22413|P|NAD83(CSRS)v4 / UTM zone 13N|504|428|0|en|proj=utm zone=13
22414|P|NAD83(CSRS)v4 / UTM zone 14N|646|428|0|en|proj=utm zone=14
22415|P|NAD83(CSRS)v4 / UTM zone 15N|647|428|0|en|proj=utm zone=15
22416|P|NAD83(CSRS)v4 / UTM zone 16N|648|428|0|en|proj=utm zone=16
22417|P|NAD83(CSRS)v4 / UTM zone 17N|505|428|0|en|proj=utm zone=17
22418|P|NAD83(CSRS)v4 / UTM zone 18N|506|428|0|en|proj=utm zone=18
22419|P|NAD83(CSRS)v4 / UTM zone 19N|507|428|0|en|proj=utm zone=19
22420|P|NAD83(CSRS)v4 / UTM zone 20N|508|428|0|en|proj=utm zone=20
22421|P|NAD83(CSRS)v4 / UTM zone 21N|509|428|0|en|proj=utm zone=21
22422|P|NAD83(CSRS)v4 / UTM zone 22N|903|428|0|en|proj=utm zone=22
22462|P|NAD83(CSRS)v4 / Alberta 3TM ref merid 111 W|912|428|0|en|proj=tmerc lat_0=0 lon_0=-111 k=0.9999 x_0=0 y_0=0
22463|P|NAD83(CSRS)v4 / Alberta 3TM ref merid 114 W|913|428|0|en|proj=tmerc lat_0=0 lon_0=-114 k=0.9999 x_0=0 y_0=0
22464|P|NAD83(CSRS)v4 / Alberta 3TM ref merid 117 W|914|428|0|en|proj=tmerc lat_0=0 lon_0=-117 k=0.9999 x_0=0 y_0=0
22465|P|NAD83(CSRS)v4 / Alberta 3TM ref merid 120 W|923|428|0|en|proj=tmerc lat_0=0 lon_0=-120 k=0.9999 x_0=0 y_0=0
22521|P|Corrego Alegre 1970-72 / UTM zone 21S|2140|102|0|en|proj=utm zone=21 south
22522|P|Corrego Alegre 1970-72 / UTM zone 22S|2141|102|0|en|proj=utm zone=22 south
22523|P|Corrego Alegre 1970-72 / UTM zone 23S|1331|102|0|en|proj=utm zone=23 south
22524|P|Corrego Alegre 1970-72 / UTM zone 24S|2142|102|0|en|proj=utm zone=24 south
22525|P|Corrego Alegre 1970-72 / UTM zone 25S|2143|102|0|en|proj=utm zone=25 south
22607|P|NAD83(CSRS)v6 / UTM zone 7N|642|430|0|en|proj=utm zone=7
22608|P|NAD83(CSRS)v6 / UTM zone 8N|643|430|0|en|proj=utm zone=8
22609|P|NAD83(CSRS)v6 / UTM zone 9N|644|430|0|en|proj=utm zone=9
22610|P|NAD83(CSRS)v6 / UTM zone 10N|645|430|0|en|proj=utm zone=10
22611|P|NAD83(CSRS)v6 / UTM zone 11N|502|430|0|en|proj=utm zone=11
22612|P|NAD83(CSRS)v6 / UTM zone 12N|503|430|0|en|proj=utm zone=12
22613|P|NAD83(CSRS)v6 / UTM zone 13N|504|430|0|en|proj=utm zone=13
22614|P|NAD83(CSRS)v6 / UTM zone 14N|646|430|0|en|proj=utm zone=14
22615|P|NAD83(CSRS)v6 / UTM zone 15N|647|430|0|en|proj=utm zone=15
22616|P|NAD83(CSRS)v6 / UTM zone 16N|648|430|0|en|proj=utm zone=16
22617|P|NAD83(CSRS)v6 / UTM zone 17N|505|430|0|en|proj=utm zone=17
22618|P|NAD83(CSRS)v6 / UTM zone 18N|506|430|0|en|proj=utm zone=18
22619|P|NAD83(CSRS)v6 / UTM zone 19N|507|430|0|en|proj=utm zone=19
22620|P|NAD83(CSRS)v6 / UTM zone 20N|508|430|0|en|proj=utm zone=20
22621|P|NAD83(CSRS)v6 / UTM zone 21N|509|430|0|en|proj=utm zone=21
22622|P|NAD83(CSRS)v6 / UTM zone 22N|903|430|0|en|proj=utm zone=22
22639|P|NAD83(CSRS)v6 / PEI Stereographic|231|430|0|en|proj=sterea lat_0=47.25 lon_0=-63 k=0.999912 x_0=400000 y_0=800000
22641|P|NAD83(CSRS)v6 / MTM zone 1|2144|430|0|en|proj=tmerc lat_0=0 lon_0=-53 k=0.9999 x_0=304800 y_0=0
22642|P|NAD83(CSRS)v6 / MTM zone 2|2145|430|0|en|proj=tmerc lat_0=0 lon_0=-56 k=0.9999 x_0=304800 y_0=0
22643|P|NAD83(CSRS)v6 / MTM zone 3|2146|430|0|en|proj=tmerc lat_0=0 lon_0=-58.5 k=0.9999 x_0=304800 y_0=0
22644|P|NAD83(CSRS)v6 / MTM zone 4|2147|430|0|en|proj=tmerc lat_0=0 lon_0=-61.5 k=0.9999 x_0=304800 y_0=0
22645|P|NAD83(CSRS)v6 / MTM zone 5|2148|430|0|en|proj=tmerc lat_0=0 lon_0=-64.5 k=0.9999 x_0=304800 y_0=0
22646|P|NAD83(CSRS)v6 / MTM zone 6|2149|430|0|en|proj=tmerc lat_0=0 lon_0=-67.5 k=0.9999 x_0=304800 y_0=0
22648|P|NAD83(CSRS)v6 / MTM zone 8|16|430|0|en|proj=tmerc lat_0=0 lon_0=-73.5 k=0.9999 x_0=304800 y_0=0
22649|P|NAD83(CSRS)v6 / MTM zone 9|17|430|0|en|proj=tmerc lat_0=0 lon_0=-76.5 k=0.9999 x_0=304800 y_0=0
22650|P|NAD83(CSRS)v6 / MTM zone 10|18|430|0|en|proj=tmerc lat_0=0 lon_0=-79.5 k=0.9999 x_0=304800 y_0=0
22651|P|NAD83(CSRS)v6 / MTM zone 11|19|430|0|en|proj=tmerc lat_0=0 lon_0=-82.5 k=0.9999 x_0=304800 y_0=0
22652|P|NAD83(CSRS)v6 / MTM zone 12|20|430|0|en|proj=tmerc lat_0=0 lon_0=-81 k=0.9999 x_0=304800 y_0=0
22653|P|NAD83(CSRS)v6 / MTM zone 13|21|430|0|en|proj=tmerc lat_0=0 lon_0=-84 k=0.9999 x_0=304800 y_0=0
22654|P|NAD83(CSRS)v6 / MTM zone 14|22|430|0|en|proj=tmerc lat_0=0 lon_0=-87 k=0.9999 x_0=304800 y_0=0
22655|P|NAD83(CSRS)v6 / MTM zone 15|23|430|0|en|proj=tmerc lat_0=0 lon_0=-90 k=0.9999 x_0=304800 y_0=0
22656|P|NAD83(CSRS)v6 / MTM zone 16|24|430|0|en|proj=tmerc lat_0=0 lon_0=-93 k=0.9999 x_0=304800 y_0=0
22657|P|NAD83(CSRS)v6 / MTM zone 17|25|430|0|en|proj=tmerc lat_0=0 lon_0=-96 k=0.9999 x_0=304800 y_0=0
22700|P|Deir ez Zor / Levant Zone|1065|103|0|en|
22707|P|NAD83(CSRS)v7 / UTM zone 7N|642|431|0|en|proj=utm zone=7
22708|P|NAD83(CSRS)v7 / UTM zone 8N|643|431|0|en|proj=utm zone=8
22709|P|NAD83(CSRS)v7 / UTM zone 9N|644|431|0|en|proj=utm zone=9
22710|P|NAD83(CSRS)v7 / UTM zone 10N|645|431|0|en|proj=utm zone=10
22711|P|NAD83(CSRS)v7 / UTM zone 11N|502|431|0|en|proj=utm zone=11
22712|P|NAD83(CSRS)v7 / UTM zone 12N|503|431|0|en|proj=utm zone=12
22713|P|NAD83(CSRS)v7 / UTM zone 13N|504|431|0|en|proj=utm zone=13
22714|P|NAD83(CSRS)v7 / UTM zone 14N|646|431|0|en|proj=utm zone=14
22715|P|NAD83(CSRS)v7 / UTM zone 15N|647|431|0|en|proj=utm zone=15
22716|P|NAD83(CSRS)v7 / UTM zone 16N|648|431|0|en|proj=utm zone=16
22717|P|NAD83(CSRS)v7 / UTM zone 17N|505|431|0|en|proj=utm zone=17
22718|P|NAD83(CSRS)v7 / UTM zone 18N|506|431|0|en|proj=utm zone=18
22719|P|NAD83(CSRS)v7 / UTM zone 19N|507|431|0|en|proj=utm zone=19
22720|P|NAD83(CSRS)v7 / UTM zone 20N|508|431|0|en|proj=utm zone=20
22721|P|NAD83(CSRS)v7 / UTM zone 21N|509|431|0|en|proj=utm zone=21
22722|P|NAD83(CSRS)v7 / UTM zone 22N|903|431|0|en|proj=utm zone=22
22739|P|NAD83(CSRS)v7 / PEI Stereographic|231|431|0|en|proj=sterea lat_0=47.25 lon_0=-63 k=0.999912 x_0=400000 y_0=800000
22762|P|NAD83(CSRS)v7 / Alberta 3TM ref merid 111 W|912|431|0|en|proj=tmerc lat_0=0 lon_0=-111 k=0.9999 x_0=0 y_0=0
22763|P|NAD83(CSRS)v7 / Alberta 3TM ref merid 114 W|913|431|0|en|proj=tmerc lat_0=0 lon_0=-114 k=0.9999 x_0=0 y_0=0
22764|P|NAD83(CSRS)v7 / Alberta 3TM ref merid 117 W|914|431|0|en|proj=tmerc lat_0=0 lon_0=-117 k=0.9999 x_0=0 y_0=0
22765|P|NAD83(CSRS)v7 / Alberta 3TM ref merid 120 W|923|431|0|en|proj=tmerc lat_0=0 lon_0=-120 k=0.9999 x_0=0 y_0=0
22770|P|Deir ez Zor / Syria Lambert|1065|103|0|en|proj=lcc lat_1=34.65 lat_0=34.65 lon_0=37.35 k_0=0.9996256 x_0=300000 y_0=300000
22780|P|Deir ez Zor / Levant Stereographic|1065|103|0|en|proj=sterea lat_0=34.2 lon_0=39.15 k=0.9995341 x_0=0 y_0=0
22991|P|Egypt 1907 / Blue Belt|2150|104|0|en|proj=tmerc lat_0=30 lon_0=35 k=1 x_0=300000 y_0=1100000
22992|P|Egypt 1907 / Red Belt|2151|104|0|en|proj=tmerc lat_0=30 lon_0=31 k=1 x_0=615000 y_0=810000
22993|P|Egypt 1907 / Purple Belt|2152|104|0|en|proj=tmerc lat_0=30 lon_0=27 k=1 x_0=700000 y_0=200000
22994|P|Egypt 1907 / Extended Purple Belt|2153|104|0|en|proj=tmerc lat_0=30 lon_0=27 k=1 x_0=700000 y_0=1200000
23028|P|ED50 / UTM zone 28N|2154|105|0|en|proj=utm zone=28
23029|P|ED50 / UTM zone 29N|2155|105|0|en|proj=utm zone=29
23030|P|ED50 / UTM zone 30N|2156|105|0|en|proj=utm zone=30
23031|P|ED50 / UTM zone 31N|2157|105|0|en|proj=utm zone=31
23032|P|ED50 / UTM zone 32N|2158|105|0|en|proj=utm zone=32
23033|P|ED50 / UTM zone 33N|2159|105|0|en|proj=utm zone=33
23034|P|ED50 / UTM zone 34N|2160|105|0|en|proj=utm zone=34
23035|P|ED50 / UTM zone 35N|2161|105|0|en|proj=utm zone=35
23036|P|ED50 / UTM zone 36N|2162|105|0|en|proj=utm zone=36
23037|P|ED50 / UTM zone 37N|2163|105|0|en|proj=utm zone=37
23038|P|ED50 / UTM zone 38N|2164|105|0|en|proj=utm zone=38
23090|P|ED50 / TM 0 N|2165|105|0|en|proj=tmerc lat_0=0 lon_0=0 k=0.9996 x_0=500000 y_0=0
23095|P|ED50 / TM 5 NE|1997|105|0|en|proj=tmerc lat_0=0 lon_0=5 k=0.9996 x_0=500000 y_0=0
23239|P|Fahud / UTM zone 39N|849|107|0|en|proj=utm zone=39
23240|P|Fahud / UTM zone 40N|2166|107|0|en|proj=utm zone=40
23700|P|HD72 / EOV|925|109|0|en|proj=somerc lat_0=47.1443937222222 lon_0=19.0485717777778 k_0=0.99993 x_0=650000 y_0=200000
23830|P|DGN95 / Indonesia TM-3 zone 46.2|2167|326|0|en|proj=tmerc lat_0=0 lon_0=94.5 k=0.9999 x_0=200000 y_0=1500000
23831|P|DGN95 / Indonesia TM-3 zone 47.1|2168|326|0|en|proj=tmerc lat_0=0 lon_0=97.5 k=0.9999 x_0=200000 y_0=1500000
23832|P|DGN95 / Indonesia TM-3 zone 47.2|2169|326|0|en|proj=tmerc lat_0=0 lon_0=100.5 k=0.9999 x_0=200000 y_0=1500000
23833|P|DGN95 / Indonesia TM-3 zone 48.1|2170|326|0|en|proj=tmerc lat_0=0 lon_0=103.5 k=0.9999 x_0=200000 y_0=1500000
23834|P|DGN95 / Indonesia TM-3 zone 48.2|2171|326|0|en|proj=tmerc lat_0=0 lon_0=106.5 k=0.9999 x_0=200000 y_0=1500000
23835|P|DGN95 / Indonesia TM-3 zone 49.1|2172|326|0|en|proj=tmerc lat_0=0 lon_0=109.5 k=0.9999 x_0=200000 y_0=1500000
23836|P|DGN95 / Indonesia TM-3 zone 49.2|2173|326|0|en|proj=tmerc lat_0=0 lon_0=112.5 k=0.9999 x_0=200000 y_0=1500000
23837|P|DGN95 / Indonesia TM-3 zone 50.1|2174|326|0|en|proj=tmerc lat_0=0 lon_0=115.5 k=0.9999 x_0=200000 y_0=1500000
23838|P|DGN95 / Indonesia TM-3 zone 50.2|2175|326|0|en|proj=tmerc lat_0=0 lon_0=118.5 k=0.9999 x_0=200000 y_0=1500000
23839|P|DGN95 / Indonesia TM-3 zone 51.1|2176|326|0|en|proj=tmerc lat_0=0 lon_0=121.5 k=0.9999 x_0=200000 y_0=1500000
23840|P|DGN95 / Indonesia TM-3 zone 51.2|2177|326|0|en|proj=tmerc lat_0=0 lon_0=124.5 k=0.9999 x_0=200000 y_0=1500000
23841|P|DGN95 / Indonesia TM-3 zone 52.1|2178|326|0|en|proj=tmerc lat_0=0 lon_0=127.5 k=0.9999 x_0=200000 y_0=1500000
23842|P|DGN95 / Indonesia TM-3 zone 52.2|2179|326|0|en|proj=tmerc lat_0=0 lon_0=130.5 k=0.9999 x_0=200000 y_0=1500000
23843|P|DGN95 / Indonesia TM-3 zone 53.1|2180|326|0|en|proj=tmerc lat_0=0 lon_0=133.5 k=0.9999 x_0=200000 y_0=1500000
23844|P|DGN95 / Indonesia TM-3 zone 53.2|2181|326|0|en|proj=tmerc lat_0=0 lon_0=136.5 k=0.9999 x_0=200000 y_0=1500000
23845|P|DGN95 / Indonesia TM-3 zone 54.1|2182|326|0|en|proj=tmerc lat_0=0 lon_0=139.5 k=0.9999 x_0=200000 y_0=1500000
23846|P|ID74 / UTM zone 46N|2167|110|0|en|proj=utm zone=46
23847|P|ID74 / UTM zone 47N|2183|110|0|en|proj=utm zone=47
23848|P|ID74 / UTM zone 48N|2184|110|0|en|proj=utm zone=48
23849|P|ID74 / UTM zone 49N|2185|110|0|en|proj=utm zone=49
23850|P|ID74 / UTM zone 50N|2186|110|0|en|proj=utm zone=50
23851|P|ID74 / UTM zone 51N|2187|110|0|en|proj=utm zone=51
23852|P|ID74 / UTM zone 52N|2188|110|0|en|proj=utm zone=52
23866|P|DGN95 / UTM zone 46N|2022|326|0|en|proj=utm zone=46
23867|P|DGN95 / UTM zone 47N|2023|326|0|en|proj=utm zone=47
23868|P|DGN95 / UTM zone 48N|2024|326|0|en|proj=utm zone=48
23869|P|DGN95 / UTM zone 49N|2025|326|0|en|proj=utm zone=49
23870|P|DGN95 / UTM zone 50N|2026|326|0|en|proj=utm zone=50
23871|P|DGN95 / UTM zone 51N|2027|326|0|en|proj=utm zone=51
23872|P|DGN95 / UTM zone 52N|2028|326|0|en|proj=utm zone=52
23877|P|DGN95 / UTM zone 47S|2029|326|0|en|proj=utm zone=47 south
23878|P|DGN95 / UTM zone 48S|2030|326|0|en|proj=utm zone=48 south
23879|P|DGN95 / UTM zone 49S|2031|326|0|en|proj=utm zone=49 south
23880|P|DGN95 / UTM zone 50S|2032|326|0|en|proj=utm zone=50 south
23881|P|DGN95 / UTM zone 51S|2033|326|0|en|proj=utm zone=51 south
23882|P|DGN95 / UTM zone 52S|2034|326|0|en|proj=utm zone=52 south
23883|P|DGN95 / UTM zone 53S|2035|326|0|en|proj=utm zone=53 south
23884|P|DGN95 / UTM zone 54S|2036|326|0|en|proj=utm zone=54 south
23887|P|ID74 / UTM zone 47S|2189|110|0|en|proj=utm zone=47 south
23888|P|ID74 / UTM zone 48S|2190|110|0|en|proj=utm zone=48 south
23889|P|ID74 / UTM zone 49S|2191|110|0|en|proj=utm zone=49 south
23890|P|ID74 / UTM zone 50S|2192|110|0|en|proj=utm zone=50 south
23891|P|ID74 / UTM zone 51S|2193|110|0|en|proj=utm zone=51 south
23892|P|ID74 / UTM zone 52S|2194|110|0|en|proj=utm zone=52 south
23893|P|ID74 / UTM zone 53S|2195|110|0|en|proj=utm zone=53 south
23894|P|ID74 / UTM zone 54S|2182|110|0|en|proj=utm zone=54 south
23946|P|Indian 1954 / UTM zone 46N|2196|111|0|en|proj=utm zone=46
23947|P|Indian 1954 / UTM zone 47N|2197|111|0|en|proj=utm zone=47
23948|P|Indian 1954 / UTM zone 48N|2198|111|0|en|proj=utm zone=48
24047|P|Indian 1975 / UTM zone 47N|2199|112|0|en|proj=utm zone=47
24048|P|Indian 1975 / UTM zone 48N|2200|112|0|en|proj=utm zone=48
24100|P|Jamaica 1875 / Jamaica (Old Grid)|852|113|5|en|proj=lcc lat_1=18 lat_0=18 lon_0=-77 k_0=1 x_0=167638.49597 y_0=121918.90616
24200|P|JAD69 / Jamaica National Grid|852|114|0|en|proj=lcc lat_1=18 lat_0=18 lon_0=-77 k_0=1 x_0=250000 y_0=150000
24305|P|Kalianpur 1937 / UTM zone 45N|2201|27|0|en|proj=utm zone=45
24306|P|Kalianpur 1937 / UTM zone 46N|2202|27|0|en|proj=utm zone=46
24311|P|Kalianpur 1962 / UTM zone 41N|2203|28|0|en|proj=utm zone=41
24312|P|Kalianpur 1962 / UTM zone 42N|2204|28|0|en|proj=utm zone=42
24313|P|Kalianpur 1962 / UTM zone 43N|2205|28|0|en|proj=utm zone=43
24342|P|Kalianpur 1975 / UTM zone 42N|2206|29|0|en|proj=utm zone=42
24343|P|Kalianpur 1975 / UTM zone 43N|2207|29|0|en|proj=utm zone=43
24344|P|Kalianpur 1975 / UTM zone 44N|2208|29|0|en|proj=utm zone=44
24345|P|Kalianpur 1975 / UTM zone 45N|2209|29|0|en|proj=utm zone=45
24346|P|Kalianpur 1975 / UTM zone 46N|2210|29|0|en|proj=utm zone=46
24347|P|Kalianpur 1975 / UTM zone 47N|2211|29|0|en|proj=utm zone=47
24370|P|Kalianpur 1880 / India zone 0|2212|115|10|en|proj=lcc lat_1=39.5 lat_0=39.5 lon_0=68 k_0=0.99846154 x_0=2153865.73916853 y_0=2368292.1946281
24371|P|Kalianpur 1880 / India zone I|2213|115|10|en|proj=lcc lat_1=32.5 lat_0=32.5 lon_0=68 k_0=0.99878641 x_0=2743195.59223332 y_0=914398.530744441
24372|P|Kalianpur 1880 / India zone IIa|2214|115|10|en|proj=lcc lat_1=26 lat_0=26 lon_0=74 k_0=0.99878641 x_0=2743195.59223332 y_0=914398.530744441
24373|P|Kalianpur 1880 / India zone IIIa|2215|115|10|en|proj=lcc lat_1=19 lat_0=19 lon_0=80 k_0=0.99878641 x_0=2743195.59223332 y_0=914398.530744441
24374|P|Kalianpur 1880 / India zone IVa|2216|115|10|en|proj=lcc lat_1=12 lat_0=12 lon_0=80 k_0=0.99878641 x_0=2743195.59223332 y_0=914398.530744441
24375|P|Kalianpur 1937 / India zone IIb|604|27|0|en|proj=lcc lat_1=26 lat_0=26 lon_0=90 k_0=0.99878641 x_0=2743185.69 y_0=914395.23
24376|P|Kalianpur 1962 / India zone I|2217|28|0|en|proj=lcc lat_1=32.5 lat_0=32.5 lon_0=68 k_0=0.99878641 x_0=2743196.4 y_0=914398.8
24377|P|Kalianpur 1962 / India zone IIa|2218|28|0|en|proj=lcc lat_1=26 lat_0=26 lon_0=74 k_0=0.99878641 x_0=2743196.4 y_0=914398.8
24378|P|Kalianpur 1975 / India zone I|2219|29|0|en|proj=lcc lat_1=32.5 lat_0=32.5 lon_0=68 k_0=0.99878641 x_0=2743195.5 y_0=914398.5
24379|P|Kalianpur 1975 / India zone IIa|2220|29|0|en|proj=lcc lat_1=26 lat_0=26 lon_0=74 k_0=0.99878641 x_0=2743195.5 y_0=914398.5
24380|P|Kalianpur 1975 / India zone IIb|2221|29|0|en|proj=lcc lat_1=26 lat_0=26 lon_0=90 k_0=0.99878641 x_0=2743195.5 y_0=914398.5
24381|P|Kalianpur 1975 / India zone IIIa|2215|29|0|en|proj=lcc lat_1=19 lat_0=19 lon_0=80 k_0=0.99878641 x_0=2743195.5 y_0=914398.5
24382|P|Kalianpur 1880 / India zone IIb|2222|115|10|en|proj=lcc lat_1=26 lat_0=26 lon_0=90 k_0=0.99878641 x_0=2743195.59223332 y_0=914398.530744441
24383|P|Kalianpur 1975 / India zone IVa|2216|29|0|en|proj=lcc lat_1=12 lat_0=12 lon_0=80 k_0=0.99878641 x_0=2743195.5 y_0=914398.5
24500|P|Kertau 1968 / Singapore Grid|846|117|0|en|proj=cass lat_0=1.28764666666667 lon_0=103.853002222222 x_0=30000 y_0=30000
24547|P|Kertau 1968 / UTM zone 47N|2223|117|0|en|proj=utm zone=47
24548|P|Kertau 1968 / UTM zone 48N|2224|117|0|en|proj=utm zone=48
24600|P|KOC Lambert|1076|118|0|en|proj=lcc lat_1=32.5 lat_0=32.5 lon_0=45 k_0=0.9987864078 x_0=1500000 y_0=1166200
24718|P|La Canoa / UTM zone 18N|147|119|0|en|proj=utm zone=18
24719|P|La Canoa / UTM zone 19N|2225|119|0|en|proj=utm zone=19
24720|P|La Canoa / UTM zone 20N|2226|119|0|en|proj=utm zone=20
24817|P|PSAD56 / UTM zone 17N|2227|120|0|en|proj=utm zone=17
24818|P|PSAD56 / UTM zone 18N|2228|120|0|en|proj=utm zone=18
24819|P|PSAD56 / UTM zone 19N|2229|120|0|en|proj=utm zone=19
24820|P|PSAD56 / UTM zone 20N|2230|120|0|en|proj=utm zone=20
24821|P|PSAD56 / UTM zone 21N|2231|120|0|en|proj=utm zone=21
24877|P|PSAD56 / UTM zone 17S|2232|120|0|en|proj=utm zone=17 south
24878|P|PSAD56 / UTM zone 18S|2233|120|0|en|proj=utm zone=18 south
24879|P|PSAD56 / UTM zone 19S|2234|120|0|en|proj=utm zone=19 south
24880|P|PSAD56 / UTM zone 20S|1290|120|0|en|proj=utm zone=20 south
24881|P|PSAD56 / UTM zone 21S|1292|120|0|en|proj=utm zone=21 south
24882|P|PSAD56 / UTM zone 22S|2235|120|0|en|proj=utm zone=22 south
24891|P|PSAD56 / Peru west zone|2236|120|0|en|proj=tmerc lat_0=-6 lon_0=-80.5 k=0.99983008 x_0=222000 y_0=1426834.743
24892|P|PSAD56 / Peru central zone|2237|120|0|en|proj=tmerc lat_0=-9.5 lon_0=-76 k=0.99932994 x_0=720000 y_0=1039979.159
24893|P|PSAD56 / Peru east zone|2238|120|0|en|proj=tmerc lat_0=-9.5 lon_0=-70.5 k=0.99952992 x_0=1324000 y_0=1040084.558
25000|P|Leigon / Ghana Metre Grid|1033|122|0|en|proj=tmerc lat_0=4.66666666666667 lon_0=-1 k=0.99975 x_0=274319.51 y_0=0
25231|P|Lome / UTM zone 31N|1080|124|0|en|proj=utm zone=31
25391|P|Luzon 1911 / Philippines zone I|2239|125|0|en|proj=tmerc lat_0=0 lon_0=117 k=0.99995 x_0=500000 y_0=0
25392|P|Luzon 1911 / Philippines zone II|2240|125|0|en|proj=tmerc lat_0=0 lon_0=119 k=0.99995 x_0=500000 y_0=0
25393|P|Luzon 1911 / Philippines zone III|2241|125|0|en|proj=tmerc lat_0=0 lon_0=121 k=0.99995 x_0=500000 y_0=0
25394|P|Luzon 1911 / Philippines zone IV|2242|125|0|en|proj=tmerc lat_0=0 lon_0=123 k=0.99995 x_0=500000 y_0=0
25395|P|Luzon 1911 / Philippines zone V|2243|125|0|en|proj=tmerc lat_0=0 lon_0=125 k=0.99995 x_0=500000 y_0=0
25828|P|ETRS89 / UTM zone 28N|564|130|0|en|proj=utm zone=28
25829|P|ETRS89 / UTM zone 29N|565|130|0|en|proj=utm zone=29
25830|P|ETRS89 / UTM zone 30N|566|130|0|en|proj=utm zone=30
25831|P|ETRS89 / UTM zone 31N|567|130|0|en|proj=utm zone=31
25832|P|ETRS89 / UTM zone 32N|568|130|0|en|proj=utm zone=32
25833|P|ETRS89 / UTM zone 33N|569|130|0|en|proj=utm zone=33
25834|P|ETRS89 / UTM zone 34N|570|130|0|en|proj=utm zone=34
25835|P|ETRS89 / UTM zone 35N|571|130|0|en|proj=utm zone=35
25836|P|ETRS89 / UTM zone 36N|572|130|0|en|proj=utm zone=36
25837|P|ETRS89 / UTM zone 37N|573|130|0|en|proj=utm zone=37
25884|P|ETRS89 / TM Baltic93|2244|130|0|ne|proj=tmerc lat_0=0 lon_0=24 k=0.9996 x_0=500000 y_0=0
25932|P|Malongo 1987 / UTM zone 32S|817|131|0|en|proj=utm zone=32 south
26191|P|Merchich / Nord Maroc|2245|132|0|en|proj=lcc lat_1=33.3 lat_0=33.3 lon_0=-5.4 k_0=0.999625769 x_0=500000 y_0=300000
26192|P|Merchich / Sud Maroc|2246|132|0|en|proj=lcc lat_1=29.7 lat_0=29.7 lon_0=-5.4 k_0=0.999615596 x_0=500000 y_0=300000
26194|P|Merchich / Sahara Nord|2247|132|0|en|proj=lcc lat_1=26.1 lat_0=26.1 lon_0=-5.4 k_0=0.999616304 x_0=1200000 y_0=400000
26195|P|Merchich / Sahara Sud|2248|132|0|en|proj=lcc lat_1=22.5 lat_0=22.5 lon_0=-5.4 k_0=0.999616437 x_0=1500000 y_0=400000
26237|P|Massawa / UTM zone 37N|1087|133|0|en|proj=utm zone=37
26331|P|Minna / UTM zone 31N|2249|134|0|en|proj=utm zone=31
26332|P|Minna / UTM zone 32N|2250|134|0|en|proj=utm zone=32
26391|P|Minna / Nigeria West Belt|2251|134|0|en|proj=tmerc lat_0=4 lon_0=4.5 k=0.99975 x_0=230738.26 y_0=0
26392|P|Minna / Nigeria Mid Belt|2252|134|0|en|proj=tmerc lat_0=4 lon_0=8.5 k=0.99975 x_0=670553.98 y_0=0
26393|P|Minna / Nigeria East Belt|2253|134|0|en|proj=tmerc lat_0=4 lon_0=12.5 k=0.99975 x_0=1110369.7 y_0=0
26632|P|M'poraloko / UTM zone 32N|2254|136|0|en|proj=utm zone=32
26692|P|M'poraloko / UTM zone 32S|2255|136|0|en|proj=utm zone=32 south
26701|P|NAD27 / UTM zone 1N|873|137|0|en|proj=utm zone=1
26702|P|NAD27 / UTM zone 2N|874|137|0|en|proj=utm zone=2
26703|P|NAD27 / UTM zone 3N|875|137|0|en|proj=utm zone=3
26704|P|NAD27 / UTM zone 4N|876|137|0|en|proj=utm zone=4
26705|P|NAD27 / UTM zone 5N|877|137|0|en|proj=utm zone=5
26706|P|NAD27 / UTM zone 6N|878|137|0|en|proj=utm zone=6
26707|P|NAD27 / UTM zone 7N|2256|137|0|en|proj=utm zone=7
26708|P|NAD27 / UTM zone 8N|2257|137|0|en|proj=utm zone=8
26709|P|NAD27 / UTM zone 9N|2258|137|0|en|proj=utm zone=9
26710|P|NAD27 / UTM zone 10N|2259|137|0|en|proj=utm zone=10
26711|P|NAD27 / UTM zone 11N|2260|137|0|en|proj=utm zone=11
26712|P|NAD27 / UTM zone 12N|2261|137|0|en|proj=utm zone=12
26713|P|NAD27 / UTM zone 13N|2262|137|0|en|proj=utm zone=13
26714|P|NAD27 / UTM zone 14N|2263|137|0|en|proj=utm zone=14
26715|P|NAD27 / UTM zone 15N|2264|137|0|en|proj=utm zone=15
26716|P|NAD27 / UTM zone 16N|2265|137|0|en|proj=utm zone=16
26717|P|NAD27 / UTM zone 17N|2266|137|0|en|proj=utm zone=17
26718|P|NAD27 / UTM zone 18N|2267|137|0|en|proj=utm zone=18
26719|P|NAD27 / UTM zone 19N|2268|137|0|en|proj=utm zone=19
26720|P|NAD27 / UTM zone 20N|2269|137|0|en|proj=utm zone=20
26721|P|NAD27 / UTM zone 21N|2270|137|0|en|proj=utm zone=21
26722|P|NAD27 / UTM zone 22N|903|137|0|en|proj=utm zone=22
26729|P|NAD27 / Alabama East|438|137|3|en|proj=tmerc lat_0=30.5 lon_0=-85.8333333333333 k=0.99996 x_0=152400.30480061 y_0=0
26730|P|NAD27 / Alabama West|439|137|3|en|proj=tmerc lat_0=30 lon_0=-87.5 k=0.999933333 x_0=152400.30480061 y_0=0
26731|P|NAD27 / Alaska zone 1|860|137|3|en|proj=omerc no_uoff lat_0=57 lonc=-133.666666666667 alpha=323.130102361111 gamma=323.130102361111 k=0.9999 x_0=5000000.001016 y_0=-5000000.001016
26732|P|NAD27 / Alaska zone 2|861|137|3|en|proj=tmerc lat_0=54 lon_0=-142 k=0.9999 x_0=152400.30480061 y_0=0
26733|P|NAD27 / Alaska zone 3|862|137|3|en|proj=tmerc lat_0=54 lon_0=-146 k=0.9999 x_0=152400.30480061 y_0=0
26734|P|NAD27 / Alaska zone 4|863|137|3|en|proj=tmerc lat_0=54 lon_0=-150 k=0.9999 x_0=152400.30480061 y_0=0
26735|P|NAD27 / Alaska zone 5|864|137|3|en|proj=tmerc lat_0=54 lon_0=-154 k=0.9999 x_0=152400.30480061 y_0=0
26736|P|NAD27 / Alaska zone 6|865|137|3|en|proj=tmerc lat_0=54 lon_0=-158 k=0.9999 x_0=152400.30480061 y_0=0
26737|P|NAD27 / Alaska zone 7|866|137|3|en|proj=tmerc lat_0=54 lon_0=-162 k=0.9999 x_0=213360.426720853 y_0=0
26738|P|NAD27 / Alaska zone 8|867|137|3|en|proj=tmerc lat_0=54 lon_0=-166 k=0.9999 x_0=152400.30480061 y_0=0
26739|P|NAD27 / Alaska zone 9|868|137|3|en|proj=tmerc lat_0=54 lon_0=-170 k=0.9999 x_0=182880.365760731 y_0=0
26740|P|NAD27 / Alaska zone 10|869|137|3|en|proj=lcc lat_0=51 lon_0=-176 lat_1=53.8333333333333 lat_2=51.8333333333333 x_0=914401.828803657 y_0=0
26741|P|NAD27 / California zone I|170|137|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-122 lat_1=41.6666666666667 lat_2=40 x_0=609601.219202438 y_0=0
26742|P|NAD27 / California zone II|171|137|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-122 lat_1=39.8333333333333 lat_2=38.3333333333333 x_0=609601.219202438 y_0=0
26743|P|NAD27 / California zone III|172|137|3|en|proj=lcc lat_0=36.5 lon_0=-120.5 lat_1=38.4333333333333 lat_2=37.0666666666667 x_0=609601.219202438 y_0=0
26744|P|NAD27 / California zone IV|173|137|3|en|proj=lcc lat_0=35.3333333333333 lon_0=-119 lat_1=37.25 lat_2=36 x_0=609601.219202438 y_0=0
26745|P|NAD27 / California zone V|2271|137|3|en|proj=lcc lat_0=33.5 lon_0=-118 lat_1=35.4666666666667 lat_2=34.0333333333333 x_0=609601.219202438 y_0=0
26746|P|NAD27 / California zone VI|175|137|3|en|proj=lcc lat_0=32.1666666666667 lon_0=-116.25 lat_1=33.8833333333333 lat_2=32.7833333333333 x_0=609601.219202438 y_0=0
26748|P|NAD27 / Arizona East|167|137|3|en|proj=tmerc lat_0=31 lon_0=-110.166666666667 k=0.9999 x_0=152400.30480061 y_0=0
26749|P|NAD27 / Arizona Central|168|137|3|en|proj=tmerc lat_0=31 lon_0=-111.916666666667 k=0.9999 x_0=152400.30480061 y_0=0
26750|P|NAD27 / Arizona West|169|137|3|en|proj=tmerc lat_0=31 lon_0=-113.75 k=0.999933333 x_0=152400.30480061 y_0=0
26751|P|NAD27 / Arkansas North|440|137|3|en|proj=lcc lat_0=34.3333333333333 lon_0=-92 lat_1=36.2333333333333 lat_2=34.9333333333333 x_0=609601.219202438 y_0=0
26752|P|NAD27 / Arkansas South|441|137|3|en|proj=lcc lat_0=32.6666666666667 lon_0=-92 lat_1=34.7666666666667 lat_2=33.3 x_0=609601.219202438 y_0=0
26753|P|NAD27 / Colorado North|176|137|3|en|proj=lcc lat_0=39.3333333333333 lon_0=-105.5 lat_1=39.7166666666667 lat_2=40.7833333333333 x_0=609601.219202438 y_0=0
26754|P|NAD27 / Colorado Central|177|137|3|en|proj=lcc lat_0=37.8333333333333 lon_0=-105.5 lat_1=39.75 lat_2=38.45 x_0=609601.219202438 y_0=0
26755|P|NAD27 / Colorado South|178|137|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-105.5 lat_1=38.4333333333333 lat_2=37.2333333333333 x_0=609601.219202438 y_0=0
26756|P|NAD27 / Connecticut|179|137|3|en|proj=lcc lat_0=40.8333333333333 lon_0=-72.75 lat_1=41.8666666666667 lat_2=41.2 x_0=182880.365760731 y_0=0
26757|P|NAD27 / Delaware|180|137|3|en|proj=tmerc lat_0=38 lon_0=-75.4166666666667 k=0.999995 x_0=152400.30480061 y_0=0
26758|P|NAD27 / Florida East|181|137|3|en|proj=tmerc lat_0=24.3333333333333 lon_0=-81 k=0.999941177 x_0=152400.30480061 y_0=0
26759|P|NAD27 / Florida West|182|137|3|en|proj=tmerc lat_0=24.3333333333333 lon_0=-82 k=0.999941177 x_0=152400.30480061 y_0=0
26760|P|NAD27 / Florida North|183|137|3|en|proj=lcc lat_0=29 lon_0=-84.5 lat_1=30.75 lat_2=29.5833333333333 x_0=609601.219202438 y_0=0
26766|P|NAD27 / Georgia East|184|137|3|en|proj=tmerc lat_0=30 lon_0=-82.1666666666667 k=0.9999 x_0=152400.30480061 y_0=0
26767|P|NAD27 / Georgia West|185|137|3|en|proj=tmerc lat_0=30 lon_0=-84.1666666666667 k=0.9999 x_0=152400.30480061 y_0=0
26768|P|NAD27 / Idaho East|186|137|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-112.166666666667 k=0.999947368 x_0=152400.30480061 y_0=0
26769|P|NAD27 / Idaho Central|187|137|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-114 k=0.999947368 x_0=152400.30480061 y_0=0
26770|P|NAD27 / Idaho West|188|137|3|en|proj=tmerc lat_0=41.6666666666667 lon_0=-115.75 k=0.999933333 x_0=152400.30480061 y_0=0
26771|P|NAD27 / Illinois East|447|137|3|en|proj=tmerc lat_0=36.6666666666667 lon_0=-88.3333333333333 k=0.999975 x_0=152400.30480061 y_0=0
26772|P|NAD27 / Illinois West|448|137|3|en|proj=tmerc lat_0=36.6666666666667 lon_0=-90.1666666666667 k=0.999941177 x_0=152400.30480061 y_0=0
26773|P|NAD27 / Indiana East|449|137|3|en|proj=tmerc lat_0=37.5 lon_0=-85.6666666666667 k=0.999966667 x_0=152400.30480061 y_0=0
26774|P|NAD27 / Indiana West|450|137|3|en|proj=tmerc lat_0=37.5 lon_0=-87.0833333333333 k=0.999966667 x_0=152400.30480061 y_0=0
26775|P|NAD27 / Iowa North|451|137|3|en|proj=lcc lat_0=41.5 lon_0=-93.5 lat_1=43.2666666666667 lat_2=42.0666666666667 x_0=609601.219202438 y_0=0
26776|P|NAD27 / Iowa South|452|137|3|en|proj=lcc lat_0=40 lon_0=-93.5 lat_1=41.7833333333333 lat_2=40.6166666666667 x_0=609601.219202438 y_0=0
26777|P|NAD27 / Kansas North|453|137|3|en|proj=lcc lat_0=38.3333333333333 lon_0=-98 lat_1=39.7833333333333 lat_2=38.7166666666667 x_0=609601.219202438 y_0=0
26778|P|NAD27 / Kansas South|454|137|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-98.5 lat_1=38.5666666666667 lat_2=37.2666666666667 x_0=609601.219202438 y_0=0
26779|P|NAD27 / Kentucky North|151|137|3|en|proj=lcc lat_0=37.5 lon_0=-84.25 lat_1=37.9666666666667 lat_2=38.9666666666667 x_0=609601.219202438 y_0=0
26780|P|NAD27 / Kentucky South|189|137|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=36.7333333333333 lat_2=37.9333333333333 x_0=609601.219202438 y_0=0
26781|P|NAD27 / Louisiana North|455|137|3|en|proj=lcc lat_0=30.6666666666667 lon_0=-92.5 lat_1=31.1666666666667 lat_2=32.6666666666667 x_0=609601.219202438 y_0=0
26782|P|NAD27 / Louisiana South|2272|137|3|en|proj=lcc lat_0=28.6666666666667 lon_0=-91.3333333333333 lat_1=29.3 lat_2=30.7 x_0=609601.219202438 y_0=0
26783|P|NAD27 / Maine East|457|137|3|en|proj=tmerc lat_0=43.8333333333333 lon_0=-68.5 k=0.9999 x_0=152400.30480061 y_0=0
26784|P|NAD27 / Maine West|458|137|3|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.1666666666667 k=0.999966667 x_0=152400.30480061 y_0=0
26785|P|NAD27 / Maryland|190|137|3|en|proj=lcc lat_0=37.8333333333333 lon_0=-77 lat_1=38.3 lat_2=39.45 x_0=243840.487680975 y_0=0
26786|P|NAD27 / Massachusetts Mainland|191|137|3|en|proj=lcc lat_0=41 lon_0=-71.5 lat_1=41.7166666666667 lat_2=42.6833333333333 x_0=182880.365760731 y_0=0
26787|P|NAD27 / Massachusetts Island|192|137|3|en|proj=lcc lat_0=41 lon_0=-70.5 lat_1=41.2833333333333 lat_2=41.4833333333333 x_0=60960.1219202438 y_0=0
26791|P|NAD27 / Minnesota North|459|137|3|en|proj=lcc lat_0=46.5 lon_0=-93.1 lat_1=47.0333333333333 lat_2=48.6333333333333 x_0=609601.219202438 y_0=0
26792|P|NAD27 / Minnesota Central|460|137|3|en|proj=lcc lat_0=45 lon_0=-94.25 lat_1=45.6166666666667 lat_2=47.05 x_0=609601.219202438 y_0=0
26793|P|NAD27 / Minnesota South|461|137|3|en|proj=lcc lat_0=43 lon_0=-94 lat_1=43.7833333333333 lat_2=45.2166666666667 x_0=609601.219202438 y_0=0
26794|P|NAD27 / Mississippi East|196|137|3|en|proj=tmerc lat_0=29.6666666666667 lon_0=-88.8333333333333 k=0.99996 x_0=152400.30480061 y_0=0
26795|P|NAD27 / Mississippi West|197|137|3|en|proj=tmerc lat_0=30.5 lon_0=-90.3333333333333 k=0.999941177 x_0=152400.30480061 y_0=0
26796|P|NAD27 / Missouri East|462|137|3|en|proj=tmerc lat_0=35.8333333333333 lon_0=-90.5 k=0.999933333 x_0=152400.30480061 y_0=0
26797|P|NAD27 / Missouri Central|463|137|3|en|proj=tmerc lat_0=35.8333333333333 lon_0=-92.5 k=0.999933333 x_0=152400.30480061 y_0=0
26798|P|NAD27 / Missouri West|464|137|3|en|proj=tmerc lat_0=36.1666666666667 lon_0=-94.5 k=0.999941177 x_0=152400.30480061 y_0=0
26799|P|NAD27 / California zone VII|2273|137|3|en|proj=lcc lat_0=34.1333333333333 lon_0=-118.333333333333 lat_1=34.4166666666667 lat_2=33.8666666666667 x_0=1276106.4505969 y_0=1268253.00685801
26847|P|NAD83 / Maine East (ftUS)|457|138|3|en|proj=tmerc lat_0=43.6666666666667 lon_0=-68.5 k=0.9999 x_0=300000 y_0=0
26848|P|NAD83 / Maine West (ftUS)|458|138|3|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.1666666666667 k=0.999966667 x_0=900000 y_0=0
26849|P|NAD83 / Minnesota North (ftUS)|459|138|3|en|proj=lcc lat_0=46.5 lon_0=-93.1 lat_1=48.6333333333333 lat_2=47.0333333333333 x_0=800000.00001016 y_0=99999.9999898399
26850|P|NAD83 / Minnesota Central (ftUS)|460|138|3|en|proj=lcc lat_0=45 lon_0=-94.25 lat_1=47.05 lat_2=45.6166666666667 x_0=800000.00001016 y_0=99999.9999898399
26851|P|NAD83 / Minnesota South (ftUS)|461|138|3|en|proj=lcc lat_0=43 lon_0=-94 lat_1=45.2166666666667 lat_2=43.7833333333333 x_0=800000.00001016 y_0=99999.9999898399
26852|P|NAD83 / Nebraska (ftUS)|465|138|3|en|proj=lcc lat_0=39.8333333333333 lon_0=-100 lat_1=43 lat_2=40 x_0=500000.00001016 y_0=0
26853|P|NAD83 / West Virginia North (ftUS)|477|138|3|en|proj=lcc lat_0=38.5 lon_0=-79.5 lat_1=40.25 lat_2=39 x_0=600000 y_0=0
26854|P|NAD83 / West Virginia South (ftUS)|478|138|3|en|proj=lcc lat_0=37 lon_0=-81 lat_1=38.8833333333333 lat_2=37.4833333333333 x_0=600000 y_0=0
26855|P|NAD83(HARN) / Maine East (ftUS)|457|35|3|en|proj=tmerc lat_0=43.6666666666667 lon_0=-68.5 k=0.9999 x_0=300000 y_0=0
26856|P|NAD83(HARN) / Maine West (ftUS)|458|35|3|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.1666666666667 k=0.999966667 x_0=900000 y_0=0
26857|P|NAD83(HARN) / Minnesota North (ftUS)|459|35|3|en|proj=lcc lat_0=46.5 lon_0=-93.1 lat_1=48.6333333333333 lat_2=47.0333333333333 x_0=800000.00001016 y_0=99999.9999898399
26858|P|NAD83(HARN) / Minnesota Central (ftUS)|460|35|3|en|proj=lcc lat_0=45 lon_0=-94.25 lat_1=47.05 lat_2=45.6166666666667 x_0=800000.00001016 y_0=99999.9999898399
26859|P|NAD83(HARN) / Minnesota South (ftUS)|461|35|3|en|proj=lcc lat_0=43 lon_0=-94 lat_1=45.2166666666667 lat_2=43.7833333333333 x_0=800000.00001016 y_0=99999.9999898399
26860|P|NAD83(HARN) / Nebraska (ftUS)|465|35|3|en|proj=lcc lat_0=39.8333333333333 lon_0=-100 lat_1=43 lat_2=40 x_0=500000.00001016 y_0=0
26861|P|NAD83(HARN) / West Virginia North (ftUS)|477|35|3|en|proj=lcc lat_0=38.5 lon_0=-79.5 lat_1=40.25 lat_2=39 x_0=600000 y_0=0
26862|P|NAD83(HARN) / West Virginia South (ftUS)|478|35|3|en|proj=lcc lat_0=37 lon_0=-81 lat_1=38.8833333333333 lat_2=37.4833333333333 x_0=600000 y_0=0
26863|P|NAD83(NSRS2007) / Maine East (ftUS)|457|330|3|en|proj=tmerc lat_0=43.6666666666667 lon_0=-68.5 k=0.9999 x_0=300000 y_0=0
26864|P|NAD83(NSRS2007) / Maine West (ftUS)|458|330|3|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.1666666666667 k=0.999966667 x_0=900000 y_0=0
26865|P|NAD83(NSRS2007) / Minnesota North (ftUS)|459|330|3|en|proj=lcc lat_0=46.5 lon_0=-93.1 lat_1=48.6333333333333 lat_2=47.0333333333333 x_0=800000.00001016 y_0=99999.9999898399
26866|P|NAD83(NSRS2007) / Minnesota Central (ftUS)|460|330|3|en|proj=lcc lat_0=45 lon_0=-94.25 lat_1=47.05 lat_2=45.6166666666667 x_0=800000.00001016 y_0=99999.9999898399
26867|P|NAD83(NSRS2007) / Minnesota South (ftUS)|461|330|3|en|proj=lcc lat_0=43 lon_0=-94 lat_1=45.2166666666667 lat_2=43.7833333333333 x_0=800000.00001016 y_0=99999.9999898399
26868|P|NAD83(NSRS2007) / Nebraska (ftUS)|465|330|3|en|proj=lcc lat_0=39.8333333333333 lon_0=-100 lat_1=43 lat_2=40 x_0=500000.00001016 y_0=0
26869|P|NAD83(NSRS2007) / West Virginia North (ftUS)|477|330|3|en|proj=lcc lat_0=38.5 lon_0=-79.5 lat_1=40.25 lat_2=39 x_0=600000 y_0=0
26870|P|NAD83(NSRS2007) / West Virginia South (ftUS)|478|330|3|en|proj=lcc lat_0=37 lon_0=-81 lat_1=38.8833333333333 lat_2=37.4833333333333 x_0=600000 y_0=0
26891|P|NAD83(CSRS) / MTM zone 11|19|207|0|en|proj=tmerc lat_0=0 lon_0=-82.5 k=0.9999 x_0=304800 y_0=0
26892|P|NAD83(CSRS) / MTM zone 12|20|207|0|en|proj=tmerc lat_0=0 lon_0=-81 k=0.9999 x_0=304800 y_0=0
26893|P|NAD83(CSRS) / MTM zone 13|21|207|0|en|proj=tmerc lat_0=0 lon_0=-84 k=0.9999 x_0=304800 y_0=0
26894|P|NAD83(CSRS) / MTM zone 14|22|207|0|en|proj=tmerc lat_0=0 lon_0=-87 k=0.9999 x_0=304800 y_0=0
26895|P|NAD83(CSRS) / MTM zone 15|23|207|0|en|proj=tmerc lat_0=0 lon_0=-90 k=0.9999 x_0=304800 y_0=0
26896|P|NAD83(CSRS) / MTM zone 16|24|207|0|en|proj=tmerc lat_0=0 lon_0=-93 k=0.9999 x_0=304800 y_0=0
26897|P|NAD83(CSRS) / MTM zone 17|25|207|0|en|proj=tmerc lat_0=0 lon_0=-96 k=0.9999 x_0=304800 y_0=0
26898|P|NAD83(CSRS) / MTM zone 1|2144|207|0|en|proj=tmerc lat_0=0 lon_0=-53 k=0.9999 x_0=304800 y_0=0
26899|P|NAD83(CSRS) / MTM zone 2|2145|207|0|en|proj=tmerc lat_0=0 lon_0=-56 k=0.9999 x_0=304800 y_0=0
26901|P|NAD83 / UTM zone 1N|873|138|0|en|proj=utm zone=1
26902|P|NAD83 / UTM zone 2N|874|138|0|en|proj=utm zone=2
26903|P|NAD83 / UTM zone 3N|875|138|0|en|proj=utm zone=3
26904|P|NAD83 / UTM zone 4N|2274|138|0|en|proj=utm zone=4
26905|P|NAD83 / UTM zone 5N|2275|138|0|en|proj=utm zone=5
26906|P|NAD83 / UTM zone 6N|878|138|0|en|proj=utm zone=6
26907|P|NAD83 / UTM zone 7N|2276|138|0|en|proj=utm zone=7
26908|P|NAD83 / UTM zone 8N|2277|138|0|en|proj=utm zone=8
26909|P|NAD83 / UTM zone 9N|2278|138|0|en|proj=utm zone=9
26910|P|NAD83 / UTM zone 10N|2279|138|0|en|proj=utm zone=10
26911|P|NAD83 / UTM zone 11N|2280|138|0|en|proj=utm zone=11
26912|P|NAD83 / UTM zone 12N|2281|138|0|en|proj=utm zone=12
26913|P|NAD83 / UTM zone 13N|2282|138|0|en|proj=utm zone=13
26914|P|NAD83 / UTM zone 14N|2283|138|0|en|proj=utm zone=14
26915|P|NAD83 / UTM zone 15N|2284|138|0|en|proj=utm zone=15
26916|P|NAD83 / UTM zone 16N|2285|138|0|en|proj=utm zone=16
26917|P|NAD83 / UTM zone 17N|2286|138|0|en|proj=utm zone=17
26918|P|NAD83 / UTM zone 18N|2287|138|0|en|proj=utm zone=18
26919|P|NAD83 / UTM zone 19N|2288|138|0|en|proj=utm zone=19
26920|P|NAD83 / UTM zone 20N|2289|138|0|en|proj=utm zone=20
26921|P|NAD83 / UTM zone 21N|509|138|0|en|proj=utm zone=21
26922|P|NAD83 / UTM zone 22N|903|138|0|en|proj=utm zone=22
26923|P|NAD83 / UTM zone 23N|2043|138|0|en|proj=utm zone=23
26929|P|NAD83 / Alabama East|438|138|0|en|proj=tmerc lat_0=30.5 lon_0=-85.8333333333333 k=0.99996 x_0=200000 y_0=0
26930|P|NAD83 / Alabama West|439|138|0|en|proj=tmerc lat_0=30 lon_0=-87.5 k=0.999933333 x_0=600000 y_0=0
26931|P|NAD83 / Alaska zone 1|860|138|0|en|proj=omerc no_uoff lat_0=57 lonc=-133.666666666667 alpha=323.130102361111 gamma=323.130102361111 k=0.9999 x_0=5000000 y_0=-5000000
26932|P|NAD83 / Alaska zone 2|861|138|0|en|proj=tmerc lat_0=54 lon_0=-142 k=0.9999 x_0=500000 y_0=0
26933|P|NAD83 / Alaska zone 3|862|138|0|en|proj=tmerc lat_0=54 lon_0=-146 k=0.9999 x_0=500000 y_0=0
26934|P|NAD83 / Alaska zone 4|863|138|0|en|proj=tmerc lat_0=54 lon_0=-150 k=0.9999 x_0=500000 y_0=0
26935|P|NAD83 / Alaska zone 5|864|138|0|en|proj=tmerc lat_0=54 lon_0=-154 k=0.9999 x_0=500000 y_0=0
26936|P|NAD83 / Alaska zone 6|865|138|0|en|proj=tmerc lat_0=54 lon_0=-158 k=0.9999 x_0=500000 y_0=0
26937|P|NAD83 / Alaska zone 7|866|138|0|en|proj=tmerc lat_0=54 lon_0=-162 k=0.9999 x_0=500000 y_0=0
26938|P|NAD83 / Alaska zone 8|867|138|0|en|proj=tmerc lat_0=54 lon_0=-166 k=0.9999 x_0=500000 y_0=0
26939|P|NAD83 / Alaska zone 9|868|138|0|en|proj=tmerc lat_0=54 lon_0=-170 k=0.9999 x_0=500000 y_0=0
26940|P|NAD83 / Alaska zone 10|869|138|0|en|proj=lcc lat_0=51 lon_0=-176 lat_1=53.8333333333333 lat_2=51.8333333333333 x_0=1000000 y_0=0
26941|P|NAD83 / California zone 1|170|138|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-122 lat_1=41.6666666666667 lat_2=40 x_0=2000000 y_0=500000
26942|P|NAD83 / California zone 2|171|138|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-122 lat_1=39.8333333333333 lat_2=38.3333333333333 x_0=2000000 y_0=500000
26943|P|NAD83 / California zone 3|172|138|0|en|proj=lcc lat_0=36.5 lon_0=-120.5 lat_1=38.4333333333333 lat_2=37.0666666666667 x_0=2000000 y_0=500000
26944|P|NAD83 / California zone 4|173|138|0|en|proj=lcc lat_0=35.3333333333333 lon_0=-119 lat_1=37.25 lat_2=36 x_0=2000000 y_0=500000
26945|P|NAD83 / California zone 5|174|138|0|en|proj=lcc lat_0=33.5 lon_0=-118 lat_1=35.4666666666667 lat_2=34.0333333333333 x_0=2000000 y_0=500000
26946|P|NAD83 / California zone 6|175|138|0|en|proj=lcc lat_0=32.1666666666667 lon_0=-116.25 lat_1=33.8833333333333 lat_2=32.7833333333333 x_0=2000000 y_0=500000
26948|P|NAD83 / Arizona East|167|138|0|en|proj=tmerc lat_0=31 lon_0=-110.166666666667 k=0.9999 x_0=213360 y_0=0
26949|P|NAD83 / Arizona Central|168|138|0|en|proj=tmerc lat_0=31 lon_0=-111.916666666667 k=0.9999 x_0=213360 y_0=0
26950|P|NAD83 / Arizona West|169|138|0|en|proj=tmerc lat_0=31 lon_0=-113.75 k=0.999933333 x_0=213360 y_0=0
26951|P|NAD83 / Arkansas North|440|138|0|en|proj=lcc lat_0=34.3333333333333 lon_0=-92 lat_1=36.2333333333333 lat_2=34.9333333333333 x_0=400000 y_0=0
26952|P|NAD83 / Arkansas South|441|138|0|en|proj=lcc lat_0=32.6666666666667 lon_0=-92 lat_1=34.7666666666667 lat_2=33.3 x_0=400000 y_0=400000
26953|P|NAD83 / Colorado North|176|138|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-105.5 lat_1=40.7833333333333 lat_2=39.7166666666667 x_0=914401.8289 y_0=304800.6096
26954|P|NAD83 / Colorado Central|177|138|0|en|proj=lcc lat_0=37.8333333333333 lon_0=-105.5 lat_1=39.75 lat_2=38.45 x_0=914401.8289 y_0=304800.6096
26955|P|NAD83 / Colorado South|178|138|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-105.5 lat_1=38.4333333333333 lat_2=37.2333333333333 x_0=914401.8289 y_0=304800.6096
26956|P|NAD83 / Connecticut|179|138|0|en|proj=lcc lat_0=40.8333333333333 lon_0=-72.75 lat_1=41.8666666666667 lat_2=41.2 x_0=304800.6096 y_0=152400.3048
26957|P|NAD83 / Delaware|180|138|0|en|proj=tmerc lat_0=38 lon_0=-75.4166666666667 k=0.999995 x_0=200000 y_0=0
26958|P|NAD83 / Florida East|181|138|0|en|proj=tmerc lat_0=24.3333333333333 lon_0=-81 k=0.999941177 x_0=200000 y_0=0
26959|P|NAD83 / Florida West|182|138|0|en|proj=tmerc lat_0=24.3333333333333 lon_0=-82 k=0.999941177 x_0=200000 y_0=0
26960|P|NAD83 / Florida North|183|138|0|en|proj=lcc lat_0=29 lon_0=-84.5 lat_1=30.75 lat_2=29.5833333333333 x_0=600000 y_0=0
26961|P|NAD83 / Hawaii zone 1|442|138|0|en|proj=tmerc lat_0=18.8333333333333 lon_0=-155.5 k=0.999966667 x_0=500000 y_0=0
26962|P|NAD83 / Hawaii zone 2|443|138|0|en|proj=tmerc lat_0=20.3333333333333 lon_0=-156.666666666667 k=0.999966667 x_0=500000 y_0=0
26963|P|NAD83 / Hawaii zone 3|444|138|0|en|proj=tmerc lat_0=21.1666666666667 lon_0=-158 k=0.99999 x_0=500000 y_0=0
26964|P|NAD83 / Hawaii zone 4|445|138|0|en|proj=tmerc lat_0=21.8333333333333 lon_0=-159.5 k=0.99999 x_0=500000 y_0=0
26965|P|NAD83 / Hawaii zone 5|446|138|0|en|proj=tmerc lat_0=21.6666666666667 lon_0=-160.166666666667 k=1 x_0=500000 y_0=0
26966|P|NAD83 / Georgia East|184|138|0|en|proj=tmerc lat_0=30 lon_0=-82.1666666666667 k=0.9999 x_0=200000 y_0=0
26967|P|NAD83 / Georgia West|185|138|0|en|proj=tmerc lat_0=30 lon_0=-84.1666666666667 k=0.9999 x_0=700000 y_0=0
26968|P|NAD83 / Idaho East|186|138|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-112.166666666667 k=0.999947368 x_0=200000 y_0=0
26969|P|NAD83 / Idaho Central|187|138|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-114 k=0.999947368 x_0=500000 y_0=0
26970|P|NAD83 / Idaho West|188|138|0|en|proj=tmerc lat_0=41.6666666666667 lon_0=-115.75 k=0.999933333 x_0=800000 y_0=0
26971|P|NAD83 / Illinois East|447|138|0|en|proj=tmerc lat_0=36.6666666666667 lon_0=-88.3333333333333 k=0.999975 x_0=300000 y_0=0
26972|P|NAD83 / Illinois West|448|138|0|en|proj=tmerc lat_0=36.6666666666667 lon_0=-90.1666666666667 k=0.999941177 x_0=700000 y_0=0
26973|P|NAD83 / Indiana East|449|138|0|en|proj=tmerc lat_0=37.5 lon_0=-85.6666666666667 k=0.999966667 x_0=100000 y_0=250000
26974|P|NAD83 / Indiana West|450|138|0|en|proj=tmerc lat_0=37.5 lon_0=-87.0833333333333 k=0.999966667 x_0=900000 y_0=250000
26975|P|NAD83 / Iowa North|451|138|0|en|proj=lcc lat_0=41.5 lon_0=-93.5 lat_1=43.2666666666667 lat_2=42.0666666666667 x_0=1500000 y_0=1000000
26976|P|NAD83 / Iowa South|452|138|0|en|proj=lcc lat_0=40 lon_0=-93.5 lat_1=41.7833333333333 lat_2=40.6166666666667 x_0=500000 y_0=0
26977|P|NAD83 / Kansas North|453|138|0|en|proj=lcc lat_0=38.3333333333333 lon_0=-98 lat_1=39.7833333333333 lat_2=38.7166666666667 x_0=400000 y_0=0
26978|P|NAD83 / Kansas South|454|138|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-98.5 lat_1=38.5666666666667 lat_2=37.2666666666667 x_0=400000 y_0=400000
26980|P|NAD83 / Kentucky South|189|138|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-85.75 lat_1=37.9333333333333 lat_2=36.7333333333333 x_0=500000 y_0=500000
26981|P|NAD83 / Louisiana North|455|138|0|en|proj=lcc lat_0=30.5 lon_0=-92.5 lat_1=32.6666666666667 lat_2=31.1666666666667 x_0=1000000 y_0=0
26982|P|NAD83 / Louisiana South|456|138|0|en|proj=lcc lat_0=28.5 lon_0=-91.3333333333333 lat_1=30.7 lat_2=29.3 x_0=1000000 y_0=0
26983|P|NAD83 / Maine East|457|138|0|en|proj=tmerc lat_0=43.6666666666667 lon_0=-68.5 k=0.9999 x_0=300000 y_0=0
26984|P|NAD83 / Maine West|458|138|0|en|proj=tmerc lat_0=42.8333333333333 lon_0=-70.1666666666667 k=0.999966667 x_0=900000 y_0=0
26985|P|NAD83 / Maryland|190|138|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-77 lat_1=39.45 lat_2=38.3 x_0=400000 y_0=0
26986|P|NAD83 / Massachusetts Mainland|191|138|0|en|proj=lcc lat_0=41 lon_0=-71.5 lat_1=42.6833333333333 lat_2=41.7166666666667 x_0=200000 y_0=750000
26987|P|NAD83 / Massachusetts Island|192|138|0|en|proj=lcc lat_0=41 lon_0=-70.5 lat_1=41.4833333333333 lat_2=41.2833333333333 x_0=500000 y_0=0
26988|P|NAD83 / Michigan North|193|138|0|en|proj=lcc lat_0=44.7833333333333 lon_0=-87 lat_1=47.0833333333333 lat_2=45.4833333333333 x_0=8000000 y_0=0
26989|P|NAD83 / Michigan Central|194|138|0|en|proj=lcc lat_0=43.3166666666667 lon_0=-84.3666666666667 lat_1=45.7 lat_2=44.1833333333333 x_0=6000000 y_0=0
26990|P|NAD83 / Michigan South|195|138|0|en|proj=lcc lat_0=41.5 lon_0=-84.3666666666667 lat_1=43.6666666666667 lat_2=42.1 x_0=4000000 y_0=0
26991|P|NAD83 / Minnesota North|459|138|0|en|proj=lcc lat_0=46.5 lon_0=-93.1 lat_1=48.6333333333333 lat_2=47.0333333333333 x_0=800000 y_0=100000
26992|P|NAD83 / Minnesota Central|460|138|0|en|proj=lcc lat_0=45 lon_0=-94.25 lat_1=47.05 lat_2=45.6166666666667 x_0=800000 y_0=100000
26993|P|NAD83 / Minnesota South|461|138|0|en|proj=lcc lat_0=43 lon_0=-94 lat_1=45.2166666666667 lat_2=43.7833333333333 x_0=800000 y_0=100000
26994|P|NAD83 / Mississippi East|196|138|0|en|proj=tmerc lat_0=29.5 lon_0=-88.8333333333333 k=0.99995 x_0=300000 y_0=0
26995|P|NAD83 / Mississippi West|197|138|0|en|proj=tmerc lat_0=29.5 lon_0=-90.3333333333333 k=0.99995 x_0=700000 y_0=0
26996|P|NAD83 / Missouri East|462|138|0|en|proj=tmerc lat_0=35.8333333333333 lon_0=-90.5 k=0.999933333 x_0=250000 y_0=0
26997|P|NAD83 / Missouri Central|463|138|0|en|proj=tmerc lat_0=35.8333333333333 lon_0=-92.5 k=0.999933333 x_0=500000 y_0=0
26998|P|NAD83 / Missouri West|464|138|0|en|proj=tmerc lat_0=36.1666666666667 lon_0=-94.5 k=0.999941177 x_0=850000 y_0=0
27039|P|Nahrwan 1967 / UTM zone 39N|2290|139|0|en|proj=utm zone=39
27040|P|Nahrwan 1967 / UTM zone 40N|2291|139|0|en|proj=utm zone=40
27120|P|Naparima 1972 / UTM zone 20N|56|140|0|en|proj=utm zone=20
27200|P|NZGD49 / New Zealand Map Grid|141|141|0|en|proj=nzmg lat_0=-41 lon_0=173 x_0=2510000 y_0=6023150
27205|P|NZGD49 / Mount Eden Circuit|88|141|0|ne|proj=tmerc lat_0=-36.8798652777778 lon_0=174.764339361111 k=0.9999 x_0=300000 y_0=700000
27206|P|NZGD49 / Bay of Plenty Circuit|89|141|0|ne|proj=tmerc lat_0=-37.7612498055556 lon_0=176.46619725 k=1 x_0=300000 y_0=700000
27207|P|NZGD49 / Poverty Bay Circuit|90|141|0|ne|proj=tmerc lat_0=-38.6247027777778 lon_0=177.885636277778 k=1 x_0=300000 y_0=700000
27208|P|NZGD49 / Hawkes Bay Circuit|91|141|0|ne|proj=tmerc lat_0=-39.6509293055556 lon_0=176.673680527778 k=1 x_0=300000 y_0=700000
27209|P|NZGD49 / Taranaki Circuit|92|141|0|ne|proj=tmerc lat_0=-39.1357583055556 lon_0=174.22801175 k=1 x_0=300000 y_0=700000
27210|P|NZGD49 / Tuhirangi Circuit|93|141|0|ne|proj=tmerc lat_0=-39.5124703888889 lon_0=175.640036805556 k=1 x_0=300000 y_0=700000
27211|P|NZGD49 / Wanganui Circuit|94|141|0|ne|proj=tmerc lat_0=-40.2419471388889 lon_0=175.488099611111 k=1 x_0=300000 y_0=700000
27212|P|NZGD49 / Wairarapa Circuit|95|141|0|ne|proj=tmerc lat_0=-40.9255326388889 lon_0=175.647349666667 k=1 x_0=300000 y_0=700000
27213|P|NZGD49 / Wellington Circuit|96|141|0|ne|proj=tmerc lat_0=-41.3013196388889 lon_0=174.776623111111 k=1 x_0=300000 y_0=700000
27214|P|NZGD49 / Collingwood Circuit|97|141|0|ne|proj=tmerc lat_0=-40.7147590555556 lon_0=172.6720465 k=1 x_0=300000 y_0=700000
27215|P|NZGD49 / Nelson Circuit|98|141|0|ne|proj=tmerc lat_0=-41.2745447222222 lon_0=173.299316805556 k=1 x_0=300000 y_0=700000
27216|P|NZGD49 / Karamea Circuit|99|141|0|ne|proj=tmerc lat_0=-41.2899115277778 lon_0=172.109028194444 k=1 x_0=300000 y_0=700000
27217|P|NZGD49 / Buller Circuit|100|141|0|ne|proj=tmerc lat_0=-41.8108028611111 lon_0=171.581260055556 k=1 x_0=300000 y_0=700000
27218|P|NZGD49 / Grey Circuit|101|141|0|ne|proj=tmerc lat_0=-42.3336942777778 lon_0=171.549771305556 k=1 x_0=300000 y_0=700000
27219|P|NZGD49 / Amuri Circuit|102|141|0|ne|proj=tmerc lat_0=-42.6891165833333 lon_0=173.010133388889 k=1 x_0=300000 y_0=700000
27220|P|NZGD49 / Marlborough Circuit|103|141|0|ne|proj=tmerc lat_0=-41.5444866666667 lon_0=173.802074111111 k=1 x_0=300000 y_0=700000
27221|P|NZGD49 / Hokitika Circuit|104|141|0|ne|proj=tmerc lat_0=-42.8863223611111 lon_0=170.9799935 k=1 x_0=300000 y_0=700000
27222|P|NZGD49 / Okarito Circuit|105|141|0|ne|proj=tmerc lat_0=-43.1101281388889 lon_0=170.260925833333 k=1 x_0=300000 y_0=700000
27223|P|NZGD49 / Jacksons Bay Circuit|106|141|0|ne|proj=tmerc lat_0=-43.9778028888889 lon_0=168.606267 k=1 x_0=300000 y_0=700000
27224|P|NZGD49 / Mount Pleasant Circuit|107|141|0|ne|proj=tmerc lat_0=-43.5906375833333 lon_0=172.727193583333 k=1 x_0=300000 y_0=700000
27225|P|NZGD49 / Gawler Circuit|108|141|0|ne|proj=tmerc lat_0=-43.7487115555556 lon_0=171.360748472222 k=1 x_0=300000 y_0=700000
27226|P|NZGD49 / Timaru Circuit|109|141|0|ne|proj=tmerc lat_0=-44.4022203611111 lon_0=171.057250833333 k=1 x_0=300000 y_0=700000
27227|P|NZGD49 / Lindis Peak Circuit|110|141|0|ne|proj=tmerc lat_0=-44.7352679722222 lon_0=169.467755083333 k=1 x_0=300000 y_0=700000
27228|P|NZGD49 / Mount Nicholas Circuit|111|141|0|ne|proj=tmerc lat_0=-45.1329025833333 lon_0=168.398641194444 k=1 x_0=300000 y_0=700000
27229|P|NZGD49 / Mount York Circuit|112|141|0|ne|proj=tmerc lat_0=-45.5637261666667 lon_0=167.738861777778 k=1 x_0=300000 y_0=700000
27230|P|NZGD49 / Observation Point Circuit|113|141|0|ne|proj=tmerc lat_0=-45.8161966111111 lon_0=170.628595166667 k=1 x_0=300000 y_0=700000
27231|P|NZGD49 / North Taieri Circuit|114|141|0|ne|proj=tmerc lat_0=-45.8615133611111 lon_0=170.282589111111 k=0.99996 x_0=300000 y_0=700000
27232|P|NZGD49 / Bluff Circuit|115|141|0|ne|proj=tmerc lat_0=-46.6000096111111 lon_0=168.342872 k=1 x_0=300002.66 y_0=699999.58
27258|P|NZGD49 / UTM zone 58S|2292|141|0|en|proj=utm zone=58 south
27259|P|NZGD49 / UTM zone 59S|2293|141|0|en|proj=utm zone=59 south
27260|P|NZGD49 / UTM zone 60S|2294|141|0|en|proj=utm zone=60 south
27291|P|NZGD49 / North Island Grid|2295|141|11|en|proj=tmerc lat_0=-39 lon_0=175.5 k=1 x_0=274319.524384809 y_0=365759.365846412
27292|P|NZGD49 / South Island Grid|2296|141|11|en|proj=tmerc lat_0=-44 lon_0=171.5 k=1 x_0=457199.207308015 y_0=457199.207308015
27391|P|NGO 1948 (Oslo) / NGO zone I|2297|351|0|ne|proj=tmerc lat_0=58 lon_0=-4.66666666666667 k=1 x_0=0 y_0=0
27392|P|NGO 1948 (Oslo) / NGO zone II|2298|351|0|ne|proj=tmerc lat_0=58 lon_0=-2.33333333333333 k=1 x_0=0 y_0=0
27393|P|NGO 1948 (Oslo) / NGO zone III|2299|351|0|ne|proj=tmerc lat_0=58 lon_0=0 k=1 x_0=0 y_0=0
27394|P|NGO 1948 (Oslo) / NGO zone IV|2300|351|0|ne|proj=tmerc lat_0=58 lon_0=2.5 k=1 x_0=0 y_0=0
27395|P|NGO 1948 (Oslo) / NGO zone V|2301|351|0|ne|proj=tmerc lat_0=58 lon_0=6.16666666666667 k=1 x_0=0 y_0=0
27396|P|NGO 1948 (Oslo) / NGO zone VI|2302|351|0|ne|proj=tmerc lat_0=58 lon_0=10.1666666666667 k=1 x_0=0 y_0=0
27397|P|NGO 1948 (Oslo) / NGO zone VII|2303|351|0|ne|proj=tmerc lat_0=58 lon_0=14.1666666666667 k=1 x_0=0 y_0=0
27398|P|NGO 1948 (Oslo) / NGO zone VIII|2304|351|0|ne|proj=tmerc lat_0=58 lon_0=18.3333333333333 k=1 x_0=0 y_0=0
27429|P|Datum 73 / UTM zone 29N|510|143|0|en|proj=utm zone=29
27493|P|Datum 73 / Modified Portuguese Grid|510|143|0|en|proj=tmerc lat_0=39.6666666666667 lon_0=-8.13190611111111 k=1 x_0=180.598 y_0=-86.99
27500|P|ATF (Paris) / Nord de Guerre|2305|357|0|en|proj=lcc lat_1=49.5 lat_0=49.5 lon_0=5.4 k_0=0.99950908 x_0=500000 y_0=300000
27561|P|NTF (Paris) / Lambert Nord France|1380|343|0|en|proj=lcc lat_1=49.5 lat_0=49.5 lon_0=0 k_0=0.999877341 x_0=600000 y_0=200000
27562|P|NTF (Paris) / Lambert Centre France|2306|343|0|en|proj=lcc lat_1=46.8 lat_0=46.8 lon_0=0 k_0=0.99987742 x_0=600000 y_0=200000
27563|P|NTF (Paris) / Lambert Sud France|1735|343|0|en|proj=lcc lat_1=44.1 lat_0=44.1 lon_0=0 k_0=0.999877499 x_0=600000 y_0=200000
27564|P|NTF (Paris) / Lambert Corse|1376|343|0|en|proj=lcc lat_1=42.1649999999998 lat_0=42.1649999999998 lon_0=0 k_0=0.99994471 x_0=234.358 y_0=185861.369
27571|P|NTF (Paris) / Lambert zone I|1380|343|0|en|proj=lcc lat_1=49.5 lat_0=49.5 lon_0=0 k_0=0.999877341 x_0=600000 y_0=1200000
27572|P|NTF (Paris) / Lambert zone II|2307|343|0|en|proj=lcc lat_1=46.8 lat_0=46.8 lon_0=0 k_0=0.99987742 x_0=600000 y_0=2200000
27573|P|NTF (Paris) / Lambert zone III|1735|343|0|en|proj=lcc lat_1=44.1 lat_0=44.1 lon_0=0 k_0=0.999877499 x_0=600000 y_0=3200000
27574|P|NTF (Paris) / Lambert zone IV|1376|343|0|en|proj=lcc lat_1=42.1649999999998 lat_0=42.1649999999998 lon_0=0 k_0=0.99994471 x_0=234.358 y_0=4185861.369
27700|P|OSGB36 / British National Grid|1097|146|0|en|proj=tmerc lat_0=49 lon_0=-2 k=0.9996012717 x_0=400000 y_0=-100000
28191|P|Palestine 1923 / Palestine Grid|1100|149|0|en|proj=cass lat_0=31.7340969444444 lon_0=35.2120805555556 x_0=170251.555 y_0=126867.909
28192|P|Palestine 1923 / Palestine Belt|1100|149|0|en|proj=tmerc lat_0=31.7340969444444 lon_0=35.2120805555556 k=1 x_0=170251.555 y_0=1126867.909
28193|P|Palestine 1923 / Israeli CS Grid|33|149|0|en|proj=cass lat_0=31.7340969444444 lon_0=35.2120805555556 x_0=170251.555 y_0=1126867.909
28232|P|Pointe Noire / UTM zone 32S|1101|150|0|en|proj=utm zone=32 south
28348|P|GDA94 / MGA zone 48|1851|151|0|en|proj=utm zone=48 south
28349|P|GDA94 / MGA zone 49|1852|151|0|en|proj=utm zone=49 south
28350|P|GDA94 / MGA zone 50|1853|151|0|en|proj=utm zone=50 south
28351|P|GDA94 / MGA zone 51|1854|151|0|en|proj=utm zone=51 south
28352|P|GDA94 / MGA zone 52|1855|151|0|en|proj=utm zone=52 south
28353|P|GDA94 / MGA zone 53|1856|151|0|en|proj=utm zone=53 south
28354|P|GDA94 / MGA zone 54|1857|151|0|en|proj=utm zone=54 south
28355|P|GDA94 / MGA zone 55|1858|151|0|en|proj=utm zone=55 south
28356|P|GDA94 / MGA zone 56|1859|151|0|en|proj=utm zone=56 south
28357|P|GDA94 / MGA zone 57|1860|151|0|en|proj=utm zone=57 south
28358|P|GDA94 / MGA zone 58|1861|151|0|en|proj=utm zone=58 south
28404|P|Pulkovo 1942 / Gauss-Kruger zone 4|343|152|0|ne|proj=tmerc lat_0=0 lon_0=21 k=1 x_0=4500000 y_0=0
28405|P|Pulkovo 1942 / Gauss-Kruger zone 5|344|152|0|ne|proj=tmerc lat_0=0 lon_0=27 k=1 x_0=5500000 y_0=0
28406|P|Pulkovo 1942 / Gauss-Kruger zone 6|345|152|0|ne|proj=tmerc lat_0=0 lon_0=33 k=1 x_0=6500000 y_0=0
28407|P|Pulkovo 1942 / Gauss-Kruger zone 7|346|152|0|ne|proj=tmerc lat_0=0 lon_0=39 k=1 x_0=7500000 y_0=0
28408|P|Pulkovo 1942 / Gauss-Kruger zone 8|347|152|0|ne|proj=tmerc lat_0=0 lon_0=45 k=1 x_0=8500000 y_0=0
28409|P|Pulkovo 1942 / Gauss-Kruger zone 9|348|152|0|ne|proj=tmerc lat_0=0 lon_0=51 k=1 x_0=9500000 y_0=0
28410|P|Pulkovo 1942 / Gauss-Kruger zone 10|349|152|0|ne|proj=tmerc lat_0=0 lon_0=57 k=1 x_0=10500000 y_0=0
28411|P|Pulkovo 1942 / Gauss-Kruger zone 11|350|152|0|ne|proj=tmerc lat_0=0 lon_0=63 k=1 x_0=11500000 y_0=0
28412|P|Pulkovo 1942 / Gauss-Kruger zone 12|351|152|0|ne|proj=tmerc lat_0=0 lon_0=69 k=1 x_0=12500000 y_0=0
28413|P|Pulkovo 1942 / Gauss-Kruger zone 13|352|152|0|ne|proj=tmerc lat_0=0 lon_0=75 k=1 x_0=13500000 y_0=0
28414|P|Pulkovo 1942 / Gauss-Kruger zone 14|353|152|0|ne|proj=tmerc lat_0=0 lon_0=81 k=1 x_0=14500000 y_0=0
28415|P|Pulkovo 1942 / Gauss-Kruger zone 15|354|152|0|ne|proj=tmerc lat_0=0 lon_0=87 k=1 x_0=15500000 y_0=0
28416|P|Pulkovo 1942 / Gauss-Kruger zone 16|326|152|0|ne|proj=tmerc lat_0=0 lon_0=93 k=1 x_0=16500000 y_0=0
28417|P|Pulkovo 1942 / Gauss-Kruger zone 17|327|152|0|ne|proj=tmerc lat_0=0 lon_0=99 k=1 x_0=17500000 y_0=0
28418|P|Pulkovo 1942 / Gauss-Kruger zone 18|328|152|0|ne|proj=tmerc lat_0=0 lon_0=105 k=1 x_0=18500000 y_0=0
28419|P|Pulkovo 1942 / Gauss-Kruger zone 19|329|152|0|ne|proj=tmerc lat_0=0 lon_0=111 k=1 x_0=19500000 y_0=0
28420|P|Pulkovo 1942 / Gauss-Kruger zone 20|330|152|0|ne|proj=tmerc lat_0=0 lon_0=117 k=1 x_0=20500000 y_0=0
28421|P|Pulkovo 1942 / Gauss-Kruger zone 21|331|152|0|ne|proj=tmerc lat_0=0 lon_0=123 k=1 x_0=21500000 y_0=0
28422|P|Pulkovo 1942 / Gauss-Kruger zone 22|332|152|0|ne|proj=tmerc lat_0=0 lon_0=129 k=1 x_0=22500000 y_0=0
28423|P|Pulkovo 1942 / Gauss-Kruger zone 23|333|152|0|ne|proj=tmerc lat_0=0 lon_0=135 k=1 x_0=23500000 y_0=0
28424|P|Pulkovo 1942 / Gauss-Kruger zone 24|334|152|0|ne|proj=tmerc lat_0=0 lon_0=141 k=1 x_0=24500000 y_0=0
28425|P|Pulkovo 1942 / Gauss-Kruger zone 25|335|152|0|ne|proj=tmerc lat_0=0 lon_0=147 k=1 x_0=25500000 y_0=0
28426|P|Pulkovo 1942 / Gauss-Kruger zone 26|336|152|0|ne|proj=tmerc lat_0=0 lon_0=153 k=1 x_0=26500000 y_0=0
28427|P|Pulkovo 1942 / Gauss-Kruger zone 27|337|152|0|ne|proj=tmerc lat_0=0 lon_0=159 k=1 x_0=27500000 y_0=0
28428|P|Pulkovo 1942 / Gauss-Kruger zone 28|338|152|0|ne|proj=tmerc lat_0=0 lon_0=165 k=1 x_0=28500000 y_0=0
28429|P|Pulkovo 1942 / Gauss-Kruger zone 29|339|152|0|ne|proj=tmerc lat_0=0 lon_0=171 k=1 x_0=29500000 y_0=0
28430|P|Pulkovo 1942 / Gauss-Kruger zone 30|340|152|0|ne|proj=tmerc lat_0=0 lon_0=177 k=1 x_0=30500000 y_0=0
28431|P|Pulkovo 1942 / Gauss-Kruger zone 31|341|152|0|ne|proj=tmerc lat_0=0 lon_0=-177 k=1 x_0=31500000 y_0=0
28432|P|Pulkovo 1942 / Gauss-Kruger zone 32|342|152|0|ne|proj=tmerc lat_0=0 lon_0=-171 k=1 x_0=32500000 y_0=0
28600|P|Qatar 1974 / Qatar National Grid|84|153|0|en|proj=tmerc lat_0=24.45 lon_0=51.2166666666667 k=0.99999 x_0=200000 y_0=300000
28991|P|Amersfoort / RD Old|1106|156|0|en|proj=sterea lat_0=52.1561605555556 lon_0=5.38763888888889 k=0.9999079 x_0=0 y_0=0
28992|P|Amersfoort / RD New|1106|156|0|en|proj=sterea lat_0=52.1561605555556 lon_0=5.38763888888889 k=0.9999079 x_0=155000 y_0=463000
29101|P|SAD69 / Brazil Polyconic|1324|208|0|en|proj=poly lat_0=0 lon_0=-54 x_0=5000000 y_0=10000000
29168|P|SAD69 / UTM zone 18N|2308|208|0|en|proj=utm zone=18
29169|P|SAD69 / UTM zone 19N|2309|208|0|en|proj=utm zone=19
29170|P|SAD69 / UTM zone 20N|2310|208|0|en|proj=utm zone=20
29171|P|SAD69 / UTM zone 21N|2311|208|0|en|proj=utm zone=21
29172|P|SAD69 / UTM zone 22N|2312|208|0|en|proj=utm zone=22
29187|P|SAD69 / UTM zone 17S|2313|208|0|en|proj=utm zone=17 south
29188|P|SAD69 / UTM zone 18S|2314|208|0|en|proj=utm zone=18 south
29189|P|SAD69 / UTM zone 19S|2315|208|0|en|proj=utm zone=19 south
29190|P|SAD69 / UTM zone 20S|2316|208|0|en|proj=utm zone=20 south
29191|P|SAD69 / UTM zone 21S|2317|208|0|en|proj=utm zone=21 south
29192|P|SAD69 / UTM zone 22S|2318|208|0|en|proj=utm zone=22 south
29193|P|SAD69 / UTM zone 23S|1326|208|0|en|proj=utm zone=23 south
29194|P|SAD69 / UTM zone 24S|1327|208|0|en|proj=utm zone=24 south
29195|P|SAD69 / UTM zone 25S|1328|208|0|en|proj=utm zone=25 south
29220|P|Sapper Hill 1943 / UTM zone 20S|2319|157|0|en|proj=utm zone=20 south
29221|P|Sapper Hill 1943 / UTM zone 21S|2320|157|0|en|proj=utm zone=21 south
29333|P|Schwarzeck / UTM zone 33S|2321|158|0|en|proj=utm zone=33 south
29371|P|Schwarzeck / Lo22/11|2322|158|12|ws|proj=tmerc lat_0=-22 lon_0=11 k=1 x_0=0 y_0=0
29373|P|Schwarzeck / Lo22/13|2323|158|12|ws|proj=tmerc lat_0=-22 lon_0=13 k=1 x_0=0 y_0=0
29375|P|Schwarzeck / Lo22/15|2324|158|12|ws|proj=tmerc lat_0=-22 lon_0=15 k=1 x_0=0 y_0=0
29377|P|Schwarzeck / Lo22/17|2325|158|12|ws|proj=tmerc lat_0=-22 lon_0=17 k=1 x_0=0 y_0=0
29379|P|Schwarzeck / Lo22/19|2326|158|12|ws|proj=tmerc lat_0=-22 lon_0=19 k=1 x_0=0 y_0=0
29381|P|Schwarzeck / Lo22/21|2327|158|12|ws|proj=tmerc lat_0=-22 lon_0=21 k=1 x_0=0 y_0=0
29383|P|Schwarzeck / Lo22/23|2328|158|12|ws|proj=tmerc lat_0=-22 lon_0=23 k=1 x_0=0 y_0=0
29385|P|Schwarzeck / Lo22/25|2329|158|12|ws|proj=tmerc lat_0=-22 lon_0=25 k=1 x_0=0 y_0=0
29701|P|Tananarive (Paris) / Laborde Grid|1206|345|0|ne|proj=labrd lat_0=-18.9 lon_0=44.1 azi=18.9 k=0.9995 x_0=400000 y_0=800000
29702|P|Tananarive (Paris) / Laborde Grid approximation|1206|345|0|ne|proj=omerc lat_0=-18.9 lonc=44.1 alpha=18.9 gamma=18.9 k=0.9995 x_0=400000 y_0=800000
29738|P|Tananarive / UTM zone 38S|2330|160|0|en|proj=utm zone=38 south
29739|P|Tananarive / UTM zone 39S|2331|160|0|en|proj=utm zone=39 south
29849|P|Timbalai 1948 / UTM zone 49N|2332|161|0|en|proj=utm zone=49
29850|P|Timbalai 1948 / UTM zone 50N|2333|161|0|en|proj=utm zone=50
29871|P|Timbalai 1948 / RSO Borneo (ch)|1111|161|13|en|proj=omerc lat_0=4 lonc=115 alpha=53.3158204722222 gamma=53.1301023611111 k=0.99984 x_0=590476.871463039 y_0=442857.65309436
29872|P|Timbalai 1948 / RSO Borneo (ftSe)|823|161|14|en|proj=omerc lat_0=4 lonc=115 alpha=53.3158204722222 gamma=53.1301023611111 k=0.99984 x_0=590476.872743197 y_0=442857.654557398
29873|P|Timbalai 1948 / RSO Borneo (m)|1111|161|0|en|proj=omerc lat_0=4 lonc=115 alpha=53.3158204722222 gamma=53.1301023611111 k=0.99984 x_0=590476.87 y_0=442857.65
29874|P|Timbalai 1948 / RSO Sarawak LSD (m)|2334|161|0|en|proj=omerc no_uoff lat_0=4 lonc=115 alpha=53.3158204722222 gamma=53.1301023611111 k=0.99984 x_0=2000000 y_0=5000000
29901|P|OSNI 1952 / Irish National Grid|1038|66|0|en|proj=tmerc lat_0=53.5 lon_0=-8 k=1 x_0=200000 y_0=250000
29902|P|TM65 / Irish Grid|2335|162|0|en|proj=tmerc lat_0=53.5 lon_0=-8 k=1.000035 x_0=200000 y_0=250000
29903|P|TM75 / Irish Grid|123|163|0|en|proj=tmerc lat_0=53.5 lon_0=-8 k=1.000035 x_0=200000 y_0=250000
30161|P|Tokyo / Japan Plane Rectangular CS I|294|164|0|ne|proj=tmerc lat_0=33 lon_0=129.5 k=0.9999 x_0=0 y_0=0
30162|P|Tokyo / Japan Plane Rectangular CS II|295|164|0|ne|proj=tmerc lat_0=33 lon_0=131 k=0.9999 x_0=0 y_0=0
30163|P|Tokyo / Japan Plane Rectangular CS III|296|164|0|ne|proj=tmerc lat_0=36 lon_0=132.166666666667 k=0.9999 x_0=0 y_0=0
30164|P|Tokyo / Japan Plane Rectangular CS IV|297|164|0|ne|proj=tmerc lat_0=33 lon_0=133.5 k=0.9999 x_0=0 y_0=0
30165|P|Tokyo / Japan Plane Rectangular CS V|298|164|0|ne|proj=tmerc lat_0=36 lon_0=134.333333333333 k=0.9999 x_0=0 y_0=0
30166|P|Tokyo / Japan Plane Rectangular CS VI|299|164|0|ne|proj=tmerc lat_0=36 lon_0=136 k=0.9999 x_0=0 y_0=0
30167|P|Tokyo / Japan Plane Rectangular CS VII|300|164|0|ne|proj=tmerc lat_0=36 lon_0=137.166666666667 k=0.9999 x_0=0 y_0=0
30168|P|Tokyo / Japan Plane Rectangular CS VIII|301|164|0|ne|proj=tmerc lat_0=36 lon_0=138.5 k=0.9999 x_0=0 y_0=0
30169|P|Tokyo / Japan Plane Rectangular CS IX|302|164|0|ne|proj=tmerc lat_0=36 lon_0=139.833333333333 k=0.9999 x_0=0 y_0=0
30170|P|Tokyo / Japan Plane Rectangular CS X|303|164|0|ne|proj=tmerc lat_0=40 lon_0=140.833333333333 k=0.9999 x_0=0 y_0=0
30171|P|Tokyo / Japan Plane Rectangular CS XI|304|164|0|ne|proj=tmerc lat_0=44 lon_0=140.25 k=0.9999 x_0=0 y_0=0
30172|P|Tokyo / Japan Plane Rectangular CS XII|305|164|0|ne|proj=tmerc lat_0=44 lon_0=142.25 k=0.9999 x_0=0 y_0=0
30173|P|Tokyo / Japan Plane Rectangular CS XIII|306|164|0|ne|proj=tmerc lat_0=44 lon_0=144.25 k=0.9999 x_0=0 y_0=0
30174|P|Tokyo / Japan Plane Rectangular CS XIV|307|164|0|ne|proj=tmerc lat_0=26 lon_0=142 k=0.9999 x_0=0 y_0=0
30175|P|Tokyo / Japan Plane Rectangular CS XV|308|164|0|ne|proj=tmerc lat_0=26 lon_0=127.5 k=0.9999 x_0=0 y_0=0
30176|P|Tokyo / Japan Plane Rectangular CS XVI|309|164|0|ne|proj=tmerc lat_0=26 lon_0=124 k=0.9999 x_0=0 y_0=0
30177|P|Tokyo / Japan Plane Rectangular CS XVII|310|164|0|ne|proj=tmerc lat_0=26 lon_0=131 k=0.9999 x_0=0 y_0=0
30178|P|Tokyo / Japan Plane Rectangular CS XVIII|311|164|0|ne|proj=tmerc lat_0=20 lon_0=136 k=0.9999 x_0=0 y_0=0
30179|P|Tokyo / Japan Plane Rectangular CS XIX|312|164|0|ne|proj=tmerc lat_0=26 lon_0=154 k=0.9999 x_0=0 y_0=0
30200|P|Trinidad 1903 / Trinidad Grid|248|165|1|en|proj=cass lat_0=10.4416666666667 lon_0=-61.3333333333333 x_0=86501.46392052 y_0=65379.0134283
30339|P|TC(1948) / UTM zone 39N|2336|166|0|en|proj=utm zone=39
30340|P|TC(1948) / UTM zone 40N|2337|166|0|en|proj=utm zone=40
30491|P|Voirol 1875 / Nord Algerie (ancienne)|2338|167|0|en|proj=lcc lat_1=36 lat_0=36 lon_0=2.7 k_0=0.999625544 x_0=500000 y_0=300000
30492|P|Voirol 1875 / Sud Algerie (ancienne)|2339|167|0|en|proj=lcc lat_1=33.3 lat_0=33.3 lon_0=2.7 k_0=0.999625769 x_0=500000 y_0=300000
30493|P|Voirol 1879 / Nord Algerie (ancienne)|2338|246|0|en|proj=lcc lat_1=36 lat_0=36 lon_0=2.7 k_0=0.999625544 x_0=500000 y_0=300000
30494|P|Voirol 1879 / Sud Algerie (ancienne)|2339|246|0|en|proj=lcc lat_1=33.3 lat_0=33.3 lon_0=2.7 k_0=0.999625769 x_0=500000 y_0=300000
30729|P|Nord Sahara 1959 / UTM zone 29N|2340|169|0|en|proj=utm zone=29
30730|P|Nord Sahara 1959 / UTM zone 30N|2341|169|0|en|proj=utm zone=30
30731|P|Nord Sahara 1959 / UTM zone 31N|2342|169|0|en|proj=utm zone=31
30732|P|Nord Sahara 1959 / UTM zone 32N|2343|169|0|en|proj=utm zone=32
30791|P|Nord Sahara 1959 / Nord Algerie|2338|169|0|en|proj=lcc lat_1=36 lat_0=36 lon_0=2.7 k_0=0.999625544 x_0=500135 y_0=300090
30792|P|Nord Sahara 1959 / Sud Algerie|2344|169|0|en|proj=lcc lat_1=33.3 lat_0=33.3 lon_0=2.7 k_0=0.999625769 x_0=500135 y_0=300090
31028|P|Yoff / UTM zone 28N|1118|172|0|en|proj=utm zone=28
31121|P|Zanderij / UTM zone 21N|1119|173|0|en|proj=utm zone=21
31154|P|Zanderij / TM 54 NW|2345|173|0|en|proj=tmerc lat_0=0 lon_0=-54 k=0.9996 x_0=500000 y_0=0
31170|P|Zanderij / Suriname Old TM|2346|173|0|en|proj=tmerc lat_0=0 lon_0=-55.6833333333333 k=0.9996 x_0=500000 y_0=0
31171|P|Zanderij / Suriname TM|2346|173|0|en|proj=tmerc lat_0=0 lon_0=-55.6833333333333 k=0.9999 x_0=500000 y_0=0
31251|P|MGI (Ferro) / Austria GK West Zone|1991|341|0|ne|proj=tmerc lat_0=0 lon_0=28 k=1 x_0=0 y_0=-5000000
31252|P|MGI (Ferro) / Austria GK Central Zone|1992|341|0|ne|proj=tmerc lat_0=0 lon_0=31 k=1 x_0=0 y_0=-5000000
31253|P|MGI (Ferro) / Austria GK East Zone|1993|341|0|ne|proj=tmerc lat_0=0 lon_0=34 k=1 x_0=0 y_0=-5000000
31254|P|MGI / Austria GK West|1991|174|0|ne|proj=tmerc lat_0=0 lon_0=10.3333333333333 k=1 x_0=0 y_0=-5000000
31255|P|MGI / Austria GK Central|1992|174|0|ne|proj=tmerc lat_0=0 lon_0=13.3333333333333 k=1 x_0=0 y_0=-5000000
31256|P|MGI / Austria GK East|1993|174|0|ne|proj=tmerc lat_0=0 lon_0=16.3333333333333 k=1 x_0=0 y_0=-5000000
31257|P|MGI / Austria GK M28|1991|174|0|ne|proj=tmerc lat_0=0 lon_0=10.3333333333333 k=1 x_0=150000 y_0=-5000000
31258|P|MGI / Austria GK M31|1992|174|0|ne|proj=tmerc lat_0=0 lon_0=13.3333333333333 k=1 x_0=450000 y_0=-5000000
31259|P|MGI / Austria GK M34|1993|174|0|ne|proj=tmerc lat_0=0 lon_0=16.3333333333333 k=1 x_0=750000 y_0=-5000000
31281|P|MGI (Ferro) / Austria West Zone|1991|341|0|ne|proj=tmerc lat_0=0 lon_0=28 k=1 x_0=0 y_0=0
31282|P|MGI (Ferro) / Austria Central Zone|1992|341|0|ne|proj=tmerc lat_0=0 lon_0=31 k=1 x_0=0 y_0=0
31283|P|MGI (Ferro) / Austria East Zone|1993|341|0|ne|proj=tmerc lat_0=0 lon_0=34 k=1 x_0=0 y_0=0
31284|P|MGI / Austria M28|1991|174|0|ne|proj=tmerc lat_0=0 lon_0=10.3333333333333 k=1 x_0=150000 y_0=0
31285|P|MGI / Austria M31|1992|174|0|ne|proj=tmerc lat_0=0 lon_0=13.3333333333333 k=1 x_0=450000 y_0=0
31286|P|MGI / Austria M34|1993|174|0|ne|proj=tmerc lat_0=0 lon_0=16.3333333333333 k=1 x_0=750000 y_0=0
31287|P|MGI / Austria Lambert|848|174|0|ne|proj=lcc lat_0=47.5 lon_0=13.3333333333333 lat_1=49 lat_2=46 x_0=400000 y_0=400000
31288|P|MGI (Ferro) / Austria zone M28|1991|341|0|ne|proj=tmerc lat_0=0 lon_0=28 k=1 x_0=150000 y_0=0
31289|P|MGI (Ferro) / Austria zone M31|1992|341|0|ne|proj=tmerc lat_0=0 lon_0=31 k=1 x_0=450000 y_0=0
31290|P|MGI (Ferro) / Austria zone M34|1993|341|0|ne|proj=tmerc lat_0=0 lon_0=34 k=1 x_0=750000 y_0=0
31300|P|BD72 / Belge Lambert 72|851|175|0|en|proj=lcc lat_0=90 lon_0=4.35693972222222 lat_1=49.8333333333333 lat_2=51.1666666666667 x_0=150000.01256 y_0=5400088.4378
31370|P|BD72 / Belgian Lambert 72|851|175|0|en|proj=lcc lat_0=90 lon_0=4.36748666666667 lat_1=51.1666672333333 lat_2=49.8333339 x_0=150000.013 y_0=5400088.438
31466|P|DHDN / 3-degree Gauss-Kruger zone 2|1369|176|0|ne|proj=tmerc lat_0=0 lon_0=6 k=1 x_0=2500000 y_0=0
31467|P|DHDN / 3-degree Gauss-Kruger zone 3|1370|176|0|ne|proj=tmerc lat_0=0 lon_0=9 k=1 x_0=3500000 y_0=0
31468|P|DHDN / 3-degree Gauss-Kruger zone 4|1371|176|0|ne|proj=tmerc lat_0=0 lon_0=12 k=1 x_0=4500000 y_0=0
31469|P|DHDN / 3-degree Gauss-Kruger zone 5|1372|176|0|ne|proj=tmerc lat_0=0 lon_0=15 k=1 x_0=5500000 y_0=0
31528|P|Conakry 1905 / UTM zone 28N|857|177|0|en|proj=utm zone=28
31529|P|Conakry 1905 / UTM zone 29N|858|177|0|en|proj=utm zone=29
31600|P|Dealul Piscului 1930 / Stereo 33|1121|178|0|en|proj=sterea lat_0=45.9 lon_0=25.3924658888889 k=0.9996667 x_0=500000 y_0=500000
31838|P|NGN / UTM zone 38N|2347|179|0|en|proj=utm zone=38
31839|P|NGN / UTM zone 39N|2348|179|0|en|proj=utm zone=39
31901|P|KUDAMS / KTM|1122|180|0|en|proj=tmerc lat_0=0 lon_0=48 k=1 x_0=500000 y_0=0
31965|P|SIRGAS 2000 / UTM zone 11N|2349|249|0|en|proj=utm zone=11
31966|P|SIRGAS 2000 / UTM zone 12N|2350|249|0|en|proj=utm zone=12
31967|P|SIRGAS 2000 / UTM zone 13N|2351|249|0|en|proj=utm zone=13
31968|P|SIRGAS 2000 / UTM zone 14N|2352|249|0|en|proj=utm zone=14
31969|P|SIRGAS 2000 / UTM zone 15N|2353|249|0|en|proj=utm zone=15
31970|P|SIRGAS 2000 / UTM zone 16N|2354|249|0|en|proj=utm zone=16
31971|P|SIRGAS 2000 / UTM zone 17N|2355|249|0|en|proj=utm zone=17
31972|P|SIRGAS 2000 / UTM zone 18N|2356|249|0|en|proj=utm zone=18
31973|P|SIRGAS 2000 / UTM zone 19N|2357|249|0|en|proj=utm zone=19
31974|P|SIRGAS 2000 / UTM zone 20N|2358|249|0|en|proj=utm zone=20
31975|P|SIRGAS 2000 / UTM zone 21N|2359|249|0|en|proj=utm zone=21
31976|P|SIRGAS 2000 / UTM zone 22N|2360|249|0|en|proj=utm zone=22
31977|P|SIRGAS 2000 / UTM zone 17S|2361|249|0|en|proj=utm zone=17 south
31978|P|SIRGAS 2000 / UTM zone 18S|2362|249|0|en|proj=utm zone=18 south
31979|P|SIRGAS 2000 / UTM zone 19S|2363|249|0|en|proj=utm zone=19 south
31980|P|SIRGAS 2000 / UTM zone 20S|2364|249|0|en|proj=utm zone=20 south
31981|P|SIRGAS 2000 / UTM zone 21S|2365|249|0|en|proj=utm zone=21 south
31982|P|SIRGAS 2000 / UTM zone 22S|2366|249|0|en|proj=utm zone=22 south
31983|P|SIRGAS 2000 / UTM zone 23S|1326|249|0|en|proj=utm zone=23 south
31984|P|SIRGAS 2000 / UTM zone 24S|1327|249|0|en|proj=utm zone=24 south
31985|P|SIRGAS 2000 / UTM zone 25S|1328|249|0|en|proj=utm zone=25 south
31986|P|SIRGAS 1995 / UTM zone 17N|2367|53|0|en|proj=utm zone=17
31987|P|SIRGAS 1995 / UTM zone 18N|2368|53|0|en|proj=utm zone=18
31988|P|SIRGAS 1995 / UTM zone 19N|2369|53|0|en|proj=utm zone=19
31989|P|SIRGAS 1995 / UTM zone 20N|2370|53|0|en|proj=utm zone=20
31990|P|SIRGAS 1995 / UTM zone 21N|2371|53|0|en|proj=utm zone=21
31991|P|SIRGAS 1995 / UTM zone 22N|2372|53|0|en|proj=utm zone=22
31992|P|SIRGAS 1995 / UTM zone 17S|2373|53|0|en|proj=utm zone=17 south
31993|P|SIRGAS 1995 / UTM zone 18S|2374|53|0|en|proj=utm zone=18 south
31994|P|SIRGAS 1995 / UTM zone 19S|2375|53|0|en|proj=utm zone=19 south
31995|P|SIRGAS 1995 / UTM zone 20S|2376|53|0|en|proj=utm zone=20 south
31996|P|SIRGAS 1995 / UTM zone 21S|2377|53|0|en|proj=utm zone=21 south
31997|P|SIRGAS 1995 / UTM zone 22S|2378|53|0|en|proj=utm zone=22 south
31998|P|SIRGAS 1995 / UTM zone 23S|2379|53|0|en|proj=utm zone=23 south
31999|P|SIRGAS 1995 / UTM zone 24S|2380|53|0|en|proj=utm zone=24 south
32000|P|SIRGAS 1995 / UTM zone 25S|2381|53|0|en|proj=utm zone=25 south
32001|P|NAD27 / Montana North|2382|137|3|en|proj=lcc lat_0=47 lon_0=-109.5 lat_1=48.7166666666667 lat_2=47.85 x_0=609601.219202438 y_0=0
32002|P|NAD27 / Montana Central|2383|137|3|en|proj=lcc lat_0=45.8333333333333 lon_0=-109.5 lat_1=47.8833333333333 lat_2=46.45 x_0=609601.219202438 y_0=0
32003|P|NAD27 / Montana South|2384|137|3|en|proj=lcc lat_0=44 lon_0=-109.5 lat_1=46.4 lat_2=44.8666666666667 x_0=609601.219202438 y_0=0
32005|P|NAD27 / Nebraska North|2385|137|3|en|proj=lcc lat_0=41.3333333333333 lon_0=-100 lat_1=41.85 lat_2=42.8166666666667 x_0=609601.219202438 y_0=0
32006|P|NAD27 / Nebraska South|2386|137|3|en|proj=lcc lat_0=39.6666666666667 lon_0=-99.5 lat_1=40.2833333333333 lat_2=41.7166666666667 x_0=609601.219202438 y_0=0
32007|P|NAD27 / Nevada East|466|137|3|en|proj=tmerc lat_0=34.75 lon_0=-115.583333333333 k=0.9999 x_0=152400.30480061 y_0=0
32008|P|NAD27 / Nevada Central|467|137|3|en|proj=tmerc lat_0=34.75 lon_0=-116.666666666667 k=0.9999 x_0=152400.30480061 y_0=0
32009|P|NAD27 / Nevada West|468|137|3|en|proj=tmerc lat_0=34.75 lon_0=-118.583333333333 k=0.9999 x_0=152400.30480061 y_0=0
32010|P|NAD27 / New Hampshire|469|137|3|en|proj=tmerc lat_0=42.5 lon_0=-71.6666666666667 k=0.999966667 x_0=152400.30480061 y_0=0
32011|P|NAD27 / New Jersey|470|137|3|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.6666666666667 k=0.999975 x_0=609601.219202438 y_0=0
32012|P|NAD27 / New Mexico East|199|137|3|en|proj=tmerc lat_0=31 lon_0=-104.333333333333 k=0.999909091 x_0=152400.30480061 y_0=0
32013|P|NAD27 / New Mexico Central|2387|137|3|en|proj=tmerc lat_0=31 lon_0=-106.25 k=0.9999 x_0=152400.30480061 y_0=0
32014|P|NAD27 / New Mexico West|2388|137|3|en|proj=tmerc lat_0=31 lon_0=-107.833333333333 k=0.999916667 x_0=152400.30480061 y_0=0
32015|P|NAD27 / New York East|202|137|3|en|proj=tmerc lat_0=40 lon_0=-74.3333333333333 k=0.999966667 x_0=152400.30480061 y_0=0
32016|P|NAD27 / New York Central|203|137|3|en|proj=tmerc lat_0=40 lon_0=-76.5833333333333 k=0.9999375 x_0=152400.30480061 y_0=0
32017|P|NAD27 / New York West|204|137|3|en|proj=tmerc lat_0=40 lon_0=-78.5833333333333 k=0.9999375 x_0=152400.30480061 y_0=0
32019|P|NAD27 / North Carolina|206|137|3|en|proj=lcc lat_0=33.75 lon_0=-79 lat_1=34.3333333333333 lat_2=36.1666666666667 x_0=609601.219202438 y_0=0
32020|P|NAD27 / North Dakota North|207|137|3|en|proj=lcc lat_0=47 lon_0=-100.5 lat_1=47.4333333333333 lat_2=48.7333333333333 x_0=609601.219202438 y_0=0
32021|P|NAD27 / North Dakota South|208|137|3|en|proj=lcc lat_0=45.6666666666667 lon_0=-100.5 lat_1=46.1833333333333 lat_2=47.4833333333333 x_0=609601.219202438 y_0=0
32022|P|NAD27 / Ohio North|471|137|3|en|proj=lcc lat_0=39.6666666666667 lon_0=-82.5 lat_1=40.4333333333333 lat_2=41.7 x_0=609601.219202438 y_0=0
32023|P|NAD27 / Ohio South|472|137|3|en|proj=lcc lat_0=38 lon_0=-82.5 lat_1=38.7333333333333 lat_2=40.0333333333333 x_0=609601.219202438 y_0=0
32024|P|NAD27 / Oklahoma North|209|137|3|en|proj=lcc lat_0=35 lon_0=-98 lat_1=35.5666666666667 lat_2=36.7666666666667 x_0=609601.219202438 y_0=0
32025|P|NAD27 / Oklahoma South|210|137|3|en|proj=lcc lat_0=33.3333333333333 lon_0=-98 lat_1=33.9333333333333 lat_2=35.2333333333333 x_0=609601.219202438 y_0=0
32026|P|NAD27 / Oregon North|211|137|3|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=44.3333333333333 lat_2=46 x_0=609601.219202438 y_0=0
32027|P|NAD27 / Oregon South|212|137|3|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=42.3333333333333 lat_2=44 x_0=609601.219202438 y_0=0
32028|P|NAD27 / Pennsylvania North|213|137|3|en|proj=lcc lat_0=40.1666666666667 lon_0=-77.75 lat_1=40.8833333333333 lat_2=41.95 x_0=609601.219202438 y_0=0
32030|P|NAD27 / Rhode Island|473|137|3|en|proj=tmerc lat_0=41.0833333333333 lon_0=-71.5 k=0.9999938 x_0=152400.30480061 y_0=0
32031|P|NAD27 / South Carolina North|2389|137|3|en|proj=lcc lat_0=33 lon_0=-81 lat_1=33.7666666666667 lat_2=34.9666666666667 x_0=609601.219202438 y_0=0
32033|P|NAD27 / South Carolina South|2390|137|3|en|proj=lcc lat_0=31.8333333333333 lon_0=-81 lat_1=32.3333333333333 lat_2=33.6666666666667 x_0=609601.219202438 y_0=0
32034|P|NAD27 / South Dakota North|474|137|3|en|proj=lcc lat_0=43.8333333333333 lon_0=-100 lat_1=44.4166666666667 lat_2=45.6833333333333 x_0=609601.219202438 y_0=0
32035|P|NAD27 / South Dakota South|475|137|3|en|proj=lcc lat_0=42.3333333333333 lon_0=-100.333333333333 lat_1=42.8333333333333 lat_2=44.4 x_0=609601.219202438 y_0=0
32037|P|NAD27 / Texas North|216|137|3|en|proj=lcc lat_0=34 lon_0=-101.5 lat_1=34.65 lat_2=36.1833333333333 x_0=609601.219202438 y_0=0
32038|P|NAD27 / Texas North Central|217|137|3|en|proj=lcc lat_0=31.6666666666667 lon_0=-97.5 lat_1=32.1333333333333 lat_2=33.9666666666667 x_0=609601.219202438 y_0=0
32039|P|NAD27 / Texas Central|218|137|3|en|proj=lcc lat_0=29.6666666666667 lon_0=-100.333333333333 lat_1=30.1166666666667 lat_2=31.8833333333333 x_0=609601.219202438 y_0=0
32040|P|NAD27 / Texas South Central|2391|137|3|en|proj=lcc lat_0=27.8333333333333 lon_0=-99 lat_1=28.3833333333333 lat_2=30.2833333333333 x_0=609601.219202438 y_0=0
32041|P|NAD27 / Texas South|2392|137|3|en|proj=lcc lat_0=25.6666666666667 lon_0=-98.5 lat_1=26.1666666666667 lat_2=27.8333333333333 x_0=609601.219202438 y_0=0
32042|P|NAD27 / Utah North|221|137|3|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=40.7166666666667 lat_2=41.7833333333333 x_0=609601.219202438 y_0=0
32043|P|NAD27 / Utah Central|222|137|3|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=39.0166666666667 lat_2=40.65 x_0=609601.219202438 y_0=0
32044|P|NAD27 / Utah South|223|137|3|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=37.2166666666667 lat_2=38.35 x_0=609601.219202438 y_0=0
32045|P|NAD27 / Vermont|476|137|3|en|proj=tmerc lat_0=42.5 lon_0=-72.5 k=0.999964286 x_0=152400.30480061 y_0=0
32046|P|NAD27 / Virginia North|224|137|3|en|proj=lcc lat_0=37.6666666666667 lon_0=-78.5 lat_1=38.0333333333333 lat_2=39.2 x_0=609601.219202438 y_0=0
32047|P|NAD27 / Virginia South|225|137|3|en|proj=lcc lat_0=36.3333333333333 lon_0=-78.5 lat_1=36.7666666666667 lat_2=37.9666666666667 x_0=609601.219202438 y_0=0
32048|P|NAD27 / Washington North|226|137|3|en|proj=lcc lat_0=47 lon_0=-120.833333333333 lat_1=47.5 lat_2=48.7333333333333 x_0=609601.219202438 y_0=0
32049|P|NAD27 / Washington South|2393|137|3|en|proj=lcc lat_0=45.3333333333333 lon_0=-120.5 lat_1=45.8333333333333 lat_2=47.3333333333333 x_0=609601.219202438 y_0=0
32050|P|NAD27 / West Virginia North|477|137|3|en|proj=lcc lat_0=38.5 lon_0=-79.5 lat_1=39 lat_2=40.25 x_0=609601.219202438 y_0=0
32051|P|NAD27 / West Virginia South|478|137|3|en|proj=lcc lat_0=37 lon_0=-81 lat_1=37.4833333333333 lat_2=38.8833333333333 x_0=609601.219202438 y_0=0
32052|P|NAD27 / Wisconsin North|228|137|3|en|proj=lcc lat_0=45.1666666666667 lon_0=-90 lat_1=45.5666666666667 lat_2=46.7666666666667 x_0=609601.219202438 y_0=0
32053|P|NAD27 / Wisconsin Central|229|137|3|en|proj=lcc lat_0=43.8333333333333 lon_0=-90 lat_1=44.25 lat_2=45.5 x_0=609601.219202438 y_0=0
32054|P|NAD27 / Wisconsin South|230|137|3|en|proj=lcc lat_0=42 lon_0=-90 lat_1=42.7333333333333 lat_2=44.0666666666667 x_0=609601.219202438 y_0=0
32055|P|NAD27 / Wyoming East|479|137|3|en|proj=tmerc lat_0=40.6666666666667 lon_0=-105.166666666667 k=0.999941177 x_0=152400.30480061 y_0=0
32056|P|NAD27 / Wyoming East Central|480|137|3|en|proj=tmerc lat_0=40.6666666666667 lon_0=-107.333333333333 k=0.999941177 x_0=152400.30480061 y_0=0
32057|P|NAD27 / Wyoming West Central|481|137|3|en|proj=tmerc lat_0=40.6666666666667 lon_0=-108.75 k=0.999941177 x_0=152400.30480061 y_0=0
32058|P|NAD27 / Wyoming West|482|137|3|en|proj=tmerc lat_0=40.6666666666667 lon_0=-110.083333333333 k=0.999941177 x_0=152400.30480061 y_0=0
32064|P|NAD27 / BLM 14N (ftUS)|2394|137|3|en|proj=tmerc lat_0=0 lon_0=-99 k=0.9996 x_0=500000.001016002 y_0=0
32065|P|NAD27 / BLM 15N (ftUS)|2395|137|3|en|proj=tmerc lat_0=0 lon_0=-93 k=0.9996 x_0=500000.001016002 y_0=0
32066|P|NAD27 / BLM 16N (ftUS)|2396|137|3|en|proj=tmerc lat_0=0 lon_0=-87 k=0.9996 x_0=500000.001016002 y_0=0
32067|P|NAD27 / BLM 17N (ftUS)|2397|137|3|en|proj=tmerc lat_0=0 lon_0=-81 k=0.9996 x_0=500000.001016002 y_0=0
32081|P|NAD27 / MTM zone 1|2144|137|0|en|proj=tmerc lat_0=0 lon_0=-53 k=0.9999 x_0=304800 y_0=0
32082|P|NAD27 / MTM zone 2|2145|137|0|en|proj=tmerc lat_0=0 lon_0=-56 k=0.9999 x_0=304800 y_0=0
32083|P|NAD27 / MTM zone 3|2146|137|0|en|proj=tmerc lat_0=0 lon_0=-58.5 k=0.9999 x_0=304800 y_0=0
32084|P|NAD27 / MTM zone 4|2147|137|0|en|proj=tmerc lat_0=0 lon_0=-61.5 k=0.9999 x_0=304800 y_0=0
32085|P|NAD27 / MTM zone 5|2148|137|0|en|proj=tmerc lat_0=0 lon_0=-64.5 k=0.9999 x_0=304800 y_0=0
32086|P|NAD27 / MTM zone 6|2149|137|0|en|proj=tmerc lat_0=0 lon_0=-67.5 k=0.9999 x_0=304800 y_0=0
32098|P|NAD27 / Quebec Lambert|121|137|0|en|proj=lcc lat_0=44 lon_0=-68.5 lat_1=60 lat_2=46 x_0=0 y_0=0
32099|P|NAD27 / Louisiana Offshore|855|137|3|en|proj=lcc lat_0=25.6666666666667 lon_0=-91.3333333333333 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=609601.219202438 y_0=0
32100|P|NAD83 / Montana|198|138|0|en|proj=lcc lat_0=44.25 lon_0=-109.5 lat_1=49 lat_2=45 x_0=600000 y_0=0
32104|P|NAD83 / Nebraska|465|138|0|en|proj=lcc lat_0=39.8333333333333 lon_0=-100 lat_1=43 lat_2=40 x_0=500000 y_0=0
32107|P|NAD83 / Nevada East|466|138|0|en|proj=tmerc lat_0=34.75 lon_0=-115.583333333333 k=0.9999 x_0=200000 y_0=8000000
32108|P|NAD83 / Nevada Central|467|138|0|en|proj=tmerc lat_0=34.75 lon_0=-116.666666666667 k=0.9999 x_0=500000 y_0=6000000
32109|P|NAD83 / Nevada West|468|138|0|en|proj=tmerc lat_0=34.75 lon_0=-118.583333333333 k=0.9999 x_0=800000 y_0=4000000
32110|P|NAD83 / New Hampshire|469|138|0|en|proj=tmerc lat_0=42.5 lon_0=-71.6666666666667 k=0.999966667 x_0=300000 y_0=0
32111|P|NAD83 / New Jersey|470|138|0|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
32112|P|NAD83 / New Mexico East|199|138|0|en|proj=tmerc lat_0=31 lon_0=-104.333333333333 k=0.999909091 x_0=165000 y_0=0
32113|P|NAD83 / New Mexico Central|200|138|0|en|proj=tmerc lat_0=31 lon_0=-106.25 k=0.9999 x_0=500000 y_0=0
32114|P|NAD83 / New Mexico West|201|138|0|en|proj=tmerc lat_0=31 lon_0=-107.833333333333 k=0.999916667 x_0=830000 y_0=0
32115|P|NAD83 / New York East|202|138|0|en|proj=tmerc lat_0=38.8333333333333 lon_0=-74.5 k=0.9999 x_0=150000 y_0=0
32116|P|NAD83 / New York Central|203|138|0|en|proj=tmerc lat_0=40 lon_0=-76.5833333333333 k=0.9999375 x_0=250000 y_0=0
32117|P|NAD83 / New York West|204|138|0|en|proj=tmerc lat_0=40 lon_0=-78.5833333333333 k=0.9999375 x_0=350000 y_0=0
32118|P|NAD83 / New York Long Island|205|138|0|en|proj=lcc lat_0=40.1666666666667 lon_0=-74 lat_1=41.0333333333333 lat_2=40.6666666666667 x_0=300000 y_0=0
32119|P|NAD83 / North Carolina|206|138|0|en|proj=lcc lat_0=33.75 lon_0=-79 lat_1=36.1666666666667 lat_2=34.3333333333333 x_0=609601.22 y_0=0
32120|P|NAD83 / North Dakota North|207|138|0|en|proj=lcc lat_0=47 lon_0=-100.5 lat_1=48.7333333333333 lat_2=47.4333333333333 x_0=600000 y_0=0
32121|P|NAD83 / North Dakota South|208|138|0|en|proj=lcc lat_0=45.6666666666667 lon_0=-100.5 lat_1=47.4833333333333 lat_2=46.1833333333333 x_0=600000 y_0=0
32122|P|NAD83 / Ohio North|471|138|0|en|proj=lcc lat_0=39.6666666666667 lon_0=-82.5 lat_1=41.7 lat_2=40.4333333333333 x_0=600000 y_0=0
32123|P|NAD83 / Ohio South|472|138|0|en|proj=lcc lat_0=38 lon_0=-82.5 lat_1=40.0333333333333 lat_2=38.7333333333333 x_0=600000 y_0=0
32124|P|NAD83 / Oklahoma North|209|138|0|en|proj=lcc lat_0=35 lon_0=-98 lat_1=36.7666666666667 lat_2=35.5666666666667 x_0=600000 y_0=0
32125|P|NAD83 / Oklahoma South|210|138|0|en|proj=lcc lat_0=33.3333333333333 lon_0=-98 lat_1=35.2333333333333 lat_2=33.9333333333333 x_0=600000 y_0=0
32126|P|NAD83 / Oregon North|211|138|0|en|proj=lcc lat_0=43.6666666666667 lon_0=-120.5 lat_1=46 lat_2=44.3333333333333 x_0=2500000 y_0=0
32127|P|NAD83 / Oregon South|212|138|0|en|proj=lcc lat_0=41.6666666666667 lon_0=-120.5 lat_1=44 lat_2=42.3333333333333 x_0=1500000 y_0=0
32128|P|NAD83 / Pennsylvania North|213|138|0|en|proj=lcc lat_0=40.1666666666667 lon_0=-77.75 lat_1=41.95 lat_2=40.8833333333333 x_0=600000 y_0=0
32129|P|NAD83 / Pennsylvania South|214|138|0|en|proj=lcc lat_0=39.3333333333333 lon_0=-77.75 lat_1=40.9666666666667 lat_2=39.9333333333333 x_0=600000 y_0=0
32130|P|NAD83 / Rhode Island|473|138|0|en|proj=tmerc lat_0=41.0833333333333 lon_0=-71.5 k=0.99999375 x_0=100000 y_0=0
32133|P|NAD83 / South Carolina|215|138|0|en|proj=lcc lat_0=31.8333333333333 lon_0=-81 lat_1=34.8333333333333 lat_2=32.5 x_0=609600 y_0=0
32134|P|NAD83 / South Dakota North|474|138|0|en|proj=lcc lat_0=43.8333333333333 lon_0=-100 lat_1=45.6833333333333 lat_2=44.4166666666667 x_0=600000 y_0=0
32135|P|NAD83 / South Dakota South|475|138|0|en|proj=lcc lat_0=42.3333333333333 lon_0=-100.333333333333 lat_1=44.4 lat_2=42.8333333333333 x_0=600000 y_0=0
32136|P|NAD83 / Tennessee|150|138|0|en|proj=lcc lat_0=34.3333333333333 lon_0=-86 lat_1=36.4166666666667 lat_2=35.25 x_0=600000 y_0=0
32137|P|NAD83 / Texas North|216|138|0|en|proj=lcc lat_0=34 lon_0=-101.5 lat_1=36.1833333333333 lat_2=34.65 x_0=200000 y_0=1000000
32138|P|NAD83 / Texas North Central|217|138|0|en|proj=lcc lat_0=31.6666666666667 lon_0=-98.5 lat_1=33.9666666666667 lat_2=32.1333333333333 x_0=600000 y_0=2000000
32139|P|NAD83 / Texas Central|218|138|0|en|proj=lcc lat_0=29.6666666666667 lon_0=-100.333333333333 lat_1=31.8833333333333 lat_2=30.1166666666667 x_0=700000 y_0=3000000
32140|P|NAD83 / Texas South Central|219|138|0|en|proj=lcc lat_0=27.8333333333333 lon_0=-99 lat_1=30.2833333333333 lat_2=28.3833333333333 x_0=600000 y_0=4000000
32141|P|NAD83 / Texas South|220|138|0|en|proj=lcc lat_0=25.6666666666667 lon_0=-98.5 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=300000 y_0=5000000
32142|P|NAD83 / Utah North|221|138|0|en|proj=lcc lat_0=40.3333333333333 lon_0=-111.5 lat_1=41.7833333333333 lat_2=40.7166666666667 x_0=500000 y_0=1000000
32143|P|NAD83 / Utah Central|222|138|0|en|proj=lcc lat_0=38.3333333333333 lon_0=-111.5 lat_1=40.65 lat_2=39.0166666666667 x_0=500000 y_0=2000000
32144|P|NAD83 / Utah South|223|138|0|en|proj=lcc lat_0=36.6666666666667 lon_0=-111.5 lat_1=38.35 lat_2=37.2166666666667 x_0=500000 y_0=3000000
32145|P|NAD83 / Vermont|476|138|0|en|proj=tmerc lat_0=42.5 lon_0=-72.5 k=0.999964286 x_0=500000 y_0=0
32146|P|NAD83 / Virginia North|224|138|0|en|proj=lcc lat_0=37.6666666666667 lon_0=-78.5 lat_1=39.2 lat_2=38.0333333333333 x_0=3500000 y_0=2000000
32147|P|NAD83 / Virginia South|225|138|0|en|proj=lcc lat_0=36.3333333333333 lon_0=-78.5 lat_1=37.9666666666667 lat_2=36.7666666666667 x_0=3500000 y_0=1000000
32148|P|NAD83 / Washington North|226|138|0|en|proj=lcc lat_0=47 lon_0=-120.833333333333 lat_1=48.7333333333333 lat_2=47.5 x_0=500000 y_0=0
32149|P|NAD83 / Washington South|227|138|0|en|proj=lcc lat_0=45.3333333333333 lon_0=-120.5 lat_1=47.3333333333333 lat_2=45.8333333333333 x_0=500000 y_0=0
32150|P|NAD83 / West Virginia North|477|138|0|en|proj=lcc lat_0=38.5 lon_0=-79.5 lat_1=40.25 lat_2=39 x_0=600000 y_0=0
32151|P|NAD83 / West Virginia South|478|138|0|en|proj=lcc lat_0=37 lon_0=-81 lat_1=38.8833333333333 lat_2=37.4833333333333 x_0=600000 y_0=0
32152|P|NAD83 / Wisconsin North|228|138|0|en|proj=lcc lat_0=45.1666666666667 lon_0=-90 lat_1=46.7666666666667 lat_2=45.5666666666667 x_0=600000 y_0=0
32153|P|NAD83 / Wisconsin Central|229|138|0|en|proj=lcc lat_0=43.8333333333333 lon_0=-90 lat_1=45.5 lat_2=44.25 x_0=600000 y_0=0
32154|P|NAD83 / Wisconsin South|230|138|0|en|proj=lcc lat_0=42 lon_0=-90 lat_1=44.0666666666667 lat_2=42.7333333333333 x_0=600000 y_0=0
32155|P|NAD83 / Wyoming East|479|138|0|en|proj=tmerc lat_0=40.5 lon_0=-105.166666666667 k=0.9999375 x_0=200000 y_0=0
32156|P|NAD83 / Wyoming East Central|480|138|0|en|proj=tmerc lat_0=40.5 lon_0=-107.333333333333 k=0.9999375 x_0=400000 y_0=100000
32157|P|NAD83 / Wyoming West Central|481|138|0|en|proj=tmerc lat_0=40.5 lon_0=-108.75 k=0.9999375 x_0=600000 y_0=0
32158|P|NAD83 / Wyoming West|482|138|0|en|proj=tmerc lat_0=40.5 lon_0=-110.083333333333 k=0.9999375 x_0=800000 y_0=100000
32159|P|NAD83 / Wyoming Lambert|2398|138|0|en|proj=lcc lat_0=41 lon_0=-107.5 lat_1=41 lat_2=45 x_0=500000 y_0=200000
32161|P|NAD83 / Puerto Rico & Virgin Is.|2399|138|0|en|proj=lcc lat_0=17.8333333333333 lon_0=-66.4333333333333 lat_1=18.4333333333333 lat_2=18.0333333333333 x_0=200000 y_0=200000
32164|P|NAD83 / BLM 14N (ftUS)|2394|138|3|en|proj=tmerc lat_0=0 lon_0=-99 k=0.9996 x_0=500000.001016002 y_0=0
32165|P|NAD83 / BLM 15N (ftUS)|2395|138|3|en|proj=tmerc lat_0=0 lon_0=-93 k=0.9996 x_0=500000.001016002 y_0=0
32166|P|NAD83 / BLM 16N (ftUS)|2396|138|3|en|proj=tmerc lat_0=0 lon_0=-87 k=0.9996 x_0=500000.001016002 y_0=0
32167|P|NAD83 / BLM 17N (ftUS)|2397|138|3|en|proj=tmerc lat_0=0 lon_0=-81 k=0.9996 x_0=500000.001016002 y_0=0
32181|P|NAD83 / MTM zone 1|2144|138|0|en|proj=tmerc lat_0=0 lon_0=-53 k=0.9999 x_0=304800 y_0=0
32182|P|NAD83 / MTM zone 2|2145|138|0|en|proj=tmerc lat_0=0 lon_0=-56 k=0.9999 x_0=304800 y_0=0
32183|P|NAD83 / MTM zone 3|495|138|0|en|proj=tmerc lat_0=0 lon_0=-58.5 k=0.9999 x_0=304800 y_0=0
32184|P|NAD83 / MTM zone 4|496|138|0|en|proj=tmerc lat_0=0 lon_0=-61.5 k=0.9999 x_0=304800 y_0=0
32185|P|NAD83 / MTM zone 5|497|138|0|en|proj=tmerc lat_0=0 lon_0=-64.5 k=0.9999 x_0=304800 y_0=0
32186|P|NAD83 / MTM zone 6|498|138|0|en|proj=tmerc lat_0=0 lon_0=-67.5 k=0.9999 x_0=304800 y_0=0
32187|P|NAD83 / MTM zone 7|12|138|0|en|proj=tmerc lat_0=0 lon_0=-70.5 k=0.9999 x_0=304800 y_0=0
32188|P|NAD83 / MTM zone 8|499|138|0|en|proj=tmerc lat_0=0 lon_0=-73.5 k=0.9999 x_0=304800 y_0=0
32189|P|NAD83 / MTM zone 9|500|138|0|en|proj=tmerc lat_0=0 lon_0=-76.5 k=0.9999 x_0=304800 y_0=0
32190|P|NAD83 / MTM zone 10|501|138|0|en|proj=tmerc lat_0=0 lon_0=-79.5 k=0.9999 x_0=304800 y_0=0
32191|P|NAD83 / MTM zone 11|19|138|0|en|proj=tmerc lat_0=0 lon_0=-82.5 k=0.9999 x_0=304800 y_0=0
32192|P|NAD83 / MTM zone 12|20|138|0|en|proj=tmerc lat_0=0 lon_0=-81 k=0.9999 x_0=304800 y_0=0
32193|P|NAD83 / MTM zone 13|21|138|0|en|proj=tmerc lat_0=0 lon_0=-84 k=0.9999 x_0=304800 y_0=0
32194|P|NAD83 / MTM zone 14|22|138|0|en|proj=tmerc lat_0=0 lon_0=-87 k=0.9999 x_0=304800 y_0=0
32195|P|NAD83 / MTM zone 15|23|138|0|en|proj=tmerc lat_0=0 lon_0=-90 k=0.9999 x_0=304800 y_0=0
32196|P|NAD83 / MTM zone 16|24|138|0|en|proj=tmerc lat_0=0 lon_0=-93 k=0.9999 x_0=304800 y_0=0
32197|P|NAD83 / MTM zone 17|25|138|0|en|proj=tmerc lat_0=0 lon_0=-96 k=0.9999 x_0=304800 y_0=0
32198|P|NAD83 / Quebec Lambert|121|138|0|en|proj=lcc lat_0=44 lon_0=-68.5 lat_1=60 lat_2=46 x_0=0 y_0=0
32199|P|NAD83 / Louisiana Offshore|855|138|0|en|proj=lcc lat_0=25.5 lon_0=-91.3333333333333 lat_1=27.8333333333333 lat_2=26.1666666666667 x_0=1000000 y_0=0
32201|P|WGS 72 / UTM zone 1N|2400|181|0|en|proj=utm zone=1
32202|P|WGS 72 / UTM zone 2N|2401|181|0|en|proj=utm zone=2
32203|P|WGS 72 / UTM zone 3N|2402|181|0|en|proj=utm zone=3
32204|P|WGS 72 / UTM zone 4N|2403|181|0|en|proj=utm zone=4
32205|P|WGS 72 / UTM zone 5N|2404|181|0|en|proj=utm zone=5
32206|P|WGS 72 / UTM zone 6N|2405|181|0|en|proj=utm zone=6
32207|P|WGS 72 / UTM zone 7N|2406|181|0|en|proj=utm zone=7
32208|P|WGS 72 / UTM zone 8N|2407|181|0|en|proj=utm zone=8
32209|P|WGS 72 / UTM zone 9N|2408|181|0|en|proj=utm zone=9
32210|P|WGS 72 / UTM zone 10N|2409|181|0|en|proj=utm zone=10
32211|P|WGS 72 / UTM zone 11N|2410|181|0|en|proj=utm zone=11
32212|P|WGS 72 / UTM zone 12N|2411|181|0|en|proj=utm zone=12
32213|P|WGS 72 / UTM zone 13N|2412|181|0|en|proj=utm zone=13
32214|P|WGS 72 / UTM zone 14N|2413|181|0|en|proj=utm zone=14
32215|P|WGS 72 / UTM zone 15N|2414|181|0|en|proj=utm zone=15
32216|P|WGS 72 / UTM zone 16N|2415|181|0|en|proj=utm zone=16
32217|P|WGS 72 / UTM zone 17N|2416|181|0|en|proj=utm zone=17
32218|P|WGS 72 / UTM zone 18N|2417|181|0|en|proj=utm zone=18
32219|P|WGS 72 / UTM zone 19N|2418|181|0|en|proj=utm zone=19
32220|P|WGS 72 / UTM zone 20N|2419|181|0|en|proj=utm zone=20
32221|P|WGS 72 / UTM zone 21N|2420|181|0|en|proj=utm zone=21
32222|P|WGS 72 / UTM zone 22N|2421|181|0|en|proj=utm zone=22
32223|P|WGS 72 / UTM zone 23N|2422|181|0|en|proj=utm zone=23
32224|P|WGS 72 / UTM zone 24N|2423|181|0|en|proj=utm zone=24
32225|P|WGS 72 / UTM zone 25N|2424|181|0|en|proj=utm zone=25
32226|P|WGS 72 / UTM zone 26N|2425|181|0|en|proj=utm zone=26
32227|P|WGS 72 / UTM zone 27N|2426|181|0|en|proj=utm zone=27
32228|P|WGS 72 / UTM zone 28N|2427|181|0|en|proj=utm zone=28
32229|P|WGS 72 / UTM zone 29N|2428|181|0|en|proj=utm zone=29
32230|P|WGS 72 / UTM zone 30N|2429|181|0|en|proj=utm zone=30
32231|P|WGS 72 / UTM zone 31N|2430|181|0|en|proj=utm zone=31
32232|P|WGS 72 / UTM zone 32N|2431|181|0|en|proj=utm zone=32
32233|P|WGS 72 / UTM zone 33N|2432|181|0|en|proj=utm zone=33
32234|P|WGS 72 / UTM zone 34N|2433|181|0|en|proj=utm zone=34
32235|P|WGS 72 / UTM zone 35N|2434|181|0|en|proj=utm zone=35
32236|P|WGS 72 / UTM zone 36N|2435|181|0|en|proj=utm zone=36
32237|P|WGS 72 / UTM zone 37N|2436|181|0|en|proj=utm zone=37
32238|P|WGS 72 / UTM zone 38N|2437|181|0|en|proj=utm zone=38
32239|P|WGS 72 / UTM zone 39N|2438|181|0|en|proj=utm zone=39
32240|P|WGS 72 / UTM zone 40N|2439|181|0|en|proj=utm zone=40
32241|P|WGS 72 / UTM zone 41N|2440|181|0|en|proj=utm zone=41
32242|P|WGS 72 / UTM zone 42N|2441|181|0|en|proj=utm zone=42
32243|P|WGS 72 / UTM zone 43N|2442|181|0|en|proj=utm zone=43
32244|P|WGS 72 / UTM zone 44N|2443|181|0|en|proj=utm zone=44
32245|P|WGS 72 / UTM zone 45N|2444|181|0|en|proj=utm zone=45
32246|P|WGS 72 / UTM zone 46N|2445|181|0|en|proj=utm zone=46
32247|P|WGS 72 / UTM zone 47N|2446|181|0|en|proj=utm zone=47
32248|P|WGS 72 / UTM zone 48N|2447|181|0|en|proj=utm zone=48
32249|P|WGS 72 / UTM zone 49N|2448|181|0|en|proj=utm zone=49
32250|P|WGS 72 / UTM zone 50N|2449|181|0|en|proj=utm zone=50
32251|P|WGS 72 / UTM zone 51N|2450|181|0|en|proj=utm zone=51
32252|P|WGS 72 / UTM zone 52N|2451|181|0|en|proj=utm zone=52
32253|P|WGS 72 / UTM zone 53N|2452|181|0|en|proj=utm zone=53
32254|P|WGS 72 / UTM zone 54N|2453|181|0|en|proj=utm zone=54
32255|P|WGS 72 / UTM zone 55N|2454|181|0|en|proj=utm zone=55
32256|P|WGS 72 / UTM zone 56N|2455|181|0|en|proj=utm zone=56
32257|P|WGS 72 / UTM zone 57N|2456|181|0|en|proj=utm zone=57
32258|P|WGS 72 / UTM zone 58N|2457|181|0|en|proj=utm zone=58
32259|P|WGS 72 / UTM zone 59N|2458|181|0|en|proj=utm zone=59
32260|P|WGS 72 / UTM zone 60N|2459|181|0|en|proj=utm zone=60
32301|P|WGS 72 / UTM zone 1S|2460|181|0|en|proj=utm zone=1 south
32302|P|WGS 72 / UTM zone 2S|2461|181|0|en|proj=utm zone=2 south
32303|P|WGS 72 / UTM zone 3S|2462|181|0|en|proj=utm zone=3 south
32304|P|WGS 72 / UTM zone 4S|2463|181|0|en|proj=utm zone=4 south
32305|P|WGS 72 / UTM zone 5S|2464|181|0|en|proj=utm zone=5 south
32306|P|WGS 72 / UTM zone 6S|2465|181|0|en|proj=utm zone=6 south
32307|P|WGS 72 / UTM zone 7S|2466|181|0|en|proj=utm zone=7 south
32308|P|WGS 72 / UTM zone 8S|2467|181|0|en|proj=utm zone=8 south
32309|P|WGS 72 / UTM zone 9S|2468|181|0|en|proj=utm zone=9 south
32310|P|WGS 72 / UTM zone 10S|2469|181|0|en|proj=utm zone=10 south
32311|P|WGS 72 / UTM zone 11S|2470|181|0|en|proj=utm zone=11 south
32312|P|WGS 72 / UTM zone 12S|2471|181|0|en|proj=utm zone=12 south
32313|P|WGS 72 / UTM zone 13S|2472|181|0|en|proj=utm zone=13 south
32314|P|WGS 72 / UTM zone 14S|2473|181|0|en|proj=utm zone=14 south
32315|P|WGS 72 / UTM zone 15S|2474|181|0|en|proj=utm zone=15 south
32316|P|WGS 72 / UTM zone 16S|2475|181|0|en|proj=utm zone=16 south
32317|P|WGS 72 / UTM zone 17S|2476|181|0|en|proj=utm zone=17 south
32318|P|WGS 72 / UTM zone 18S|2477|181|0|en|proj=utm zone=18 south
32319|P|WGS 72 / UTM zone 19S|2478|181|0|en|proj=utm zone=19 south
32320|P|WGS 72 / UTM zone 20S|2479|181|0|en|proj=utm zone=20 south
32321|P|WGS 72 / UTM zone 21S|2480|181|0|en|proj=utm zone=21 south
32322|P|WGS 72 / UTM zone 22S|2481|181|0|en|proj=utm zone=22 south
32323|P|WGS 72 / UTM zone 23S|2482|181|0|en|proj=utm zone=23 south
32324|P|WGS 72 / UTM zone 24S|2483|181|0|en|proj=utm zone=24 south
32325|P|WGS 72 / UTM zone 25S|2484|181|0|en|proj=utm zone=25 south
32326|P|WGS 72 / UTM zone 26S|2485|181|0|en|proj=utm zone=26 south
32327|P|WGS 72 / UTM zone 27S|2486|181|0|en|proj=utm zone=27 south
32328|P|WGS 72 / UTM zone 28S|2487|181|0|en|proj=utm zone=28 south
32329|P|WGS 72 / UTM zone 29S|2488|181|0|en|proj=utm zone=29 south
32330|P|WGS 72 / UTM zone 30S|2489|181|0|en|proj=utm zone=30 south
32331|P|WGS 72 / UTM zone 31S|2490|181|0|en|proj=utm zone=31 south
32332|P|WGS 72 / UTM zone 32S|2491|181|0|en|proj=utm zone=32 south
32333|P|WGS 72 / UTM zone 33S|2492|181|0|en|proj=utm zone=33 south
32334|P|WGS 72 / UTM zone 34S|2493|181|0|en|proj=utm zone=34 south
32335|P|WGS 72 / UTM zone 35S|2494|181|0|en|proj=utm zone=35 south
32336|P|WGS 72 / UTM zone 36S|2495|181|0|en|proj=utm zone=36 south
32337|P|WGS 72 / UTM zone 37S|2496|181|0|en|proj=utm zone=37 south
32338|P|WGS 72 / UTM zone 38S|2497|181|0|en|proj=utm zone=38 south
32339|P|WGS 72 / UTM zone 39S|2498|181|0|en|proj=utm zone=39 south
32340|P|WGS 72 / UTM zone 40S|2499|181|0|en|proj=utm zone=40 south
32341|P|WGS 72 / UTM zone 41S|2500|181|0|en|proj=utm zone=41 south
32342|P|WGS 72 / UTM zone 42S|2501|181|0|en|proj=utm zone=42 south
32343|P|WGS 72 / UTM zone 43S|2502|181|0|en|proj=utm zone=43 south
32344|P|WGS 72 / UTM zone 44S|2503|181|0|en|proj=utm zone=44 south
32345|P|WGS 72 / UTM zone 45S|2504|181|0|en|proj=utm zone=45 south
32346|P|WGS 72 / UTM zone 46S|2505|181|0|en|proj=utm zone=46 south
32347|P|WGS 72 / UTM zone 47S|2506|181|0|en|proj=utm zone=47 south
32348|P|WGS 72 / UTM zone 48S|2507|181|0|en|proj=utm zone=48 south
32349|P|WGS 72 / UTM zone 49S|2508|181|0|en|proj=utm zone=49 south
32350|P|WGS 72 / UTM zone 50S|2509|181|0|en|proj=utm zone=50 south
32351|P|WGS 72 / UTM zone 51S|2510|181|0|en|proj=utm zone=51 south
32352|P|WGS 72 / UTM zone 52S|2511|181|0|en|proj=utm zone=52 south
32353|P|WGS 72 / UTM zone 53S|2512|181|0|en|proj=utm zone=53 south
32354|P|WGS 72 / UTM zone 54S|2513|181|0|en|proj=utm zone=54 south
32355|P|WGS 72 / UTM zone 55S|2514|181|0|en|proj=utm zone=55 south
32356|P|WGS 72 / UTM zone 56S|2515|181|0|en|proj=utm zone=56 south
32357|P|WGS 72 / UTM zone 57S|2516|181|0|en|proj=utm zone=57 south
32358|P|WGS 72 / UTM zone 58S|2517|181|0|en|proj=utm zone=58 south
32359|P|WGS 72 / UTM zone 59S|2518|181|0|en|proj=utm zone=59 south
32360|P|WGS 72 / UTM zone 60S|2519|181|0|en|proj=utm zone=60 south
32401|P|WGS 72BE / UTM zone 1N|2400|182|0|en|proj=utm zone=1
32402|P|WGS 72BE / UTM zone 2N|2461|182|0|en|proj=utm zone=2
32403|P|WGS 72BE / UTM zone 3N|2402|182|0|en|proj=utm zone=3
32404|P|WGS 72BE / UTM zone 4N|2403|182|0|en|proj=utm zone=4
32405|P|WGS 72BE / UTM zone 5N|2404|182|0|en|proj=utm zone=5
32406|P|WGS 72BE / UTM zone 6N|2405|182|0|en|proj=utm zone=6
32407|P|WGS 72BE / UTM zone 7N|2406|182|0|en|proj=utm zone=7
32408|P|WGS 72BE / UTM zone 8N|2407|182|0|en|proj=utm zone=8
32409|P|WGS 72BE / UTM zone 9N|2408|182|0|en|proj=utm zone=9
32410|P|WGS 72BE / UTM zone 10N|2409|182|0|en|proj=utm zone=10
32411|P|WGS 72BE / UTM zone 11N|2410|182|0|en|proj=utm zone=11
32412|P|WGS 72BE / UTM zone 12N|2411|182|0|en|proj=utm zone=12
32413|P|WGS 72BE / UTM zone 13N|2412|182|0|en|proj=utm zone=13
32414|P|WGS 72BE / UTM zone 14N|2413|182|0|en|proj=utm zone=14
32415|P|WGS 72BE / UTM zone 15N|2414|182|0|en|proj=utm zone=15
32416|P|WGS 72BE / UTM zone 16N|2415|182|0|en|proj=utm zone=16
32417|P|WGS 72BE / UTM zone 17N|2416|182|0|en|proj=utm zone=17
32418|P|WGS 72BE / UTM zone 18N|2417|182|0|en|proj=utm zone=18
32419|P|WGS 72BE / UTM zone 19N|2418|182|0|en|proj=utm zone=19
32420|P|WGS 72BE / UTM zone 20N|2419|182|0|en|proj=utm zone=20
32421|P|WGS 72BE / UTM zone 21N|2420|182|0|en|proj=utm zone=21
32422|P|WGS 72BE / UTM zone 22N|2421|182|0|en|proj=utm zone=22
32423|P|WGS 72BE / UTM zone 23N|2422|182|0|en|proj=utm zone=23
32424|P|WGS 72BE / UTM zone 24N|2423|182|0|en|proj=utm zone=24
32425|P|WGS 72BE / UTM zone 25N|2424|182|0|en|proj=utm zone=25
32426|P|WGS 72BE / UTM zone 26N|2425|182|0|en|proj=utm zone=26
32427|P|WGS 72BE / UTM zone 27N|2426|182|0|en|proj=utm zone=27
32428|P|WGS 72BE / UTM zone 28N|2427|182|0|en|proj=utm zone=28
32429|P|WGS 72BE / UTM zone 29N|2428|182|0|en|proj=utm zone=29
32430|P|WGS 72BE / UTM zone 30N|2429|182|0|en|proj=utm zone=30
32431|P|WGS 72BE / UTM zone 31N|2430|182|0|en|proj=utm zone=31
32432|P|WGS 72BE / UTM zone 32N|2431|182|0|en|proj=utm zone=32
32433|P|WGS 72BE / UTM zone 33N|2520|182|0|en|proj=utm zone=33
32434|P|WGS 72BE / UTM zone 34N|2521|182|0|en|proj=utm zone=34
32435|P|WGS 72BE / UTM zone 35N|2434|182|0|en|proj=utm zone=35
32436|P|WGS 72BE / UTM zone 36N|2435|182|0|en|proj=utm zone=36
32437|P|WGS 72BE / UTM zone 37N|2436|182|0|en|proj=utm zone=37
32438|P|WGS 72BE / UTM zone 38N|2437|182|0|en|proj=utm zone=38
32439|P|WGS 72BE / UTM zone 39N|2438|182|0|en|proj=utm zone=39
32440|P|WGS 72BE / UTM zone 40N|2439|182|0|en|proj=utm zone=40
32441|P|WGS 72BE / UTM zone 41N|2440|182|0|en|proj=utm zone=41
32442|P|WGS 72BE / UTM zone 42N|2441|182|0|en|proj=utm zone=42
32443|P|WGS 72BE / UTM zone 43N|2442|182|0|en|proj=utm zone=43
32444|P|WGS 72BE / UTM zone 44N|2443|182|0|en|proj=utm zone=44
32445|P|WGS 72BE / UTM zone 45N|2444|182|0|en|proj=utm zone=45
32446|P|WGS 72BE / UTM zone 46N|2445|182|0|en|proj=utm zone=46
32447|P|WGS 72BE / UTM zone 47N|2446|182|0|en|proj=utm zone=47
32448|P|WGS 72BE / UTM zone 48N|2522|182|0|en|proj=utm zone=48
32449|P|WGS 72BE / UTM zone 49N|2523|182|0|en|proj=utm zone=49
32450|P|WGS 72BE / UTM zone 50N|2449|182|0|en|proj=utm zone=50
32451|P|WGS 72BE / UTM zone 51N|2450|182|0|en|proj=utm zone=51
32452|P|WGS 72BE / UTM zone 52N|2451|182|0|en|proj=utm zone=52
32453|P|WGS 72BE / UTM zone 53N|2452|182|0|en|proj=utm zone=53
32454|P|WGS 72BE / UTM zone 54N|2453|182|0|en|proj=utm zone=54
32455|P|WGS 72BE / UTM zone 55N|2454|182|0|en|proj=utm zone=55
32456|P|WGS 72BE / UTM zone 56N|2455|182|0|en|proj=utm zone=56
32457|P|WGS 72BE / UTM zone 57N|2456|182|0|en|proj=utm zone=57
32458|P|WGS 72BE / UTM zone 58N|2457|182|0|en|proj=utm zone=58
32459|P|WGS 72BE / UTM zone 59N|2458|182|0|en|proj=utm zone=59
32460|P|WGS 72BE / UTM zone 60N|2459|182|0|en|proj=utm zone=60
32501|P|WGS 72BE / UTM zone 1S|2460|182|0|en|proj=utm zone=1 south
32502|P|WGS 72BE / UTM zone 2S|2461|182|0|en|proj=utm zone=2 south
32503|P|WGS 72BE / UTM zone 3S|2462|182|0|en|proj=utm zone=3 south
32504|P|WGS 72BE / UTM zone 4S|2463|182|0|en|proj=utm zone=4 south
32505|P|WGS 72BE / UTM zone 5S|2464|182|0|en|proj=utm zone=5 south
32506|P|WGS 72BE / UTM zone 6S|2465|182|0|en|proj=utm zone=6 south
32507|P|WGS 72BE / UTM zone 7S|2466|182|0|en|proj=utm zone=7 south
32508|P|WGS 72BE / UTM zone 8S|2467|182|0|en|proj=utm zone=8 south
32509|P|WGS 72BE / UTM zone 9S|2468|182|0|en|proj=utm zone=9 south
32510|P|WGS 72BE / UTM zone 10S|2469|182|0|en|proj=utm zone=10 south
32511|P|WGS 72BE / UTM zone 11S|2470|182|0|en|proj=utm zone=11 south
32512|P|WGS 72BE / UTM zone 12S|2471|182|0|en|proj=utm zone=12 south
32513|P|WGS 72BE / UTM zone 13S|2472|182|0|en|proj=utm zone=13 south
32514|P|WGS 72BE / UTM zone 14S|2473|182|0|en|proj=utm zone=14 south
32515|P|WGS 72BE / UTM zone 15S|2474|182|0|en|proj=utm zone=15 south
32516|P|WGS 72BE / UTM zone 16S|2475|182|0|en|proj=utm zone=16 south
32517|P|WGS 72BE / UTM zone 17S|2476|182|0|en|proj=utm zone=17 south
32518|P|WGS 72BE / UTM zone 18S|2477|182|0|en|proj=utm zone=18 south
32519|P|WGS 72BE / UTM zone 19S|2478|182|0|en|proj=utm zone=19 south
32520|P|WGS 72BE / UTM zone 20S|2479|182|0|en|proj=utm zone=20 south
32521|P|WGS 72BE / UTM zone 21S|2480|182|0|en|proj=utm zone=21 south
32522|P|WGS 72BE / UTM zone 22S|2481|182|0|en|proj=utm zone=22 south
32523|P|WGS 72BE / UTM zone 23S|2482|182|0|en|proj=utm zone=23 south
32524|P|WGS 72BE / UTM zone 24S|2483|182|0|en|proj=utm zone=24 south
32525|P|WGS 72BE / UTM zone 25S|2484|182|0|en|proj=utm zone=25 south
32526|P|WGS 72BE / UTM zone 26S|2485|182|0|en|proj=utm zone=26 south
32527|P|WGS 72BE / UTM zone 27S|2486|182|0|en|proj=utm zone=27 south
32528|P|WGS 72BE / UTM zone 28S|2487|182|0|en|proj=utm zone=28 south
32529|P|WGS 72BE / UTM zone 29S|2488|182|0|en|proj=utm zone=29 south
32530|P|WGS 72BE / UTM zone 30S|2489|182|0|en|proj=utm zone=30 south
32531|P|WGS 72BE / UTM zone 31S|2490|182|0|en|proj=utm zone=31 south
32532|P|WGS 72BE / UTM zone 32S|2491|182|0|en|proj=utm zone=32 south
32533|P|WGS 72BE / UTM zone 33S|2492|182|0|en|proj=utm zone=33 south
32534|P|WGS 72BE / UTM zone 34S|2493|182|0|en|proj=utm zone=34 south
32535|P|WGS 72BE / UTM zone 35S|2494|182|0|en|proj=utm zone=35 south
32536|P|WGS 72BE / UTM zone 36S|2495|182|0|en|proj=utm zone=36 south
32537|P|WGS 72BE / UTM zone 37S|2496|182|0|en|proj=utm zone=37 south
32538|P|WGS 72BE / UTM zone 38S|2497|182|0|en|proj=utm zone=38 south
32539|P|WGS 72BE / UTM zone 39S|2498|182|0|en|proj=utm zone=39 south
32540|P|WGS 72BE / UTM zone 40S|2499|182|0|en|proj=utm zone=40 south
32541|P|WGS 72BE / UTM zone 41S|2500|182|0|en|proj=utm zone=41 south
32542|P|WGS 72BE / UTM zone 42S|2501|182|0|en|proj=utm zone=42 south
32543|P|WGS 72BE / UTM zone 43S|2502|182|0|en|proj=utm zone=43 south
32544|P|WGS 72BE / UTM zone 44S|2503|182|0|en|proj=utm zone=44 south
32545|P|WGS 72BE / UTM zone 45S|2504|182|0|en|proj=utm zone=45 south
32546|P|WGS 72BE / UTM zone 46S|2505|182|0|en|proj=utm zone=46 south
32547|P|WGS 72BE / UTM zone 47S|2506|182|0|en|proj=utm zone=47 south
32548|P|WGS 72BE / UTM zone 48S|2507|182|0|en|proj=utm zone=48 south
32549|P|WGS 72BE / UTM zone 49S|2524|182|0|en|proj=utm zone=49 south
32550|P|WGS 72BE / UTM zone 50S|2509|182|0|en|proj=utm zone=50 south
32551|P|WGS 72BE / UTM zone 51S|2510|182|0|en|proj=utm zone=51 south
32552|P|WGS 72BE / UTM zone 52S|2511|182|0|en|proj=utm zone=52 south
32553|P|WGS 72BE / UTM zone 53S|2512|182|0|en|proj=utm zone=53 south
32554|P|WGS 72BE / UTM zone 54S|2513|182|0|en|proj=utm zone=54 south
32555|P|WGS 72BE / UTM zone 55S|2514|182|0|en|proj=utm zone=55 south
32556|P|WGS 72BE / UTM zone 56S|2515|182|0|en|proj=utm zone=56 south
32557|P|WGS 72BE / UTM zone 57S|2516|182|0|en|proj=utm zone=57 south
32558|P|WGS 72BE / UTM zone 58S|2517|182|0|en|proj=utm zone=58 south
32559|P|WGS 72BE / UTM zone 59S|2518|182|0|en|proj=utm zone=59 south
32560|P|WGS 72BE / UTM zone 60S|2519|182|0|en|proj=utm zone=60 south
32600|P|WGS 84 / UTM grid system (northern hemisphere)|2525|183|0|en|
32601|P|WGS 84 / UTM zone 1N|2526|183|0|en|proj=utm zone=1
32602|P|WGS 84 / UTM zone 2N|2527|183|0|en|proj=utm zone=2
32603|P|WGS 84 / UTM zone 3N|2528|183|0|en|proj=utm zone=3
32604|P|WGS 84 / UTM zone 4N|2529|183|0|en|proj=utm zone=4
32605|P|WGS 84 / UTM zone 5N|2530|183|0|en|proj=utm zone=5
32606|P|WGS 84 / UTM zone 6N|2531|183|0|en|proj=utm zone=6
32607|P|WGS 84 / UTM zone 7N|2532|183|0|en|proj=utm zone=7
32608|P|WGS 84 / UTM zone 8N|2533|183|0|en|proj=utm zone=8
32609|P|WGS 84 / UTM zone 9N|2534|183|0|en|proj=utm zone=9
32610|P|WGS 84 / UTM zone 10N|2535|183|0|en|proj=utm zone=10
32611|P|WGS 84 / UTM zone 11N|2536|183|0|en|proj=utm zone=11
32612|P|WGS 84 / UTM zone 12N|2537|183|0|en|proj=utm zone=12
32613|P|WGS 84 / UTM zone 13N|2538|183|0|en|proj=utm zone=13
32614|P|WGS 84 / UTM zone 14N|2539|183|0|en|proj=utm zone=14
32615|P|WGS 84 / UTM zone 15N|2540|183|0|en|proj=utm zone=15
32616|P|WGS 84 / UTM zone 16N|2541|183|0|en|proj=utm zone=16
32617|P|WGS 84 / UTM zone 17N|2542|183|0|en|proj=utm zone=17
32618|P|WGS 84 / UTM zone 18N|2543|183|0|en|proj=utm zone=18
32619|P|WGS 84 / UTM zone 19N|2544|183|0|en|proj=utm zone=19
32620|P|WGS 84 / UTM zone 20N|2545|183|0|en|proj=utm zone=20
32621|P|WGS 84 / UTM zone 21N|2546|183|0|en|proj=utm zone=21
32622|P|WGS 84 / UTM zone 22N|2547|183|0|en|proj=utm zone=22
32623|P|WGS 84 / UTM zone 23N|2548|183|0|en|proj=utm zone=23
32624|P|WGS 84 / UTM zone 24N|2549|183|0|en|proj=utm zone=24
32625|P|WGS 84 / UTM zone 25N|2550|183|0|en|proj=utm zone=25
32626|P|WGS 84 / UTM zone 26N|2551|183|0|en|proj=utm zone=26
32627|P|WGS 84 / UTM zone 27N|2552|183|0|en|proj=utm zone=27
32628|P|WGS 84 / UTM zone 28N|2553|183|0|en|proj=utm zone=28
32629|P|WGS 84 / UTM zone 29N|2554|183|0|en|proj=utm zone=29
32630|P|WGS 84 / UTM zone 30N|2555|183|0|en|proj=utm zone=30
32631|P|WGS 84 / UTM zone 31N|2556|183|0|en|proj=utm zone=31
32632|P|WGS 84 / UTM zone 32N|2557|183|0|en|proj=utm zone=32
32633|P|WGS 84 / UTM zone 33N|2558|183|0|en|proj=utm zone=33
32634|P|WGS 84 / UTM zone 34N|2559|183|0|en|proj=utm zone=34
32635|P|WGS 84 / UTM zone 35N|2560|183|0|en|proj=utm zone=35
32636|P|WGS 84 / UTM zone 36N|2561|183|0|en|proj=utm zone=36
32637|P|WGS 84 / UTM zone 37N|2562|183|0|en|proj=utm zone=37
32638|P|WGS 84 / UTM zone 38N|2563|183|0|en|proj=utm zone=38
32639|P|WGS 84 / UTM zone 39N|2564|183|0|en|proj=utm zone=39
32640|P|WGS 84 / UTM zone 40N|2565|183|0|en|proj=utm zone=40
32641|P|WGS 84 / UTM zone 41N|2566|183|0|en|proj=utm zone=41
32642|P|WGS 84 / UTM zone 42N|2567|183|0|en|proj=utm zone=42
32643|P|WGS 84 / UTM zone 43N|2568|183|0|en|proj=utm zone=43
32644|P|WGS 84 / UTM zone 44N|2569|183|0|en|proj=utm zone=44
32645|P|WGS 84 / UTM zone 45N|2570|183|0|en|proj=utm zone=45
32646|P|WGS 84 / UTM zone 46N|2571|183|0|en|proj=utm zone=46
32647|P|WGS 84 / UTM zone 47N|2572|183|0|en|proj=utm zone=47
32648|P|WGS 84 / UTM zone 48N|2573|183|0|en|proj=utm zone=48
32649|P|WGS 84 / UTM zone 49N|2574|183|0|en|proj=utm zone=49
32650|P|WGS 84 / UTM zone 50N|2575|183|0|en|proj=utm zone=50
32651|P|WGS 84 / UTM zone 51N|2576|183|0|en|proj=utm zone=51
32652|P|WGS 84 / UTM zone 52N|2577|183|0|en|proj=utm zone=52
32653|P|WGS 84 / UTM zone 53N|2578|183|0|en|proj=utm zone=53
32654|P|WGS 84 / UTM zone 54N|2579|183|0|en|proj=utm zone=54
32655|P|WGS 84 / UTM zone 55N|2580|183|0|en|proj=utm zone=55
32656|P|WGS 84 / UTM zone 56N|2581|183|0|en|proj=utm zone=56
32657|P|WGS 84 / UTM zone 57N|2582|183|0|en|proj=utm zone=57
32658|P|WGS 84 / UTM zone 58N|2583|183|0|en|proj=utm zone=58
32659|P|WGS 84 / UTM zone 59N|2584|183|0|en|proj=utm zone=59
32660|P|WGS 84 / UTM zone 60N|2585|183|0|en|proj=utm zone=60
32661|P|WGS 84 / UPS North (N,E)|845|183|0|ne|proj=stere lat_0=90 lon_0=0 k=0.994 x_0=2000000 y_0=2000000
32664|P|WGS 84 / BLM 14N (ftUS)|2586|183|3|en|proj=tmerc lat_0=0 lon_0=-99 k=0.9996 x_0=500000.001016002 y_0=0
32665|P|WGS 84 / BLM 15N (ftUS)|2587|183|3|en|proj=tmerc lat_0=0 lon_0=-93 k=0.9996 x_0=500000.001016002 y_0=0
32666|P|WGS 84 / BLM 16N (ftUS)|2588|183|3|en|proj=tmerc lat_0=0 lon_0=-87 k=0.9996 x_0=500000.001016002 y_0=0
32667|P|WGS 84 / BLM 17N (ftUS)|2589|183|3|en|proj=tmerc lat_0=0 lon_0=-81 k=0.9996 x_0=500000.001016002 y_0=0
32700|P|WGS 84 / UTM grid system (southern hemisphere)|2590|183|0|en|
32701|P|WGS 84 / UTM zone 1S|2591|183|0|en|proj=utm zone=1 south
32702|P|WGS 84 / UTM zone 2S|2461|183|0|en|proj=utm zone=2 south
32703|P|WGS 84 / UTM zone 3S|2462|183|0|en|proj=utm zone=3 south
32704|P|WGS 84 / UTM zone 4S|2463|183|0|en|proj=utm zone=4 south
32705|P|WGS 84 / UTM zone 5S|2464|183|0|en|proj=utm zone=5 south
32706|P|WGS 84 / UTM zone 6S|2465|183|0|en|proj=utm zone=6 south
32707|P|WGS 84 / UTM zone 7S|2466|183|0|en|proj=utm zone=7 south
32708|P|WGS 84 / UTM zone 8S|2467|183|0|en|proj=utm zone=8 south
32709|P|WGS 84 / UTM zone 9S|2468|183|0|en|proj=utm zone=9 south
32710|P|WGS 84 / UTM zone 10S|2469|183|0|en|proj=utm zone=10 south
32711|P|WGS 84 / UTM zone 11S|2470|183|0|en|proj=utm zone=11 south
32712|P|WGS 84 / UTM zone 12S|2471|183|0|en|proj=utm zone=12 south
32713|P|WGS 84 / UTM zone 13S|2472|183|0|en|proj=utm zone=13 south
32714|P|WGS 84 / UTM zone 14S|2473|183|0|en|proj=utm zone=14 south
32715|P|WGS 84 / UTM zone 15S|2592|183|0|en|proj=utm zone=15 south
32716|P|WGS 84 / UTM zone 16S|2593|183|0|en|proj=utm zone=16 south
32717|P|WGS 84 / UTM zone 17S|2594|183|0|en|proj=utm zone=17 south
32718|P|WGS 84 / UTM zone 18S|2595|183|0|en|proj=utm zone=18 south
32719|P|WGS 84 / UTM zone 19S|2596|183|0|en|proj=utm zone=19 south
32720|P|WGS 84 / UTM zone 20S|2597|183|0|en|proj=utm zone=20 south
32721|P|WGS 84 / UTM zone 21S|2598|183|0|en|proj=utm zone=21 south
32722|P|WGS 84 / UTM zone 22S|2599|183|0|en|proj=utm zone=22 south
32723|P|WGS 84 / UTM zone 23S|2600|183|0|en|proj=utm zone=23 south
32724|P|WGS 84 / UTM zone 24S|2601|183|0|en|proj=utm zone=24 south
32725|P|WGS 84 / UTM zone 25S|2602|183|0|en|proj=utm zone=25 south
32726|P|WGS 84 / UTM zone 26S|2485|183|0|en|proj=utm zone=26 south
32727|P|WGS 84 / UTM zone 27S|2486|183|0|en|proj=utm zone=27 south
32728|P|WGS 84 / UTM zone 28S|2487|183|0|en|proj=utm zone=28 south
32729|P|WGS 84 / UTM zone 29S|2488|183|0|en|proj=utm zone=29 south
32730|P|WGS 84 / UTM zone 30S|2489|183|0|en|proj=utm zone=30 south
32731|P|WGS 84 / UTM zone 31S|2490|183|0|en|proj=utm zone=31 south
32732|P|WGS 84 / UTM zone 32S|2603|183|0|en|proj=utm zone=32 south
32733|P|WGS 84 / UTM zone 33S|2604|183|0|en|proj=utm zone=33 south
32734|P|WGS 84 / UTM zone 34S|2605|183|0|en|proj=utm zone=34 south
32735|P|WGS 84 / UTM zone 35S|2606|183|0|en|proj=utm zone=35 south
32736|P|WGS 84 / UTM zone 36S|2607|183|0|en|proj=utm zone=36 south
32737|P|WGS 84 / UTM zone 37S|2608|183|0|en|proj=utm zone=37 south
32738|P|WGS 84 / UTM zone 38S|2609|183|0|en|proj=utm zone=38 south
32739|P|WGS 84 / UTM zone 39S|2610|183|0|en|proj=utm zone=39 south
32740|P|WGS 84 / UTM zone 40S|2611|183|0|en|proj=utm zone=40 south
32741|P|WGS 84 / UTM zone 41S|2500|183|0|en|proj=utm zone=41 south
32742|P|WGS 84 / UTM zone 42S|2501|183|0|en|proj=utm zone=42 south
32743|P|WGS 84 / UTM zone 43S|2502|183|0|en|proj=utm zone=43 south
32744|P|WGS 84 / UTM zone 44S|2503|183|0|en|proj=utm zone=44 south
32745|P|WGS 84 / UTM zone 45S|2504|183|0|en|proj=utm zone=45 south
32746|P|WGS 84 / UTM zone 46S|2505|183|0|en|proj=utm zone=46 south
32747|P|WGS 84 / UTM zone 47S|2612|183|0|en|proj=utm zone=47 south
32748|P|WGS 84 / UTM zone 48S|2613|183|0|en|proj=utm zone=48 south
32749|P|WGS 84 / UTM zone 49S|2614|183|0|en|proj=utm zone=49 south
32750|P|WGS 84 / UTM zone 50S|2615|183|0|en|proj=utm zone=50 south
32751|P|WGS 84 / UTM zone 51S|2616|183|0|en|proj=utm zone=51 south
32752|P|WGS 84 / UTM zone 52S|2617|183|0|en|proj=utm zone=52 south
32753|P|WGS 84 / UTM zone 53S|2618|183|0|en|proj=utm zone=53 south
32754|P|WGS 84 / UTM zone 54S|2619|183|0|en|proj=utm zone=54 south
32755|P|WGS 84 / UTM zone 55S|2620|183|0|en|proj=utm zone=55 south
32756|P|WGS 84 / UTM zone 56S|2621|183|0|en|proj=utm zone=56 south
32757|P|WGS 84 / UTM zone 57S|2516|183|0|en|proj=utm zone=57 south
32758|P|WGS 84 / UTM zone 58S|2517|183|0|en|proj=utm zone=58 south
32759|P|WGS 84 / UTM zone 59S|2622|183|0|en|proj=utm zone=59 south
32760|P|WGS 84 / UTM zone 60S|2623|183|0|en|proj=utm zone=60 south
32761|P|WGS 84 / UPS South (N,E)|974|183|0|ne|proj=stere lat_0=-90 lon_0=0 k=0.994 x_0=2000000 y_0=2000000
32766|P|WGS 84 / TM 36 SE|2624|183|0|en|proj=tmerc lat_0=0 lon_0=36 k=0.9996 x_0=500000 y_0=10000000
`;
