/**
 * Published transformations between datums, one a line; built by build-transformations.mjs, not written by hand.
 *
 * From the EPSG Geodetic Parameter Dataset v10.076, owned by IOGP and used under its terms of use, as it comes with PROJ.
 */

/** name | south west north east */
export const AREAS = `
Austria - Styria.|46.64 13.58 47.84 16.17
Kuwait - onshore.|28.53 46.54 30.09 48.48
Kuwait - onshore north of a line between Al Jahra' and the Kuwait/Iraq/Saudi Arabia border tripoint.|29.1 46.54 30.09 48.42
Kuwait - onshore south of a line between Al Jahra' and the Kuwait/Iraq/Saudi Arabia border tripoint.|28.53 46.54 29.45 48.48
Kuwait - Kuwait City.|29.17 47.78 29.45 48.16
Laos.|13.92 100.09 22.5 107.64
Nigeria - offshore blocks OPL 210, 213, 217 and 218.|3.24 4.41 5.54 6.29
Guam - onshore.|13.18 144.58 13.7 145.01
Israel - onshore; Palestine Territory - onshore.|29.45 34.17 33.28 35.69
Israel and Palestine Territory - offshore Mediterranean Sea; Türkiye (Turkey) - offshore Black Sea.|31.35 28.03 43.45 41.47
New Zealand - Chatham Islands group - onshore.|-44.64 -177.25 -43.3 -175.54
Jamaica - onshore.|17.64 -78.43 18.58 -76.17
Jordan.|29.18 34.88 33.38 39.31
Italy - offshore - Adriatic Sea - North Ancona.|43.62 12.22 45.73 13.96
Italy - offshore - Adriatic Sea - South Ancona and North Gargano.|41.95 13.61 44.04 16.14
Italy - offshore - Adriatic Sea - South Gargano.|40.72 15.95 42.28 18.63
Italy - offshore - Otranto channel.|39.77 17.95 41.03 18.99
Italy - offshore - north Ionian Sea.|37.67 16.55 40.47 18.93
Italy - offshore - Strait of Sicily - east of 13°E (of Greenwich).|35.22 13 37.48 15.16
Italy - offshore - Strait of Sicily - west of 13°E (of Greenwich).|35.28 10.68 38.45 13.01
Italy - onshore and offshore; San Marino, Vatican City State.|34.76 5.93 47.1 18.99
Eritrea; Ethiopia; South Sudan; Sudan.|3.4 21.82 22.24 47.99
Burkina Faso.|9.39 -5.53 15.09 2.4
Cameroon - onshore.|1.65 8.45 13.09 16.21
Ethiopia.|3.4 32.99 14.89 47.99
Mali.|10.14 -12.25 25.01 4.26
Senegal - onshore.|12.29 -17.59 16.7 -11.36
South Sudan. Sudan - onshore.|3.49 21.82 22.24 38.66
Somalia - onshore.|-1.71 40.98 12.03 51.47
Australia - Australian Capital Territory; New South Wales; Northern Territory; Queensland; South Australia; Tasmania; Western Australia; Victoria.|-43.7 112.85 -9.86 153.69
Australia - Queensland, South Australia, Western Australia, federal areas offshore west of 129°E.|-38.53 109.23 -9.37 153.61
Bahrain - onshore.|25.53 50.39 26.34 50.85
Saudi Arabia - onshore.|16.37 34.51 32.16 55.67
Netherlands - onshore, including Waddenzee, Dutch Wadden Islands and 12-mile offshore coastal zone.|50.75 3.2 53.7 7.22
Botswana; Eswatini (Swaziland); Lesotho; Malawi; Zambia; Zimbabwe.|-30.66 19.99 -8.19 35.93
Botswana.|-26.88 19.99 -17.78 29.38
Lesotho.|-30.66 27.01 -28.57 29.46
Malawi.|-17.14 32.68 -9.37 35.93
Eswatini (Swaziland).|-27.32 30.79 -25.72 32.14
Zambia.|-18.08 21.99 -8.19 33.71
Zimbabwe.|-22.42 25.23 -15.61 33.08
Kenya; Tanzania.|-11.75 29.34 4.63 41.91
Bermuda - onshore.|32.21 -64.89 32.43 -64.61
Colombia - mainland and offshore Caribbean.|-4.23 -79.1 13.68 -66.87
Argentina - mainland onshore and Atlantic offshore Tierra del Fuego.|-54.93 -73.59 -21.78 -53.65
South Africa - mainland onshore.|-34.88 16.45 -22.13 32.95
Tunisia - onshore and offshore.|30.23 7.49 38.41 13.67
Paraguay - north of 22°S.|-22 -62.57 -19.29 -57.81
Brazil - onshore - west of 54°W and south of 18°S; also south of 15°S between 54°W and 42°W; also east of 42°W.|-33.78 -58.16 -2.68 -34.74
Austria; Belgium; Denmark; Finland; Faroe islands; France; Germany (west); Gibraltar; Greece; Italy; Luxembourg; Netherlands; Norway; Portugal; Spain; Sweden; Switzerland.|34.88 -9.56 71.21 31.59
Austria; Denmark; France; Germany (west); Netherlands; Switzerland.|42.33 -4.87 57.8 17.17
Cyprus - onshore and offshore.|32.88 29.95 36.21 35.2
Egypt - Western Desert.|25.71 24.7 31.68 30
Channel islands - onshore. Ireland - onshore. Isle of Man - onshore. United Kingdom (UK) - onshore - England; Scotland; Wales; Northern Ireland.|49.11 -10.56 60.9 1.84
Finland and Norway - onshore.|57.93 4.68 71.21 31.59
Greece - onshore.|34.88 19.57 41.75 28.3
Iran - onshore and offshore.|23.34 44.03 39.78 63.34
Italy - Sardinia onshore.|38.82 8.08 41.31 9.89
Italy - Sicily onshore.|36.59 12.36 38.35 15.71
Malta - onshore.|35.74 14.27 36.05 14.63
Portugal; Spain - mainland.|35.26 -9.56 43.82 3.39
Denmark - North Sea; Germany - North Sea; Netherlands - offshore; Norway - North Sea south of 62°N; United Kingdom (UKCS) - North Sea south of 62°N.|51.03 -5.05 62.01 11.14
Norway - offshore north of 65°N. Also Svalbard.|65 -3.35 84.73 38.01
Egypt - onshore and offshore.|21.89 24.7 33.82 37.91
Europe - onshore and offshore: Albania; Andorra; Austria; Belgium; Bosnia and Herzegovina; Bulgaria; Croatia; Cyprus; Czechia; Denmark; Estonia; Faroe Islands; Finland; France; Germany; Gibraltar; Greece; Hungary; Ireland; Italy; Kosovo; Latvia; Liechtenstein; Lithuania; Luxembourg; Malta; Moldova; Monaco; Montenegro; Netherlands; North Macedonia; Norway including Svalbard and Jan Mayen; Poland; Portugal; Romania; San Marino; Serbia; Slovakia; Slovenia; Spain; Sweden; Switzerland; United Kingdom (UK) including Channel Islands and Isle of Man; Vatican City State.|32.88 -16.1 84.73 40.18
Australia including Lord Howe Island, Macquarie Island, Ashmore and Cartier Islands, Christmas Island, Cocos (Keeling) Islands, Norfolk Island. All onshore and offshore.|-60.55 93.41 -8.47 173.34
New Zealand - North Island, South Island, Stewart Island - onshore and nearshore.|-47.65 165.87 -33.89 179.27
Taiwan, Republic of China - onshore - Taiwan Island, Penghu (Pescadores) Islands.|21.87 119.25 25.34 122.06
Thailand - onshore.|5.63 97.34 20.46 105.64
Thailand - onshore plus offshore Gulf of Thailand.|5.63 97.34 20.46 105.64
Bangladesh - onshore.|20.52 88.01 26.64 92.67
India - mainland onshore; Nepal.|8.02 68.13 35.51 97.42
Sri Lanka - onshore.|5.86 79.64 9.88 81.95
Malaysia - West Malaysia onshore and offshore east coast; Singapore - onshore and offshore.|1.13 99.59 7.81 105.82
Ghana - onshore and offshore.|1.4 -3.79 11.16 2.1
Liberia - onshore.|4.29 -11.52 8.52 -7.36
Philippines - onshore excluding Mindanao.|7.75 116.89 19.45 125.88
Philippines - Mindanao onshore.|4.99 119.76 10.52 126.65
Gabon - onshore and offshore.|-6.37 7.03 2.32 14.52
Seychelles - Mahe Island.|-4.86 55.3 -4.5 55.59
Eritrea - onshore and offshore.|12.36 36.44 18.1 43.31
Morocco - onshore.|27.66 -13.24 35.97 -1.01
Nigeria - onshore and offshore.|1.92 2.66 13.9 14.65
Antigua; Barbados; Barbuda; Cuba; Dominican Republic; Grand Cayman; Jamaica; Turks and Caicos Islands. Note: does not include other islands within this geographic area.|13 -85.01 23.25 -59.37
Onshore Belize, Costa Rica, El Salvador, Guatemala, Honduras and Nicaragua.|7.98 -92.29 18.49 -82.53
Canada - onshore - Alberta; British Columbia; Manitoba; New Brunswick; Newfoundland and Labrador; Northwest Territories; Nova Scotia; Nunavut; Ontario; Prince Edward Island; Quebec; Saskatchewan; Yukon; offshore east coast west of 44°W and north of 40°N.|40 -141.01 83.17 -44
United States (USA) - CONUS onshore - Alabama; Arizona; Arkansas; California; Colorado; Connecticut; Delaware; Florida; Georgia; Idaho; Illinois; Indiana; Iowa; Kansas; Kentucky; Louisiana; Maine; Maryland; Massachusetts; Michigan; Minnesota; Mississippi; Missouri; Montana; Nebraska; Nevada; New Hampshire; New Jersey; New Mexico; New York; North Carolina; North Dakota; Ohio; Oklahoma; Oregon; Pennsylvania; Rhode Island; South Carolina; South Dakota; Tennessee; Texas; Utah; Vermont; Virginia; Washington; West Virginia; Wisconsin; Wyoming.|24.41 -124.79 49.38 -66.91
United States (USA) - CONUS east of Mississippi River - onshore - including entire states of Louisiana; Missouri; Minnesota as well as Alabama; Connecticut; Delaware; Florida; Georgia; Illinois; Indiana; Kentucky; Maine; Maryland; Massachusetts; Michigan; Mississippi; New Hampshire; New Jersey; New York; North Carolina; Ohio; Pennsylvania; Rhode Island; South Carolina; Tennessee; Vermont; Virginia; West Virginia; Wisconsin.|24.41 -97.22 49.38 -66.91
United States (USA) - CONUS west of Mississippi River - onshore - excludes those states covered under Area 2389 - Includes Arizona; Arkansas; California; Colorado; Idaho; Iowa; Kansas; Montana; Nebraska; Nevada; New Mexico; North Dakota; Oklahoma; Oregon; South Dakota; Texas; Utah; Washington; Wyoming.|25.83 -124.79 49.05 -89.64
United States (USA) - Alaska mainland.|54.34 -168.26 71.4 -129.99
Bahamas - onshore southwest of a line from 27°30'N, 77°30'W through 23°15'N, 74°30'W to 22°30'N, 72°30'W.|20.86 -79.04 27.29 -72.68
Bahamas (San Salvador Island) - onshore.|23.9 -74.6 24.19 -74.37
Canada - Alberta; British Columbia.|48.25 -139.04 60.01 -109.98
Canada - Manitoba; Ontario.|41.67 -102 60.01 -74.35
Canada - onshore - New Brunswick; Newfoundland and Labrador; Nova Scotia; Prince Edward Island; Quebec.|43.41 -79.85 62.62 -52.54
Canada - Northwest Territories; Nunavut; Saskatchewan.|49 -136.46 83.17 -60.72
Canada - Yukon.|59.99 -141.01 69.7 -123.91
Panama - Canal Zone.|8.82 -80.07 9.45 -79.46
Cuba - onshore.|19.77 -85.01 23.25 -74.07
Greenland - Hayes Peninsula.|75.86 -73.29 79.2 -60.98
Mexico - onshore.|14.51 -118.47 32.72 -86.68
North America - onshore and offshore: Canada - Alberta; British Columbia; Manitoba; New Brunswick; Newfoundland and Labrador; Northwest Territories; Nova Scotia; Nunavut; Ontario; Prince Edward Island; Quebec; Saskatchewan; Yukon. United States (USA) - Alabama; Alaska (mainland); Arizona; Arkansas; California; Colorado; Connecticut; Delaware; Florida; Georgia; Idaho; Illinois; Indiana; Iowa; Kansas; Kentucky; Louisiana; Maine; Maryland; Massachusetts; Michigan; Minnesota; Mississippi; Missouri; Montana; Nebraska; Nevada; New Hampshire; New Jersey; New Mexico; New York; North Carolina; North Dakota; Ohio; Oklahoma; Oregon; Pennsylvania; Rhode Island; South Carolina; South Dakota; Tennessee; Texas; Utah; Vermont; Virginia; Washington; West Virginia; Wisconsin; Wyoming.|23.81 -172.54 86.46 -47.74
Oman - Masirah Island.|20.12 58.58 20.74 59.01
Saudi Arabia - onshore Arabian Gulf coastal area.|24.63 47.95 28.57 50.81
United Arab Emirates (UAE) - onshore and offshore. Abu Dhabi, Dubai, Sharjah, Umm al Qaywayn, Al Fujairah, Ras al Khaymah.|22.63 51.5 26.27 57.13
Trinidad and Tobago - Tobago - onshore.|11.08 -60.9 11.41 -60.44
France - onshore - mainland and Corsica.|41.31 -4.87 51.14 9.63
United Kingdom (UK) - Great Britain - England and Wales onshore, Scotland onshore and Western Isles nearshore including Sea of the Hebrides and The Minch; Isle of Man onshore.|49.79 -8.82 60.94 1.92
United Kingdom (UK) - England onshore.|49.81 -6.5 55.85 1.84
United Kingdom (UK) - England and Wales; Isle of Man - onshore.|49.81 -6.5 55.85 1.84
United Kingdom (UK) - Scotland (including Orkney and Shetland Islands), onshore and nearshore.|54.57 -8.74 60.9 -0.65
United Kingdom (UK) - Wales onshore.|51.28 -5.34 53.48 -2.65
Congo - onshore and offshore.|-6.91 8.84 3.72 18.65
Bolivia; Chile - onshore north of 43°30'S; Ecuador - mainland onshore; Guyana - onshore; Peru - onshore; Venezuela - onshore.|-43.5 -81.41 12.25 -56.47
Bolivia.|-22.91 -69.66 -9.67 -57.52
Chile - onshore north of 21°30'S.|-21.51 -70.49 -17.5 -68.18
Chile - onshore between 39°S and 43°30'S.|-43.5 -74.48 -38.99 -71.38
Colombia - mainland onshore.|-4.23 -79.1 12.52 -66.87
Ecuador - mainland - onshore.|-5.01 -81.03 1.45 -75.21
Guyana - onshore and offshore.|1.18 -61.39 10.7 -55.77
Peru - onshore.|-18.35 -81.41 -0.03 -68.67
Venezuela - onshore.|0.64 -73.38 12.25 -59.8
Argentina - onshore and offshore.|-58.41 -73.59 -21.78 -52.63
Falkland Islands (Malvinas) - East Falkland Island.|-52.51 -59.98 -51.16 -57.6
Namibia - onshore and offshore.|-30.64 8.24 -16.95 25.27
Brunei - onshore and offshore; Malaysia - East Malaysia (Sabah; Sarawak) - onshore and offshore.|0.85 109.31 7.67 119.61
Japan - onshore; South Korea - onshore.|20.37 122.83 45.54 145.87
Japan - onshore mainland and adjacent islands.|30.18 128.31 45.54 145.87
Republic of Korea (South Korea) - onshore.|33.14 124.53 38.64 131.01
Japan - onshore Okinawa.|23.98 122.83 26.91 131.38
Suriname - onshore and offshore.|1.83 -58.08 9.35 -52.66
World.|-90 -180 90 180
World. Vietnam - offshore.|-90 -180 90 180
Hungary.|45.74 16.11 48.58 22.9
Russian Federation - onshore and offshore.|39.87 18.92 85.19 -168.97
Indonesia - onshore.|-10.98 95.16 5.97 141.01
United States (USA) - Alaska - Aleutian Islands onshore east of 180°E.|51.54 -178.3 54.34 -164.84
United States (USA) - Alaska - Aleutian Islands onshore west of 180°W.|51.3 172.42 53.07 179.86
United States (USA) - Alaska - Aleutian Islands onshore.|51.3 172.42 54.34 -164.84
United States (USA) - Hawaii - main islands onshore and offshore.|15.56 -163.74 25.58 -151.27
Algeria - onshore.|18.97 -8.67 37.14 11.99
Algeria - onshore north of 32°N.|31.99 -2.95 37.14 9.09
Oman - mainland onshore.|16.59 51.99 26.42 59.91
Russian Federation - onshore.|41.19 19.58 81.91 -168.97
Lithuania - onshore.|53.89 20.86 56.45 26.82
France - onshore and offshore, mainland and Corsica (France métropolitaine including Corsica).|41.15 -9.86 51.56 10.38
Lithuania - onshore and offshore.|53.89 19.02 56.45 26.82
Kenya - onshore.|-4.72 33.9 4.63 41.91
Tanzania - onshore.|-11.75 29.34 -0.99 40.48
Latvia - onshore.|55.67 20.87 58.09 28.24
Kazakhstan - onshore including Caspian Sea.|40.59 46.49 55.45 87.35
Trinidad and Tobago - Trinidad - onshore and offshore.|9.83 -62.09 11.51 -60
Mozambique - onshore.|-26.87 30.21 -10.42 40.9
Mozambique - Maputo province and southern part of Gaza province; i.e. south of approximately 24°S.|-26.87 31.91 -23.91 34.5
Mozambique - provinces of Gaza; Inhambane and southern parts of Sofala and Manhica; i.e. between approximately 24°S and 20°S.|-24.91 31.29 -19.74 35.65
Mozambique - provinces of Sofala north of Beira corridor; Manhica; Tete and Zambezia; i.e. between approximately 20°S and 16°S.|-19.91 30.21 -14.01 39.18
Mozambique - provinces of Nampula; Niassa; Cabo Delgado; i.e. north of approximately 16°S.|-16.94 34.36 -10.42 40.9
Mozambique - onshore and offshore.|-27.71 30.21 -10.09 43.03
Kazakhstan - Caspian Sea.|41.15 48.9 46.97 53.15
Germany - states of former West Germany onshore - Baden-Wurtemberg, Bayern, Bremen, Hamburg, Hessen, Niedersachsen, Nordrhein-Westfalen, Rheinland-Pfalz, Saarland, Schleswig-Holstein.|47.27 5.86 55.09 13.84
Denmark - offshore North Sea; Ireland - offshore; Netherlands - offshore; United Kingdom - UKCS offshore.|47.42 -16.1 63.89 10.86
Angola - Angola proper - offshore.|-17.26 8.2 -6.01 13.86
Angola - offshore block 5.|-8.59 12.58 -7.75 13.4
Angola - offshore block 2.|-7.01 12.08 -6.01 12.84
Angola - offshore blocks 1 and 16.|-7.26 11.08 -6.03 12.09
Angola - offshore blocks 7 and 8. Also used rounded to integer metre in offshore block 24 and for GSI/HGS/Western Geophysical speculative seismic data throughout offshore Angola.|-17.26 8.2 -6.01 13.86
Angola - offshore block 3.|-7.34 11.74 -6.66 12.5
Angola - offshore block 7.|-10.09 12.66 -9.41 13.39
Angola - offshore blocks 3, 7,15 and 17.|-10.09 10.83 -6.03 13.39
Angola - offshore blocks 1, 16 and 18.|-8.34 11.08 -6.03 12.75
Angola - offshore blocks 2, 3, 17, 18, 31, 32 and 33.|-8.59 10.41 -6.01 12.84
Angola (Cabinda) - offshore; The Democratic Republic of the Congo (Zaire) - offshore.|-6.04 10.53 -5.05 12.37
Estonia - onshore.|57.52 21.74 59.75 28.2
Sweden - onshore and offshore.|54.96 10.03 69.07 24.17
Oman - onshore. Includes Musandam and the Kuria Muria (Al Hallaniyah) islands.|16.59 51.99 26.58 59.91
Antigua island - onshore.|16.94 -61.95 17.22 -61.61
Dominica - onshore.|15.14 -61.55 15.69 -61.2
Grenada - main island - onshore.|11.94 -61.84 12.29 -61.54
Montserrat - onshore.|16.62 -62.29 16.87 -62.08
St Kitts and Nevis - onshore.|17.06 -62.92 17.46 -62.5
St Lucia - onshore.|13.66 -61.13 14.16 -60.82
Australia - Australian Capital Territory.|-35.93 148.76 -35.12 149.4
Australia - Tasmania including islands - onshore.|-43.7 143.77 -39.52 148.55
Australia - New South Wales and Victoria.|-39.2 140.96 -28.15 153.69
Côte d'Ivoire (Ivory Coast) - Abidjan area.|5.15 -4.22 5.54 -3.85
Côte d'Ivoire (Ivory Coast) - onshore and offshore.|1.02 -8.61 10.74 -2.48
Eswatini (Swaziland); Lesotho; South Africa - onshore and offshore.|-50.32 13.33 -22.13 42.85
Liechtenstein; Switzerland.|45.82 5.96 47.81 10.49
Iran - Taheri refinery site.|27.39 52.5 27.61 52.71
Iran - Kangan district.|27.3 51.8 28.2 53.01
Venezuela - east - Delta Amacuro; Anzoategui; Bolivar; Monagas; Sucre states.|3.56 -67.49 10.8 -59.8
Guinea - onshore.|7.19 -15.13 12.68 -7.65
Argentina - Neuquen province - Auca Mahuida area.|-38.75 -69.5 -37.5 -68.25
Argentina - Tierra del Fuego onshore.|-55.11 -68.64 -52.59 -63.73
Cuba - onshore and offshore.|18.83 -87.01 25.51 -73.57
United Arab Emirates (UAE) - Abu Dhabi offshore - Abu al Bu Khoosh.|25.33 53.03 25.54 53.4
Myanmar (Burma) - Moattama area.|9.48 93.94 17.87 99.66
Qatar - offshore.|24.64 50.55 27.05 53.04
Thailand - Bongkot field.|6.74 102.16 8.16 103.05
Tunisia - offshore.|33.22 7.81 38.41 13.67
Yemen - South Yemen onshore mainland.|12.54 43.37 19 53.14
Yemen - onshore and offshore.|8.95 41.08 19 57.96
Vietnam - offshore - Cuu Long basin and northwestern part of Nam Con Son basin.|7.99 106.54 11.15 110
Vietnam - onshore between 14°N and 18°N.|14 105.61 18.01 109.36
Vietnam - Con Son Island.|8.57 106.48 8.83 106.8
Vietnam - onshore Vung Tau area.|9.03 105.49 11.04 107.58
Guinea-Bissau - onshore.|10.87 -16.77 12.69 -13.64
Brazil - Tucano basin north.|-9.8 -39.04 -8.39 -37.09
Brazil - Tucano basin central.|-10.61 -39.14 -9.79 -37.99
Brazil - Tucano basin south.|-12.27 -39.07 -10.6 -37.98
Trinidad and Tobago - Trinidad - onshore.|9.99 -61.98 10.9 -60.85
Algeria - Hassi Messaoud.|31.48 5.59 32.09 6.5
Qatar - onshore.|24.55 50.69 26.2 51.68
New Zealand - onshore and offshore. Includes Antipodes Islands, Auckland Islands, Bounty Islands, Chatham Islands, Cambell Island, Kermadec Islands, Raoul Island and Snares Islands.|-55.95 160.6 -25.88 -171.2
Ghana - offshore.|1.4 -3.79 6.06 2.1
American Samoa - Tutuila, Aunu'u, Ofu, Olesega and Ta'u islands.|-14.43 -170.88 -14.11 -169.38
American Samoa - onshore - Tutuila, Aunu'u, Ofu, Olesega, Ta'u and Rose islands. Guam - onshore. Northern Mariana Islands - onshore. Puerto Rico - onshore. United States (USA) - onshore Alabama, Alaska, Arizona, Arkansas, California, Colorado, Connecticut, Delaware, Florida, Georgia, Hawaii, Idaho, Illinois, Indiana, Iowa, Kansas, Kentucky, Louisiana, Maine, Maryland, Massachusetts, Michigan, Minnesota, Mississippi, Missouri, Montana, Nebraska, Nevada, New Hampshire, New Jersey, New Mexico, New York, North Carolina, North Dakota, Ohio, Oklahoma, Oregon, Pennsylvania, Rhode Island, South Carolina, South Dakota, Tennessee, Texas, Utah, Vermont, Virginia, Washington, West Virginia, Wisconsin and Wyoming; offshore Gulf of Mexico continental shelf (GoM OCS). US Virgin Islands - onshore.|-14.59 144.58 71.4 -64.51
South America - onshore and offshore. Ecuador (mainland and Galapagos) - onshore and offshore.|-59.87 -113.21 16.75 -26
Bolivia - Madidi.|-14.43 -68.96 -13.56 -67.79
Bolivia - Block 20.|-21.71 -63.44 -21.09 -62.95
Syria - Deir area (35°22'N, 40°06'E)|34.49 39.3 35.9 40.81
Syria - Shaddadeh area (36°N, 41°E)|35.79 40.5 36.5 41.39
Brunei Darussalam - onshore and offshore.|4.01 112.37 6.31 115.37
Australia - Northern Territory.|-26.01 128.99 -10.86 138
Colombia - Casanare province BP Cusiana/Cupiagua field areas. Also used by Total in Rivera and Gatanas blocks.|4.75 -73 5.68 -72.25
Belgium - onshore.|49.5 2.5 51.51 6.4
Ireland - onshore. United Kingdom (UK) - Northern Ireland (Ulster) - onshore.|51.39 -10.56 55.43 -5.34
Norway - offshore north of 62°N. Also Svalbard - onshore and offshore.|62 -3.35 84.73 38.01
Norway - offshore south of 62°N - North Sea.|56.08 1.37 62 11.14
Sierra Leone - onshore.|6.88 -13.35 10 -10.26
Brunei Darussalam - onshore.|4.01 114.09 5.11 115.37
Oman - block 4.|19.58 56.5 21.17 59.02
Austria.|46.4 9.53 49.02 17.17
Czechia.|48.58 12.09 51.06 18.86
Denmark - onshore.|54.51 8 57.8 15.25
Gibraltar - onshore and offshore.|36 -5.42 36.16 -4.89
Spain - Balearic Islands.|38.59 1.12 40.15 4.39
Spain - onshore mainland except northwest (north of 41°30'N and west of 4°30'W).|35.26 -7.54 43.56 3.39
Spain - onshore mainland north of 41°30'N and west of 4°30' W.|41.5 -9.37 43.82 -4.5
Finland - onshore.|59.75 19.24 70.09 31.59
Luxembourg.|49.44 5.73 50.19 6.53
Poland - onshore.|49 14.14 54.89 24.15
Estonia - onshore and offshore.|57.52 20.37 60 28.2
Norway - onshore.|57.93 4.68 71.21 31.22
Portugal - mainland - onshore.|36.95 -9.56 42.16 -6.19
Italy - mainland including San Marino and Vatican City State.|37.86 6.62 47.1 18.58
Germany - states of former East Germany - Berlin, Brandenburg; Mecklenburg-Vorpommern; Sachsen; Sachsen-Anhalt; Thuringen.|50.2 9.92 54.74 15.04
Nigeria - onshore south.|4.22 4.35 6.95 9.45
Venezuela - onshore and offshore.|0.64 -73.38 16.75 -58.95
Germany - states of former West Germany - south of 50°20'N.|47.27 6.11 50.34 13.84
Germany - states of former West Germany - between 50°20'N and 52°20'N.|50.33 5.86 52.34 12.03
Germany - states of former West Germany - onshore north of 52°20'N.|52.33 6.58 55.09 11.59
Türkiye (Turkey) - onshore and offshore.|34.42 25.62 43.45 44.83
Cameroon - coastal area.|2.16 8.45 4.99 10.4
Greenland - west coast onshore.|59.74 -73.29 79 -42.52
Greenland - Scoresbysund area onshore.|68.66 -29.69 74.58 -19.89
Greenland - Ammassalik area onshore.|65.52 -38.86 65.91 -36.81
Congo - coastal area and offshore.|-6.91 8.84 -3.55 12.34
Cameroon - Garoua area.|8.92 12.9 9.87 14.19
Cameroon - N'Djamena area.|11.7 14.17 12.77 15.09
Azerbaijan - onshore and offshore.|37.89 44.77 42.59 51.73
Azerbaijan (including Caspian) and Georgia onshore.|37.89 39.99 43.59 51.73
Azerbaijan - coastal area Baku to Astara.|38.31 48.93 40.33 50.4
Brazil - offshore shelf - Amazon cone.|-1.05 -51.64 5.6 -48
Indonesia - southern Java Sea offshore northwest Java.|-6.89 105.77 -4.07 110.01
Indonesia - offshore Madura Strait and western Bali Sea.|-8.46 112.8 -6.8 117.01
Algeria - District 3 (In Salah).|25 1 32 3.3
Algeria - In Amenas block.|27.5 8.83 28.3 9.92
Algeria - Hassi Bir Reikaz.|31.75 7.16 32.42 8
Nigeria - offshore beyond continental shelf.|1.92 2.66 6.14 7.82
Nigeria - offshore blocks OPL 209, 219 and 220.|3.25 4.01 5.54 6.96
Nigeria - offshore blocks OML 99-102 and OPL 222 and 223.|3.25 7.16 4.51 8.25
Nigeria - offshore blocks OPL 209-213 and 316.|4.22 3.83 6.31 5.17
Nigeria - offshore blocks OPL 217-223.|3.24 5.58 3.86 8
Nigeria - onshore - Gongola Basin|8.78 9.41 11.63 12.13
China - Hong Kong - onshore and offshore.|22.13 113.76 22.58 114.51
Japan - onshore and offshore, excluding northern prefectures of 'main province' (see remarks).|17.09 122.38 46.05 157.65
Senegal - onshore and offshore.|10.64 -20.22 16.7 -11.36
Indonesia - east Kalimantan - Mahakam delta coastal and offshore shelf areas.|-1.24 116.72 0 117.99
Niger - southeast|12.8 7.81 16.7 14.9
Canada - onshore and offshore - Alberta; British Columbia; Manitoba; New Brunswick; Newfoundland and Labrador; Northwest Territories; Nova Scotia; Nunavut; Ontario; Prince Edward Island; Quebec; Saskatchewan; Yukon.|38.21 -141.01 86.46 -40.73
Malaysia - East Malaysia (Sabah; Sarawak) - offshore South China Sea.|1.56 109.31 7.67 117.31
Ireland - offshore - Corrib and Errigal fields.|53.75 -12.5 55.76 -9.49
Iran - Lavan Island and Balal field.|26.21 52.49 26.87 53.43
Iran - Kharg Island.|29.16 50.22 29.39 50.42
Iran - South Pars field phases 2 and 3.|26.58 52.07 26.71 52.28
Libya - Murzuq and En Naga fields.|27.32 18.37 27.67 18.72
Libya - Mabruk field.|29.61 17.13 30.07 17.51
South America - onshore north of 45°S excluding Amazonia.|-45 -81.41 12.52 -34.74
Argentina - mainland onshore.|-52.43 -73.59 -21.78 -53.65
Brazil - onshore southeast of a line beginning at the intersection of the 53°W meridian with the northern national boundary then running southwards to 14°S, then westwards to the national boundary.|-33.78 -60.58 4.43 -34.74
Chile - onshore north of 45°S.|-45 -75.22 -17.5 -67
Ecuador - Baltra; Galapagos - onshore.|-1.41 -91.72 0.18 -89.19
Guyana - onshore.|1.18 -61.39 8.58 -56.47
Paraguay.|-27.59 -62.65 -19.29 -54.24
Brazil - onshore and offshore. Includes Rocas, Fernando de Noronha archipelago, Trindade, Ihlas Martim Vaz and Sao Pedro e Sao Paulo.|-35.71 -74.01 7.04 -25.28
Burkina Faso - central; Niger - southwest, in proximity to the parallel of latitude of 12°N.|11.83 -4.64 14.23 4
Portugal - eastern Azores onshore - Sao Miguel, Santa Maria, Formigas.|36.87 -25.92 37.96 -24.72
Portugal - central Azores onshore - Faial, Graciosa, Pico, Sao Jorge, Terceira.|38.32 -28.9 39.14 -26.97
Portugal - western Azores onshore - Flores, Corvo.|39.3 -31.34 39.77 -31.02
Portugal - Madeira, Porto Santo and Desertas islands - onshore.|32.35 -17.31 33.15 -16.23
Antarctica between 45°E and 136°E and between 142°E and 160°E - Australian sector.|-90 45 -60 160
Chile - Tierra del Fuego onshore.|-55.96 -74.83 -51.99 -66.33
Puerto Rico, US Virgin Islands and British Virgin Islands - onshore.|17.62 -67.97 18.78 -64.25
Indonesia - Kalimantan - onshore southeast coastal area including Mahakam delta coastal and offshore shelf areas.|-4.24 114.55 0 117.99
Indonesia - northeast Kalimantan.|-0.06 116.96 4.29 119.06
Guadeloupe - onshore - St Martin and St Barthélemy islands.|17.82 -63.21 18.17 -62.73
Guadeloupe - onshore - Basse-Terre, Grande-Terre, La Desirade, Marie-Galante, Les Saintes.|15.8 -61.85 16.55 -60.97
French Guiana - coastal area.|3.43 -54.45 5.81 -51.61
Martinique - onshore.|14.35 -61.29 14.93 -60.76
Reunion - onshore and offshore.|-24.72 51.83 -18.28 58.24
French Polynesia - Society Islands - Bora Bora, Huahine, Raiatea and Tahaa.|-16.96 -151.91 -16.17 -150.89
French Polynesia - Marquesas Islands - Nuku Hiva, Ua Huka and Ua Pou.|-9.57 -140.31 -8.72 -139.44
Mayotte - onshore.|-13.05 44.98 -12.61 45.35
New Caledonia - Loyalty Islands - Lifou.|-21.24 166.98 -20.62 167.52
Antarctica - Adelie Land - Petrels island.|-66.78 139.44 -66.1 141.5
Antarctica - Adelie Land - coastal area between 136°E and 142°E.|-67.13 136 -65.61 142
St Pierre and Miquelon - onshore.|46.69 -56.48 47.19 -56.07
French Polynesia - Society Islands - Moorea and Tahiti.|-17.93 -150 -17.41 -149.09
Reunion - onshore.|-21.42 55.16 -20.81 55.91
New Caledonia - Loyalty Islands - Mare.|-21.71 167.75 -21.32 168.19
New Caledonia - Belep.|-19.85 163.54 -19.5 163.75
Canada - offshore Newfoundland and Labrador, New Brunswick and Nova Scotia - west of 44°W and north of 40°N.|40 -67.75 64.21 -43.99
Iceland - mainland.|63.34 -24.66 66.59 -13.38
Iceland - onshore and offshore.|59.96 -30.87 69.59 -5.55
United Kingdom (UK) - Northern Ireland (Ulster) - onshore.|53.96 -8.18 55.36 -5.34
Jan Mayen - onshore.|70.75 -9.17 71.24 -7.87
Latvia - onshore and offshore.|55.67 19.06 58.09 28.24
St Vincent and the northern Grenadine Islands - onshore.|12.54 -61.52 13.44 -61.07
New Caledonia - Grande Terre.|-22.45 163.92 -20.03 167.09
Portugal - Selvagens islands (Madeira province) - onshore.|29.98 -16.11 30.21 -15.79
Portugal - Madeira and Porto Santo islands onshore.|32.58 -17.31 33.15 -16.23
Portugal - eastern Azores - Sao Miguel island onshore.|37.65 -25.92 37.96 -25.08
Portugal - central Azores - Terceira island onshore.|38.57 -27.44 38.86 -26.97
Portugal - central Azores - Faial island onshore.|38.46 -28.9 38.7 -28.54
Portugal - central Azores - Pico island onshore.|38.32 -28.61 38.61 -27.98
Portugal - central Azores - Sao Jorge island onshore.|38.48 -28.37 38.8 -27.71
Iraq - Kuwait boundary.|29.06 46.36 30.32 48.61
Romania - onshore.|43.62 20.26 48.27 29.74
Germany - offshore North Sea.|53.6 3.34 55.92 8.88
Taiwan, Republic of China - onshore and offshore - Taiwan Island, Penghu (Pescadores) Islands.|17.36 114.32 26.96 123.61
Iraq - onshore and offshore.|29.06 38.79 37.39 48.75
Netherlands - offshore North Sea.|51.45 2.53 55.77 6.41
Europe - west.|34.88 -10.56 84.73 38.01
Slovenia - onshore.|45.42 13.38 46.88 16.61
Slovenia - onshore west of 14°30'E.|45.44 13.38 46.53 14.58
Slovenia - east of 14°30'E and north of 46°03'N.|46.14 14.54 46.88 16.61
Slovenia - east of 14°30'E and south of 46°09'N.|45.42 14.55 46.22 15.73
Slovenia - southeastern.|45.42 14.53 45.77 15.36
Slovenia - Dolenjska (Lower Carniola).|45.7 14.47 46.12 15.73
Slovenia - Stajerska (Slovene Styria).|46.1 14.74 46.76 16.27
Slovenia - Pomurje (the Mura Region).|46.47 15.96 46.88 16.61
Slovenia - Gorenjska (Upper Carniola) and northern Primorska.|46.05 13.38 46.53 14.82
Slovenia - onshore Primorska and Notranjska (Inner Carniola).|45.44 13.47 46.08 14.58
Slovenia - central.|45.91 14.21 46.31 15.28
Bosnia and Herzegovina; Croatia - onshore; Kosovo; Montenegro - onshore; North Macedonia; Serbia; Slovenia - onshore.|40.85 13.38 46.88 23.04
Croatia - onshore.|42.34 13.43 46.54 19.43
Montenegro - onshore.|41.79 18.45 43.56 20.38
Brazil - Distrito Federal.|-15.94 -48.1 -15.37 -47.1
Burundi.|-4.45 28.98 -2.3 30.86
The Democratic Republic of the Congo (Zaire) - south of a line through Bandundu, Seke and Pweto - onshore and offshore.|-13.46 11.79 -3.41 29.81
The Democratic Republic of the Congo (Zaire) - Katanga - Likasi-Lubumbashi area.|-12.01 26.38 -11.13 27.75
Serbia including Vojvodina.|42.23 18.81 46.19 23.01
Spain - Canary Islands onshore and offshore.|24.6 -21.93 32.76 -11.75
Mayotte - onshore and offshore.|-14.49 43.68 -11.33 46.7
St Pierre and Miquelon - onshore and offshore.|43.41 -57.1 47.37 -55.9
French Antilles onshore and offshore - Guadeloupe (including Grande Terre, Basse Terre, Marie Galante, Les Saintes, Iles de la Petite Terre, La Desirade); Martinique; St Barthélemy; St Martin.|14.08 -63.66 18.53 -57.52
Slovakia.|47.73 16.84 49.61 22.56
Mexico - onshore and offshore.|12.1 -122.19 32.72 -84.64
French Guiana - onshore and offshore.|2.11 -54.61 8.88 -49.45
Portugal - Azores and Madeira island groups and surrounding EEZ - Flores, Corvo; Graciosa, Terceira, Sao Jorge, Pico, Faial; Sao Miguel, Santa Maria; Madeira, Porto Santo, Desertas; Selvagens.|29.24 -35.58 43.07 -12.48
Portugal - Madeira island onshore.|32.58 -17.31 32.93 -16.66
Portugal - Porto Santo island (Madeira archipelago) onshore.|32.96 -16.44 33.15 -16.23
Portugal - eastern Azores - Santa Maria island onshore.|36.87 -25.26 37.08 -24.96
Portugal - central Azores - Graciosa island onshore.|38.97 -28.13 39.14 -27.88
Portugal - western Azores - Flores island onshore.|39.3 -31.34 39.58 -31.07
Portugal - western Azores - Corvo island onshore.|39.63 -31.18 39.77 -31.02
Brazil - offshore - Santos and Pelotas basins.|-35.71 -53.38 -22.66 -40.2
Brazil - offshore - Campos basin.|-25.91 -42.04 -20.45 -37.11
Brazil - offshore - Espirito Santo and Mucuri basins.|-22.04 -40.37 -17.59 -35.18
Brazil - offshore - Cumuruxatiba, Jequitinhonha and Camamu-Almada basins.|-17.7 -39.22 -13.01 -34.6
Brazil - offshore - Reconcavo and Jacuipe basins.|-13.57 -39.09 -11.18 -35.31
Brazil - Tucano North, Tucano Central, Tucano South and Jatoba basins.|-12.27 -39.14 -8.39 -37.09
Brazil - offshore - Sergipe and Alagoas basins.|-13.58 -37.34 -8.73 -32.01
Brazil - offshore - Paraiba-Pernambuco basin.|-10.17 -35.1 -4.6 -29.13
Brazil - offshore - Potiguar, Ceara and Barreirinhas basins.|-6.5 -44.79 4.26 -26
Iraq - onshore.|29.06 38.79 37.39 48.61
Vietnam - Mekong delta blocks DBSCL 02 and 03.|9.35 104.24 11.04 107.11
Bhutan.|26.7 88.74 28.33 92.13
Costa Rica - onshore and offshore.|2.15 -90.45 11.77 -81.43
Panama - onshore and offshore.|5 -84.32 12.51 -77.04
Peru - onshore and offshore.|-21.05 -84.68 -0.03 -68.67
Uruguay - onshore and offshore.|-37.77 -58.49 -30.09 -50.01
Uruguay - onshore.|-35 -58.49 -30.09 -53.09
El Salvador - onshore and offshore.|9.97 -91.43 14.44 -87.65
Costa Rica - onshore.|7.98 -85.97 11.22 -82.53
Martinique - onshore and offshore.|14.08 -62.82 16.36 -57.52
Papua New Guinea - onshore and offshore. Includes Bismark archipelago, Louisade archipelago, Admiralty Islands, d'Entrecasteaux Islands, northern Solomon Islands, Trobriand Islands, New Britain, New Ireland, Woodlark, and associated islands.|-14.75 139.2 2.58 162.81
Moldova.|45.44 26.63 48.47 30.13
Ukraine - onshore and offshore.|43.18 22.15 52.38 40.18
Fehmarnbelt area of Denmark and Germany.|54.33 10.66 54.83 12.01
United Kingdom (UK) - Wytch Farm area - onshore and offshore.|50.53 -2.2 50.8 -1.68
Algeria - Ahnet licence area.|26.06 1.24 27.51 2.92
Algeria - onshore and offshore.|18.97 -8.67 38.8 11.99
Papua New Guinea - Papuan fold and thrust belt.|-8.28 142.24 -5.59 144.75
Germany - onshore - states of Baden-Wurtemberg, Bayern, Berlin, Brandenburg, Bremen, Hamburg, Hessen, Mecklenburg-Vorpommern, Niedersachsen, Nordrhein-Westfalen, Rheinland-Pfalz, Saarland, Sachsen, Sachsen-Anhalt, Schleswig-Holstein, Thuringen.|47.27 5.86 55.09 15.04
Cayman Islands - Grand Cayman.|19.21 -81.46 19.41 -81.04
Cayman Islands - Little Cayman and Cayman Brac.|19.63 -80.14 19.78 -79.69
Cayman Islands - onshore and offshore. Includes Grand Cayman, Little Cayman and Cayman Brac.|17.58 -83.6 20.68 -78.72
Nigeria - onshore - block OML 124 (formerly OPL 118).|5.56 6.72 5.74 6.97
North Macedonia.|40.85 20.45 42.36 23.04
Nepal.|26.34 80.06 30.43 88.21
Australia - onshore and offshore to 200 nautical mile EEZ boundary. Includes Lord Howe Island, Ashmore and Cartier Islands.|-47.2 109.23 -8.88 163.2
Italy - onshore and offshore.|34.76 5.93 47.1 18.99
Puerto Rico - onshore and offshore. United States (USA) onshore and offshore - Alabama; Alaska; Arizona; Arkansas; California; Colorado; Connecticut; Delaware; Florida; Georgia; Idaho; Illinois; Indiana; Iowa; Kansas; Kentucky; Louisiana; Maine; Maryland; Massachusetts; Michigan; Minnesota; Mississippi; Missouri; Montana; Nebraska; Nevada; New Hampshire; New Jersey; New Mexico; New York; North Carolina; North Dakota; Ohio; Oklahoma; Oregon; Pennsylvania; Rhode Island; South Carolina; South Dakota; Tennessee; Texas; Utah; Vermont; Virginia; Washington; West Virginia; Wisconsin; Wyoming. US Virgin Islands - onshore and offshore.|14.92 167.65 74.71 -63.88
Côte d'Ivoire (Ivory Coast) - offshore.|1.02 -7.55 5.19 -3.11
Madagascar - onshore and nearshore.|-26.59 42.53 -11.69 51.03
Costa Rica; El Salvador; Guatemala; Honduras; Nicaragua.|7.98 -92.29 17.83 -82.53
Fiji - Viti Levu island.|-18.32 177.19 -17.25 178.75
Ghana - onshore.|4.67 -3.25 11.16 1.23
Mozambique - south.|-26.87 31.29 -19.84 35.65
Djibouti - onshore.|10.94 41.75 12.72 43.48
Equatorial Guinea - Bioko onshore.|3.14 8.37 3.82 9.02
Gambia - onshore.|13.05 -16.88 13.83 -13.79
Seychelles - Mahe, Silhouette, North, Aride Island, Praslin, La Digue and Frigate islands including adjacent smaller granitic islands on the Seychelles Bank, Bird Island and Denis Island.|-4.86 55.15 -3.66 56.01
Papua New Guinea - mainland onshore.|-10.76 140.85 -2.53 150.96
Papua New Guinea - North Fly area (between 5°04'S and 6°36'S and west of 141°32'E).|-6.6 140.89 -5.05 141.54
Chile - onshore north of 26°S.|-26 -70.79 -17.5 -67
Chile - onshore between 26°S and 36°S.|-36 -72.87 -26 -68.28
Chile - onshore between 36°S and 43°30'S.|-43.5 -74.48 -35.99 -70.39
Vietnam - onshore.|8.33 102.14 23.4 109.53
Chile - onshore between 32°S and 36°S.|-36 -72.87 -31.99 -69.77
Chile - onshore north of 32°S.|-32 -71.77 -17.5 -67
Israel - onshore and offshore.|29.45 32.99 33.53 35.69
United Arab Emirates (UAE) - Abu Dhabi onshore and offshore.|22.63 51.5 25.64 56.03
United Arab Emirates (UAE) - Abu Dhabi onshore.|22.63 51.56 24.95 56.03
United Arab Emirates (UAE) - Abu Dhabi island.|24.24 54.2 24.64 54.71
United Arab Emirates (UAE) - Abu Dhabi onshore west of 54°E.|22.76 51.56 24.32 54.01
United Arab Emirates (UAE) - Abu Dhabi onshore east of 54°E.|22.63 53.99 24.95 56.03
Oman - onshore and offshore.|14.33 51.99 26.74 63.38
Algeria - Ain Tsila field.|27.4 7.66 28.1 8.27
Panama - onshore.|7.15 -83.04 9.68 -77.19
Cyprus - onshore.|34.59 32.2 35.74 34.65
American Samoa, Marshall Islands, United States (USA) - Hawaii, United States minor outlying islands; onshore and offshore.|-17.56 157.47 31.8 -151.27
Guam, Northern Mariana Islands and Palau; onshore and offshore.|1.64 129.48 23.9 149.55
Albania - onshore.|39.64 19.22 42.67 21.06
Albania - north of 41°18'N and east of 19°09'E, onshore and offshore.|41.3 19.14 42.67 20.63
Albania - onshore and offshore.|39.63 18.46 42.67 21.06
St Helena, Ascension and Tristan da Cunha - St Helena Island - onshore.|-16.08 -5.85 -15.85 -5.59
China - Macao - onshore and offshore.|22.06 113.52 22.23 113.68
Indonesia - onshore - Bali, Java and western Sumatra.|-8.91 95.16 5.97 115.77
Bosnia and Herzegovina.|42.56 15.74 45.27 19.62
Angola - onshore and offshore.|-18.02 8.2 -4.38 24.09
Saudi Arabia - onshore and offshore.|16.29 34.44 32.16 55.67
French Polynesia - onshore and offshore. Includes Society archipelago, Tuamotu archipelago, Marquesas Islands, Gambier Islands and Austral Islands.|-31.24 -158.13 -4.52 -131.97
French Polynesia - Society Islands - Tahiti.|-17.93 -149.7 -17.44 -149.09
French Polynesia - Society Islands - Moorea.|-17.63 -150 -17.41 -149.73
French Polynesia - Marquesas Islands - Fatu Hiva.|-10.6 -138.75 -10.36 -138.54
French Polynesia - Marquesas Islands - Hiva Oa.|-9.89 -139.23 -9.64 -138.75
French Polynesia - Marquesas Islands - Tahuata.|-10.08 -139.19 -9.86 -138.98
French Polynesia - Marquesas Islands - Nuku Hiva.|-9.01 -140.31 -8.72 -139.96
French Polynesia - Marquesas Islands - Ua Huka.|-9 -139.66 -8.81 -139.44
French Polynesia - Marquesas Islands - Ua Pou.|-9.57 -140.21 -9.27 -139.95
French Polynesia - Society Islands - Maupiti.|-16.57 -152.39 -16.34 -152.14
Singapore - onshore and offshore.|1.13 103.59 1.47 104.07
Bulgaria - onshore and offshore.|41.24 22.36 44.23 31.35
United States (USA) - offshore Gulf of Mexico outer continental shelf (GoM OCS) - protraction areas South Padre Island; North Padre Island; Mustang Island; Matagorda Island; Brazos; Galveston; High Island; Sabine Pass; West Cameron; East Cameron; Vermilion; South Marsh Island; Eugene Island; Ship Shoal; South Pelto; Bay Marchand; South Timbalier; Grand Isle; West Delta; South Pass; Main Pass; Breton Sound; Chandeleur; Corpus Christi; Port Isabel; East Breaks; Alaminos Canyon; Garden Banks; Keathley Canyon; Sigsbee Escarpment; Ewing Bank; Green Canyon; Walker Ridge; Amery Terrace; Mobile; Viosca Knoll; Mississippi Canyon; Atwater Valley; Lund; Lund South; Pensacola; Destin Dome; De Soto Canyon; Lloyd Ridge; Henderson; Florida Plain; Campeche Escarpment; Apalachicola; Florida Middle Ground; The Elbow; Vernon Basin; Howell Hook; Rankin; Gainesville; Tarpon Springs; St Petersburg; Charlotte Harbor; Pulley Ridge; Dry Tortugas; Tortugas Valley; Miami; Key West.|23.82 -97.22 30.25 -81.17
Kosovo.|41.85 19.97 43.25 21.8
Germany - offshore North Sea. Netherlands - offshore east of 5E.|53.49 3.34 55.92 8.88
Pakistan - East Sind.|24.16 68.27 28.61 71.14
Argentina - Mendoza province - Cuyo basin.|-36.37 -69.4 -31.96 -66.42
Argentina - Neuquen province.|-40.17 -71.19 -34.26 -66.52
Argentina - Chubut province south of approximately 44°S and Santa Cruz province north of approximately 47°30'S - Golfo San Jorge basin onshore and offshore.|-47.5 -72.36 -43.99 -63.24
Argentina - Santa Cruz province south of approximately 50°20'S.|-52.43 -73.28 -50.33 -68.3
Indonesia - onshore and offshore.|-13.95 92.01 7.79 141.46
Bangladesh - onshore and offshore.|18.56 88.01 26.64 92.67
Poland - onshore and offshore.|49 14.14 55.93 24.15
Spain - Canary Islands onshore.|27.58 -18.22 29.47 -13.37
Kyrgyzstan.|39.19 69.24 43.22 80.29
Wallis and Futuna - onshore and offshore - Uvea, Futuna, and Alofi.|-15.94 179.49 -9.84 -174.27
French Southern Territories - onshore and offshore: Amsterdam and St Paul, Crozet, Europa and Kerguelen. Antarctica - Adelie Land coastal area.|-67.13 37.98 -20.91 142
Tonga - onshore and offshore.|-25.68 -179.08 -14.14 -171.28
Japan - onshore and offshore.|17.09 122.38 46.05 157.65
Brazil - offshore - Santos basin.|-28.41 -48.8 -22.66 -40.2
Brazil - offshore - Pelotas basin.|-35.71 -53.38 -28.11 -44.71
Brazil - offshore between 18°S and 34°S.|-34 -53.38 -18 -35.19
Japan including outlying islands - onshore.|20.37 122.83 45.54 154.05
Nigeria - 4°N to 5°N and 6°E to 8°E.|3.99 5.99 5.01 8.01
Pakistan - Gambat.|25.88 68.24 27.67 69.3
Romania - onshore and offshore.|43.44 20.26 48.27 31.41
Mexico - offshore Gulf of Mexico (GoM) - Bay of Campeche southeast.|17.85 -94.79 20.89 -89.75
Pakistan - offshore Indus fan.|21.05 64 25.39 68.24
Pakistan - Badin and Mehran blocks.|24 67.74 25.64 69.87
Pakistan - Karachi licence area.|24.69 66.83 25.76 68
Nigeria - offshore blocks OPL 215 and 221.|3.25 5.02 4.23 7.31
Libya - Amal field.|29.1 20.8 29.8 21.4
Philippines - onshore and offshore.|3 116.04 22.18 129.95
Mauritania - Nouakchutt.|17.89 -16.11 18.25 -15.83
Maldives - onshore.|-0.69 72.81 7.08 73.69
Colombia - region I (north east). Onshore north of 9°48'N and east of 73°W.|9.8 -73 12.52 -71.06
Colombia - region II (north west). Onshore north of 9°24'N and west of 73°W.|9.39 -76.08 11.59 -73
Colombia - region III - onshore between 8°N and 9°24'N and west of 74°24'W.|8 -77.48 9.4 -74.39
Colombia - region IV - between 5°N and 9°24'N and between 74°24'W and 72°W.|5 -74.4 9.4 -71.99
Colombia - region V - onshore between 5°N and 8°N and west of 74°24'W.|5 -77.92 8.01 -74.39
Colombia - region VI - onshore between 3°N and 5°N and west of 74°24'W.|3 -77.68 5.01 -74.39
Colombia - region VII (south west). Onshore south of 3°N and west of 74°W.|-1.13 -79.1 3.01 -74
Colombia - region VIII (south east). South and east of a line from the intersection of the meridian of 74°W with the southern border, northwards to 3°N, 74°W, westwards to 3°'N, 74°24'W, northwards to 5°N, 74°24'W, eastwards to 5°N, 72°W, and then northwards to the intersection of the meridian of 72°W with the international border.|-4.23 -74.4 7.1 -66.87
Colombia - onshore and offshore. Includes San Andres y Providencia, Malpelo Islands, Roncador Bank, Serrana Bank and Serranilla Bank.|-4.23 -84.77 15.51 -66.87
Syria - onshore.|32.31 35.61 37.3 42.38
Iran - South Pars field phase 11.|26.46 52.22 26.64 52.41
Iran - Tombak LNG plant.|27.63 52.09 27.81 52.26
Brazil - offshore - Campos; Espirito Santo and Santos basins.|-28.41 -48.8 -17.59 -35.18
Nigeria - block OML 58.|5.05 6.53 5.36 6.84
Libya - Sirte Basin licence NC192.|27.5 21.25 28.07 21.59
Mauritius - mainland onshore.|-20.57 57.25 -19.94 57.85
The Democratic Republic of the Congo (Zaire) - Lower Congo (Bas Congo)|-6.04 12.17 -4.28 16.28
Egypt - Gulf of Suez.|27.19 32.34 30.01 34.27
Barbados - onshore.|13 -59.71 13.39 -59.37
Cocos (Keeling) Islands - onshore.|-12.27 96.76 -11.76 96.99
United States (USA) - Hawaii - Tern Island and Sorel Atoll.|23.69 -166.36 23.93 -166.03
Japan - Iwo Jima island.|24.67 141.2 24.89 141.42
St Helena, Ascension and Tristan da Cunha - Ascension Island - onshore.|-8.03 -14.46 -7.83 -14.24
Japan - onshore - Tokyo-to south of 28°N and east of 143°E - Minamitori-shima (Marcus Island).|24.22 153.91 24.35 154.05
Djibouti - onshore and offshore.|10.94 41.75 12.72 44.15
Vanuatu - southern islands - Aneityum, Efate, Erromango and Tanna.|-20.31 168.09 -17.37 169.95
Kiribati - Phoenix Islands: Kanton, Orona, McKean Atoll, Birnie Atoll, Phoenix Seamounts.|-4.76 -174.6 -2.68 -170.66
North America - onshore - Bahamas and USA - Florida (east).|20.86 -82.33 30.83 -72.68
Solomon Islands - Western Islands - New Georgia, Ghizo (Gizo).|-8.86 156.44 -7.52 158.2
Chile - Easter Island onshore.|-27.25 -109.51 -27.01 -109.16
Solomon Islands - Guadalcanal Island.|-9.98 159.55 -9.2 160.88
British Indian Ocean Territory - Chagos Archipelago - Diego Garcia.|-7.49 72.3 -7.18 72.55
United States Minor Outlying Islands - Johnston Island.|16.67 -169.59 16.79 -169.47
Federated States of Micronesia - Kosrae (Kusaie).|5.21 162.85 5.43 163.1
Antarctica - South Shetland Islands - Deception Island.|-63.08 -60.89 -62.82 -60.35
South Georgia and the South Sandwich Islands - South Georgia onshore.|-54.95 -38.08 -53.93 -35.74
Spain - Canary Islands - El Hierro, La Gomera, La Palma and Tenerife - onshore.|27.58 -18.22 28.9 -16.08
St Helena, Ascension and Tristan da Cunha - Tristan da Cunha island group including Tristan, Inaccessible, Nightingale, Middle and Stoltenhoff Islands.|-40.42 -12.76 -37 -9.8
United States Minor Outlying Islands - Midway Islands - Sand Island and Eastern Island.|28.13 -177.45 28.28 -177.31
Pitcairn - Pitcairn Island.|-25.14 -130.16 -25 -130.01
Vanuatu - northern islands - Aese, Ambrym, Aoba, Epi, Espiritu Santo, Maewo, Malo, Malkula, Paama, Pentecost, Shepherd and Tutuba.|-17.32 166.47 -14.57 168.71
Marshall Islands - onshore. Wake atoll onshore.|8.66 162.27 19.38 167.82
Wake atoll - onshore.|19.22 166.55 19.38 166.72
United States (USA) - Hawaii - main islands onshore.|18.87 -160.3 22.29 -154.74
United States (USA) - Hawaii - island of Hawaii - onshore.|18.87 -156.1 20.33 -154.74
United States (USA) - Hawaii - Kauai - onshore.|21.81 -159.85 22.29 -159.23
United States (USA) - Hawaii - Maui; Kahoolawe; Lanai; Molokai - onshore.|20.45 -157.36 21.26 -155.93
United States (USA) - Hawaii - Oahu - onshore.|21.2 -158.33 21.75 -157.61
Republic of Korea (South Korea) - onshore and offshore.|28.6 122.71 40.27 134.28
Armenia; Azerbaijan; Belarus; Estonia - onshore; Georgia - onshore; Kazakhstan; Kyrgyzstan; Latvia - onshore; Lithuania - onshore; Moldova; Russian Federation - onshore; Tajikistan; Turkmenistan; Ukraine - onshore; Uzbekistan.|35.14 19.57 81.91 -168.97
Wallis and Futuna - Wallis.|-13.41 -176.25 -13.16 -176.07
New Caledonia - Ile des Pins.|-22.73 167.36 -22.49 167.61
French Southern Territories - Kerguelen onshore.|-49.78 68.69 -48.6 70.62
United States (USA) - offshore Gulf of Mexico (GoM) east of approximately 87°15'W - protraction areas Gainesville, Tarpon Springs, St Petersburg, Charlotte Harbor, Pulley Ridge, Dry Tortugas, Tortugas Valley, Miami, Key West, Apalachicola, Florida Middle Ground, The Elbow, Vernon Basin, Howell Hook, Rankin and Campeche Escarpment. Also for protraction areas Pensacola, Destin Dome, Desoto Canyon, Lloyd Ridge, Henderson and Florida Plain - east of 87°15'W.|23.82 -87.25 30.25 -81.17
United States (USA) - offshore Gulf of Mexico (GoM) between approximately 95°W and 87°15'W - protraction areas High Island (including all additions and extensions), Sabine Pass, West Cameron (including west and south additions), East Cameron (including south addition), Vermillion (including south addition), South Marsh Island (including north and south additions), Eugene Island (including south addition), Ship Shoal (including south addition), South Timbalier (including south addition), Grand Isle (including south addition), West Delta (including south addition), South Pass (including south and east additions), Main Pass (including south and east addition), Breton Sound, Chandeleur (including east addition), Mobile, Viosca Knoll, Mississippi Canyon, Atwater Valley, Lund, Lund South, Ewing Bank, Green Canyon, Walker Ridge, Amery Terrace, Garden Banks, Keathley Canyon and Sigsbee Escarpment. Also for protraction areas Galveston (including south addition), East Breaks and Aliminos Canyon - east of 95°W; for protraction areas Pensacola, Destin Dome, Desoto Canyon, Lloyd Ridge, Henderson and Florida Plain - west of 87°15'W.|25.61 -95 30.23 -87.25
United States (USA) - offshore Gulf of Mexico (GoM) west of approximately 95°W - protraction areas Brazos (including south addition), Matagorda Island, Mustang Island (including east addition); North Padre Island (including east addition), South Padre Island (including east addition), Corpus Christi and Port Isabel. Also protraction areas Galveston (including south addition), East Breaks and Aliminos Canyon - west of 95°W.|25.97 -97.22 28.97 -95
Mexico - offshore Gulf of Mexico (GoM) - Tampico area.|21.51 -98.1 22.75 -96.89
Mauritania - onshore and offshore.|14.72 -20.04 27.3 -4.8
Faroe Islands - onshore.|61.33 -7.49 62.41 -6.33
Germany - Thuringen.|50.2 9.92 51.64 12.56
Germany - Sachsen.|50.2 11.89 51.66 15.04
Mauritania - coastal area north of Cape Timiris.|19.37 -17.08 21.34 -15.88
Iraq - Basra area.|29.87 46.46 31.09 48.61
Algeria - Hassi Mouina licence area.|29.25 0 31 1.25
Fiji - onshore - Vanua Levu, Taveuni, Viti Levu and and immediately adjacent smaller islands of Yasawa and Kandavu groups.|-19.22 176.81 -16.1 -179.77
Fiji - onshore. Includes Viti Levu, Vanua Levu, Taveuni, the Yasawa Group, the Kadavu Group, the Lau Islands and Rotuma Islands.|-20.81 176.81 -12.42 -178.15
Fiji - Vanua Levu and Taveuni.|-17.07 178.42 -16.1 -179.77
Greenland - onshore and offshore.|56.38 -75 87.02 7.99
New Caledonia - onshore and offshore. Isle de Pins, Loyalty Islands, Huon Islands, Belep archipelago, Chesterfield Islands, and Walpole.|-26.45 156.25 -14.83 174.28
New Caledonia - Loyalty Islands - Ouvea.|-20.77 166.44 -20.34 166.71
New Caledonia - Grande Terre - Noumea district.|-22.37 166.35 -22.19 166.54
Latin America - Central America and South America - onshore and offshore. Brazil - onshore and offshore.|-59.87 -122.19 32.72 -25.28
Malaysia - West Malaysia; Singapore.|1.13 99.59 6.72 104.6
Libya - onshore and offshore.|19.5 9.31 35.23 26.21
Libya - onshore.|19.5 9.31 33.23 25.21
Mexico - offshore Gulf of Mexico (GoM) - Bay of Campeche northeast.|20.87 -94.33 23.01 -88.67
China - Ordos basin.|35 107 39 110.01
China - offshore - Huang Hai (Yellow Sea).|31.23 119.23 37.4 125.06
China - offshore South China Sea - Pearl River basin.|18.31 110.13 22.89 116.76
China - south and west Tarim basin.|37 77.45 41.99 88
Libya - Cyrenaica area 42, blocks 2 and 4.|32 22.49 32.8 23
Jamaica - onshore and offshore. Includes Morant Cays and Pedro Cays.|14.08 -80.6 19.36 -74.51
China - offshore - Bei Bu Wan (Gulf of Tonkin).|17.81 107.15 21.69 110.17
United Arab Emirates (UAE) - Abu Dhabi offshore.|24 51.5 25.64 54.85
United Arab Emirates (UAE) - Dubai offshore - Falah, Fateh and Rashid oilfields.|24.94 54.06 25.8 55.3
United Arab Emirates (UAE) - Dubai municipality.|24.85 54.84 25.34 55.55
Portugal - mainland - offshore.|34.91 -13.87 41.88 -7.24
Czechia; Slovakia.|47.73 12.09 51.06 22.56
Croatia - onshore and offshore.|41.62 13 46.54 19.43
Bermuda - onshore and offshore.|28.91 -68.83 35.73 -60.7
Antarctica - Ross Sea Region - nominally between 160°E and 150°W but includes buffer on eastern hemisphere margin to include Transantarctic Mountains|-90 144.99 -59.99 -144.99
Slovenia - onshore and offshore.|45.42 13.38 46.88 16.61
Australia - offshore including EEZ.|-47.2 109.23 -8.88 163.2
`;

/**
 * code | name | from | to | accuracy in metres | area | translations in metres | rotations in arc-seconds, in the
 * position vector convention | scale difference in ppm | reference epoch | rates of the same, a year
 */
export const TRANSFORMATIONS = `
1024|MGI to ETRS89 (4)|MGI|ETRS89|1|0|601.705 84.263 485.227|4.7354 1.3145 5.393|-2.3887|
1055|Ain el Abd to WGS 84 (3)|Ain el Abd|WGS 84|1|1|-145.7 -249.1 1.5|0 0 0|0|
1056|Ain el Abd to WGS 84 (4)|Ain el Abd|WGS 84|1|1|-85.645 -273.077 -79.708|2.289 -1.421 2.532|3.194|
1057|Ain el Abd to WGS 84 (5)|Ain el Abd|WGS 84|1|2|-202.234 -168.351 -63.51|3.545 0.659 -1.945|2.1|
1058|Ain el Abd to WGS 84 (6)|Ain el Abd|WGS 84|1|3|-18.944 -379.364 -24.063|0.04 -0.764 6.431|3.657|
1059|KOC to WGS 84 (1)|KOC|WGS 84|1|1|-294.7 -200.1 525.5|0 0 0|0|
1060|NGN to WGS 84 (1)|NGN|WGS 84|1|1|-3.2 -5.7 2.8|0 0 0|0|
1061|Kudams to WGS 84 (1)|KUDAMS|WGS 84|1|4|-20.8 11.3 2.4|0 0 0|0|
1062|Kudams to WGS 84 (2)|KUDAMS|WGS 84|1|4|226.702 -193.337 -35.371|-2.229 -4.391 9.238|0.9798|
1063|Vientiane 1982 to Lao 1997 (1)|Vientiane 1982|Lao 1997|2|5|-2.227 6.524 2.178|0 0 0|0|
1064|Lao 1993 to Lao 1997 (1)|Lao 1993|Lao 1997|0.15|5|-0.652 1.619 0.213|0 0 0|0|
1065|Lao 1997 to WGS 84 (1)|Lao 1997|WGS 84|5|5|44.585 -131.212 -39.544|0 0 0|0|
1067|Minna to WGS 84 (11)|Minna|WGS 84|8|6|-92.1 -89.9 114.9|0 0 0|0|
1070|Guam 1963 to WGS 84 (1)|Guam 1963|WGS 84|6|7|-100 -248 259|0 0 0|0|
1071|Palestine 1923 to Israel 1993 (1)|Palestine 1923|Israel 1993|1.5|8|-181 -122 225|0 0 0|0|
1073|Israel 1993 to WGS 84 (1)|Israel 1993|WGS 84|2|8|-48 55 52|0 0 0|0|
1074|Palestine 1923 to WGS 84 (1)|Palestine 1923|WGS 84|2|8|-275.7224 94.7824 340.8944|-8.001 -4.42 -11.821|1|
1075|ED50 to WGS 84 (38)|ED50|WGS 84|10|9|-89.05 -87.03 -124.56|0 0 0|0|
1080|CI1971 to WGS 84 (1)|Chatham Islands 1971|WGS 84|26|10|175 -38 113|0 0 0|0|
1081|CI1979 to WGS 84 (1)|Chatham Islands 1979|WGS 84|2|10|174.05 -25.49 112.57|0 0 0.554|0.2263|
1082|CI1979 to NZGD2000 (1)|Chatham Islands 1979|NZGD2000|2|10|174.05 -25.49 112.57|0 0 0.554|0.2263|
1083|JAD69 to WGS 72 (2)|JAD69|WGS 72|10|11|50 212 381|0 0 0|0|
1084|JAD69 to WGS 84 (1)|JAD69|WGS 84|5|11|70 207 389.5|0 0 0|0|
1085|JAD69 to WGS 84 (2)|JAD69|WGS 84|2|11|65.334 212.46 387.63|0 0 0|0|
1087|ED50 to WGS 84 (37)|ED50|WGS 84|2.5|12|-112 -110.3 -140.2|0 0 0|0|
1088|Monte Mario to WGS 84 (5)|Monte Mario|WGS 84|10|13|-223.7 -67.38 1.34|0 0 0|0|
1089|Monte Mario to WGS 84 (6)|Monte Mario|WGS 84|10|14|-225.4 -67.7 7.85|0 0 0|0|
1090|Monte Mario to WGS 84 (7)|Monte Mario|WGS 84|10|15|-227.1 -68.1 14.4|0 0 0|0|
1091|Monte Mario to WGS 84 (8)|Monte Mario|WGS 84|10|16|-231.61 -68.21 13.93|0 0 0|0|
1092|Monte Mario to WGS 84 (9)|Monte Mario|WGS 84|10|17|-225.06 -67.37 14.61|0 0 0|0|
1093|Monte Mario to WGS 84 (10)|Monte Mario|WGS 84|10|18|-229.08 -65.73 20.21|0 0 0|0|
1094|Monte Mario to WGS 84 (11)|Monte Mario|WGS 84|10|19|-230.47 -56.08 22.43|0 0 0|0|
1098|IGM95 to ETRS89 (1)|IGM95|ETRS89|0.5|20|0 0 0|0 0 0|0|
1099|IGM95 to WGS 84 (1)|IGM95|WGS 84|1|20|0 0 0|0 0 0|0|
1100|Adindan to WGS 84 (1)|Adindan|WGS 84|9|21|-166 -15 204|0 0 0|0|
1101|Adindan to WGS 84 (2)|Adindan|WGS 84|44|22|-118 -14 218|0 0 0|0|
1102|Adindan to WGS 84 (3)|Adindan|WGS 84|44|23|-134 -2 210|0 0 0|0|
1103|Adindan to WGS 84 (4)|Adindan|WGS 84|6|24|-165 -11 206|0 0 0|0|
1104|Adindan to WGS 84 (5)|Adindan|WGS 84|44|25|-123 -20 220|0 0 0|0|
1105|Adindan to WGS 84 (6)|Adindan|WGS 84|44|26|-128 -18 224|0 0 0|0|
1106|Adindan to WGS 84 (7)|Adindan|WGS 84|7|27|-161 -14 205|0 0 0|0|
1107|Afgooye to WGS 84 (1)|Afgooye|WGS 84|44|28|-43 -163 45|0 0 0|0|
1108|AGD66 to WGS 84 (1)|AGD66|WGS 84|6|29|-133 -48 148|0 0 0|0|
1109|AGD84 to WGS 84 (1)|AGD84|WGS 84|4|30|-134 -48 149|0 0 0|0|
1110|Ain el Abd to WGS 84 (1)|Ain el Abd|WGS 84|44|31|-150 -250 -1|0 0 0|0|
1111|Ain el Abd to WGS 84 (2)|Ain el Abd|WGS 84|18|32|-143 -236 7|0 0 0|0|
1112|Amersfoort to WGS 84 (1)|Amersfoort|WGS 84|1|33|593.16 26.15 478.54|-1.30439800823 -0.103297414969 -1.14450153042|4.0775|
1113|Arc 1950 to WGS 84 (1)|Arc 1950|WGS 84|44|34|-143 -90 -294|0 0 0|0|
1114|Arc 1950 to WGS 84 (2)|Arc 1950|WGS 84|7|35|-138 -105 -289|0 0 0|0|
1116|Arc 1950 to WGS 84 (4)|Arc 1950|WGS 84|10|36|-125 -108 -295|0 0 0|0|
1117|Arc 1950 to WGS 84 (5)|Arc 1950|WGS 84|27|37|-161 -73 -317|0 0 0|0|
1118|Arc 1950 to WGS 84 (6)|Arc 1950|WGS 84|26|38|-134 -105 -295|0 0 0|0|
1120|Arc 1950 to WGS 84 (8)|Arc 1950|WGS 84|41|39|-147 -74 -283|0 0 0|0|
1121|Arc 1950 to WGS 84 (9)|Arc 1950|WGS 84|15|40|-142 -96 -293|0 0 0|0|
1122|Arc 1960 to WGS 84 (1)|Arc 1960|WGS 84|35|41|-160 -6 -302|0 0 0|0|
1124|Bermuda 1957 to WGS 84 (1)|Bermuda 1957|WGS 84|35|42|-73 213 296|0 0 0|0|
1125|Bogota 1975 to WGS 84 (1)|Bogota 1975|WGS 84|10|43|307 304 -318|0 0 0|0|
1127|Campo Inchauspe to WGS 84 (1)|Campo Inchauspe|WGS 84|9|44|-148 136 90|0 0 0|0|
1128|Cape to WGS 84 (1)|Cape|WGS 84|9|45|-136 -108 -292|0 0 0|0|
1129|Cape to WGS 84 (2)|Cape|WGS 84|15|45|-134.73 -110.92 -292.66|0 0 0|0|
1130|Carthage to WGS 84 (1)|Carthage|WGS 84|14|46|-263 6 431|0 0 0|0|
1131|Chua to WGS 84 (1)|Chua|WGS 84|12|47|-134 229 -29|0 0 0|0|
1132|Corrego Alegre 1970-72 to WGS 84 (1)|Corrego Alegre 1970-72|WGS 84|8|48|-206 172 -6|0 0 0|0|
1133|ED50 to WGS 84 (1)|ED50|WGS 84|10|49|-87 -98 -121|0 0 0|0|
1134|ED50 to WGS 84 (2)|ED50|WGS 84|6|50|-87 -96 -120|0 0 0|0|
1136|ED50 to WGS 84 (4)|ED50|WGS 84|26|51|-104 -101 -140|0 0 0|0|
1137|ED50 to WGS 84 (5)|ED50|WGS 84|13|52|-130 -117 -151|0 0 0|0|
1138|ED50 to WGS 84 (6)|ED50|WGS 84|6|53|-86 -96 -120|0 0 0|0|
1139|ED50 to WGS 84 (7)|ED50|WGS 84|7|54|-87 -95 -120|0 0 0|0|
1140|ED50 to WGS 84 (8)|ED50|WGS 84|44|55|-84 -95 -130|0 0 0|0|
1141|ED50(ED77) to WGS 84 (2)|ED50(ED77)|WGS 84|19|56|-117 -132 -164|0 0 0|0|
1142|ED50 to WGS 84 (10)|ED50|WGS 84|44|57|-97 -103 -120|0 0 0|0|
1143|ED50 to WGS 84 (11)|ED50|WGS 84|35|58|-97 -88 -135|0 0 0|0|
1144|ED50 to WGS 84 (12)|ED50|WGS 84|44|59|-107 -88 -149|0 0 0|0|
1145|ED50 to WGS 84 (13)|ED50|WGS 84|9|60|-84 -107 -120|0 0 0|0|
1146|ED87 to WGS 84 (1)|ED87|WGS 84|0.8|61|-82.981 -99.719 -110.709|-0.104700015651 0.0310016003789 0.0804020214751|-0.3143|
1147|ED50 to ED87 (2)|ED50|ED87|1|62|-1.51 -0.84 -3.5|-0.390459278226 -0.141703921892 -0.570115924467|0.609|
1148|Egypt 1907 to WGS 84 (1)|Egypt 1907|WGS 84|11|63|-130 110 -13|0 0 0|0|
1149|ETRS89 to WGS 84 (1)|ETRS89|WGS 84|1|64|0 0 0|0 0 0|0|
1150|GDA94 to WGS 84 (1)|GDA94|WGS 84|3|65|0 0 0|0 0 0|0|
1151|NZGD49 to WGS 84 (1)|NZGD49|WGS 84|8|66|84 -22 209|0 0 0|0|
1152|Hu Tzu Shan 1950 to WGS 84 (1)|Hu Tzu Shan 1950|WGS 84|26|67|-637 -549 -203|0 0 0|0|
1153|Indian 1954 to WGS 84 (1)|Indian 1954|WGS 84|21|68|217 823 299|0 0 0|0|
1154|Indian 1975 to WGS 84 (1)|Indian 1975|WGS 84|5|69|209 818 290|0 0 0|0|
1155|Kalianpur 1937 to WGS 84 (1)|Kalianpur 1937|WGS 84|18|70|282 726 254|0 0 0|0|
1156|Kalianpur 1975 to WGS 84 (1)|Kalianpur 1975|WGS 84|22|71|295 736 257|0 0 0|0|
1157|Kandawala to WGS 84 (1)|Kandawala|WGS 84|35|72|-97 787 86|0 0 0|0|
1158|Kertau 1968 to WGS 84 (1)|Kertau 1968|WGS 84|15|73|-11 851 5|0 0 0|0|
1159|Leigon to WGS 84 (1)|Leigon|WGS 84|5|74|-130 29 364|0 0 0|0|
1160|Liberia 1964 to WGS 84 (1)|Liberia 1964|WGS 84|26|75|-90 40 88|0 0 0|0|
1161|Luzon 1911 to WGS 84 (1)|Luzon 1911|WGS 84|17|76|-133 -77 -51|0 0 0|0|
1162|Luzon 1911 to WGS 84 (2)|Luzon 1911|WGS 84|44|77|-133 -79 -72|0 0 0|0|
1163|M'poraloko to WGS 84 (1)|M'poraloko|WGS 84|44|78|-74 -130 42|0 0 0|0|
1164|Mahe 1971 to WGS 84 (1)|Mahe 1971|WGS 84|44|79|41 -220 -134|0 0 0|0|
1165|Massawa to WGS 84 (1)|Massawa|WGS 84|44|80|639 405 60|0 0 0|0|
1166|Merchich to WGS 84 (1)|Merchich|WGS 84|7|81|31 146 47|0 0 0|0|
1167|Minna to WGS 84 (1)|Minna|WGS 84|44|23|-81 -84 115|0 0 0|0|
1168|Minna to WGS 84 (2)|Minna|WGS 84|15|82|-92 -93 122|0 0 0|0|
1169|Monte Mario to WGS 84 (1)|Monte Mario|WGS 84|44|57|-225 -65 9|0 0 0|0|
1170|NAD27 to WGS 84 (1)|NAD27|WGS 84|16|83|-3 142 183|0 0 0|0|
1171|NAD27 to WGS 84 (2)|NAD27|WGS 84|10|84|0 125 194|0 0 0|0|
1172|NAD27 to WGS 84 (3)|NAD27|WGS 84|20|85|-10 158 187|0 0 0|0|
1173|NAD27 to WGS 84 (4)|NAD27|WGS 84|10|86|-8 160 176|0 0 0|0|
1174|NAD27 to WGS 84 (5)|NAD27|WGS 84|11|87|-9 161 179|0 0 0|0|
1175|NAD27 to WGS 84 (6)|NAD27|WGS 84|7|88|-8 159 175|0 0 0|0|
1176|NAD27 to WGS 84 (7)|NAD27|WGS 84|12|89|-5 135 172|0 0 0|0|
1177|NAD27 to WGS 84 (8)|NAD27|WGS 84|8|90|-4 154 178|0 0 0|0|
1178|NAD27 to WGS 84 (9)|NAD27|WGS 84|44|91|1 140 165|0 0 0|0|
1179|NAD27 to WGS 84 (10)|NAD27|WGS 84|13|92|-7 162 188|0 0 0|0|
1180|NAD27 to WGS 84 (11)|NAD27|WGS 84|12|93|-9 157 184|0 0 0|0|
1181|NAD27 to WGS 84 (12)|NAD27|WGS 84|9|94|-22 160 190|0 0 0|0|
1182|NAD27 to WGS 84 (13)|NAD27|WGS 84|8|95|4 159 188|0 0 0|0|
1183|NAD27 to WGS 84 (14)|NAD27|WGS 84|10|96|-7 139 181|0 0 0|0|
1184|NAD27 to WGS 84 (15)|NAD27|WGS 84|35|97|0 125 201|0 0 0|0|
1185|NAD27 to WGS 84 (16)|NAD27|WGS 84|44|98|-9 152 178|0 0 0|0|
1186|NAD27 to WGS 84 (17)|NAD27|WGS 84|44|99|11 114 195|0 0 0|0|
1187|NAD27 to WGS 84 (18)|NAD27|WGS 84|12|100|-12 130 190|0 0 0|0|
1188|NAD83 to WGS 84 (1)|NAD83|WGS 84|4|101|0 0 0|0 0 0|0|
1189|Nahrwan 1967 to WGS 84 (1)|Nahrwan 1967|WGS 84|44|102|-247 -148 369|0 0 0|0|
1190|Nahrwan 1967 to WGS 84 (2)|Nahrwan 1967|WGS 84|35|103|-243 -192 477|0 0 0|0|
1191|Nahrwan 1967 to WGS 84 (3)|Nahrwan 1967|WGS 84|44|104|-249 -156 381|0 0 0|0|
1192|Naparima 1972 to WGS 84 (1)|Naparima 1972|WGS 84|33|105|-10 375 165|0 0 0|0|
1193|NTF to WGS 84 (1)|NTF|WGS 84|2|106|-168 -60 320|0 0 0|0|
1194|MGI to WGS 84 (8)|MGI|WGS 84|0.5|0|601.705 84.263 485.227|4.7354 1.3145 5.393|-2.3887|
1195|OSGB36 to WGS 84 (1)|OSGB36|WGS 84|21|107|375 -111 431|0 0 0|0|
1196|OSGB36 to WGS 84 (2)|OSGB36|WGS 84|10|108|371 -112 434|0 0 0|0|
1197|OSGB36 to WGS 84 (3)|OSGB36|WGS 84|21|109|371 -111 434|0 0 0|0|
1198|OSGB36 to WGS 84 (4)|OSGB36|WGS 84|18|110|384 -111 425|0 0 0|0|
1199|OSGB36 to WGS 84 (5)|OSGB36|WGS 84|35|111|370 -108 434|0 0 0|0|
1200|Pointe Noire to WGS 84 (1)|Pointe Noire|WGS 84|44|112|-148 51 -291|0 0 0|0|
1201|PSAD56 to WGS 84 (1)|PSAD56|WGS 84|42|113|-288 175 -376|0 0 0|0|
1202|PSAD56 to WGS 84 (2)|PSAD56|WGS 84|19|114|-270 188 -388|0 0 0|0|
1203|PSAD56 to WGS 84 (3)|PSAD56|WGS 84|44|115|-270 183 -390|0 0 0|0|
1204|PSAD56 to WGS 84 (4)|PSAD56|WGS 84|35|116|-305 243 -442|0 0 0|0|
1205|PSAD56 to WGS 84 (5)|PSAD56|WGS 84|26|117|-282 169 -371|0 0 0|0|
1206|PSAD56 to WGS 84 (6)|PSAD56|WGS 84|7|118|-278 171 -367|0 0 0|0|
1207|PSAD56 to WGS 84 (7)|PSAD56|WGS 84|17|119|-298 159 -369|0 0 0|0|
1208|PSAD56 to WGS 84 (8)|PSAD56|WGS 84|16|120|-279 175 -379|0 0 0|0|
1209|PSAD56 to WGS 84 (9)|PSAD56|WGS 84|23|121|-295 173 -371|0 0 0|0|
1210|POSGAR 94 to WGS 84 (1)|POSGAR 94|WGS 84|1|122|0 0 0|0 0 0|0|
1225|Sapper Hill 1943 to WGS 84 (1)|Sapper Hill 1943|WGS 84|2|123|-355 21 72|0 0 0|0|
1226|Schwarzeck to WGS 84 (1)|Schwarzeck|WGS 84|35|124|616 97 -251|0 0 0|0|
1228|Timbalai 1948 to WGS 84 (1)|Timbalai 1948|WGS 84|19|125|-679 669 -48|0 0 0|0|
1230|Tokyo to WGS 84 (1)|Tokyo|WGS 84|29|126|-148 507 685|0 0 0|0|
1231|Tokyo to WGS 84 (2)|Tokyo|WGS 84|13|127|-148 507 685|0 0 0|0|
1232|Tokyo to WGS 84 (3)|Tokyo|WGS 84|13|128|-146 507 687|0 0 0|0|
1233|Tokyo to WGS 84 (4)|Tokyo|WGS 84|29|129|-158 507 676|0 0 0|0|
1235|Zanderij to WGS 84 (1)|Zanderij|WGS 84|11|130|-265 120 -358|0 0 0|0|
1236|AGD84 to WGS 84 (2)|AGD84|WGS 84|5|30|-116 -50.47 141.69|0.23 0.39 0.344|0.0983|
1237|WGS 72 to WGS 84 (1)|WGS 72|WGS 84|2|131|0 0 4.5|0 0 0.554|0.2263|
1238|WGS 72 to WGS 84 (2)|WGS 72|WGS 84|2|131|0 0 4.5|0 0 0.554|0.219|
1239|WGS 72BE to WGS 72 (1)|WGS 72BE|WGS 72|2|131|0 0 -2.6|0 0 0.26|-0.6063|
1240|WGS 72BE to WGS 84 (1)|WGS 72BE|WGS 84|2|132|0 0 1.9|0 0 0.814|-0.38|
1242|HD72 to WGS 84 (4)|HD72|WGS 84|1|133|52.17 -71.82 -14.9|0 0 0|0|
1244|PZ-90 to WGS 84 (2)|PZ-90|WGS 84|0.5|134|-1.08 -0.27 -0.9|0 0 0.16|-0.12|
1245|ED50 to WGS 84 (16)|ED50|WGS 84|44|46|-112 -77 -145|0 0 0|0|
1248|ID74 to WGS 84 (1)|ID74|WGS 84|44|135|-24 -15 5|0 0 0|0|
1249|NAD27 to WGS 84 (21)|NAD27|WGS 84|15|136|-2 152 149|0 0 0|0|
1250|NAD27 to WGS 84 (22)|NAD27|WGS 84|18|137|2 204 105|0 0 0|0|
1251|NAD83 to WGS 84 (2)|NAD83|WGS 84|8|138|-2 0 4|0 0 0|0|
1252|NAD83 to WGS 84 (3)|NAD83|WGS 84|4|139|1 1 -1|0 0 0|0|
1253|Nord Sahara 1959 to WGS 84 (1)|Nord Sahara 1959|WGS 84|44|140|-186 -93 310|0 0 0|0|
1255|Nord Sahara 1959 to WGS 84 (2)|Nord Sahara 1959|WGS 84|44|141|-123 -206 219|0 0 0|0|
1256|Fahud to WGS 84 (1)|Fahud|WGS 84|10|142|-346 -1 224|0 0 0|0|
1257|Pulkovo 1995 to PZ-90 (1)|Pulkovo 1995|PZ-90|1|134|25.9 -130.94 -81.76|0 0 0|0|
1267|Pulkovo 1942 to WGS 84 (17)|Pulkovo 1942|WGS 84|4|143|23.92 -141.27 -80.9|0 0.35 0.82|-0.12|
1272|GGRS87 to WGS 84 (1)|GGRS87|WGS 84|1|55|-199.87 74.79 246.62|0 0 0|0|
1274|Pulkovo 1942 to LKS94 (1)|Pulkovo 1942|LKS94|9|144|-40.595 -18.55 -69.339|2.508 1.832 -2.611|-4.299|
1275|ED50 to WGS 84 (17)|ED50|WGS 84|2|145|-84 -97 -117|0 0 0|0|
1276|NTF to ED50 (1)|NTF|ED50|2|106|-84 37 437|0 0 0|0|
1277|NTF to WGS 72 (1)|NTF|WGS 72|2|106|-168 -72 314|0 0 0|0|
1278|AGD66 to GDA94 (1)|AGD66|GDA94|5|29|-127.8 -52.3 152.9|0 0 0|0|
1279|AGD84 to GDA94 (1)|AGD84|GDA94|5|30|-128.5 -53 153.4|0 0 0|0|
1280|AGD84 to GDA94 (2)|AGD84|GDA94|1|30|-117.763 -51.51 139.061|0.292 0.443 0.277|-0.191|
1281|Pulkovo 1995 to WGS 84 (1)|Pulkovo 1995|WGS 84|1|134|24.82 -131.21 -82.66|0 0 0.16|-0.12|
1283|LKS94 to WGS 84 (1)|LKS94|WGS 84|1|146|0 0 0|0 0 0|0|
1284|Arc 1960 to WGS 84 (2)|Arc 1960|WGS 84|6|147|-157 -2 -299|0 0 0|0|
1285|Arc 1960 to WGS 84 (3)|Arc 1960|WGS 84|15|148|-175 -23 -303|0 0 0|0|
1290|Pulkovo 1942 to WGS 84 (6)|Pulkovo 1942|WGS 84|4|149|24 -124 -82|0 0 0|0|
1291|Pulkovo 1942 to WGS 84 (7)|Pulkovo 1942|WGS 84|44|150|15 -130 -84|0 0 0|0|
1296|Trinidad 1903 to WGS 84 (1)|Trinidad 1903|WGS 84|2|151|-61.702 284.488 472.052|0 0 0|0|
1297|Tete to Moznet (1)|Tete|Moznet|30|152|-115.064 -87.39 -101.716|-0.058 4.001 -2.062|9.366|
1298|Tete to Moznet (2)|Tete|Moznet|1|153|-82.875 -57.097 -156.768|-2.158 1.524 -0.982|-0.359|
1299|Tete to Moznet (3)|Tete|Moznet|4|154|-138.527 -91.999 -114.591|-0.14 3.363 -2.217|11.748|
1300|Tete to Moznet (4)|Tete|Moznet|3|155|-73.472 -51.66 -112.482|0.953 4.6 -2.368|0.586|
1301|Tete to Moznet (5)|Tete|Moznet|10|156|219.315 168.975 -166.145|0.198 5.926 -2.356|-57.104|
1302|Moznet to WGS 84 (1)|Moznet|WGS 84|1|157|0 0 0|0 0 0|0|
1303|Pulkovo 1942 to WGS 84 (10)|Pulkovo 1942|WGS 84|2|158|43.822 -108.842 -119.585|1.455 -0.761 0.737|0.549|
1304|Indian 1975 to WGS 84 (2)|Indian 1975|WGS 84|5|69|210 814 289|0 0 0|0|
1305|Tokyo to WGS 84 (5)|Tokyo|WGS 84|4|128|-147 506 687|0 0 0|0|
1307|Naparima 1972 to WGS 84 (3)|Naparima 1972|WGS 84|26|105|-2 374 172|0 0 0|0|
1309|DHDN to ETRS89 (1)|DHDN|ETRS89|5|159|582 105 414|1.04 0.35 -3.08|8.3|
1311|ED50 to WGS 84 (18)|ED50|WGS 84|1|160|-89.5 -93.8 -123.1|0 0 -0.156|1.2|
1314|OSGB36 to WGS 84 (6)|OSGB36|WGS 84|2|107|446.448 -125.157 542.06|0.15 0.247 0.842|-20.489|
1315|OSGB36 to ED50 (1)|OSGB36|ED50|2|107|535.948 -31.357 665.16|0.15 0.247 0.998|-21.689|
1317|Camacupa 1948 to WGS 72BE (1)|Camacupa 1948|WGS 72BE|10|161|-37.2 -370.6 -228.5|0 0 0|0|
1318|Camacupa 1948 to WGS 84 (1)|Camacupa 1948|WGS 84|10|162|-42.01 -332.21 -229.75|0 0 0|0|
1319|Camacupa 1948 to WGS 84 (2)|Camacupa 1948|WGS 84|25|163|-40 -354 -224|0 0 0|0|
1320|Camacupa 1948 to WGS 84 (3)|Camacupa 1948|WGS 84|10|164|-37.2 -370.6 -224|0 0 0.554|0.219|
1321|Camacupa 1948 to WGS 84 (4)|Camacupa 1948|WGS 84|10|165|-41.8 -342.2 -228.2|0 0 0|0|
1322|Camacupa 1948 to WGS 84 (5)|Camacupa 1948|WGS 84|3|166|-55.5 -348 -229.2|0 0 0|0|
1323|Camacupa 1948 to WGS 84 (6)|Camacupa 1948|WGS 84|8|167|-43 -337 -233|0 0 0|0|
1324|Camacupa 1948 to WGS 84 (7)|Camacupa 1948|WGS 84|3|168|-48 -345 -231|0 0 0|0|
1325|Camacupa 1948 to WGS 84 (8)|Camacupa 1948|WGS 84|3|163|-48.6 -345.1 -230.8|0 0 0|0|
1326|Camacupa 1948 to WGS 84 (9)|Camacupa 1948|WGS 84|10|169|-41.057 -374.564 -226.287|0 0 0.554|0.219|
1327|Camacupa 1948 to WGS 84 (10)|Camacupa 1948|WGS 84|5|170|-50.9 -347.6 -231|0 0 0|0|
1330|Malongo 1987 to WGS 84 (1)|Malongo 1987|WGS 84|10|171|-252.95 -4.11 -96.38|0 0 0|0|
1331|EST92 to ETRS89 (1)|EST92|ETRS89|0.1|172|0 0 0|0 0 0|0|
1332|Pulkovo 1942 to EST92 (1)|Pulkovo 1942|EST92|9|172|21.53219 -97.00027 -60.74046|0.99548 0.58147 0.2418|-4.5981|
1333|EST92 to WGS 84 (1)|EST92|WGS 84|0.5|172|0.055 -0.541 -0.185|0.0183 -0.0003 -0.007|-0.014|
1334|Pulkovo 1942 to WGS 84 (12)|Pulkovo 1942|WGS 84|9|172|21.58719 -97.54127 -60.92546|1.01378 0.58117 0.2348|-4.6121|
1437|RT90 to ETRS89 (1)|RT90|ETRS89|0.5|173|419.3836 99.3335 591.3451|0.850389 1.817277 -7.862238|-0.99496|
1438|Fahud to WGS 84 (2)|Fahud|WGS 84|25|142|-333.102 -11.02 230.69|0 0 0.554|0.219|
1439|PSD93 to WGS 84 (1)|PSD93|WGS 84|0.5|174|-180.624 -225.516 173.919|-0.81 -1.898 8.336|16.71006|
1441|Antigua 1943 to WGS 84 (1)|Antigua 1943|WGS 84|10|175|-255 -15 71|0 0 0|0|
1442|Dominica 1945 to WGS 84 (1)|Dominica 1945|WGS 84|10|176|725 685 536|0 0 0|0|
1443|Grenada 1953 to WGS 84 (1)|Grenada 1953|WGS 84|10|177|72 213.7 93|0 0 0|0|
1444|Montserrat 1958 to WGS 84 (1)|Montserrat 1958|WGS 84|44|178|174 359 365|0 0 0|0|
1445|St. Kitts 1955 to WGS 84 (1)|St. Kitts 1955|WGS 84|10|179|9 183 236|0 0 0|0|
1446|St. Lucia 1955 to WGS 84 (1)|St. Lucia 1955|WGS 84|10|180|-149 128 296|0 0 0|0|
1448|HD72 to WGS 84 (3)|HD72|WGS 84|1|133|52.684 -71.194 -13.975|-0.312 -0.1063 -0.3729|1.0191|
1449|HD72 to ETRS89 (2)|HD72|ETRS89|0.4|133|52.684 -71.194 -13.975|-0.312 -0.1063 -0.3729|1.0191|
1458|AGD66 to GDA94 (2)|AGD66|GDA94|1|181|-129.193 -41.212 130.73|0.246 0.374 0.329|-2.955|
1459|AGD66 to GDA94 (3)|AGD66|GDA94|1|182|-120.695 -62.73 165.46|0.109 -0.141 -0.116|2.733|
1460|AGD66 to GDA94 (4)|AGD66|GDA94|1|183|-119.353 -48.301 139.484|0.415 0.26 0.437|-0.613|
1469|Locodjo 1965 to WGS 84 (1)|Locodjo 1965|WGS 84|15|184|-125 53 467|0 0 0|0|
1470|Abidjan 1987 to WGS 84 (1)|Abidjan 1987|WGS 84|2|185|-124.76 53 466.79|0 0 0|0|
1504|Cape to Hartebeesthoek94 (1)|Cape|Hartebeesthoek94|15|45|-134.73 -110.92 -292.66|0 0 0|0|
1505|Hartebeesthoek94 to WGS 84 (1)|Hartebeesthoek94|WGS 84|1|186|0 0 0|0 0 0|0|
1509|CH1903+ to CHTRS95 (1)|CH1903+|CHTRS95|0.1|187|674.374 15.056 405.346|0 0 0|0|
1511|CHTRS95 to WGS 84 (1)|CHTRS95|WGS 84|1|187|0 0 0|0 0 0|0|
1512|Rassadiran to WGS 84 (1)|Rassadiran|WGS 84|0.5|188|-133.63 -157.5 -158.62|0 0 0|0|
1513|FD58 to WGS 84 (1)|FD58|WGS 84|0.5|189|-241.54 -163.64 396.06|0 0 0|0|
1514|ED50(ED77) to WGS 84 (1)|ED50(ED77)|WGS 84|1|56|-110.33 -97.73 -119.85|0.3423 1.1634 0.2715|0.063|
1516|La Canoa to WGS 84 (18)|La Canoa|WGS 84|2.5|190|-273.5 110.6 -357.9|0 0 0|0|
1517|Conakry 1905 to WGS 84 (1)|Conakry 1905|WGS 84|30|191|-23 259 -9|0 0 0|0|
1518|Dabola 1981 to WGS 84 (1)|Dabola 1981|WGS 84|25|191|-83 37 124|0 0 0|0|
1527|Campo Inchauspe to WGS 84 (2)|Campo Inchauspe|WGS 84|0.5|192|-154.5 150.7 100.4|0 0 0|0|
1528|Chos Malal 1914 to Campo Inchauspe (1)|Chos Malal 1914|Campo Inchauspe|10|192|160 26 41|0 0 0|0|
1529|Hito XVIII to WGS 84 (1)|Hito XVIII 1963|WGS 84|0.5|193|18.38 192.45 96.82|0.056 -0.142 -0.2|-0.0013|
1530|NAD27 to WGS 84 (30)|NAD27|WGS 84|3|194|-4.2 135.4 181.9|0 0 0|0|
1531|Nahrwan 1967 to WGS 84 (4)|Nahrwan 1967|WGS 84|0.5|195|-245 -153.9 382.8|0 0 0|0|
1532|M'poraloko to WGS 84 (2)|M'poraloko|WGS 84|0.5|78|-80.7 -132.5 41.1|0 0 0|0|
1533|Kalianpur 1937 to WGS 84 (2)|Kalianpur 1937|WGS 84|5|196|214 804 268|0 0 0|0|
1536|Nahrwan 1967 to WGS 84 (5)|Nahrwan 1967|WGS 84|1|197|-250.2 -153.09 391.7|0 0 0|0|
1537|Indian 1975 to WGS 84 (3)|Indian 1975|WGS 84|1|198|204.64 834.74 293.8|0 0 0|0|
1538|Carthage to WGS 84 (2)|Carthage|WGS 84|1|199|-260.1 5.5 432.2|0 0 0|0|
1539|South Yemen to Yemen NGN96 (1)|South Yemen|Yemen NGN96|5|200|-76 -138 67|0 0 0|0|
1540|Yemen NGN96 to WGS 84 (1)|Yemen NGN96|WGS 84|1|201|0 0 0|0 0 0|0|
1541|Indian 1960 to WGS 72BE (1)|Indian 1960|WGS 72BE|25|202|199 931 317|0 0 0|0|
1542|Indian 1960 to WGS 84 (2)|Indian 1960|WGS 84|44|203|198 881 317|0 0 0|0|
1543|Indian 1960 to WGS 84 (3)|Indian 1960|WGS 84|44|204|182 915 344|0 0 0|0|
1544|Hanoi 1972 to WGS 84 (1)|Hanoi 1972|WGS 84|5|205|-17.51 -108.32 -62.39|0 0 0|0|
1545|Egypt 1907 to WGS 72 (1)|Egypt 1907|WGS 72|5|63|-121.8 98.1 -15.2|0 0 0|0|
1547|Bissau to WGS 84 (1)|Bissau|WGS 84|25|206|-173 253 27|0 0 0|0|
1550|Aratu to WGS 84 (2)|Aratu|WGS 84|5|207|-139.62 290.53 -150.29|0 0 0|0|
1551|Aratu to WGS 84 (3)|Aratu|WGS 84|5|208|-141.15 293.44 -150.56|0 0 0|0|
1552|Aratu to WGS 84 (4)|Aratu|WGS 84|5|209|-142.48 296.03 -149.74|0 0 0|0|
1555|Naparima 1955 to WGS 84 (2)|Naparima 1955|WGS 84|1|210|-0.465 372.095 171.736|0 0 0|0|
1556|Naparima 1955 to WGS 84 (3)|Naparima 1955|WGS 84|26|210|-2 374 172|0 0 0|0|
1557|Malongo 1987 to WGS 84 (2)|Malongo 1987|WGS 84|5|171|-254.1 -5.36 -100.29|0 0 0|0|
1558|Korean 1995 to WGS 84 (1)|Korean 1995|WGS 84|2|128|0 0 0|0 0 0|0|
1560|Nord Sahara 1959 to WGS 72BE (1)|Nord Sahara 1959|WGS 72BE|8|211|-156.5 -87.2 285.9|0 0 0|0|
1561|Qatar 1974 to WGS 84 (1)|Qatar 1974|WGS 84|35|212|-128 -283 22|0 0 0|0|
1562|Qatar 1974 to WGS 84 (2)|Qatar 1974|WGS 84|1|197|-128.16 -282.42 21.93|0 0 0|0|
1563|Qatar 1974 to WGS 84 (3)|Qatar 1974|WGS 84|1|212|-128.033 -283.697 21.052|0 0 0|0|
1564|NZGD49 to WGS 84 (2)|NZGD49|WGS 84|4|66|59.47 -5.04 187.44|0.47 -0.1 1.024|-4.5993|
1565|NZGD2000 to WGS 84 (1)|NZGD2000|WGS 84|1|213|0 0 0|0 0 0|0|
1566|NZGD49 to NZGD2000 (1)|NZGD49|NZGD2000|5|66|54.4 -20.1 183.1|0 0 0|0|
1569|Accra to WGS 84 (1)|Accra|WGS 84|25|74|-199 32 322|0 0 0|0|
1570|Accra to WGS 72BE (1)|Accra|WGS 72BE|25|214|-171.16 17.29 323.31|0 0 0|0|
1577|American Samoa 1962 to WGS 84 (1)|American Samoa 1962|WGS 84|44|215|-115 118 426|0 0 0|0|
1580|NAD83(HARN) to WGS 84 (1)|NAD83(HARN)|WGS 84|2|216|0 0 0|0 0 0|0|
1581|SIRGAS 1995 to WGS 84 (1)|SIRGAS 1995|WGS 84|2|217|0 0 0|0 0 0|0|
1582|PSAD56 to WGS 84 (10)|PSAD56|WGS 84|3|218|-259.73 173.12 -398.27|0 0 0|0|
1583|PSAD56 to WGS 84 (11)|PSAD56|WGS 84|0.5|219|-307.7 265.3 -363.5|0 0 0|0|
1584|Deir ez Zor to WGS 72BE (1)|Deir ez Zor|WGS 72BE|5|220|-174.6 -3.1 236.2|0 0 0|0|
1587|Deir ez Zor to WGS 84 (4)|Deir ez Zor|WGS 84|1|221|-191.77 15.01 235.07|0 0 0|0|
1588|ED50 to ETRS89 (1)|ED50|ETRS89|1|62|-116.641 -56.931 -110.559|0.892507816631 0.920766095087 -0.916640798962|-3.52|
1591|RGF93 v1 to ETRS89 (1)|RGF93 v1|ETRS89|0.1|145|0 0 0|0 0 0|0|
1592|Timbalai 1948 to WGS 84 (2)|Timbalai 1948|WGS 84|5|222|-678 670 -48|0 0 0|0|
1594|AGD66 to GDA94 (8)|AGD66|GDA94|1|182|-120.271 -64.543 161.632|0.217 -0.067 -0.129|2.499|
1595|AGD66 to GDA94 (9)|AGD66|GDA94|1|223|-124.133 -42.003 137.4|-0.008 0.557 0.178|-1.854|
1597|Bogota 1975 to WGS 84 (2)|Bogota 1975|WGS 84|0.2|224|304.5 306.5 -318.1|0 0 0|0|
1609|BD72 to WGS 84 (1)|BD72|WGS 84|1|225|-99.059 53.322 -112.486|0.419 -0.83 1.885|-1|
1610|BD72 to WGS 84 (2)|BD72|WGS 84|5|225|-125.8 79.9 -100.5|0 0 0|0|
1611|IRENET95 to ETRS89 (1)|IRENET95|ETRS89|0|226|0 0 0|0 0 0|0|
1612|ED50 to WGS 84 (23)|ED50|WGS 84|1|227|-116.641 -56.931 -110.559|0.893 0.921 -0.917|-3.52|
1613|ED50 to WGS 84 (24)|ED50|WGS 84|1|228|-90.365 -101.13 -123.384|0.333 0.077 0.894|1.994|
1614|Sierra Leone 1968 to WGS 84 (1)|Sierra Leone 1968|WGS 84|26|229|-88 4 101|0 0 0|0|
1615|Timbalai 1948 to WGS 84 (3)|Timbalai 1948|WGS 84|100|230|-726.282 703.611 -48.999|0 0 0|0|
1616|PSD93 to WGS 72 (1)|PSD93|WGS 72|1.2|174|-182.046 -225.604 168.884|-0.616 -1.655 7.824|16.641|
1617|PSD93 to WGS 84 (3)|PSD93|WGS 84|0.5|231|-191.808 -250.512 167.861|-0.792 -1.653 8.558|20.703|
1618|MGI to WGS 84 (3)|MGI|WGS 84|1.5|232|577.326 90.129 463.919|5.137 1.474 5.297|2.4232|
1619|MGI to ETRS89 (1)|MGI|ETRS89|1.5|232|577.326 90.129 463.919|5.137 1.474 5.297|2.4232|
1622|S-JTSK to ETRS89 (1)|S-JTSK|ETRS89|1|233|570.8 85.7 462.8|4.998 1.587 5.261|3.56|
1623|S-JTSK to WGS 84 (1)|S-JTSK|WGS 84|1|233|570.8 85.7 462.8|4.998 1.587 5.261|3.56|
1626|ED50 to ETRS89 (4)|ED50|ETRS89|1|234|-81.1 -89.4 -115.8|0.485 0.024 0.413|-0.54|
1627|ED50 to WGS 84 (25)|ED50|WGS 84|1|234|-81.1 -89.4 -115.8|0.485 0.024 0.413|-0.54|
1628|ED50 to ETRS89 (5)|ED50|ETRS89|1|235|-116.8 -106.4 -154.4|0 0 0|0|
1629|ED50 to WGS 84 (26)|ED50|WGS 84|1|235|-116.8 -106.4 -154.4|0 0 0|0|
1630|ED50 to ETRS89 (6)|ED50|ETRS89|1.5|236|-181.5 -90.3 -187.2|0.144 0.492 -0.394|17.57|
1631|ED50 to WGS 84 (27)|ED50|WGS 84|1.5|236|-181.5 -90.3 -187.2|0.144 0.492 -0.394|17.57|
1632|ED50 to ETRS89 (7)|ED50|ETRS89|1.5|237|-131 -100.3 -163.4|-1.244 -0.02 -1.144|9.39|
1633|ED50 to WGS 84 (28)|ED50|WGS 84|1.5|237|-131 -100.3 -163.4|-1.244 -0.02 -1.144|9.39|
1634|ED50 to ETRS89 (8)|ED50|ETRS89|1.5|238|-178.4 -83.2 -221.3|0.54 -0.532 -0.126|21.2|
1635|ED50 to WGS 84 (29)|ED50|WGS 84|1.5|238|-178.4 -83.2 -221.3|0.54 -0.532 -0.126|21.2|
1638|KKJ to ETRS89 (1)|KKJ|ETRS89|1.5|239|-90.7 -106.1 -119.2|4.09 0.218 -1.05|1.37|
1639|KKJ to WGS 84 (1)|KKJ|WGS 84|1.5|239|-90.7 -106.1 -119.2|4.09 0.218 -1.05|1.37|
1641|TM65 to WGS 84 (2)|TM65|WGS 84|1|226|482.5 -130.6 564.6|-1.042 -0.214 -0.631|8.15|
1642|LUREF to ETRS89 (1)|LUREF|ETRS89|1|240|-193 13.7 -39.3|-0.41 -2.933 2.688|0.43|
1643|LUREF to WGS 84 (1)|LUREF|WGS 84|1|240|-193 13.7 -39.3|-0.41 -2.933 2.688|0.43|
1644|Pulkovo 1942(58) to ETRS89 (1)|Pulkovo 1942(58)|ETRS89|1|241|33.4 -146.6 -76.3|-0.359 -0.053 0.844|-0.84|
1645|Pulkovo 1942(58) to WGS 84 (1)|Pulkovo 1942(58)|WGS 84|1|241|33.4 -146.6 -76.3|-0.359 -0.053 0.844|-0.84|
1646|CH1903 to ETRS89 (1)|CH1903|ETRS89|1.5|187|674.374 15.056 405.346|0 0 0|0|
1647|CH1903+ to ETRS89 (1)|CH1903+|ETRS89|0.1|187|674.374 15.056 405.346|0 0 0|0|
1648|EST97 to ETRS89 (1)|EST97|ETRS89|0|242|0 0 0|0 0 0|0|
1649|EST97 to WGS 84 (1)|EST97|WGS 84|1|242|0 0 0|0 0 0|0|
1650|ED50 to ETRS89 (10)|ED50|ETRS89|2|145|-84 -97 -117|0 0 0|0|
1651|NTF to ETRS89 (1)|NTF|ETRS89|2|106|-168 -60 320|0 0 0|0|
1652|BD72 to ETRS89 (1)|BD72|ETRS89|1|225|-99.1 53.3 -112.5|0.419 -0.83 1.885|-1|
1653|NGO 1948 to ETRS89 (1)|NGO 1948|ETRS89|3|243|278.3 93 474.5|7.889 0.05 -6.61|6.21|
1654|NGO 1948 to WGS 84 (1)|NGO 1948|WGS 84|3|243|278.3 93 474.5|7.889 0.05 -6.61|6.21|
1655|Lisbon to ETRS89 (1)|Lisbon|ETRS89|3|244|-280.9 -89.8 130.2|-1.721 0.355 -0.371|-5.92|
1656|Lisbon to WGS 84 (1)|Lisbon|WGS 84|3|244|-280.9 -89.8 130.2|-1.721 0.355 -0.371|-5.92|
1657|Datum 73 to ETRS89 (1)|Datum 73|ETRS89|2|244|-238.2 85.2 29.9|0.166 0.046 1.248|2.03|
1658|Datum 73 to WGS 84 (1)|Datum 73|WGS 84|2|244|-238.2 85.2 29.9|0.166 0.046 1.248|2.03|
1659|Monte Mario to ETRS89 (1)|Monte Mario|ETRS89|4|245|-104.1 -49.1 -9.9|0.971 -2.917 0.714|-11.68|
1660|Monte Mario to WGS 84 (4)|Monte Mario|WGS 84|4|245|-104.1 -49.1 -9.9|0.971 -2.917 0.714|-11.68|
1661|Monte Mario to ETRS89 (2)|Monte Mario|ETRS89|4|57|-168.6 -34 38.6|-0.374 -0.679 -1.379|-9.48|
1662|Monte Mario to WGS 84 (2)|Monte Mario|WGS 84|4|57|-168.6 -34 38.6|-0.374 -0.679 -1.379|-9.48|
1663|Monte Mario to ETRS89 (3)|Monte Mario|ETRS89|4|58|-50.2 -50.4 84.8|-0.69 -2.012 0.459|-28.08|
1664|Monte Mario to WGS 84 (3)|Monte Mario|WGS 84|4|58|-50.2 -50.4 84.8|-0.69 -2.012 0.459|-28.08|
1665|AGD66 to WGS 84 (12)|AGD66|WGS 84|3|181|-129.193 -41.212 130.73|0.246 0.374 0.329|-2.955|
1666|AGD66 to WGS 84 (13)|AGD66|WGS 84|3|183|-119.353 -48.301 139.484|0.415 0.26 0.437|-0.613|
1667|AGD66 to WGS 84 (14)|AGD66|WGS 84|3|182|-120.271 -64.543 161.632|0.217 -0.067 -0.129|2.499|
1668|AGD66 to WGS 84 (15)|AGD66|WGS 84|3|223|-124.133 -42.003 137.4|-0.008 0.557 0.178|-1.854|
1669|AGD84 to WGS 84 (7)|AGD84|WGS 84|3|30|-117.763 -51.51 139.061|0.292 0.443 0.277|-0.191|
1671|RGF93 v1 to WGS 84 (1)|RGF93 v1|WGS 84|1|145|0 0 0|0 0 0|0|
1672|Amersfoort to WGS 84 (2)|Amersfoort|WGS 84|1|33|565.04 49.91 465.84|-0.409394387439 0.359705195614 -1.86849100035|4.0772|
1673|DHDN to WGS 84 (1)|DHDN|WGS 84|5|159|582 105 414|1.04 0.35 -3.08|8.3|
1674|Pulkovo 1942(83) to ETRS89 (1)|Pulkovo 1942(83)|ETRS89|2|246|24 -123 -94|0.02 -0.25 -0.13|1.1|
1675|Pulkovo 1942(83) to WGS 84 (1)|Pulkovo 1942(83)|WGS 84|2|246|24 -123 -94|0.02 -0.25 -0.13|1.1|
1676|CH1903+ to WGS 84 (1)|CH1903+|WGS 84|1|187|674.374 15.056 405.346|0 0 0|0|
1678|IRENET95 to WGS 84 (1)|IRENET95|WGS 84|1|226|0 0 0|0 0 0|0|
1679|Pulkovo 1942 to WGS 84 (2)|Pulkovo 1942|WGS 84|9|144|-40.595 -18.55 -69.339|2.508 1.832 -2.611|-4.299|
1680|RT90 to WGS 84 (1)|RT90|WGS 84|1|173|419.3836 99.3335 591.3451|0.850389 1.817277 -7.862238|-0.99496|
1682|South Yemen to WGS 84 (1)|South Yemen|WGS 84|5|200|-76 -138 67|0 0 0|0|
1683|Tete to WGS 84 (1)|Tete|WGS 84|30|152|-115.064 -87.39 -101.716|-0.058 4.001 -2.062|9.366|
1684|Tete to WGS 84 (2)|Tete|WGS 84|1|153|-82.875 -57.097 -156.768|-2.158 1.524 -0.982|-0.359|
1685|Tete to WGS 84 (3)|Tete|WGS 84|4|154|-138.527 -91.999 -114.591|-0.14 3.363 -2.217|11.748|
1686|Tete to WGS 84 (4)|Tete|WGS 84|3|155|-73.472 -51.66 -112.482|0.953 4.6 -2.368|0.586|
1687|Tete to WGS 84 (5)|Tete|WGS 84|10|156|219.315 168.975 -166.145|0.198 5.926 -2.356|-57.104|
1701|NZGD49 to NZGD2000 (2)|NZGD49|NZGD2000|4|66|59.47 -5.04 187.44|0.47 -0.1 1.024|-4.5993|
1751|Amersfoort to ETRS89 (1)|Amersfoort|ETRS89|0.5|33|565.04 49.91 465.84|-0.409394387439 0.359705195614 -1.86849100035|4.0772|
1753|CH1903 to WGS 84 (1)|CH1903|WGS 84|1|187|660.077 13.551 369.344|-0.804816 -0.577692 -0.952236|5.66|
1754|Minna to WGS 84 (3)|Minna|WGS 84|5|247|-111.92 -87.85 114.5|1.875 0.202 0.219|0.032|
1766|CH1903 to WGS 84 (2)|CH1903|WGS 84|1.5|187|674.374 15.056 405.346|0 0 0|0|
1767|REGVEN to SIRGAS 1995 (1)|REGVEN|SIRGAS 1995|0.02|248|0 0 0|0 0 0|0|
1768|REGVEN to WGS 84 (1)|REGVEN|WGS 84|1|248|0 0 0|0 0 0|0|
1773|POSGAR 98 to WGS 84 (1)|POSGAR 98|WGS 84|1|122|0 0 0|0 0 0|0|
1774|POSGAR 98 to SIRGAS 1995 (1)|POSGAR 98|SIRGAS 1995|0|122|0 0 0|0 0 0|0|
1775|Pulkovo 1942(83) to ETRS89 (2)|Pulkovo 1942(83)|ETRS89|0.1|246|24.9 -126.4 -93.2|-0.063 -0.247 -0.041|1.01|
1776|DHDN to ETRS89 (2)|DHDN|ETRS89|3|159|598.1 73.7 418.2|0.202 0.045 -2.455|6.7|
1777|DHDN to WGS 84 (2)|DHDN|WGS 84|3|159|598.1 73.7 418.2|0.202 0.045 -2.455|6.7|
1778|DHDN to ETRS89 (3)|DHDN|ETRS89|1|249|597.1 71.4 412.1|0.894 0.068 -1.563|7.58|
1779|DHDN to ETRS89 (4)|DHDN|ETRS89|1|250|584.8 67 400.3|0.105 0.013 -2.378|10.29|
1780|DHDN to ETRS89 (5)|DHDN|ETRS89|1|251|590.5 69.5 411.6|-0.796 -0.052 -3.601|8.3|
1783|ED50 to ETRS89 (9)|ED50|ETRS89|2|252|-84.1 -101.8 -129.7|0 0 0.468|1.05|
1784|ED50 to WGS 84 (30)|ED50|WGS 84|2|252|-84.1 -101.8 -129.7|0 0 0.468|1.05|
1796|Manoca 1962 to WGS 84 (1)|Manoca 1962|WGS 84|0.5|253|-70.9 -151.8 -41.4|0 0 0|0|
1797|Qornoq 1927 to WGS 84 (1)|Qornoq 1927|WGS 84|48|254|164 138 -189|0 0 0|0|
1798|Qornoq 1927 to WGS 84 (2)|Qornoq 1927|WGS 84|1|254|163.511 127.533 -159.789|0 0 0.814|-0.6|
1799|Scoresbysund 1952 to WGS 84 (1)|Scoresbysund 1952|WGS 84|1|255|105 326 -102.5|0 0 0.814|-0.6|
1800|Ammassalik 1958 to WGS 84 (1)|Ammassalik 1958|WGS 84|1|256|-45 417 -3.5|0 0 0.814|-0.6|
1801|Pointe Noire to WGS 84 (2)|Pointe Noire|WGS 84|4|257|-145 52.7 -291.6|0 0 0|0|
1802|Pointe Noire to WGS 84 (3)|Pointe Noire|WGS 84|0.15|257|-178.3 -316.7 -131.5|5.278 6.077 10.979|19.166|
1805|Garoua to WGS 72BE (1)|Garoua|WGS 72BE|5|258|-56.1 -167.8 13.1|0 0 0|0|
1806|Kousseri to WGS 72BE (1)|Kousseri|WGS 72BE|5|259|-104.4 -136.6 201.2|0 0 0|0|
1807|Pulkovo 1942 to WGS 84 (13)|Pulkovo 1942|WGS 84|10|260|27 -135 -84.5|0 0 0.554|0.2263|
1808|Pulkovo 1942 to WGS 84 (14)|Pulkovo 1942|WGS 84|5|261|686.1 -123.5 -574.4|8.045 -23.366 10.791|-2.926|
1809|Pulkovo 1942 to WGS 84 (15)|Pulkovo 1942|WGS 84|2|262|926.4 -715.9 -186.4|-10.364 -20.78 26.452|-7.224|
1810|ED50 to WGS 84 (31)|ED50|WGS 84|15|52|-84 -103 -122.5|0 0 0.554|0.2263|
1811|PSAD56 to WGS 84 (12)|PSAD56|WGS 84|10|263|-291.87 106.37 -364.52|0 0 0|0|
1812|Indian 1975 to WGS 84 (4)|Indian 1975|WGS 84|3|68|293 836 318|0.5 1.6 -2.8|2.1|
1813|Batavia to WGS 84 (2)|Batavia|WGS 84|5|264|-378.873 676.002 -46.255|0 0 0|0|
1814|Batavia to WGS 84 (3)|Batavia|WGS 84|5|265|-377.7 675.1 -52.2|0 0 0|0|
1815|Nord Sahara 1959 to WGS 84 (4)|Nord Sahara 1959|WGS 84|5|266|-152.9 43.8 358.3|2.714 1.386 -2.788|-6.743|
1816|Nord Sahara 1959 to WGS 84 (5)|Nord Sahara 1959|WGS 84|100|267|-95.7 10.2 158.9|0 0 0|0|
1817|Nord Sahara 1959 to WGS 84 (6)|Nord Sahara 1959|WGS 84|100|268|-165.914 -70.607 305.009|0 0 0|0|
1818|Minna to WGS 84 (4)|Minna|WGS 84|12|269|-89 -112 125.9|0 0 0.814|-0.38|
1820|Minna to WGS 84 (6)|Minna|WGS 84|12|270|-93.2 -93.31 121.156|0 0 0|0|
1821|Minna to WGS 84 (7)|Minna|WGS 84|6|271|-88.98 -83.23 113.55|0 0 0|0|
1822|Minna to WGS 84 (8)|Minna|WGS 84|10|272|-92.726 -90.304 115.735|0 0 0|0|
1823|Minna to WGS 84 (9)|Minna|WGS 84|8|273|-93.134 -86.647 114.196|0 0 0|0|
1824|Minna to WGS 84 (10)|Minna|WGS 84|25|274|-93 -94 124|0 0 0|0|
1825|Hong Kong 1980 to WGS 84 (1)|Hong Kong 1980|WGS 84|1|275|-162.619 -276.959 -161.764|0.067753 -2.243648 -1.158828|-1.094246|
1826|JGD2000 to WGS 84 (1)|JGD2000|WGS 84|1|276|0 0 0|0 0 0|0|
1828|Yoff to WGS 72 (1)|Yoff|WGS 72|25|277|-37 157 85|0 0 0|0|
1829|HD72 to ETRS89 (1)|HD72|ETRS89|0.5|133|56 -75.77 -15.31|-0.37 -0.2 -0.21|1.01|
1830|HD72 to WGS 84 (1)|HD72|WGS 84|1|133|56 -75.77 -15.31|-0.37 -0.2 -0.21|1.01|
1831|HD72 to WGS 84 (2)|HD72|WGS 84|1|133|57.01 -69.97 -9.29|0 0 0|0|
1832|ID74 to WGS 84 (2)|ID74|WGS 84|25|135|2.691 -14.757 4.724|0 0 0.774|-0.6|
1833|ID74 to WGS 84 (3)|ID74|WGS 84|3|135|-1.977 -13.06 -9.993|0.364 0.254 0.689|-1.037|
1838|Segara to WGS 84 (4)|Segara|WGS 84|1|278|-404.78 685.68 45.47|0 0 0|0|
1839|Beduaram to WGS 72BE (1)|Beduaram|WGS 72BE|15|279|-101 -111 187|0 0 0|0|
1840|QND95 to WGS 84 (1)|QND95|WGS 84|0|212|-119.4248 -303.65872 -11.00061|1.164298 0.174458 1.096259|3.657065|
1842|NAD83(CSRS) to WGS 84 (1)|NAD83(CSRS)|WGS 84|2|280|0 0 0|0 0 0|0|
1852|Timbalai 1948 to WGS 84 (4)|Timbalai 1948|WGS 84|5|281|-533.4 669.2 -52.5|0 0 4.28|9.4|
1853|ED50 to WGS 84 (39)|ED50|WGS 84|5|282|-82.31 -95.23 -114.96|0 0 0|0|
1854|FD58 to WGS 84 (2)|FD58|WGS 84|0.5|283|-239.1 -170.02 397.5|0 0 0|0|
1855|FD58 to WGS 84 (3)|FD58|WGS 84|0.5|284|-244.72 -162.773 400.75|0 0 0|0|
1856|ED50(ED77) to WGS 84 (3)|ED50(ED77)|WGS 84|0.5|285|-122.89 -159.08 -168.74|0 0 0|0|
1857|ED50(ED77) to WGS 84 (4)|ED50(ED77)|WGS 84|0.5|283|-84.78 -107.55 -137.25|0 0 0|0|
1858|ED50(ED77) to WGS 84 (5)|ED50(ED77)|WGS 84|0.5|284|-123.92 -155.515 -157.721|0 0 0|0|
1859|ELD79 to WGS 84 (1)|ELD79|WGS 84|20|286|-69.06 -90.71 -142.56|0 0 0|0|
1860|ELD79 to WGS 84 (2)|ELD79|WGS 84|0.5|286|-113.997 -97.076 -152.312|0 0 0|0|
1861|ELD79 to WGS 84 (3)|ELD79|WGS 84|2|287|-114.5 -96.1 -151.9|0 0 0|0|
1862|ELD79 to WGS 84 (4)|ELD79|WGS 84|0.5|287|-194.513 -63.978 -25.759|-3.4027 3.756 -3.352|-0.9175|
1863|ELD79 to WGS 84 (5)|ELD79|WGS 84|6|287|-389.691 64.502 210.209|0.086 14.314 -6.39|0.9264|
1864|SAD69 to WGS 84 (1)|SAD69|WGS 84|19|288|-57 1 -41|0 0 0|0|
1865|SAD69 to WGS 84 (2)|SAD69|WGS 84|9|289|-62 -1 -37|0 0 0|0|
1866|SAD69 to WGS 84 (3)|SAD69|WGS 84|26|114|-61 2 -48|0 0 0|0|
1867|SAD69 to WGS 84 (4)|SAD69|WGS 84|8|290|-60 -2 -41|0 0 0|0|
1868|SAD69 to WGS 84 (5)|SAD69|WGS 84|21|291|-75 -1 -44|0 0 0|0|
1869|SAD69 to WGS 84 (6)|SAD69|WGS 84|10|117|-44 6 -36|0 0 0|0|
1870|SAD69 to WGS 84 (7)|SAD69|WGS 84|6|118|-48 3 -44|0 0 0|0|
1871|SAD69 to WGS 84 (8)|SAD69|WGS 84|44|292|-47 26 -42|0 0 0|0|
1872|SAD69 to WGS 84 (9)|SAD69|WGS 84|12|293|-53 3 -47|0 0 0|0|
1873|SAD69 to WGS 84 (10)|SAD69|WGS 84|26|294|-61 2 -33|0 0 0|0|
1874|SAD69 to WGS 84 (11)|SAD69|WGS 84|9|120|-58 0 -44|0 0 0|0|
1875|SAD69 to WGS 84 (12)|SAD69|WGS 84|44|210|-45 12 -33|0 0 0|0|
1876|SAD69 to WGS 84 (13)|SAD69|WGS 84|8|121|-45 8 -33|0 0 0|0|
1877|SAD69 to WGS 84 (14)|SAD69|WGS 84|5|295|-66.87 4.37 -38.52|0 0 0|0|
1878|SWEREF99 to ETRS89 (1)|SWEREF99|ETRS89|0|173|0 0 0|0 0 0|0|
1879|SWEREF99 to WGS 84 (1)|SWEREF99|WGS 84|1|173|0 0 0|0 0 0|0|
1880|Point 58 to WGS 84 (1)|Point 58|WGS 84|44|296|-106 -129 165|0 0 0|0|
1885|Azores Oriental 1940 to WGS 84 (1)|Azores Oriental 1940|WGS 84|44|297|-203 141 53|0 0 0|0|
1886|Azores Central 1948 to WGS 84 (1)|Azores Central 1948|WGS 84|6|298|-104 167 -38|0 0 0|0|
1887|Azores Occidental 1939 to WGS 84 (1)|Azores Occidental 1939|WGS 84|35|299|-425 -169 81|0 0 0|0|
1888|Porto Santo to WGS 84 (1)|Porto Santo|WGS 84|44|300|-499 -249 314|0 0 0|0|
1890|Australian Antarctic to WGS 84 (1)|Australian Antarctic|WGS 84|1|301|0 0 0|0 0 0|0|
1892|Hito XVIII 1963 to WGS 84 (2)|Hito XVIII 1963|WGS 84|44|302|16 196 93|0 0 0|0|
1893|Puerto Rico to WGS 84 (3)|Puerto Rico|WGS 84|6|303|11 72 -101|0 0 0|0|
1895|RT90 to SWEREF99 (1)|RT90|SWEREF99|0.1|173|414.1 41.3 603.1|-0.855 2.141 -7.023|0|
1896|RT90 to WGS 84 (2)|RT90|WGS 84|1|173|414.1 41.3 603.1|-0.855 2.141 -7.023|0|
1898|Segara to WGS 84 (2)|Segara|WGS 84|5|304|-387.06 636.53 46.29|0 0 0|0|
1899|Segara to WGS 84 (3)|Segara|WGS 84|10|305|-403.4 681.12 46.56|0 0 0|0|
1900|NAD83(HARN) to WGS 84 (2)|NAD83(HARN)|WGS 84|1|86|-0.9738 1.9453 0.5486|0.0275507901704 0.0100492213604 0.01135900288|0|
1901|NAD83(HARN) to WGS 84 (3)|NAD83(HARN)|WGS 84|1|86|-0.991 1.9072 0.5129|0.0257899075195 0.00965009896027 0.0116599432323|0|
1902|Manoca 1962 to WGS 72BE (1)|Manoca 1962|WGS 72BE|5|253|-56.7 -171.8 -40.6|0 0 0|0|
1903|Fort Marigot to WGS 84 (1)|Fort Marigot|WGS 84|10|306|137 248 -430|0 0 0|0|
1904|Guadeloupe 1948 to WGS 84 (1)|Guadeloupe 1948|WGS 84|10|307|-467 -16 -300|0 0 0|0|
1905|Guadeloupe 1948 to WGS 84 (2)|Guadeloupe 1948|WGS 84|0.1|307|-472.29 -5.63 -304.12|0.4362 -0.8374 0.2563|1.8984|
1906|CSG67 to WGS 84 (1)|CSG67|WGS 84|10|308|-186 230 110|0 0 0|0|
1908|CSG67 to RGFG95 (1)|CSG67|RGFG95|1|308|-193.066 236.993 105.447|0.4814 -0.8074 0.1276|1.5649|
1909|Martinique 1938 to WGS 84 (1)|Martinique 1938|WGS 84|10|309|186 482 151|0 0 0|0|
1910|Martinique 1938 to WGS 84 (2)|Martinique 1938|WGS 84|0.1|309|126.93 547.94 130.41|-2.7867 5.1612 -0.8584|13.8227|
1912|RGR92 to WGS 84 (1)|RGR92|WGS 84|1|310|0 0 0|0 0 0|0|
1913|Tahaa 54 to WGS 84 (1)|Tahaa 54|WGS 84|10|311|65 342 77|0 0 0|0|
1914|IGN72 Nuku Hiva to WGS 84 (1)|IGN72 Nuku Hiva|WGS 84|10|312|84 274 65|0 0 0|0|
1916|Combani 1950 to WGS 84 (1)|Combani 1950|WGS 84|10|313|-382 -59 -262|0 0 0|0|
1917|IGN56 Lifou to WGS 84 (1)|IGN56 Lifou|WGS 84|10|314|336 223 -231|0 0 0|0|
1921|Petrels 1972 to WGS 84 (1)|Petrels 1972|WGS 84|10|315|365 194 166|0 0 0|0|
1922|Perroud 1950 to WGS 84 (1)|Perroud 1950|WGS 84|10|316|325 154 172|0 0 0|0|
1923|Saint Pierre et Miquelon 1950 to WGS 84 (1)|Saint Pierre et Miquelon 1950|WGS 84|10|317|30 430 368|0 0 0|0|
1924|Tahiti 52 to WGS 84 (1)|Tahiti 52|WGS 84|10|318|162 117 154|0 0 0|0|
1926|Reunion 1947 to RGR92 (1)|Reunion 1947|RGR92|0.1|319|789.524 -626.486 -89.904|0.6006 76.7946 -10.5788|-32.3241|
1927|IGN56 Lifou to WGS 84 (2)|IGN56 Lifou|WGS 84|1|314|137.092 131.66 91.475|-1.9436 -11.5993 -4.3321|-7.4824|
1928|IGN53 Mare to WGS 84 (1)|IGN53 Mare|WGS 84|1|320|-408.809 366.856 -412.987|1.8842 -0.5308 2.1655|-121.0993|
1931|ST71 Belep to WGS 84 (1)|ST71 Belep|WGS 84|1|321|-480.26 -438.32 -643.429|16.3119 20.1721 -4.0349|-111.7002|
1946|NAD83(CSRS) to WGS 84 (2)|NAD83(CSRS)|WGS 84|1|280|-0.991 1.9072 0.5129|0.0257899075195 0.00965009896027 0.0116599432323|0|
1950|NAD83 to NAD83(CSRS) (4)|NAD83|NAD83(CSRS)|2|322|0 0 0|0 0 0|0|
1951|Hjorsey 1955 to WGS 84 (1)|Hjorsey 1955|WGS 84|7|323|-73 46 -86|0 0 0|0|
1952|ISN93 to WGS 84 (1)|ISN93|WGS 84|1|324|0 0 0|0 0 0|0|
1953|TM75 to ETRS89 (2)|TM75|ETRS89|1|226|482.5 -130.6 564.6|-1.042 -0.214 -0.631|8.15|
1954|TM75 to WGS 84 (2)|TM75|WGS 84|1|226|482.5 -130.6 564.6|-1.042 -0.214 -0.631|8.15|
1955|OSNI 1952 to WGS 84 (1)|OSNI 1952|WGS 84|1|325|482.5 -130.6 564.6|-1.042 -0.214 -0.631|8.15|
1956|TM75 to WGS 84 (3)|TM75|WGS 84|6|226|506 -122 611|0 0 0|0|
1957|Helle 1954 to WGS 84 (1)|Helle 1954|WGS 84|1|326|982.6087 552.753 -540.873|6.68162662528 -31.6114924086 -19.8481610048|16.805|
1958|LKS92 to WGS 84 (1)|LKS92|WGS 84|1|327|0 0 0|0 0 0|0|
1959|St. Vincent 1945 to WGS 84 (1)|St. Vincent 1945|WGS 84|1|328|195.671 332.517 274.607|0 0 0|0|
1962|IGN72 Grande Terre to WGS 84 (1)|IGN72 Grande Terre|WGS 84|10|329|-13 -348 292|0 0 0|0|
1963|IGN72 Grande Terre to WGS 84 (2)|IGN72 Grande Terre|WGS 84|1|329|97.295 -263.247 310.882|-1.5999 0.8386 3.1409|13.3259|
1964|RGR92 to Reunion 1947 (1)|RGR92|Reunion 1947|0.1|319|-789.99 627.333 89.685|-0.6072 -76.8019 10.568|32.2083|
1965|Selvagem Grande to WGS 84 (1)|Selvagem Grande|WGS 84|44|330|-289 -124 60|0 0 0|0|
1966|Porto Santo 1995 to WGS 84 (2)|Porto Santo 1995|WGS 84|5|331|-502.862 -247.438 312.724|0 0 0|0|
1967|Porto Santo 1995 to WGS 84 (3)|Porto Santo 1995|WGS 84|1|331|-210.502 -66.902 -48.476|2.094 -15.067 -5.817|0.485|
1968|Azores Oriental 1995 to WGS 84 (2)|Azores Oriental 1995|WGS 84|5|332|-204.633 140.216 55.199|0 0 0|0|
1969|Azores Oriental 1995 to WGS 84 (3)|Azores Oriental 1995|WGS 84|1|332|-211.939 137.626 58.3|-0.089 0.251 0.079|0.384|
1970|Azores Oriental 1995 to WGS 84 (4)|Azores Oriental 1995|WGS 84|5|297|-204.619 140.176 55.226|0 0 0|0|
1971|Azores Oriental 1995 to WGS 84 (5)|Azores Oriental 1995|WGS 84|1|297|-208.719 129.685 52.092|-0.195 -0.014 0.327|0.198|
1972|Azores Central 1995 to WGS 84 (2)|Azores Central 1995|WGS 84|5|333|-106.301 166.27 -37.916|0 0 0|0|
1973|Azores Central 1995 to WGS 84 (3)|Azores Central 1995|WGS 84|1|333|-105.854 165.589 -38.312|-0.003 -0.026 0.024|-0.048|
1974|Azores Central 1995 to WGS 84 (4)|Azores Central 1995|WGS 84|5|334|-106.248 166.244 -37.845|0 0 0|0|
1975|Azores Central 1995 to WGS 84 (5)|Azores Central 1995|WGS 84|1|334|-104 162.924 -38.882|-0.075 -0.071 0.051|-0.338|
1976|Azores Central 1995 to WGS 84 (6)|Azores Central 1995|WGS 84|5|335|-106.044 166.655 -37.876|0 0 0|0|
1977|Azores Central 1995 to WGS 84 (7)|Azores Central 1995|WGS 84|1|335|-95.323 166.098 -69.942|-0.215 -1.031 0.047|1.922|
1978|Azores Central 1995 to WGS 84 (8)|Azores Central 1995|WGS 84|5|336|-106.253 166.239 -37.854|0 0 0|0|
1979|Azores Central 1995 to WGS 84 (9)|Azores Central 1995|WGS 84|1|336|-100.306 161.246 -48.761|-0.192 -0.385 0.076|0.131|
1980|Azores Central 1995 to WGS 84 (10)|Azores Central 1995|WGS 84|5|298|-106.226 166.366 -37.893|0 0 0|0|
1981|Azores Central 1995 to WGS 84 (11)|Azores Central 1995|WGS 84|1|298|-103.088 162.481 -28.276|0.167 0.082 0.168|-1.504|
1982|Azores Occidental 1939 to WGS 84 (2)|Azores Occidental 1939|WGS 84|5|299|-422.651 -172.995 84.02|0 0 0|0|
1983|Datum 73 to WGS 84 (3)|Datum 73|WGS 84|5|244|-223.237 110.193 36.649|0 0 0|0|
1984|Lisbon to WGS 84 (3)|Lisbon|WGS 84|5|244|-304.046 -60.576 103.64|0 0 0|0|
1985|ED50 to WGS 84 (33)|ED50|WGS 84|5|244|-87.987 -108.639 -121.593|0 0 0|0|
1986|Lisbon 1890 to WGS 84 (1)|Lisbon 1890|WGS 84|5|244|508.088 -191.042 565.223|0 0 0|0|
1987|Datum 73 to WGS 84 (4)|Datum 73|WGS 84|1|244|-239.749 88.181 30.488|0.263 0.082 1.211|2.229|
1988|Lisbon to WGS 84 (4)|Lisbon|WGS 84|2|244|-288.885 -91.744 126.244|-1.691 0.41 -0.211|-4.598|
1989|ED50 to WGS 84 (34)|ED50|WGS 84|1|244|-74.292 -135.889 -104.967|-0.524 -0.136 0.61|-3.761|
1990|Lisbon 1890 to WGS 84 (2)|Lisbon 1890|WGS 84|1|244|631.392 -66.551 481.442|1.09 -4.445 -4.487|-4.43|
1992|Datum 73 to ETRS89 (3)|Datum 73|ETRS89|1|244|-231.034 102.615 26.836|0.615 -0.198 0.881|1.786|
1993|IKBD-92 to WGS 84 (4)|IKBD-92|WGS 84|1|337|0 0 0|0 0 0|0|
1994|Reykjavik 1900 to WGS 84 (1)|Reykjavik 1900|WGS 84|10|323|-28 199 5|0 0 0|0|
1995|Dealul Piscului 1930 to WGS 84 (1)|Dealul Piscului 1930|WGS 84|10|338|103.25 -100.4 -307.19|0 0 0|0|
1997|Lisbon to ETRS89 (2)|Lisbon|ETRS89|2|244|-282.1 -72.2 120|-1.529 0.145 -0.89|-4.46|
1998|ED50 to WGS 84 (36)|ED50|WGS 84|1|339|-157.89 -17.16 -78.41|2.118 2.697 -1.434|-5.38|
3817|HD1909 to WGS 84 (1)|HD1909|WGS 84|3|133|595.48 121.69 515.35|4.115 -2.9383 0.853|-3.408|
3830|TWD97 to WGS 84 (1)|TWD97|WGS 84|1|340|0 0 0|0 0 0|0|
3894|IGRS to WGS 84 (1)|IGRS|WGS 84|1|341|0 0 0|0 0 0|0|
3904|ED50 to WGS 84 (32)|ED50|WGS 84|5|342|-83.11 -97.38 -117.22|0.00569290865242 -0.0446975835137 0.0442850539013|0.1218|
3905|ED87 to WGS 84 (2)|ED87|WGS 84|1|343|-83.11 -97.38 -117.22|0.00569290865242 -0.0446975835137 0.0442850539013|0.1218|
3914|MGI 1901 to ETRS89 (3)|MGI 1901|ETRS89|1|344|426.9 142.6 460.1|4.91 4.49 -12.42|17.1|
3915|MGI 1901 to WGS 84 (5)|MGI 1901|WGS 84|1|344|426.9 142.6 460.1|4.91 4.49 -12.42|17.1|
3916|MGI 1901 to Slovenia 1996 (1)|MGI 1901|Slovenia 1996|1|344|409.545 72.164 486.872|3.085957 5.46911 -11.020289|17.919665|
3917|MGI 1901 to WGS 84 (9)|MGI 1901|WGS 84|1|344|409.545 72.164 486.872|3.085957 5.46911 -11.020289|17.919665|
3918|MGI 1901 to Slovenia 1996 (2)|MGI 1901|Slovenia 1996|0.5|345|315.393 186.223 499.609|6.445954 8.131631 -13.208641|23.449046|
3919|MGI 1901 to Slovenia 1996 (3)|MGI 1901|Slovenia 1996|0.5|346|464.939 -21.478 504.497|-0.403 4.228747 -9.954942|12.795378|
3921|MGI 1901 to Slovenia 1996 (4)|MGI 1901|Slovenia 1996|0.5|347|459.968 82.193 458.756|3.565234 3.700593 -10.860523|15.507563|
3922|MGI 1901 to Slovenia 1996 (5)|MGI 1901|Slovenia 1996|0.3|348|427.914 105.528 510.908|4.992523 5.898813 -10.306673|12.431493|
3923|MGI 1901 to Slovenia 1996 (6)|MGI 1901|Slovenia 1996|0.3|349|468.63 81.389 445.221|3.839242 3.262525 -10.566866|16.132726|
3924|MGI 1901 to Slovenia 1996 (7)|MGI 1901|Slovenia 1996|0.3|350|439.5 -11.77 494.976|0.026585 4.65641 -10.155824|16.270002|
3925|MGI 1901 to Slovenia 1996 (8)|MGI 1901|Slovenia 1996|0.3|351|524.442 3.275 519.002|-0.013287 3.119714 -10.232693|4.184981|
3926|MGI 1901 to Slovenia 1996 (9)|MGI 1901|Slovenia 1996|0.3|352|281.529 45.963 537.515|2.570437 9.648271 -10.759507|26.465548|
3927|MGI 1901 to Slovenia 1996 (10)|MGI 1901|Slovenia 1996|0.3|353|355.845 274.282 462.979|9.086933 6.491055 -14.502181|20.888647|
3928|MGI 1901 to Slovenia 1996 (11)|MGI 1901|Slovenia 1996|0.3|354|400.629 90.651 472.249|3.261138 5.263404 -11.83739|20.022676|
3962|MGI 1901 to WGS 84 (1)|MGI 1901|WGS 84|5|355|682 -203 480|0 0 0|0|
3963|MGI 1901 to ETRS89 (2)|MGI 1901|ETRS89|1|356|551.7 162.9 467.9|6.04 1.96 -11.38|-4.82|
3964|MGI 1901 to WGS 84 (4)|MGI 1901|WGS 84|1|356|551.7 162.9 467.9|6.04 1.96 -11.38|-4.82|
3965|MGI 1901 to WGS 84 (6)|MGI 1901|WGS 84|10|357|695.5 -216.6 491.1|0 0 0|0|
3971|PSAD56 to SIRGAS 1995 (1)|PSAD56|SIRGAS 1995|5|118|-60.31 245.935 31.008|12.324 3.755 -7.37|0.447|
3972|Chua to WGS 84 (2)|Chua|WGS 84|5|358|-143.87 243.37 -33.52|0 0 0|0|
3990|PSAD56 to WGS 84 (14)|PSAD56|WGS 84|5|118|-60.31 245.935 31.008|12.324 3.755 -7.37|0.447|
3998|Arc 1960 to WGS 84 (4)|Arc 1960|WGS 84|35|359|-153 -5 -292|0 0 0|0|
4064|RGRDC 2005 to WGS 84 (1)|RGRDC 2005|WGS 84|1|360|0 0 0|0 0 0|0|
4065|Katanga 1955 to RGRDC 2005 (1)|Katanga 1955|RGRDC 2005|1.5|361|-103.746 -9.614 -255.95|0 0 0|0|
4066|Katanga 1955 to WGS 84 (1)|Katanga 1955|WGS 84|1.5|361|-103.746 -9.614 -255.95|0 0 0|0|
4069|Chua to SIRGAS 2000 (1)|Chua|SIRGAS 2000|5|358|-144.35 242.88 -33.2|0 0 0|0|
4076|SREF98 to ETRS89 (1)|SREF98|ETRS89|0|362|0 0 0|0 0 0|0|
4077|SREF98 to WGS 84 (1)|SREF98|WGS 84|1|362|0 0 0|0 0 0|0|
4078|ED87 to ETRS89 (1)|ED87|ETRS89|0.3|343|-83.11 -97.38 -117.22|0.00569290865242 -0.0446975835137 0.0442850539013|0.1218|
4084|REGCAN95 to WGS 84 (1)|REGCAN95|WGS 84|1|363|0 0 0|0 0 0|0|
4290|Cadastre 1997 to WGS 84 (1)|Cadastre 1997|WGS 84|1|313|-381.788 -57.501 -256.673|0 0 0|0|
4461|NAD83(HARN) to NAD83(NSRS2007) (1)|NAD83(HARN)|NAD83(NSRS2007)|0.1|86|0 0 0|0 0 0|0|
4476|RGM04 to WGS 84 (1)|RGM04|WGS 84|1|364|0 0 0|0 0 0|0|
4477|RGSPM06 to WGS 84 (1)|RGSPM06|WGS 84|1|365|0 0 0|0 0 0|0|
4478|Cadastre 1997 to RGM04 (1)|Cadastre 1997|RGM04|0.1|313|-381.788 -57.501 -256.673|0 0 0|0|
4560|RRAF 1991 to WGS 84 (1)|RRAF 1991|WGS 84|1|366|0 0 0|0 0 0|0|
4827|S-JTSK to ETRS89 (4)|S-JTSK|ETRS89|1|367|485 169.5 483.8|7.786 4.398 4.103|0|
4830|Amersfoort to ETRS89 (5)|Amersfoort|ETRS89|0.5|33|565.4171 50.3319 465.5524|-0.398957388243 0.343987817378 -1.87740163998|4.0725|
4832|Mexico ITRF92 to WGS 84 (1)|Mexico ITRF92|WGS 84|1|368|0 0 0|0 0 0|0|
4833|Amersfoort to WGS 84 (4)|Amersfoort|WGS 84|1|33|565.4171 50.3319 465.5524|-0.398957388243 0.343987817378 -1.87740163998|4.0725|
4834|Chua to WGS 84 (3)|Chua|WGS 84|5|358|-144.35 242.88 -33.2|0 0 0|0|
4836|S-JTSK to WGS 84 (4)|S-JTSK|WGS 84|1|367|485 169.5 483.8|7.786 4.398 4.103|0|
4840|RGFG95 to WGS 84 (2)|RGFG95|WGS 84|1|369|0 0 0|0 0 0|0|
4905|PTRA08 to WGS 84 (1)|PTRA08|WGS 84|1|370|0 0 0|0 0 0|0|
5021|Porto Santo 1995 to PTRA08 (1)|Porto Santo 1995|PTRA08|2|300|-503.229 -247.375 312.582|0 0 0|0|
5022|Porto Santo 1995 to PTRA08 (2)|Porto Santo 1995|PTRA08|1|371|-303.956 224.556 214.306|9.405 -6.626 -12.583|1.327|
5023|Porto Santo 1995 to PTRA08 (3)|Porto Santo 1995|PTRA08|0.2|372|-503.3 -247.574 313.025|0 0 0|0|
5024|Azores Oriental 1995 to PTRA08 (1)|Azores Oriental 1995|PTRA08|2|297|-204.926 140.353 55.063|0 0 0|0|
5025|Azores Oriental 1995 to PTRA08 (2)|Azores Oriental 1995|PTRA08|0.3|332|-204.519 140.159 55.404|0 0 0|0|
5026|Azores Oriental 1995 to PTRA08 (3)|Azores Oriental 1995|PTRA08|0.1|373|-205.808 140.771 54.326|0 0 0|0|
5027|Azores Central 1995 to PTRA08 (1)|Azores Central 1995|PTRA08|2|298|-105.679 166.1 -37.322|0 0 0|0|
5028|Azores Central 1995 to PTRA08 (2)|Azores Central 1995|PTRA08|0.5|334|-105.377 165.769 -36.965|0 0 0|0|
5029|Azores Central 1995 to PTRA08 (3)|Azores Central 1995|PTRA08|0.2|374|-105.359 165.804 -37.05|0 0 0|0|
5030|Azores Central 1995 to PTRA08 (4)|Azores Central 1995|PTRA08|1|335|-105.531 166.39 -37.326|0 0 0|0|
5031|Azores Central 1995 to PTRA08 (5)|Azores Central 1995|PTRA08|0.8|336|-105.756 165.972 -37.313|0 0 0|0|
5032|Azores Central 1995 to PTRA08 (6)|Azores Central 1995|PTRA08|0.6|333|-106.235 166.236 -37.768|0 0 0|0|
5033|Azores Occidental 1939 to PTRA08 (1)|Azores Occidental 1939|PTRA08|0.5|299|-423.058 -172.868 83.772|0 0 0|0|
5034|Azores Occidental 1939 to PTRA08 (2)|Azores Occidental 1939|PTRA08|0.2|375|-423.053 -172.871 83.771|0 0 0|0|
5035|Azores Occidental 1939 to PTRA08 (3)|Azores Occidental 1939|PTRA08|0.3|376|-423.024 -172.923 83.83|0 0 0|0|
5036|Datum 73 to ETRS89 (4)|Datum 73|ETRS89|3|244|-223.15 110.132 36.711|0 0 0|0|
5037|Datum 73 to ETRS89 (5)|Datum 73|ETRS89|2|244|-230.994 102.591 25.199|0.633 -0.239 0.9|1.95|
5038|Lisbon to ETRS89 (3)|Lisbon|ETRS89|2.5|244|-303.861 -60.693 103.607|0 0 0|0|
5039|Lisbon 1890 to ETRS89 (1)|Lisbon 1890|ETRS89|5|244|508.088 -191.042 565.223|0 0 0|0|
5040|ED50 to ETRS89 (13)|ED50|ETRS89|5|244|-87.987 -108.639 -121.593|0 0 0|0|
5043|Pulkovo 1995 to WGS 84 (2)|Pulkovo 1995|WGS 84|1|134|24.47 -130.89 -81.56|0 0 0.13|-0.22|
5044|Pulkovo 1942 to WGS 84 (20)|Pulkovo 1942|WGS 84|3|143|23.57 -140.95 -79.8|0 0.35 0.79|-0.22|
5050|Aratu to SIRGAS 2000 (1)|Aratu|SIRGAS 2000|0.5|377|-157.84 308.54 -146.6|0 0 0|0|
5051|Aratu to WGS 84 (13)|Aratu|WGS 84|1|377|-157.84 308.54 -146.6|0 0 0|0|
5052|Aratu to SIRGAS 2000 (2)|Aratu|SIRGAS 2000|0.5|378|-160.31 314.82 -142.25|0 0 0|0|
5053|Aratu to WGS 84 (14)|Aratu|WGS 84|1|378|-160.31 314.82 -142.25|0 0 0|0|
5054|Aratu to SIRGAS 2000 (3)|Aratu|SIRGAS 2000|0.5|379|-161.11 310.25 -144.64|0 0 0|0|
5055|Aratu to WGS 84 (15)|Aratu|WGS 84|1|379|-161.11 310.25 -144.64|0 0 0|0|
5056|Aratu to SIRGAS 2000 (4)|Aratu|SIRGAS 2000|0.5|380|-160.4 302.29 -144.19|0 0 0|0|
5057|Aratu to WGS 84 (16)|Aratu|WGS 84|1|380|-160.4 302.29 -144.19|0 0 0|0|
5058|Aratu to SIRGAS 2000 (5)|Aratu|SIRGAS 2000|0.5|381|-153.54 302.33 -152.37|0 0 0|0|
5059|Aratu to WGS 84 (17)|Aratu|WGS 84|1|381|-153.54 302.33 -152.37|0 0 0|0|
5060|Aratu to SIRGAS 2000 (6)|Aratu|SIRGAS 2000|0.5|382|-151.5 300.09 -151.15|0 0 0|0|
5061|Aratu to WGS 84 (18)|Aratu|WGS 84|1|382|-151.5 300.09 -151.15|0 0 0|0|
5062|Aratu to SIRGAS 2000 (7)|Aratu|SIRGAS 2000|0.5|383|-156.8 298.41 -147.41|0 0 0|0|
5063|Aratu to WGS 84 (19)|Aratu|WGS 84|1|383|-156.8 298.41 -147.41|0 0 0|0|
5064|Aratu to SIRGAS 2000 (8)|Aratu|SIRGAS 2000|0.5|384|-157.4 295.05 -150.19|0 0 0|0|
5065|Aratu to WGS 84 (20)|Aratu|WGS 84|1|384|-157.4 295.05 -150.19|0 0 0|0|
5066|Aratu to SIRGAS 2000 (9)|Aratu|SIRGAS 2000|0.5|385|-151.99 287.04 -147.45|0 0 0|0|
5067|Aratu to WGS 84 (21)|Aratu|WGS 84|1|385|-151.99 287.04 -147.45|0 0 0|0|
5077|Karbala 1979 to IGRS (1)|Karbala 1979|IGRS|0.3|386|70.995 -335.916 262.898|0 0 0|0|
5078|Karbala 1979 to WGS 84 (2)|Karbala 1979|WGS 84|1|386|70.995 -335.916 262.898|0 0 0|0|
5194|VN-2000 to WGS 84 (1)|VN-2000|WGS 84|1|387|-192.873 -39.382 -111.202|-0.00205 -0.0005 0.00335|0.0188|
5226|S-JTSK/05 to ETRS89 (1)|S-JTSK/05|ETRS89|0|233|572.213 85.334 461.94|4.9732 1.529 5.2484|3.5378|
5227|S-JTSK/05 to WGS 84 (1)|S-JTSK/05|WGS 84|1|233|572.213 85.334 461.94|4.9732 1.529 5.2484|3.5378|
5236|SLD99 to WGS 84 (1)|SLD99|WGS 84|14|72|-0.293 766.95 87.713|0.195704 1.695068 3.473016|-0.039338|
5239|S-JTSK to WGS 84 (5)|S-JTSK|WGS 84|1|233|572.213 85.334 461.94|4.9732 1.529 5.2484|3.5378|
5249|Timbalai 1948 to WGS 84 (5)|Timbalai 1948|WGS 84|1|222|-689.5937 623.84046 -65.93566|-0.02331 1.17094 -0.80054|5.88536|
5260|TUREF to ETRS89 (1)|TUREF|ETRS89|0.1|252|0.023 0.036 -0.068|0.00176 0.00912 -0.01136|0.00439|
5261|TUREF to WGS 84 (1)|TUREF|WGS 84|1|252|0 0 0|0 0 0|0|
5267|DRUKREF 03 to WGS 84 (1)|DRUKREF 03|WGS 84|1|388|0 0 0|0 0 0|0|
5327|ISN2004 to WGS 84 (1)|ISN2004|WGS 84|1|324|0 0 0|0 0 0|0|
5350|Campo Inchauspe to POSGAR 2007 (1)|Campo Inchauspe|POSGAR 2007|5|289|-148 136 90|0 0 0|0|
5351|POSGAR 2007 to WGS 84 (1)|POSGAR 2007|WGS 84|1|122|0 0 0|0 0 0|0|
5374|MARGEN to WGS 84 (1)|MARGEN|WGS 84|1|114|0 0 0|0 0 0|0|
5376|CR05 to WGS 84 (1)|CR05|WGS 84|1.5|389|0 0 0|0 0 0|0|
5377|MACARIO SOLIS to WGS 84 (1)|MACARIO SOLIS|WGS 84|1|390|0 0 0|0 0 0|0|
5378|Peru96 to WGS 84 (1)|Peru96|WGS 84|1|391|0 0 0|0 0 0|0|
5384|SIRGAS-ROU98 to WGS 84 (1)|SIRGAS-ROU98|WGS 84|1|392|0 0 0|0 0 0|0|
5385|Yacare to SIRGAS-ROU98 (1)|Yacare|SIRGAS-ROU98|1.5|393|-124.45 183.74 44.64|-0.4384 0.5446 -0.9706|-2.1365|
5386|Yacare to WGS 84 (2)|Yacare|WGS 84|1.5|393|-124.45 183.74 44.64|-0.4384 0.5446 -0.9706|-2.1365|
5395|SIRGAS_ES2007.8 to WGS 84 (1)|SIRGAS_ES2007.8|WGS 84|1|394|0 0 0|0 0 0|0|
5470|Ocotepeque 1935 to WGS 84 (1)|Ocotepeque 1935|WGS 84|8|395|213.11 9.37 -74.95|0 0 0|0|
5485|LUREF to ETRS89 (3)|LUREF|ETRS89|0|240|-189.6806 18.3463 -42.7695|-0.33746 -3.09264 2.53861|0.4598|
5486|LUREF to WGS 84 (3)|LUREF|WGS 84|1|240|-189.6806 18.3463 -42.7695|-0.33746 -3.09264 2.53861|0.4598|
5491|Martinique 1938 to RGAF09 (1)|Martinique 1938|RGAF09|0.1|309|127.744 547.069 118.359|-3.1116 4.9509 -0.8837|14.1012|
5492|Guadeloupe 1948 to RGAF09 (1)|Guadeloupe 1948|RGAF09|10|307|-471.06 -3.212 -305.843|0.4752 -0.9978 0.2068|2.1353|
5493|Fort Marigot to RGAF09 (1)|Fort Marigot|RGAF09|10|306|151.613 253.832 -429.084|-0.0506 0.0958 -0.5974|-0.3971|
5494|RRAF 1991 to RGAF09 (1)|RRAF 1991|RGAF09|0.1|396|0.7696 -0.8692 -12.0631|-0.32511 -0.21041 -0.0239|0.2829|
5495|RRAF 1991 to RGAF09 (2)|RRAF 1991|RGAF09|0.1|307|1.2239 2.4156 -1.7598|0.038 -0.16101 -0.04925|0.2387|
5496|RRAF 1991 to RGAF09 (3)|RRAF 1991|RGAF09|0.1|306|14.6642 5.2493 0.1981|-0.06838 0.09141 -0.58131|-0.4067|
5497|POSGAR 2007 to SIRGAS 2000 (1)|POSGAR 2007|SIRGAS 2000|1|122|0 0 0|0 0 0|0|
5501|RGAF09 to WGS 84 (1)|RGAF09|WGS 84|1|366|0 0 0|0 0 0|0|
5553|PNG94 to WGS 84 (1)|PNG94|WGS 84|2|397|0 0 0|0 0 0|0|
5584|MOLDREF99 to ETRS89 (1)|MOLDREF99|ETRS89|0.1|398|0 0 0|0 0 0|0|
5585|MOLDREF99 to WGS 84 (1)|MOLDREF99|WGS 84|1|398|0 0 0|0 0 0|0|
5586|Pulkovo 1942 to UCS-2000 (1)|Pulkovo 1942|UCS-2000|3.5|399|0 0 0|0 0 0|0|
5590|UCS-2000 to WGS 84 (1)|UCS-2000|WGS 84|5|399|25 -141 -78.5|0 0.35 0.736|0|
5599|FEH2010 to WGS 84 (1)|FEH2010|WGS 84|1|400|0 0 0|0 0 0|0|
5622|OSGB36 to WGS 84 (8)|OSGB36|WGS 84|3|401|370.936 -108.938 435.682|0 0 0|0|
5630|Nord Sahara 1959 to WGS 84 (8)|Nord Sahara 1959|WGS 84|5|402|-168.52 -72.05 304.3|0 0 0|0|
5660|Nord Sahara 1959 to WGS 84 (9)|Nord Sahara 1959|WGS 84|1|403|-209.3622 -87.8162 404.6198|0.0046 3.4784 0.5805|-1.4547|
5662|AGD66 to PNG94 (1)|AGD66|PNG94|2|404|-124 -60 153|0 0 0|0|
5826|DB_REF to ETRS89 (1)|DB_REF|ETRS89|0|405|584.9636 107.7175 413.8067|1.1155 0.2824 -3.1384|7.9922|
5827|AGD66 to GDA94 (19)|AGD66|GDA94|0.5|181|-129.164 -41.188 130.718|0.246 0.374 0.329|-2.955|
5840|UCS-2000 to WGS 84 (2)|UCS-2000|WGS 84|1|399|24 -121 -76|0 0 0|0|
5841|AGD66 to WGS 84 (19)|AGD66|WGS 84|2|404|-124 -60 154|0 0 0|0|
5878|Timbalai 1948 to GDBD2009 (1)|Timbalai 1948|GDBD2009|1|222|-689.5937 623.84046 -65.93566|-0.02331 1.17094 -0.80054|5.88536|
5881|SAD69(96) to SIRGAS 2000 (2)|SAD69(96)|SIRGAS 2000|5|295|-67.35 3.88 -38.22|0 0 0|0|
5882|SAD69 to WGS 84 (16)|SAD69|WGS 84|5|295|-67.35 3.88 -38.22|0 0 0|0|
5888|Combani 1950 to RGM04 (1)|Combani 1950|RGM04|0.3|313|-599.928 -275.552 -195.665|-0.0835 -0.4715 0.0602|49.2814|
5900|ITRF2005 to ETRF2005 (1)|ITRF2005|ETRF2005|0|64|0.056 0.048 -0.037|0 0 0|0|1989|0 0 0|0.000054 0.000518 -0.000781|0
6136|GCGD59 to CIGD11 (1)|GCGD59|CIGD11|0.3|406|-179.483 -69.379 -27.584|-7.862 8.163 6.042|-13.925|
6137|SIGD61 to CIGD11 (1)|SIGD61|CIGD11|0.15|407|8.853 -52.644 180.304|-0.393 -2.323 2.96|-24.081|
6142|GCGD59 to WGS 84 (2)|GCGD59|WGS 84|1|406|-179.483 -69.379 -27.584|-7.862 8.163 6.042|-13.925|
6143|SIGD61 to WGS 84 (3)|SIGD61|WGS 84|1|407|8.853 -52.644 180.304|-0.393 -2.323 2.96|-24.081|
6177|CIGD11 to WGS 84 (1)|CIGD11|WGS 84|1|408|0 0 0|0 0 0|0|
6191|Corrego Alegre 1970-72 to SAD69 (1)|Corrego Alegre 1970-72|SAD69|5|48|-138.7 164.4 34.4|0 0 0|0|
6192|Corrego Alegre 1970-72 to WGS 84 (3)|Corrego Alegre 1970-72|WGS 84|5|48|-205.57 168.77 -4.12|0 0 0|0|
6193|Corrego Alegre 1970-72 to SIRGAS 2000 (2)|Corrego Alegre 1970-72|SIRGAS 2000|5|48|-206.05 168.28 -3.82|0 0 0|0|
6194|Corrego Alegre 1970-72 to WGS 84 (4)|Corrego Alegre 1970-72|WGS 84|5|48|-206.05 168.28 -3.82|0 0 0|0|
6195|SAD69(96) to WGS 84 (2)|SAD69(96)|WGS 84|5|295|-67.35 3.88 -38.22|0 0 0|0|
6196|Minna to WGS 84 (16)|Minna|WGS 84|5|409|-93.179 -87.124 114.338|0 0 0|0|
6205|MGI 1901 to ETRS89 (5)|MGI 1901|ETRS89|1|410|517.4399 228.7318 579.7954|4.045 4.304 -15.612|-8.312|
6206|MGI 1901 to WGS 84 (10)|MGI 1901|WGS 84|2|410|521.748 229.489 590.921|4.029 4.488 -15.521|-9.78|
6208|Nepal 1981 to WGS 84 (1)|Nepal 1981|WGS 84|0.3|411|293.17 726.18 245.36|0 0 0|0|
6276|ITRF2008 to GDA94 (1)|ITRF2008|GDA94|0.03|412|-0.08468 -0.01942 0.03201|0.0004254 -0.0022578 -0.0024015|0.00971|1994|0.00142 0.00134 0.0009|-0.0015461 -0.001182 -0.0011551|0.000109
6277|ITRF2005 to GDA94 (1)|ITRF2005|GDA94|0.03|412|-0.07973 -0.00686 0.03803|0.0000351 -0.0021211 -0.0021411|0.006636|1994|0.00225 -0.00062 -0.00056|-0.0014707 -0.0011443 -0.0011701|0.000294
6278|ITRF2000 to GDA94 (2)|ITRF2000|GDA94|0.06|412|-0.04591 -0.02985 -0.02037|0.0016705 -0.0004594 -0.0019356|0.00707|1994|-0.00466 0.00355 0.01124|-0.0017454 -0.0014868 -0.001224|0.000249
6279|ITRF97 to GDA94 (2)|ITRF97|GDA94|0.18|412|-0.01463 -0.02762 -0.02532|0.0017893 0.0006047 -0.0009962|0.006695|1994|-0.0086 0.00036 0.01125|-0.0016394 -0.0015198 -0.0013801|0.000007
6280|ITRF96 to GDA94 (2)|ITRF96|GDA94|0.11|412|0.02454 -0.03643 -0.06812|0.0027359 0.0020431 -0.0003731|0.006901|1994|-0.0218 0.00471 0.02627|-0.0020203 -0.0021735 -0.001629|0.000388
6281|ITRF88 to ITRF2000 (1)|ITRF88|ITRF2000|0.01|131|-0.0247 -0.0115 0.0979|-0.0001 0 0.00018|-0.00895|1988|0 0.0006 0.0014|0 0 -0.00002|-0.00001
6283|ITRF90 to ITRF2000 (1)|ITRF90|ITRF2000|0.01|131|-0.0247 -0.0235 0.0359|0 0 0.00018|-0.00245|1988|0 0.0006 0.0014|0 0 -0.00002|-0.00001
6284|ITRF91 to ITRF2000 (1)|ITRF91|ITRF2000|0.01|131|-0.0267 -0.0275 0.0199|0 0 0.00018|-0.00215|1988|0 0.0006 0.0014|0 0 -0.00002|-0.00001
6285|ITRF92 to ITRF2000 (1)|ITRF92|ITRF2000|0.01|131|-0.0147 -0.0135 0.0139|0 0 0.00018|-0.00075|1988|0 0.0006 0.0014|0 0 -0.00002|-0.00001
6286|ITRF93 to ITRF2000 (1)|ITRF93|ITRF2000|0.01|131|-0.0127 -0.0065 0.0209|0.00039 -0.0008 0.00114|-0.00195|1988|0.0029 0.0002 0.0006|0.00011 0.00019 -0.00007|-0.00001
6287|ITRF94 to ITRF2000 (1)|ITRF94|ITRF2000|0.01|131|-0.0067 -0.0061 0.0185|0 0 0|-0.00155|1997|0 0.0006 0.0014|0 0 -0.00002|-0.00001
6288|ITRF96 to ITRF2000 (1)|ITRF96|ITRF2000|0.01|131|-0.0067 -0.0061 0.0185|0 0 0|-0.00155|1997|0 0.0006 0.0014|0 0 -0.00002|-0.00001
6289|ITRF97 to ITRF2000 (1)|ITRF97|ITRF2000|0.01|131|-0.0067 -0.0061 0.0185|0 0 0|-0.00155|1997|0 0.0006 0.0014|0 0 -0.00002|-0.00001
6291|ITRF88 to ITRF2008 (1)|ITRF88|ITRF2008|0.01|131|-0.0228 -0.0026 0.1252|-0.0001 0 -0.00006|-0.01041|2000|-0.0001 0.0005 0.0032|0 0 -0.00002|-0.00009
6292|ITRF89 to ITRF2008 (1)|ITRF89|ITRF2008|0.01|131|-0.0278 -0.0386 0.1012|0 0 -0.00006|-0.00731|2000|-0.0001 0.0005 0.0032|0 0 -0.00002|-0.00009
6293|ITRF90 to ITRF2008 (1)|ITRF90|ITRF2008|0.01|131|-0.0228 -0.0146 0.0632|0 0 -0.00006|-0.00391|2000|-0.0001 0.0005 0.0032|0 0 -0.00002|-0.00009
6294|ITRF91 to ITRF2008 (1)|ITRF91|ITRF2008|0.01|131|-0.0248 -0.0186 0.0472|0 0 -0.00006|-0.00361|2000|-0.0001 0.0005 0.0032|0 0 -0.00002|-0.00009
6295|ITRF92 to ITRF2008 (1)|ITRF92|ITRF2008|0.01|131|-0.0128 -0.0046 0.0412|0 0 -0.00006|-0.00221|2000|-0.0001 0.0005 0.0032|0 0 -0.00002|-0.00009
6296|ITRF93 to ITRF2008 (1)|ITRF93|ITRF2008|0.01|131|0.024 -0.0024 0.0386|0.00171 0.00148 0.0003|-0.00341|2000|0.0028 0.0001 0.0024|0.00011 0.00019 -0.00007|-0.00009
6297|ITRF94 to ITRF2008 (1)|ITRF94|ITRF2008|0.01|131|-0.0048 -0.0026 0.0332|0 0 -0.00006|-0.00292|2000|-0.0001 0.0005 0.0032|0 0 -0.00002|-0.00009
6298|ITRF96 to ITRF2008 (1)|ITRF96|ITRF2008|0.01|131|-0.0048 -0.0026 0.0332|0 0 -0.00006|-0.00292|2000|-0.0001 0.0005 0.0032|0 0 -0.00002|-0.00009
6299|ITRF97 to ITRF2008 (1)|ITRF97|ITRF2008|0.01|131|-0.0048 -0.0026 0.0332|0 0 -0.00006|-0.00292|2000|-0.0001 0.0005 0.0032|0 0 -0.00002|-0.00009
6300|ITRF2000 to ITRF2008 (1)|ITRF2000|ITRF2008|0.01|131|0.0019 0.0017 0.0105|0 0 0|-0.00134|2000|-0.0001 -0.0001 0.0018|0 0 0|-0.00008
6302|ITRF2000 to ITRF2005 (1)|ITRF2000|ITRF2005|0.01|131|-0.0001 0.0008 0.0058|0 0 0|-0.0004|2000|0.0002 -0.0001 0.0018|0 0 0|-0.00008
6313|ITRF96 to GDA94 (1)|ITRF96|GDA94|0.1|412|-0.014 0.0431 0.201|-0.012464 -0.012013 -0.006434|0.024607|2000|0.0411 0.0218 0.0383|-0.002542 -0.001431 0.000234|0.005897
6315|ITRF2000 to GDA94 (1)|ITRF2000|GDA94|0.1|412|-0.0761 -0.0101 0.0444|-0.008765 -0.009361 -0.009325|0.007935|2000|0.011 -0.0045 -0.0174|-0.001034 -0.000671 -0.001039|-0.000538
6373|Mexico ITRF2008 to WGS 84 (1)|Mexico ITRF2008|WGS 84|1|368|0 0 0|0 0 0|0|
6389|ITRF2005 to ITRF2008 (2)|ITRF2005|ITRF2008|0.01|131|0.002 0.0009 0.0047|0 0 0|-0.00094|2000|-0.0003 0 0|0 0 0|0
6392|ITRF97 to GDA94 (1)|ITRF97|GDA94|0.1|412|-0.2088 0.0119 0.1855|-0.012059 -0.013639 -0.011825|0.004559|2000|-0.022 0.0049 0.0169|-0.00204 -0.001782 -0.001697|-0.00109
6698|JGD2000 to JGD2011 (2)|JGD2000|JGD2011|1|276|0 0 0|0 0 0|0|
6701|GDBD2009 to WGS 84 (1)|GDBD2009|WGS 84|1|222|0 0 0|0 0 0|0|
6710|RDN2008 to ETRS89 (1)|RDN2008|ETRS89|0|20|0 0 0|0 0 0|0|
6711|RDN2008 to WGS 84 (1)|RDN2008|WGS 84|1|413|0 0 0|0 0 0|0|
6864|ITRF96 to NAD83(CORS96) (1)|ITRF96|NAD83(CORS96)|0|414|0.991 -1.9072 -0.5129|-0.02579 -0.00965 -0.01166|0|1997|0 0 0|-0.0000532 0.0007423 0.0000316|0
6865|ITRF97 to NAD83(CORS96) (1)|ITRF97|NAD83(CORS96)|0|414|0.9889 -1.9074 -0.503|-0.025915 -0.009426 -0.011599|-0.00093|1997|0.0007 -0.0001 0.0019|-0.000067 0.000757 0.000031|-0.00019
6866|ITRF2000 to NAD83(CORS96) (1)|ITRF2000|NAD83(CORS96)|0|414|0.9956 -1.9013 -0.5215|-0.025915 -0.009426 -0.011599|0.00062|1997|0.0007 -0.0007 0.0005|-0.000067 0.000757 0.000051|-0.00018
6872|Abidjan 1987 to WGS 84 (2)|Abidjan 1987|WGS 84|2|415|-123.1 53.2 465.4|0 0 0|0|
6873|Tananarive to WGS 84 (2)|Tananarive|WGS 84|3|416|-198.383 -240.517 -107.909|0 0 0|0|
6888|Ocotepeque 1935 to NAD27 (1)|Ocotepeque 1935|NAD27|9|417|205.435 -29.099 -292.202|0 0 0|0|
6890|Ocotepeque 1935 to CR05 (1)|Ocotepeque 1935|CR05|8|395|213.11 9.37 -74.95|0 0 0|0|
6891|Ocotepeque 1935 to WGS 84 (3)|Ocotepeque 1935|WGS 84|14|417|205 96 -98|0 0 0|0|
6895|Viti Levu 1912 to WGS 84 (2)|Viti Levu 1912|WGS 84|5|418|98 390 -22|0 0 0|0|
6896|Accra to WGS 84 (4)|Accra|WGS 84|6|419|-170 33 326|0 0 0|0|
6897|St. Lucia 1955 to WGS 84 (2)|St. Lucia 1955|WGS 84|2|180|-153 153 307|0 0 0|0|
6898|Lisbon to WGS 84 (5)|Lisbon|WGS 84|43|244|-306 -62 105|0 0 0|0|
6899|Pulkovo 1942 to WGS 84 (21)|Pulkovo 1942|WGS 84|5|172|22 -126 -85|0 0 0|0|
6900|Observatario to WGS 84 (1)|Observatario|WGS 84|17|420|-132 -110 -335|0 0 0|0|
6901|Tete to WGS 84 (6)|Tete|WGS 84|17|152|-80 -100 -228|0 0 0|0|
6902|Timbalai 1948 to WGS 84 (6)|Timbalai 1948|WGS 84|6|230|-679 667 -49|0 0 0|0|
6903|Yoff to WGS 84 (2)|Yoff|WGS 84|5|277|-30 190 89|0 0 0|0|
6904|Arc 1950 to WGS 84 (11)|Arc 1950|WGS 84|29|37|-179 -81 -314|0 0 0|0|
6905|AGD66 to WGS 84 (20)|AGD66|WGS 84|9|29|-128 -52 153|0 0 0|0|
6906|Arc 1950 to WGS 84 (10)|Arc 1950|WGS 84|17|40|-145 -97 -292|0 0 0|0|
6907|Ayabelle Lighthouse to WGS 84 (2)|Ayabelle Lighthouse|WGS 84|17|421|-77 -128 142|0 0 0|0|
6908|Fahud to WGS 84 (3)|Fahud|WGS 84|7|142|-345 3 223|0 0 0|0|
6909|Hjorsey 1955 to WGS 84 (2)|Hjorsey 1955|WGS 84|7|323|-73 47 -83|0 0 0|0|
6912|Bioko to WGS 84 (1)|Bioko|WGS 84|42|422|-235 -110 393|0 0 0|0|
6913|Gambia to WGS 84 (1)|Gambia|WGS 84|43|423|-63 176 185|0 0 0|0|
6914|South East Island 1943 to WGS 84 (1)|South East Island 1943|WGS 84|1|424|-43.685 -179.785 -267.721|0 0 0|0|
6926|South East Island 1943 to WGS 84 (2)|South East Island 1943|WGS 84|1|424|-76.269 -16.683 68.562|-6.275 10.536 -4.286|-13.686|
6936|IGS08 to IGRS (2)|IGS08|IGRS|0.05|341|-0.214 0.119 0.156|-0.01182 0.00811 -0.01677|-0.0059|
6937|AGD66 to PNG94 (2)|AGD66|PNG94|1|425|-0.41 -2.37 2|3.592 3.698 3.989|8.843|
6938|AGD66 to PNG94 (3)|AGD66|PNG94|4|425|-129 -58 152|0 0 0|0|
6939|AGD66 to PNG94 (4)|AGD66|PNG94|1|404|-131.876 -54.554 453.346|-5.2155 -8.2042 0.09|5.02|
6940|AGD66 to PNG94 (5)|AGD66|PNG94|2|404|-131.3 -55.3 151.8|0 0 0|0|
6941|AGD66 to PNG94 (6)|AGD66|PNG94|0.5|426|45.928 -177.212 336.867|-4.6039 -3.0921 0.5729|36.796|
6942|AGD66 to PNG94 (7)|AGD66|PNG94|2.5|426|-137.4 -58.9 150.4|0 0 0|0|
6943|AGD66 to WGS 84 (21)|AGD66|WGS 84|5|425|-129 -58 152|0 0 0|0|
6944|AGD66 to WGS 84 (22)|AGD66|WGS 84|4|404|-131.3 -55.3 151.8|0 0 0|0|
6945|AGD66 to WGS 84 (23)|AGD66|WGS 84|4|426|-137.4 -58.9 150.4|0 0 0|0|
6949|PSAD56 to SIRGAS-Chile 2002 (1)|PSAD56|SIRGAS-Chile 2002|5|427|-302 272 -360|0 0 0|0|
6950|PSAD56 to SIRGAS-Chile 2002 (2)|PSAD56|SIRGAS-Chile 2002|5|428|-328 340 -329|0 0 0|0|
6951|PSAD56 to SIRGAS-Chile 2002 (3)|PSAD56|SIRGAS-Chile 2002|5|429|-352 403 -287|0 0 0|0|
6960|VN-2000 to WGS 84 (2)|VN-2000|WGS 84|1|430|-191.90441429 -39.30318279 -111.45032835|0.00928836 -0.01975479 0.00427372|0.252906278|
6968|SAD69 to SIRGAS-Chile 2002 (2)|SAD69|SIRGAS-Chile 2002|5|431|-64 0 -32|0 0 0|0|
6970|SAD69 to SIRGAS-Chile 2002 (4)|SAD69|SIRGAS-Chile 2002|5|302|-79 13 -14|0 0 0|0|
6971|PSAD56 to WGS 84 (15)|PSAD56|WGS 84|17|427|-302 272 -360|0 0 0|0|
6972|PSAD56 to WGS 84 (16)|PSAD56|WGS 84|17|428|-328 340 -329|0 0 0|0|
6973|PSAD56 to WGS 84 (17)|PSAD56|WGS 84|17|429|-352 403 -287|0 0 0|0|
6974|SAD69 to WGS 84 (17)|SAD69|WGS 84|4|432|-59 -11 -52|0 0 0|0|
6975|SAD69 to WGS 84 (18)|SAD69|WGS 84|4|431|-64 0 -32|0 0 0|0|
6976|SAD69 to WGS 84 (19)|SAD69|WGS 84|7|429|-72 10 -32|0 0 0|0|
6977|SAD69 to WGS 84 (20)|SAD69|WGS 84|6|302|-79 13 -14|0 0 0|0|
6992|IGD05 to IGD05/12|IGD05|IGD05/12|0.05|433|0.2255 -0.3709 -0.1171|0.00388 -0.00063 0.0182|0.013443|
6993|IGD05/12 to IG05/12 Intermediate CRS|IGD05/12|IG05/12 Intermediate CRS|0|8|-24.0024 -17.1032 -17.8444|0.33009 1.85269 -1.66969|5.4248|
6998|Nahrwan 1967 to WGS 84 (11)|Nahrwan 1967|WGS 84|5|434|-233.4 -160.7 381.5|0 0 0.554|0.2263|
6999|Nahrwan 1967 to WGS 84 (12)|Nahrwan 1967|WGS 84|0.15|435|-253.4392 -148.452 386.5267|0.15605 0.43 -0.1013|-0.0424|
7002|Nahrwan 1967 to WGS 84 (13)|Nahrwan 1967|WGS 84|1|436|-246.1633 -152.9047 382.6047|0.0989 0.1382 0.0768|0.0000021|
7003|Nahrwan 1967 to WGS 84 (14)|Nahrwan 1967|WGS 84|1|437|-242.8907 -149.0671 384.416|0.19044 0.24987 0.13925|0.0001746|
7004|Nahrwan 1967 to WGS 84 (15)|Nahrwan 1967|WGS 84|1|438|-246.734 -153.4345 382.1477|-0.116617 -0.165167 -0.091327|0.0000194|
7033|Nahrwan 1934 to WGS 84 (6)|Nahrwan 1934|WGS 84|30|386|-242.2 -144.9 370.3|0 0 0|0|
7083|Perroud 1950 to RGTAAF07 (1)|Perroud 1950|RGTAAF07|0.5|315|324.912 153.282 172.026|0 0 0|0|
7140|IGD05 to IG05 Intermediate CRS|IGD05|IG05 Intermediate CRS|0|8|-23.8085 -17.5937 -17.801|0.3306 1.85706 -1.64828|5.4374|
7377|ONGD14 to WGS 84 (1)|ONGD14|WGS 84|0.1|439|0.819 -0.5762 -1.6446|-0.00378 -0.03317 0.00318|0.0693|
7442|Nord Sahara 1959 to WGS 84 (10)|Nord Sahara 1959|WGS 84|100|440|-181.7 64.7 247.2|0 0 0|0|
7443|ONGD14 to WGS 84 (2)|ONGD14|WGS 84|2|439|0 0 0|0 0 0|0|
7448|SAD69 to SIRGAS-Chile 2002 (1)|SAD69|SIRGAS-Chile 2002|5|432|-59 -11 -52|0 0 0|0|
7449|SAD69 to SIRGAS-Chile 2002 (3)|SAD69|SIRGAS-Chile 2002|5|429|-72 10 -32|0 0 0|0|
7666|WGS 84 (G1762) to ITRF2008 (1)|WGS 84 (G1762)|ITRF2008|0.01|131|0 0 0|0 0 0|0|
7667|WGS 84 (G1674) to WGS 84 (G1762) (1)|WGS 84 (G1674)|WGS 84 (G1762)|0.01|131|-0.004 0.003 0.004|-0.00027 0.00027 -0.00038|-0.0069|
7668|WGS 84 (G1150) to WGS 84 (G1762) (1)|WGS 84 (G1150)|WGS 84 (G1762)|0.02|131|-0.006 0.005 0.02|0 0 0|-0.0045|
7669|WGS 84 (G1674) to ITRF2008 (1)|WGS 84 (G1674)|ITRF2008|0.01|131|0 0 0|0 0 0|0|
7670|WGS 84 (G1150) to ITRF2000 (1)|WGS 84 (G1150)|ITRF2000|0.02|131|0 0 0|0 0 0|0|
7672|WGS 84 (G730) to ITRF92 (1)|WGS 84 (G730)|ITRF92|0.2|131|0 0 0|0 0 0|0|
7675|MGI 1901 to ETRS89 (6)|MGI 1901|ETRS89|0.5|362|577.88891 165.22205 391.18289|4.9145 -0.94729 -13.05098|7.78664|
7676|MGI 1901 to WGS 84 (11)|MGI 1901|WGS 84|1|362|577.88891 165.22205 391.18289|4.9145 -0.94729 -13.05098|7.78664|
7698|NAD27 to WGS 84 (89)|NAD27|WGS 84|1|441|-32.3841359 180.4090461 120.8442577|-2.1545854 -0.1498782 0.5742915|8.1049164|
7704|PZ-90 to PZ-90.11 (1)|PZ-90|PZ-90.11|0.2|131|-1.443 0.156 0.222|0.0023 -0.00354 0.13421|-0.228|
7720|CGRS93 to ETRS89 (1)|CGRS93|ETRS89|0.1|442|8.846 -4.394 -1.122|-0.00237 -0.146528 0.130428|0.783926|
7721|CGRS93 to WGS 84 (1)|CGRS93|WGS 84|1|442|8.846 -4.394 -1.122|-0.00237 -0.146528 0.130428|0.783926|
7790|ITRF2008 to ITRF2014 (1)|ITRF2008|ITRF2014|0.01|131|-0.0016 -0.0019 -0.0024|0 0 0|0.00002|2010|0 0 0.0001|0 0 0|-0.00003
7807|ITRF2008 to NAD83(2011) (1)|ITRF2008|NAD83(2011)|0|414|0.99343 -1.90331 -0.52655|-0.02591467 -0.00942645 -0.01159935|0.00171504|1997|0.00079 -0.0006 -0.00134|-0.00006667 0.00075744 0.00005133|-0.00010201
7808|ITRF2008 to NAD83(PA11) (1)|ITRF2008|NAD83(PA11)|0|443|0.908 -2.0161 -0.5653|-0.027741 -0.013469 -0.002712|0.0011|1997|0.0001 0.0001 -0.0018|0.000384 -0.001007 0.002186|0.00008
7809|ITRF2008 to NAD83(MA11) (1)|ITRF2008|NAD83(MA11)|0|444|0.908 -2.0161 -0.5653|-0.028971 -0.01042 -0.008928|0.0011|1997|0.0001 0.0001 -0.0018|0.00002 -0.000105 0.000347|0.00008
7814|ITRF89 to ITRF2000 (1)|ITRF89|ITRF2000|0.01|131|-0.0297 -0.0475 0.0739|0 0 0.00018|-0.00585|1988|0 0.0006 0.0014|0 0 -0.00002|-0.00001
7817|UCS-2000 to ITRF2000 (1)|UCS-2000|ITRF2000|0|399|24.322 -121.372 -75.847|0 0 0|0|
7833|Albanian 1987 to ETRS89 (1)|Albanian 1987|ETRS89|0.2|445|-44.183 -0.58 -38.489|2.3867 2.7072 -3.5196|-8.2703|
7834|Albanian 1987 to WGS 84 (1)|Albanian 1987|WGS 84|1|445|-44.183 -0.58 -38.489|2.3867 2.7072 -3.5196|-8.2703|
7835|Pulkovo 1942(58) to WGS 84 (22)|Pulkovo 1942(58)|WGS 84|2|446|74.5 -112.5 -44.3|0 0 0|0|
7836|Pulkovo 1942(58) to Albanian 1987 (1)|Pulkovo 1942(58)|Albanian 1987|1|447|0 0 0|0 0 0|0|
7892|SHGD2015 to WGS 84 (1)|SHGD2015|WGS 84|1|448|0 0 0|0 0 0|0|
7893|Astro DOS 71 to SHGD2015 (1)|Astro DOS 71|SHGD2015|0.15|448|-323.65 551.39 -491.22|0 0 0|0|
7894|Astro DOS 71 to WGS 84 (2)|Astro DOS 71|WGS 84|1|448|-323.65 551.39 -491.22|0 0 0|0|
7895|Astro DOS 71 to SHGD2015 (2)|Astro DOS 71|SHGD2015|0.1|448|-112.854 12.27 -18.913|2.1692 16.8896 17.1961|-19.54517|
7897|St. Helena Tritan to SHGD2015 (1)|St. Helena Tritan|SHGD2015|0.05|448|-0.077 0.079 0.086|0 0 0|0|
7898|St. Helena Tritan to WGS 84 (1)|St. Helena Tritan|WGS 84|1|448|-0.077 0.079 0.086|0 0 0|0|
7932|ITRF89 to ETRF89 (1)|ITRF89|ETRF89|0|64|0 0 0|0 0 0|0|1989|0 0 0|0.00011 0.00057 -0.00071|0
7933|ITRF90 to ETRF90 (1)|ITRF90|ETRF90|0|64|0.019 0.028 -0.023|0 0 0|0|1989|0 0 0|0.00011 0.00057 -0.00071|0
7934|ITRF91 to ETRF91 (1)|ITRF91|ETRF91|0|64|0.021 0.025 -0.037|0 0 0|0|1989|0 0 0|0.00021 0.00052 -0.00068|0
7935|ITRF92 to ETRF92 (1)|ITRF92|ETRF92|0|64|0.038 0.04 -0.037|0 0 0|0|1989|0 0 0|0.00021 0.00052 -0.00068|0
7936|ITRF93 to ETRF93 (1)|ITRF93|ETRF93|0|64|0.019 0.053 -0.021|0 0 0|0|1989|0 0 0|0.00032 0.00078 -0.00067|0
7937|ITRF94 to ETRF94 (1)|ITRF94|ETRF94|0|64|0.041 0.041 -0.049|0 0 0|0|1989|0 0 0|0.0002 0.0005 -0.00065|0
7938|ITRF96 to ETRF96 (1)|ITRF96|ETRF96|0|64|0.041 0.041 -0.049|0 0 0|0|1989|0 0 0|0.0002 0.0005 -0.00065|0
7939|ITRF97 to ETRF97 (1)|ITRF97|ETRF97|0|64|0.041 0.041 -0.049|0 0 0|0|1989|0 0 0|0.0002 0.0005 -0.00065|0
7940|ITRF2000 to ETRF2000 (1)|ITRF2000|ETRF2000|0|64|0.054 0.051 -0.048|0 0 0|0|1989|0 0 0|0.000081 0.00049 -0.000792|0
7941|ITRF2000 to ETRF2000 (2)|ITRF2000|ETRF2000|0|64|0.054 0.051 -0.048|0.000891 0.00539 -0.008712|0|2000|0 0 0|0.000081 0.00049 -0.000792|0
7942|ITRF89 to ETRF2000 (1)|ITRF89|ETRF2000|0|64|0.0243 0.0107 0.0427|0.000891 0.00539 -0.008772|-0.00597|2000|0 0.0006 0.0014|0.000081 0.00049 -0.000812|-0.00001
7943|ITRF90 to ETRF2000 (1)|ITRF90|ETRF2000|0|64|0.0293 0.0347 0.0047|0.000891 0.00539 -0.008772|-0.00257|2000|0 0.0006 0.0014|0.000081 0.00049 -0.000812|-0.00001
7944|ITRF91 to ETRF2000 (1)|ITRF91|ETRF2000|0|64|0.0273 0.0307 -0.0113|0.000891 0.00539 -0.008772|-0.00227|2000|0 0.0006 0.0014|0.000081 0.00049 -0.000812|-0.00001
7945|ITRF92 to ETRF2000 (1)|ITRF92|ETRF2000|0|64|0.0393 0.0447 -0.0173|0.000891 0.00539 -0.008772|-0.00087|2000|0 0.0006 0.0014|0.000081 0.00049 -0.000812|-0.00001
7946|ITRF93 to ETRF2000 (1)|ITRF93|ETRF2000|0|64|0.0761 0.0469 -0.0199|0.002601 0.00687 -0.008412|-0.00207|2000|0.0029 0.0002 0.0006|0.000191 0.00068 -0.000862|-0.00001
7947|ITRF94 to ETRF2000 (1)|ITRF94|ETRF2000|0|64|0.0473 0.0467 -0.0253|0.000891 0.00539 -0.008772|-0.00158|2000|0 0.0006 0.0014|0.000081 0.00049 -0.000812|-0.00001
7948|ITRF96 to ETRF2000 (1)|ITRF96|ETRF2000|0|64|0.0473 0.0467 -0.0253|0.000891 0.00539 -0.008772|-0.00158|2000|0 0.0006 0.0014|0.000081 0.00049 -0.000812|-0.00001
7949|ITRF97 to ETRF2000 (1)|ITRF97|ETRF2000|0|64|0.0473 0.0467 -0.0253|0.000891 0.00539 -0.008772|-0.00158|2000|0 0.0006 0.0014|0.000081 0.00049 -0.000812|-0.00001
7950|ITRF2005 to ETRF2000 (1)|ITRF2005|ETRF2000|0|64|0.0541 0.0502 -0.0538|0.000891 0.00539 -0.008712|0.0004|2000|-0.0002 0.0001 -0.0018|0.000081 0.00049 -0.000792|0.00008
7951|ITRF2008 to ETRF2000 (1)|ITRF2008|ETRF2000|0|64|0.0521 0.0493 -0.0585|0.000891 0.00539 -0.008712|0.00134|2000|0.0001 0.0001 -0.0018|0.000081 0.00049 -0.000792|0.00008
8048|GDA94 to GDA2020 (1)|GDA94|GDA2020|0.01|65|0.06155 -0.01087 -0.04019|0.0394924 0.0327221 0.0328979|-0.009994|
8049|ITRF2014 to GDA2020 (1)|ITRF2014|GDA2020|0.03|65|0 0 0|0 0 0|0|2020|0 0 0|-0.00150379 -0.00118346 -0.00120716|0
8069|ITRF88 to ITRF2014 (1)|ITRF88|ITRF2014|0.01|131|-0.0254 0.0005 0.1548|-0.0001 0 -0.00026|-0.01129|2010|-0.0001 0.0005 0.0033|0 0 -0.00002|-0.00012
8070|ITRF89 to ITRF2014 (1)|ITRF89|ITRF2014|0.01|131|-0.0304 -0.0355 0.1308|0 0 -0.00026|-0.00819|2010|-0.0001 0.0005 0.0033|0 0 -0.00002|-0.00012
8071|ITRF90 to ITRF2014 (1)|ITRF90|ITRF2014|0.01|131|-0.0254 -0.0115 0.0928|0 0 -0.00026|-0.00479|2010|-0.0001 0.0005 0.0033|0 0 -0.00002|-0.00012
8072|ITRF91 to ITRF2014 (1)|ITRF91|ITRF2014|0.01|131|-0.0274 -0.0155 0.0768|0 0 -0.00026|-0.00449|2010|-0.0001 0.0005 0.0033|0 0 -0.00002|-0.00012
8073|ITRF92 to ITRF2014 (1)|ITRF92|ITRF2014|0.01|131|-0.0154 -0.0015 0.0708|0 0 -0.00026|-0.00309|2010|-0.0001 0.0005 0.0033|0 0 -0.00002|-0.00012
8074|ITRF93 to ITRF2014 (1)|ITRF93|ITRF2014|0.01|131|0.0504 -0.0033 0.0602|0.00281 0.00338 -0.0004|-0.00429|2010|0.0028 0.0001 0.0025|0.00011 0.00019 -0.00007|-0.00012
8075|ITRF94 to ITRF2014 (1)|ITRF94|ITRF2014|0.01|131|-0.0074 0.0005 0.0628|0 0 -0.00026|-0.0038|2010|-0.0001 0.0005 0.0033|0 0 -0.00002|-0.00012
8076|ITRF96 to ITRF2014 (1)|ITRF96|ITRF2014|0.01|131|-0.0074 0.0005 0.0628|0 0 -0.00026|-0.0038|2010|-0.0001 0.0005 0.0033|0 0 -0.00002|-0.00012
8077|ITRF97 to ITRF2014 (1)|ITRF97|ITRF2014|0.01|131|-0.0074 0.0005 0.0628|0 0 -0.00026|-0.0038|2010|-0.0001 0.0005 0.0033|0 0 -0.00002|-0.00012
8078|ITRF2000 to ITRF2014 (1)|ITRF2000|ITRF2014|0.01|131|-0.0007 -0.0012 0.0261|0 0 0|-0.00212|2010|-0.0001 -0.0001 0.0019|0 0 0|-0.00011
8079|ITRF2005 to ITRF2014 (1)|ITRF2005|ITRF2014|0.01|131|-0.0026 -0.001 0.0023|0 0 0|-0.00092|2010|-0.0003 0 0.0001|0 0 0|-0.00003
8256|ITRF92 to NAD83(CSRS96) (1)|ITRF92|NAD83(CSRS96)|0|280|0.936 -1.984 -0.543|-0.0275 -0.0155 -0.0107|0.005|1988|0 0 0|-0.000052 0.000742 0.000032|0
8257|ITRF93 to NAD83(CSRS96) (1)|ITRF93|NAD83(CSRS96)|0|280|0.94 -1.979 -0.534|-0.02709 -0.01622 -0.00987|0.0041|1988|0.0023 0.0004 -0.0008|0.000078 0.000962 -0.000008|0.00011
8258|ITRF94 to NAD83(CSRS96) (1)|ITRF94|NAD83(CSRS96)|0|280|0.942 -1.979 -0.534|-0.0273 -0.0154 -0.0107|0.0049|1988|-0.0004 0.0004 -0.0008|-0.000052 0.000762 0.000032|0
8259|ITRF96 to NAD83(CSRS)v2 (1)|ITRF96|NAD83(CSRS)v2|0|280|0.991 -1.9072 -0.5129|-0.02579 -0.00965 -0.01166|0|1997|0 0 0|-0.0000532 0.0007423 0.0000316|0
8260|ITRF97 to NAD83(CSRS)v3 (1)|ITRF97|NAD83(CSRS)v3|0|280|0.9889 -1.9074 -0.503|-0.025915 -0.009426 -0.011599|-0.000935|1997|0.0007 -0.0001 0.0019|-0.000067 0.000757 0.000031|-0.000192
8261|ITRF2000 to NAD83(CSRS)v4 (1)|ITRF2000|NAD83(CSRS)v4|0|280|0.9956 -1.9013 -0.5214|-0.025915 -0.009426 -0.011599|0.000615|1997|0.0007 -0.0007 0.0005|-0.000067 0.000757 0.000051|-0.000182
8264|ITRF2008 to NAD83(CSRS)v6 (1)|ITRF2008|NAD83(CSRS)v6|0|280|0.99343 -1.90331 -0.52655|-0.02591467 -0.00942645 -0.01159935|0.00171504|1997|0.00079 -0.0006 -0.00134|-0.00006667 0.00075744 0.00005133|-0.000102
8265|ITRF2014 to NAD83(CSRS)v7 (1)|ITRF2014|NAD83(CSRS)v7|0|280|1.0053 -1.9092 -0.5416|-0.0267814 0.0004203 -0.0109321|0.00037|2010|0.0008 -0.0006 -0.0014|-0.0000667 0.0007574 0.0000513|-0.00007
8270|Saint Pierre et Miquelon 1950 to WGS 84 (2)|Saint Pierre et Miquelon 1950|WGS 84|1|317|11.363 424.148 373.13|0 0 0|0|
8365|ETRS89 to S-JTSK [JTSK03] (1)|ETRS89|S-JTSK [JTSK03]|0.001|367|-485.014055 -169.473618 -483.842943|-7.78625453 -4.39770887 -4.10248899|0|
8366|ITRF2014 to ETRF2014 (1)|ITRF2014|ETRF2014|0|64|0 0 0|0 0 0|0|1989|0 0 0|0.000085 0.000531 -0.00077|0
8367|S-JTSK [JTSK03] to ETRS89 (1)|S-JTSK [JTSK03]|ETRS89|0.001|367|485.021 169.465 483.839|7.786342 4.397554 4.102655|0|
8368|S-JTSK [JTSK03] to WGS 84 (1)|S-JTSK [JTSK03]|WGS 84|1|367|485.021 169.465 483.839|7.786342 4.397554 4.102655|0|
8405|ITRF2014 to ETRF2000 (1)|ITRF2014|ETRF2000|0|64|0.0547 0.0522 -0.0741|0.001701 0.01029 -0.016632|0.00212|2010|0.0001 0.0001 -0.0019|0.000081 0.00049 -0.000792|0.00011
8436|Macao 2008 to WGS 84 (1)|Macao 2008|WGS 84|1|449|0 0 0|0 0 0|0|
8439|Hong Kong Geodetic CS to WGS 84 (1)|Hong Kong Geodetic CS|WGS 84|1|275|0 0 0|0 0 0|0|
8448|GDA2020 to WGS 84 (G1762) (1)|GDA2020|WGS 84 (G1762)|0.2|65|0 0 0|0 0 0|0|2020|0 0 0|0.00150379 0.00118346 0.00120716|0
8450|GDA2020 to WGS 84 (2)|GDA2020|WGS 84|3|65|0 0 0|0 0 0|0|
8452|Batavia to WGS 84 (1)|Batavia|WGS 84|6|450|-377 681 -50|0 0 0|0|
8674|La Canoa to PSAD56 (1)|La Canoa|PSAD56|0|121|0 0 0|0 0 0|0|
8680|MGI 1901 to ETRS89 (7)|MGI 1901|ETRS89|1|451|489.88 183.912 533.711|5.76545 4.69994 -12.58211|1.00646|
8688|MGI 1901 to WGS 84 (16)|MGI 1901|WGS 84|1|344|476.08 125.947 417.81|4.610862 2.388137 -11.942335|9.896638|
8689|MGI 1901 to Slovenia 1996 (12)|MGI 1901|Slovenia 1996|1|344|476.08 125.947 417.81|4.610862 2.388137 -11.942335|9.896638|
8695|Camacupa 1948 to Camacupa 2015 (1)|Camacupa 1948|Camacupa 2015|5.8|170|42.899 -214.863 -11.927|1.844 -0.648 6.37|0.169|
8696|Camacupa 1948 to Camacupa 2015 (2)|Camacupa 1948|Camacupa 2015|4.2|168|45.799 -212.263 -11.927|1.844 -0.648 6.37|0.169|
8819|RSAO13 to WGS 84 (1)|RSAO13|WGS 84|1|452|0 0 0|0 0 0|0|
8822|MTRF-2000 to WGS 84 (1)|MTRF-2000|WGS 84|1|453|0 0 0|0 0 0|0|
8823|MGI 1901 to WGS 84 (13)|MGI 1901|WGS 84|1|451|489.88 183.912 533.711|5.76545 4.69994 -12.58211|1.00646|
8824|Ain el Abd to MTRF-2000 (1)|Ain el Abd|MTRF-2000|5|32|-61.15 -315.86 -3.51|-0.41 -0.74 3.52|1.36|
8827|Camacupa 2015 to RSAO13 (1)|Camacupa 2015|RSAO13|3|452|-93.799 -132.737 -219.073|-1.844 0.648 -6.37|-0.169|
8828|RGPF to WGS 84 (1)|RGPF|WGS 84|0.5|454|0.072 -0.507 -0.245|0.0183 -0.0003 0.007|-0.0093|
8829|Tahiti 79 to RGPF (1)|Tahiti 79|RGPF|0.5|455|221.525 152.948 176.768|2.3847 1.3896 0.877|11.4741|
8830|Tahiti 79 to WGS 84 (2)|Tahiti 79|WGS 84|1|455|221.597 152.441 176.523|2.403 1.3893 0.884|11.4648|
8831|Moorea 87 to RGPF (2)|Moorea 87|RGPF|0.5|456|218.697 151.257 176.995|3.5048 2.004 1.281|10.991|
8832|Moorea 87 to WGS 84 (2)|Moorea 87|WGS 84|1|456|218.769 150.75 176.75|3.5231 2.0037 1.288|10.9817|
8833|Tahaa 54 to RGPF (1)|Tahaa 54|RGPF|0.5|311|72.438 345.918 79.486|-1.6045 -0.8823 -0.5565|1.3746|
8834|Tahaa 54 to WGS 84 (3)|Tahaa 54|WGS 84|1|311|72.51 345.411 79.241|-1.5862 -0.8826 -0.5495|1.3653|
8835|Fatu Iva 72 to RGPF (1)|Fatu Iva 72|RGPF|2|457|347.103 1078.125 2623.922|33.8875 -70.6773 9.3943|186.074|
8842|Fatu Iva 72 to WGS 84 (2)|Fatu Iva 72|WGS 84|2|457|347.175 1077.618 2623.677|33.9058 -70.6776 9.4013|186.0647|
8843|IGN63 Hiva Oa to RGPF (1)|IGN63 Hiva Oa|RGPF|0.5|458|410.721 55.049 80.746|-2.5779 -2.3514 -0.6664|17.3311|
8844|IGN63 Hiva Oa to WGS 84 (3)|IGN63 Hiva Oa|WGS 84|2|458|410.793 54.542 80.501|-2.5596 -2.3517 -0.6594|17.3218|
8845|IGN63 Hiva Oa to RGPF (2)|IGN63 Hiva Oa|RGPF|2|459|374.715 -58.407 -0.957|-16.2111 -11.4626 -5.5357|-0.5409|
8846|IGN63 Hiva Oa to WGS 84 (4)|IGN63 Hiva Oa|WGS 84|2|459|374.787 -58.914 -1.202|-16.1928 -11.4629 -5.5287|-0.5502|
8847|IGN72 Nuku Hiva to RGPF (1)|IGN72 Nuku Hiva|RGPF|0.5|460|165.732 216.72 180.505|-0.6434 -0.4512 -0.0791|7.4204|
8848|IGN72 Nuku Hiva to WGS 84 (5)|IGN72 Nuku Hiva|WGS 84|1|460|165.804 216.213 180.26|-0.6251 -0.4515 -0.0721|7.4111|
8849|IGN72 Nuku Hiva to RGPF (2)|IGN72 Nuku Hiva|RGPF|2|461|1363.785 1362.687 398.811|-4.5322 -6.7579 -1.0574|268.361|
8850|IGN72 Nuku Hiva to WGS 84 (6)|IGN72 Nuku Hiva|WGS 84|2|461|1363.857 1362.18 398.566|-4.5139 -6.7582 -1.0504|268.3517|
8851|IGN72 Nuku Hiva to RGPF (3)|IGN72 Nuku Hiva|RGPF|0.5|462|259.551 297.612 197.833|1.4866 2.1224 0.4612|27.0249|
8852|IGN72 Nuku Hiva to WGS 84 (7)|IGN72 Nuku Hiva|WGS 84|1|462|259.623 297.105 197.588|1.5049 2.1221 0.4682|27.0156|
8853|Maupiti 83 to WGS 84 (2)|Maupiti 83|WGS 84|1|463|217.109 86.452 23.711|0.0183 -0.0003 0.007|-0.0093|
8869|ITRF2008 to ETRF2014 (1)|ITRF2008|ETRF2014|0|64|-0.0016 -0.0019 -0.0024|0.001785 0.011151 -0.01617|0.00002|2010|0 0 0.0001|0.000085 0.000531 -0.00077|-0.00003
8870|ITRF2005 to ETRF2014 (1)|ITRF2005|ETRF2014|0|64|-0.0026 -0.001 0.0023|0.001785 0.011151 -0.01617|-0.00092|2010|-0.0003 0 0.0001|0.000085 0.000531 -0.00077|-0.00003
8871|ITRF2000 to ETRF2014 (1)|ITRF2000|ETRF2014|0|64|-0.0007 -0.0012 0.0261|0.001785 0.011151 -0.01617|-0.00212|2010|-0.0001 -0.0001 0.0019|0.000085 0.000531 -0.00077|-0.00011
8872|ITRF97 to ETRF2014 (1)|ITRF97|ETRF2014|0|64|-0.0074 0.0005 0.0628|0.001785 0.011151 -0.01643|-0.0038|2010|-0.0001 0.0005 0.0033|0.000085 0.000531 -0.00079|-0.00012
8873|ITRF96 to ETRF2014 (1)|ITRF96|ETRF2014|0|64|-0.0074 0.0005 0.0628|0.001785 0.011151 -0.01643|-0.0038|2010|-0.0001 0.0005 0.0033|0.000085 0.000531 -0.00079|-0.00012
8874|ITRF94 to ETRF2014 (1)|ITRF94|ETRF2014|0|64|-0.0074 0.0005 0.0628|0.001785 0.011151 -0.01643|-0.0038|2010|-0.0001 0.0005 0.0033|0.000085 0.000531 -0.00079|-0.00012
8875|ITRF93 to ETRF2014 (1)|ITRF93|ETRF2014|0|64|0.0504 -0.0033 0.0602|0.004595 0.014531 -0.01657|-0.00429|2010|0.0028 0.0001 0.0025|0.000195 0.000721 -0.00084|-0.00012
8876|ITRF92 to ETRF2014 (1)|ITRF92|ETRF2014|0|64|-0.0154 -0.0015 0.0708|0.001785 0.011151 -0.01643|-0.00309|2010|-0.0001 0.0005 0.0033|0.000085 0.000531 -0.00079|-0.00012
8877|ITRF91 to ETRF2014 (1)|ITRF91|ETRF2014|0|64|-0.0274 -0.0155 0.0768|0.001785 0.011151 -0.01643|-0.00449|2010|-0.0001 0.0005 0.0033|0.000085 0.000531 -0.00079|-0.00012
8878|ITRF90 to ETRF2014 (1)|ITRF90|ETRF2014|0|64|-0.0254 -0.0115 0.0928|0.001785 0.011151 -0.01643|-0.00479|2010|-0.0001 0.0005 0.0033|0.000085 0.000531 -0.00079|-0.00012
8879|ITRF89 to ETRF2014 (1)|ITRF89|ETRF2014|0|64|-0.0304 -0.0355 0.1308|0.001785 0.011151 -0.01643|-0.00819|2010|-0.0001 0.0005 0.0033|0.000085 0.000531 -0.00079|-0.00012
8880|ITRF2014 to ETRF2014 (2)|ITRF2014|ETRF2014|0|64|0 0 0|0.001785 0.011151 -0.01617|0|2010|0 0 0|0.000085 0.000531 -0.00077|0
8882|Camacupa 2015 to WGS 84 (11)|Camacupa 2015|WGS 84|3|452|-93.799 -132.737 -219.073|-1.844 0.648 -6.37|-0.169|
8883|Camacupa 1948 to RSAO13 (1)|Camacupa 1948|RSAO13|3|168|-48 -345 -231|0 0 0|0|
8884|Camacupa 1948 to RSAO13 (2)|Camacupa 1948|RSAO13|5|170|-50.9 -347.6 -231|0 0 0|0|
8886|SVY21 to WGS 84 (1)|SVY21|WGS 84|1|464|0 0 0|0 0 0|0|
8887|GDA2020 to WGS 84 (Transit) (1)|GDA2020|WGS 84 (Transit)|3|65|0 0 0|0 0 0|0|
8889|BGS2005 to ETRS89 (1)|BGS2005|ETRS89|0|465|0 0 0|0 0 0|0|
8890|BGS2005 to WGS 84 (1)|BGS2005|WGS 84|1|465|0 0 0|0 0 0|0|
8891|LKS92 to ETRS89 (1)|LKS92|ETRS89|0|327|0 0 0|0 0 0|0|
8892|LKS94 to ETRS89 (1)|LKS94|ETRS89|0|146|0 0 0|0 0 0|0|
8893|SRB_ETRS89 to ETRS89 (1)|SRB_ETRS89|ETRS89|0|362|0 0 0|0 0 0|0|
8894|SRB_ETRS89 to WGS 84 (1)|SRB_ETRS89|WGS 84|1|362|0 0 0|0 0 0|0|
8895|CHTRS95 to ETRS89 (1)|CHTRS95|ETRS89|0.01|187|0 0 0|0 0 0|0|
8970|ITRF2014 to NAD83(2011) (1)|ITRF2014|NAD83(2011)|0|414|1.0053 -1.9092 -0.5416|-0.0267814 0.0004203 -0.0109321|0.00037|2010|0.0008 -0.0006 -0.0014|-0.0000667 0.0007574 0.0000513|-0.00007
8971|NAD83 to NAD83(2011) (1)|NAD83|NAD83(2011)|1|466|0 0 0|0 0 0|0|
9020|ITRF88 to ITRF89 (1)|ITRF88|ITRF89|0.01|131|0.005 0.036 0.024|-0.0001 0 0|-0.003|
9021|ITRF89 to ITRF90 (1)|ITRF89|ITRF90|0.01|131|-0.005 -0.024 0.038|0 0 0|-0.003|
9022|ITRF90 to ITRF91 (1)|ITRF90|ITRF91|0.007|131|-0.001 0.004 0.016|0 0 0|-0.0003|
9023|ITRF91 to ITRF92 (1)|ITRF91|ITRF92|0.005|131|-0.011 -0.014 0.006|0 0 0|-0.0014|
9024|ITRF92 to ITRF93 (1)|ITRF92|ITRF93|0.003|131|-0.002 -0.007 -0.007|-0.00039 0.0008 -0.00096|0.0012|1988|-0.0029 0.0004 0.0008|-0.00011 -0.00019 0.00005|0
9025|ITRF93 to ITRF94 (1)|ITRF93|ITRF94|0.01|131|-0.006 0.005 0.015|0.00039 -0.0008 0.00096|-0.0004|1988|0.0029 -0.0004 -0.0008|0.00011 0.00019 -0.00005|0
9033|IGS97 to IGS00 (1)|IGS97|IGS00|0.007|131|-0.006 -0.0056 0.0201|-0.00004 0.000001 0.000043|-0.001403|1998|0.0004 0.0008 0.0015|0.000004 -0.000001 -0.000003|-0.000012
9035|IGb00 to IGS05 (1)|IGb00|IGS05|0.001|131|0 0.0017 0.0053|0.0000224 -0.0000341 0.0000099|-0.0008473|2000|0.0004 -0.0007 0.0018|-0.0000033 1e-7 0.0000161|-0.0001748
9036|IGS05 to IGS08 (1)|IGS05|IGS08|0.001|131|0.0015 0 0.0058|-0.000012 0.000014 0.000014|-0.00104|2005|-0.0001 0 -0.0001|-0.000002 -0.000003 0.000001|0.00001
9038|IGb08 to IGS14 (1)|IGb08|IGS14|0.01|131|-0.0016 -0.0019 -0.0024|0 0 0|0.00002|2010|0 0 0.0001|0 0 0|-0.00003
9076|WGS 84 (G873) to ITRF94 (1)|WGS 84 (G873)|ITRF94|0.1|131|0 0 0|0 0 0|0|
9077|ITRF2000 to NAD83(MARP00) (1)|ITRF2000|NAD83(MARP00)|0|444|0.9102 -2.0141 -0.5602|-0.029039 -0.010065 -0.010101|0|1993.62|0 0 0|0.00002 -0.000105 0.000347|0
9078|ITRF2000 to NAD83(PACP00) (1)|ITRF2000|NAD83(PACP00)|0|443|0.9102 -2.0141 -0.5602|-0.029039 -0.010065 -0.010101|0|1993.62|0 0 0|0.000384 -0.001007 0.002186|0
9079|ITRF97 to ITRF96 (2)|ITRF97|ITRF96|0.01|213|0 -0.00051 0.01553|-0.00016508 0.00026897 0.00005984|-0.00151099|2000|0.00069 -0.0001 0.00186|-0.00001347 0.00001514 -2.7e-7|-0.00019201
9080|ITRF2000 to ITRF96 (2)|ITRF2000|ITRF96|0.01|213|0.0067 0.00379 -0.00717|-0.00016508 0.00026897 0.00011984|0.00006901|2000|0.00069 -0.0007 0.00046|-0.00001347 0.00001514 0.00001973|-0.00018201
9081|ITRF2005 to ITRF96 (1)|ITRF2005|ITRF96|0.01|213|0.0068 0.00299 -0.01297|-0.00016508 0.00026897 0.00011984|0.00046901|2000|0.00049 -0.0006 -0.00134|-0.00001347 0.00001514 0.00001973|-0.00010201
9082|ITRF2008 to ITRF96 (2)|ITRF2008|ITRF96|0.01|213|0.0048 0.00209 -0.01767|-0.00016508 0.00026897 0.00011984|0.00140901|2000|0.00079 -0.0006 -0.00134|-0.00001347 0.00001514 0.00001973|-0.00010201
9083|ITRF2014 to ITRF96 (2)|ITRF2014|ITRF96|0.01|213|0.0064 0.00399 -0.01427|-0.00016508 0.00026897 0.00011984|0.00108901|2000|0.00079 -0.0006 -0.00144|-0.00001347 0.00001514 0.00001973|-0.00007201
9142|MGI 1901 to KOSOVAREF01 (1)|MGI 1901|KOSOVAREF01|1|467|628.54052 192.2538 498.43507|-13.79189 -0.81467 41.21533|-17.40368|
9143|MGI 1901 to WGS 84 (14)|MGI 1901|WGS 84|1|467|628.54052 192.2538 498.43507|-13.79189 -0.81467 41.21533|-17.40368|
9144|KOSOVAREF01 to WGS 84 (1)|KOSOVAREF01|WGS 84|1|467|0 0 0|0 0 0|0|
9145|WGS 84 (Transit) to ITRF90 (1)|WGS 84 (Transit)|ITRF90|1|131|-0.06 0.517 0.223|-0.0183 0.0003 -0.007|0.011|
9185|AGD66 to GDA2020 (1)|AGD66|GDA2020|0.05|181|-136.9703 -37.5638 124.4242|0.25676 0.42966 0.30077|-4.61966|
9186|ITRF2008 to IG05/12 Intermediate CRS|ITRF2008|IG05/12 Intermediate CRS|0.05|8|-23.772 -17.49 -17.859|0.3132 1.85274 -1.67299|5.4262|
9189|WGS 84 to IG05/12 Intermediate CRS|WGS 84|IG05/12 Intermediate CRS|0.1|8|-23.772 -17.49 -17.859|0.3132 1.85274 -1.67299|5.4262|
9224|ED50 to ETRS89 (15)|ED50|ETRS89|1|468|-157.89 -17.16 -78.41|2.118 2.697 -1.434|-5.38|
9226|SHGD2015 to Astro DOS 71 (2)|SHGD2015|Astro DOS 71|0.1|448|112.771 -12.282 18.935|-2.1692 -16.8896 -17.1961|19.54517|
9227|ITRF2005 to NAD83(CSRS)v5 (1)|ITRF2005|NAD83(CSRS)v5|0|280|0.9963 -1.9024 -0.5219|-0.025915 -0.009426 -0.011599|0.000775|1997|0.0005 -0.0006 -0.0013|-0.000067 0.000757 0.000051|-0.000102
9234|Kalianpur 1962 to WGS 84 (5)|Kalianpur 1962|WGS 84|3|469|230.25 632.76 161.03|1.114 -1.115 -1.212|12.584|
9257|Chos Malal 1914 to WGS 84 (2)|Chos Malal 1914|WGS 84|2.5|470|8.88 184.86 106.69|0 0 0|0|
9258|Chos Malal 1914 to WGS 84 (3)|Chos Malal 1914|WGS 84|2.5|471|15.75 164.93 126.18|0 0 0|0|
9259|Pampa del Castillo to WGS 84 (2)|Pampa del Castillo|WGS 84|2.5|472|-233.43 6.65 173.64|0 0 0|0|
9260|Tapi Aike to WGS 84 (1)|Tapi Aike|WGS 84|5|473|-192.26 65.72 132.08|0 0 0|0|
9261|MMN to WGS 84 (1)|MMN|WGS 84|2.5|193|-9.5 122.9 138.2|0 0 0|0|
9262|MMS to WGS 84 (1)|MMS|WGS 84|2.5|193|-78.1 101.6 133.3|0 0 0|0|
9263|Hito XVIII 1963 to WGS 84 (3)|Hito XVIII 1963|WGS 84|2.5|193|18.2 190.7 100.9|0 0 0|0|
9264|POSGAR 2007 to WGS 84 (2)|POSGAR 2007|WGS 84|0.5|122|-0.41 0.46 -0.35|0 0 0|0|
9281|Amersfoort to ETRS89 (8)|Amersfoort|ETRS89|0.25|33|565.7381 50.4018 465.2904|-0.395025981036 0.330772431242 -1.87607329463|4.07244|
9291|ISN2016 to WGS 84 (1)|ISN2016|WGS 84|1|324|0 0 0|0 0 0|0|
9298|ONGD17 to WGS 84 (1)|ONGD17|WGS 84|0.1|439|1.16835 -1.42001 -2.24431|-0.00822 -0.05508 0.01818|0.23388|
9334|ITRF2014 to KSA-GRF17 (1)|ITRF2014|KSA-GRF17|0.001|453|0 0 0|0 0 0|0|2017|0 0 0|-0.001199 0.000107 -0.001468|0
9339|PSAD56 to SIRGAS-Chile 2010 (1)|PSAD56|SIRGAS-Chile 2010|5|427|-302 272 -360|0 0 0|0|
9340|PSAD56 to SIRGAS-Chile 2010 (2)|PSAD56|SIRGAS-Chile 2010|5|428|-328 340 -329|0 0 0|0|
9341|PSAD56 to SIRGAS-Chile 2010 (3)|PSAD56|SIRGAS-Chile 2010|5|429|-352 403 -287|0 0 0|0|
9342|PSAD56 to SIRGAS-Chile 2013 (1)|PSAD56|SIRGAS-Chile 2013|5|427|-302 272 -360|0 0 0|0|
9343|PSAD56 to SIRGAS-Chile 2013 (2)|PSAD56|SIRGAS-Chile 2013|5|428|-328 340 -329|0 0 0|0|
9344|PSAD56 to SIRGAS-Chile 2013 (3)|PSAD56|SIRGAS-Chile 2013|5|429|-352 403 -287|0 0 0|0|
9345|PSAD56 to SIRGAS-Chile 2016 (1)|PSAD56|SIRGAS-Chile 2016|5|427|-302 272 -360|0 0 0|0|
9346|PSAD56 to SIRGAS-Chile 2016 (2)|PSAD56|SIRGAS-Chile 2016|5|428|-328 340 -329|0 0 0|0|
9347|PSAD56 to SIRGAS-Chile 2016 (3)|PSAD56|SIRGAS-Chile 2016|5|429|-352 403 -287|0 0 0|0|
9348|SAD69 to SIRGAS-Chile 2010 (4)|SAD69|SIRGAS-Chile 2010|5|302|-79 13 -14|0 0 0|0|
9349|SAD69 to SIRGAS-Chile 2013 (4)|SAD69|SIRGAS-Chile 2013|5|302|-79 13 -14|0 0 0|0|
9350|SAD69 to SIRGAS-Chile 2016 (4)|SAD69|SIRGAS-Chile 2016|5|302|-79 13 -14|0 0 0|0|
9361|MTRF-2000 to KSA-GRF17 (1)|MTRF-2000|KSA-GRF17|0.1|453|0.0469 -0.2827 0.0866|0.00559 -0.004981 0.023108|-0.008051|
9362|Ain el Abd to KSA-GRF17 (1)|Ain el Abd|KSA-GRF17|2|32|13.8714 -83.9721 101.674|0 0 0|0|
9383|KSA-GRF17 to WGS 84 (1)|KSA-GRF17|WGS 84|1|453|0 0 0|-0.008393 0.000749 -0.010276|0|
9459|ATRF2014 to GDA2020 (1)|ATRF2014|GDA2020|0.03|65|0 0 0|0 0 0|0|2020|0 0 0|-0.00150379 -0.00118346 -0.00120716|0
9460|ITRF2014 to ATRF2014 (1)|ITRF2014|ATRF2014|0.01|65|0 0 0|0 0 0|0|
9472|DGN95 to SRGI2013 (1)|DGN95|SRGI2013|0.2|474|-0.2773 0.0534 0.4819|-0.0192857593841 0.00589917345867 -0.00199870597253|-0.028|
9486|MGI 1901 to WGS 84 (15)|MGI 1901|WGS 84|1|362|577.84843 165.45019 390.43652|4.93131 -0.96052 -13.05072|7.86546|
9495|MGI 1901 to SRB-ETRS89 (8)|MGI 1901|SRB_ETRS89|0.46|362|577.84843 165.45019 390.43652|4.93131 -0.96052 -13.05072|7.86546|
9676|Israel 1993 to WGS 84 (2)|Israel 1993|WGS 84|0.5|8|23.772 17.49 17.859|-0.3132 -1.85274 1.67299|-5.4262|
9679|Gulshan 303 to WGS 84 (2)|Gulshan 303|WGS 84|1|475|283.729 735.942 261.143|0 0 0|0|
9682|ITRF2014 to GDA94 (1)|ITRF2014|GDA94|0.035|65|-0.06155 0.01087 0.04019|-0.0394924 -0.0327221 -0.0328979|0.009994|2020|0 0 0|-0.00150379 -0.00118346 -0.00120716|0
9684|ATRF2014 to GDA94 (1)|ATRF2014|GDA94|0.035|65|-0.06155 0.01087 0.04019|-0.0394924 -0.0327221 -0.0328979|0.009994|2020|0 0 0|-0.00150379 -0.00118346 -0.00120716|0
9686|GDA94 to WGS 84 (G1762) (1)|GDA94|WGS 84 (G1762)|0.25|65|0.06155 -0.01087 -0.04019|0.0394924 0.0327221 0.0328979|-0.009994|2020|0 0 0|0.00150379 0.00118346 0.00120716|0
9688|GDA94 to WGS 84 (2)|GDA94|WGS 84|3|65|0.06155 -0.01087 -0.04019|0.0394924 0.0327221 0.0328979|-0.009994|
9690|WGS 84 to GDA2020 (3)|WGS 84|GDA2020|3|65|0.06155 -0.01087 -0.04019|0.0394924 0.0327221 0.0328979|-0.009994|
9703|ETRF2000-PL to ETRS89 (1)|ETRF2000-PL|ETRS89|0|476|0 0 0|0 0 0|0|
9743|PN68 to WGS 84 (1)|PN68|WGS 84|44|477|-307 -92 127|0 0 0|0|
9751|CR05 to CR-SIRGAS (1)|CR05|CR-SIRGAS|0.5|389|-0.16959 0.35312 0.51846|0.03385 -0.16325 0.03446|0.03693|
9752|CR05 to WGS 84 (2)|CR05|WGS 84|1|389|-0.16959 0.35312 0.51846|0.03385 -0.16325 0.03446|0.03693|
9756|WGS 84 (G1762) to WGS 84 (G2139) (1)|WGS 84 (G1762)|WGS 84 (G2139)|0.01|131|0.0058 -0.0064 0.007|-0.00008 -0.00004 -0.00012|-0.0044|
9757|WGS 84 (G2139) to ITRF2014 (1)|WGS 84 (G2139)|ITRF2014|0.01|131|0 0 0|0 0 0|0|
9768|Kyrg-06 to WGS 84 (1)|Kyrg-06|WGS 84|1|478|0 0 0|0 0 0|0|
9769|RGWF96 to WGS 84 (1)|RGWF96|WGS 84|1|479|0 0 0|0 0 0|0|
9770|RGTAAF07 to WGS 84 (1)|RGTAAF07|WGS 84|1|480|0 0 0|0 0 0|0|
9771|TGD2005 to WGS 84 (1)|TGD2005|WGS 84|1|481|0 0 0|0 0 0|0|
9772|ETRF2000-PL to WGS 84 (1)|ETRF2000-PL|WGS 84|1|476|0 0 0|0 0 0|0|
9773|GSK-2011 to WGS 84 (1)|GSK-2011|WGS 84|1|134|0 0 0|0 0 0|0|
9774|NAD83(2011) to WGS 84 (1)|NAD83(2011)|WGS 84|2|414|0 0 0|0 0 0|0|
9788|RGF93 v2 to RGF93 v2b|RGF93 v2|RGF93 v2b|0.005|145|-0.017 0.058 0.009|0.001305 0.00068 -0.001467|-0.00072|
9789|RGF93 v2 to ETRS89 (1)|RGF93 v2|ETRS89|0.02|145|0 0 0|0 0 0|0|
9790|RGF93 v2b to ETRS89 (1)|RGF93 v2b|ETRS89|0.01|145|0 0 0|0 0 0|0|
9791|RGF93 v2 to WGS 84 (1)|RGF93 v2|WGS 84|1|145|0 0 0|0 0 0|0|
9792|RGF93 v2b to WGS 84 (1)|RGF93 v2b|WGS 84|1|145|0 0 0|0 0 0|0|
9882|RGF93 v1 to RGF93 v2 (1)|RGF93 v1|RGF93 v2|0.05|145|0 0 0|0 0 0|0|
9899|LUREF to ETRS89 (6)|LUREF|ETRS89|0|240|-189.033 14.1335 -43.0901|-0.43331 -3.11448 2.63636|0.4752|
9901|UCS-2000 to ETRS89 (1)|UCS-2000|ETRS89|1|399|24 -121 -76|0 0 0|0|
9904|Camacupa 1948 to RSAO13 (3)|Camacupa 1948|RSAO13|8|167|-43 -337 -233|0 0 0|0|
9905|Camacupa 1948 to RSAO13 (4)|Camacupa 1948|RSAO13|10|169|-41.057 -374.564 -226.287|0 0 0.554|0.219|
9906|Malongo 1987 to RSAO13 (1)|Malongo 1987|RSAO13|5|171|-254.1 -5.36 -100.29|0 0 0|0|
9913|Hong Kong 1980 to Hong Kong Geodetic CS (1)|Hong Kong 1980|Hong Kong Geodetic CS|1|275|-162.619 -276.959 -161.764|0.067753 -2.243648 -1.158828|-1.094246|
9936|JGD2011 to WGS 84 (1)|JGD2011|WGS 84|1|482|0 0 0|0 0 0|0|
9938|LUREF to ETRS89 (8)|LUREF|ETRS89|0|240|-189.228 12.0035 -42.6303|-0.48171 -3.09948 2.68639|0.46346|
9960|WGS 84 (Transit) to WGS 84 (G730) (1)|WGS 84 (Transit)|WGS 84 (G730)|0.7|131|-0.058 0.521 0.239|-0.0183 0.0003 -0.007|0.0107|
9961|WGS 84 (G730) to WGS 84 (G873) (1)|WGS 84 (G730)|WGS 84 (G873)|0.04|131|-0.02 -0.016 0.014|0 0 0|-0.00069|
9962|WGS 84 (G873) to WGS 84 (G1150) (1)|WGS 84 (G873)|WGS 84 (G1150)|0.03|131|0.0011 -0.0047 0.022|0 0 -0.00016|0.00145|2005|0 0.0006 0.0014|0 0 -0.00002|-0.00001
9963|WGS 84 (G1150) to WGS 84 (G1674) (1)|WGS 84 (G1150)|WGS 84 (G1674)|0.02|131|-0.0024 0.0016 0.0232|0.00027 -0.00027 0.00038|0.00208|2005|-0.0001 -0.0001 0.0018|0 0 0|-0.00008
9991|ITRF2014 to ITRF2020 (1)|ITRF2014|ITRF2020|0.001|131|0.0014 0.0009 -0.0014|0 0 0|0.00042|2015|0 0.0001 -0.0002|0 0 0|0
9992|ITRF2008 to ITRF2020 (1)|ITRF2008|ITRF2020|0.01|131|-0.0002 -0.001 -0.0033|0 0 0|0.00029|2015|0 0.0001 -0.0001|0 0 0|-0.00003
9993|ITRF2005 to ITRF2020 (1)|ITRF2005|ITRF2020|0.01|131|-0.0027 -0.0001 0.0014|0 0 0|-0.00065|2015|-0.0003 0.0001 -0.0001|0 0 0|-0.00003
9994|ITRF2000 to ITRF2020 (1)|ITRF2000|ITRF2020|0.01|131|0.0002 -0.0008 0.0342|0 0 0|-0.00225|2015|-0.0001 0 0.0017|0 0 0|-0.00011
9995|ITRF97 to ITRF2020 (1)|ITRF97|ITRF2020|0.01|131|-0.0065 0.0039 0.0779|0 0 -0.00036|-0.00398|2015|-0.0001 0.0006 0.0031|0 0 -0.00002|-0.00012
9996|ITRF96 to ITRF2020 (1)|ITRF96|ITRF2020|0.01|131|-0.0065 0.0039 0.0779|0 0 -0.00036|-0.00398|2015|-0.0001 0.0006 0.0031|0 0 -0.00002|-0.00012
9997|ITRF94 to ITRF2020 (1)|ITRF94|ITRF2020|0.01|131|-0.0065 0.0039 0.0779|0 0 -0.00036|-0.00398|2015|-0.0001 0.0006 0.0031|0 0 -0.00002|-0.00012
9998|ITRF93 to ITRF2020 (1)|ITRF93|ITRF2020|0.01|131|0.0658 -0.0019 0.0713|0.00336 0.00433 -0.00075|-0.00447|2015|0.0028 0.0002 0.0023|0.00011 0.00019 -0.00007|-0.00012
9999|ITRF92 to ITRF2020 (1)|ITRF92|ITRF2020|0.01|131|-0.0145 0.0019 0.0859|0 0 -0.00036|-0.00327|2015|-0.0001 0.0006 0.0031|0 0 -0.00002|-0.00012
10085|Trinidad 1903 to WGS 84 (2)|Trinidad 1903|WGS 84|3|151|-61 285.2 471.6|0 0 0|0|
10086|JAD69 to WGS 72 (1)|JAD69|WGS 72|15|11|48 208 382|0 0 0|0|
10089|Aratu to WGS 84 (5)|Aratu|WGS 84|7|483|-163.466 317.396 -147.538|0 0 0|0|
10090|Aratu to WGS 84 (6)|Aratu|WGS 84|7|378|-170 305 -145|0 0 0|0|
10091|Aratu to WGS 84 (7)|Aratu|WGS 84|7|379|-162.904 312.531 -137.109|0 0 0|0|
10092|Aratu to WGS 84 (8)|Aratu|WGS 84|7|484|-158 309 -151|0 0 0|0|
10093|Aratu to WGS 84 (9)|Aratu|WGS 84|15|485|-161 308 -142|0 0 0|0|
10098|KKJ to ETRS89 (2)|KKJ|ETRS89|0.5|239|-96.062 -82.428 -121.753|4.801 0.345 -1.376|1.496|
10099|KKJ to WGS 84 (2)|KKJ|WGS 84|1|239|-96.062 -82.428 -121.753|4.801 0.345 -1.376|1.496|
10100|ITRF91 to ITRF2020 (1)|ITRF91|ITRF2020|0.01|131|-0.0265 -0.0121 0.0919|0 0 -0.00036|-0.00467|2015|-0.0001 0.0006 0.0031|0 0 -0.00002|-0.00012
10103|ITRF90 to ITRF2020 (1)|ITRF90|ITRF2020|0.01|131|-0.0245 -0.0081 0.1079|0 0 -0.00036|-0.00497|2015|-0.0001 0.0006 0.0031|0 0 -0.00002|-0.00012
10104|ITRF89 to ITRF2020 (1)|ITRF89|ITRF2020|0.01|131|-0.0295 -0.0321 0.1459|0 0 -0.00036|-0.00837|2015|-0.0001 0.0006 0.0031|0 0 -0.00002|-0.00012
10105|ITRF88 to ITRF2020 (1)|ITRF88|ITRF2020|0.01|131|-0.0245 0.0039 0.1699|-0.0001 0 -0.00036|-0.01147|2015|-0.0001 0.0006 0.0031|0 0 -0.00002|-0.00012
10135|PSAD56 to SIRGAS-Chile 2021 (1)|PSAD56|SIRGAS-Chile 2021|5|427|-302 272 -360|0 0 0|0|
10136|PSAD56 to SIRGAS-Chile 2021 (2)|PSAD56|SIRGAS-Chile 2021|5|428|-328 340 -329|0 0 0|0|
10137|PSAD56 to SIRGAS-Chile 2021 (3)|PSAD56|SIRGAS-Chile 2021|5|429|-352 403 -287|0 0 0|0|
10138|SAD69 to SIRGAS-Chile 2021 (4)|SAD69|SIRGAS-Chile 2021|5|302|-79 13 -14|0 0 0|0|
10139|ITRF88 to ITRF89 (2)|ITRF88|ITRF89|0.01|131|0.005 0.036 0.024|-0.0001 0 0|-0.0031|
10140|ITRF89 to ITRF90 (2)|ITRF89|ITRF90|0.01|131|-0.005 -0.024 0.038|0 0 0|-0.0034|
10141|ITRF90 to ITRF91 (2)|ITRF90|ITRF91|0.007|131|0.002 0.004 0.016|0 0 0|-0.0003|
10142|ITRF91 to ITRF92 (2)|ITRF91|ITRF92|0.005|131|-0.012 -0.014 0.006|0 0 0|-0.0014|
10143|ITRF93 to ITRF94 (2)|ITRF93|ITRF94|0.01|131|-0.006 0.005 0.015|0.00039 -0.0008 0.00096|-0.00049|1988|0.0029 -0.0004 -0.0008|0.00011 0.00019 -0.00005|0
15483|Tokyo to JGD2000 (1)|Tokyo|JGD2000|9|486|-146.414 507.337 680.507|0 0 0|0|
15484|Tokyo to WGS 84 (108)|Tokyo|WGS 84|9|486|-146.414 507.337 680.507|0 0 0|0|
15485|SAD69 to SIRGAS 2000 (1)|SAD69|SIRGAS 2000|5|295|-67.35 3.88 -38.22|0 0 0|0|
15493|Minna to WGS 84 (15)|Minna|WGS 84|5|487|-94.031 -83.317 116.708|0 0 0|0|
15494|Kalianpur 1962 to WGS 84 (6)|Kalianpur 1962|WGS 84|3|488|274.164 677.282 226.704|0 0 0|0|
15495|Accra to WGS 84 (3)|Accra|WGS 84|25|214|-171.16 17.29 325.21|0 0 0.814|-0.38|
15496|Pulkovo 1942(58) to WGS 84 (18)|Pulkovo 1942(58)|WGS 84|10|489|44.107 -116.147 -54.648|0 0 0|0|
15497|Pulkovo 1942(58) to WGS 84 (9)|Pulkovo 1942(58)|WGS 84|7|489|28 -121 -77|0 0 0|0|
15699|NAD27 to WGS 84 (87)|NAD27|WGS 84|5|490|-2 124.7 196|0 0 0|0|
15701|Kalianpur 1962 to WGS 84 (2)|Kalianpur 1962|WGS 84|1|491|275.57 676.78 229.6|0 0 0|0|
15702|Kalianpur 1962 to WGS 84 (3)|Kalianpur 1962|WGS 84|3|492|278.9 684.39 226.05|0 0 0|0|
15703|Kalianpur 1962 to WGS 84 (4)|Kalianpur 1962|WGS 84|3|493|271.905 669.593 231.495|0 0 0|0|
15705|Minna to WGS 84 (12)|Minna|WGS 84|8|494|-83.13 -104.95 114.63|0 0 0.554|0|
15706|Minna to WGS 84 (13)|Minna|WGS 84|7|269|-93.6 -83.7 113.8|0 0 0|0|
15707|ELD79 to WGS 84 (6)|ELD79|WGS 84|10|495|-118.996 -111.177 -198.687|0 0 0|0|
15708|PRS92 to WGS 84 (1)|PRS92|WGS 84|0.05|496|-127.62 -67.24 -47.04|-3.068 4.903 1.578|-1.06|
15709|Nouakchott 1965 to WGS 84 (1)|Nouakchott 1965|WGS 84|5|497|124.5 -63.5 -281|0 0 0|0|
15710|Aratu to WGS 84 (10)|Aratu|WGS 84|5|378|-160 315 -142|0 0 0|0|
15711|Aratu to WGS 84 (11)|Aratu|WGS 84|5|483|-158 309 -147|0 0 0|0|
15712|Aratu to WGS 84 (12)|Aratu|WGS 84|5|379|-161 310 -145|0 0 0|0|
15713|Gan 1970 to WGS 84 (1)|Gan 1970|WGS 84|44|498|-133 -321 50|0 0 0|0|
15714|Bogota 1975 to MAGNA-SIRGAS (1)|Bogota 1975|MAGNA-SIRGAS|1|499|-806.413 -263.5 -622.671|-12.4142185638 2.99084175323 39.0346863906|-20.81616|
15715|Bogota 1975 to WGS 84 (3)|Bogota 1975|WGS 84|1|499|-806.413 -263.5 -622.671|-12.4142185638 2.99084175323 39.0346863906|-20.81616|
15716|Bogota 1975 to MAGNA-SIRGAS (2)|Bogota 1975|MAGNA-SIRGAS|1|500|100.783 187.382 -47|9.22383004903 -2.42380329967 8.30827832825|-13.56561|
15717|Bogota 1975 to WGS 84 (4)|Bogota 1975|WGS 84|1|500|100.783 187.382 -47|9.22383004903 -2.42380329967 8.30827832825|-13.56561|
15718|Bogota 1975 to MAGNA-SIRGAS (3)|Bogota 1975|MAGNA-SIRGAS|1|501|336.026 348.565 252.978|17.241289439 6.30649282216 -1.56204977192|-5.771909|
15719|Bogota 1975 to WGS 84 (5)|Bogota 1975|WGS 84|1|501|336.026 348.565 252.978|17.241289439 6.30649282216 -1.56204977192|-5.771909|
15720|Bogota 1975 to MAGNA-SIRGAS (4)|Bogota 1975|MAGNA-SIRGAS|1|502|963.273 486.386 190.997|16.4850360281 1.66882584284 -21.6928490465|-13.89914|
15721|Bogota 1975 to WGS 84 (6)|Bogota 1975|WGS 84|1|502|963.273 486.386 190.997|16.4850360281 1.66882584284 -21.6928490465|-13.89914|
15722|Bogota 1975 to MAGNA-SIRGAS (5)|Bogota 1975|MAGNA-SIRGAS|1|503|-90.29 247.559 -21.989|8.69688534851 4.18803362841 12.8082668496|2.181658|
15723|Bogota 1975 to WGS 84 (7)|Bogota 1975|WGS 84|1|503|-90.29 247.559 -21.989|8.69688534851 4.18803362841 12.8082668496|2.181658|
15724|Bogota 1975 to MAGNA-SIRGAS (6)|Bogota 1975|MAGNA-SIRGAS|1|504|-0.562 244.299 -456.938|-6.86687098512 8.25267346178 9.29677972306|3.74656|
15725|Bogota 1975 to WGS 84 (8)|Bogota 1975|WGS 84|1|504|-0.562 244.299 -456.938|-6.86687098512 8.25267346178 9.29677972306|3.74656|
15726|Bogota 1975 to MAGNA-SIRGAS (7)|Bogota 1975|MAGNA-SIRGAS|1|505|-305.356 222.004 -30.023|9.69049385993 -1.03196819623 19.7573941768|6.325747|
15727|Bogota 1975 to WGS 84 (9)|Bogota 1975|WGS 84|1|505|-305.356 222.004 -30.023|9.69049385993 -1.03196819623 19.7573941768|6.325747|
15728|Bogota 1975 to MAGNA-SIRGAS (8)|Bogota 1975|MAGNA-SIRGAS|1|506|221.899 274.136 -397.554|-2.80844591036 0.448508588913 2.81017234679|-2.199943|
15729|Bogota 1975 to WGS 84 (10)|Bogota 1975|WGS 84|1|506|221.899 274.136 -397.554|-2.80844591036 0.448508588913 2.81017234679|-2.199943|
15738|MAGNA-SIRGAS to WGS 84 (1)|MAGNA-SIRGAS|WGS 84|1|507|0 0 0|0 0 0|0|
15739|Amersfoort to ETRS89 (3)|Amersfoort|ETRS89|0.5|33|565.2369 50.0087 465.658|-0.406857330322 0.350732676543 -1.87034738361|4.0812|
15741|Deir ez Zor to WGS 84 (2)|Deir ez Zor|WGS 84|5|220|-187.5 14.1 237.6|0 0 0|0|
15742|Deir ez Zor to WGS 84 (5)|Deir ez Zor|WGS 84|5|508|-190.421 8.532 238.69|0 0 0|0|
15743|Deir ez Zor to WGS 84 (6)|Deir ez Zor|WGS 84|0.5|220|-83.58 -397.54 458.78|-17.595 -2.847 4.256|3.225|
15745|ED50(ED77) to WGS 84 (6)|ED50(ED77)|WGS 84|0.2|509|-123.02 -158.95 -168.47|0 0 0|0|
15746|Nakhl-e Ghanem to WGS 84 (6)|Nakhl-e Ghanem|WGS 84|0.2|510|0 -0.15 0.68|0 0 0|0|
15750|St. Kitts 1955 to WGS 84 (2)|St. Kitts 1955|WGS 84|44|179|-7 215 225|0 0 0|0|
15751|Reunion 1947 to WGS 84 (2)|Reunion 1947|WGS 84|44|319|94 -948 -1262|0 0 0|0|
15752|ED79 to WGS 84 (1)|ED79|WGS 84|6|343|-86 -98 -119|0 0 0|0|
15754|Aratu to WGS 84 (1)|Aratu|WGS 84|10|511|-158 315 -148|0 0 0|0|
15755|Minna to WGS 84 (14)|Minna|WGS 84|7|512|-90.2 -87.32 114.17|0 0 0|0|
15759|Maupiti 83 to RGPF (1)|Maupiti 83|RGPF|0.5|463|217.037 86.959 23.956|0 0 0|0|
15778|ELD79 to WGS 84 (7)|ELD79|WGS 84|0.5|513|-114.7 -98.5 -150.7|0 0 0|0|
15779|Gulshan 303 to WGS 84 (1)|Gulshan 303|WGS 84|1|475|283.7 735.9 261.1|0 0 0|0|
15782|Campo Inchauspe to POSGAR 94 (1)|Campo Inchauspe|POSGAR 94|5|289|-148 136 90|0 0 0|0|
15783|IGN53 Mare to WGS 84 (2)|IGN53 Mare|WGS 84|5|320|287 178 -136|0 0 0|0|
15784|Le Pouce 1934 to WGS 84 (1)|Le Pouce 1934|WGS 84|2|514|-770.1 158.4 -498.2|0 0 0|0|
15787|IGCB 1955 to WGS 84 (1)|IGCB 1955|WGS 84|5|515|-79.9 -158 -168.9|0 0 0|0|
15788|AGD66 to WGS 84 (16)|AGD66|WGS 84|5|29|-127.8 -52.3 152.9|0 0 0|0|
15789|AGD84 to WGS 84 (8)|AGD84|WGS 84|5|30|-128.5 -53 153.4|0 0 0|0|
15790|Mhast (offshore) to WGS 72BE (1)|Mhast (offshore)|WGS 72BE|10|171|-255 -29 -105|0 0 0|0|
15791|Malongo 1987 to WGS 84 (3)|Malongo 1987|WGS 84|10|171|-259.99 -5.28 -97.09|0 0 0|0|
15792|Egypt Gulf of Suez S-650 TL to WGS 72BE (1)|Egypt Gulf of Suez S-650 TL|WGS 72BE|5|516|-123 98 2|0 0 0|0|
15793|Barbados 1938 to WGS 84 (1)|Barbados 1938|WGS 84|3|517|31.95 300.99 419.19|0 0 0|0|
15794|Cocos Islands 1965 to WGS 84 (1)|Cocos Islands 1965|WGS 84|44|518|-491 -22 435|0 0 0|0|
15795|Tern Island 1961 to WGS 84 (1)|Tern Island 1961|WGS 84|44|519|114 -116 -333|0 0 0|0|
15796|Iwo Jima 1945 to WGS 84 (1)|Iwo Jima 1945|WGS 84|44|520|145 75 -272|0 0 0|0|
15797|Ascension Island 1958 to WGS 84 (1)|Ascension Island 1958|WGS 84|44|521|-205 107 53|0 0 0|0|
15798|Astro DOS 71 to WGS 84 (1)|Astro DOS 71|WGS 84|44|448|-320 550 -494|0 0 0|0|
15799|Marcus Island 1952 to WGS 84 (1)|Marcus Island 1952|WGS 84|44|522|124 -234 -25|0 0 0|0|
15800|Ayabelle Lighthouse to WGS 84 (1)|Ayabelle Lighthouse|WGS 84|44|523|-79 -129 145|0 0 0|0|
15801|Bellevue to WGS 84 (1)|Bellevue|WGS 84|35|524|-127 -769 472|0 0 0|0|
15803|Phoenix Islands 1966 to WGS 84 (1)|Phoenix Islands 1966|WGS 84|26|525|298 -304 -375|0 0 0|0|
15804|Cape Canaveral to WGS 84 (1)|Cape Canaveral|WGS 84|6|526|-2 151 181|0 0 0|0|
15805|Solomon 1968 to WGS 84 (1)|Solomon 1968|WGS 84|44|527|230 -199 -752|0 0 0|0|
15806|Easter Island 1967 to WGS 84 (1)|Easter Island 1967|WGS 84|44|528|211 147 111|0 0 0|0|
15807|Solomon 1968 to WGS 84 (2)|Solomon 1968|WGS 84|44|529|252 -209 -751|0 0 0|0|
15808|Diego Garcia 1969 to WGS 84 (1)|Diego Garcia 1969|WGS 84|44|530|208 -435 -229|0 0 0|0|
15809|Johnston Island 1961 to WGS 84 (1)|Johnston Island 1961|WGS 84|44|531|189 -79 -202|0 0 0|0|
15810|Kusaie 1951 to WGS 84 (1)|Kusaie 1951|WGS 84|44|532|647 1777 -1124|0 0 0|0|
15811|Antigua 1943 to WGS 84 (2)|Antigua 1943|WGS 84|44|175|-270 13 62|0 0 0|0|
15812|Deception Island to WGS 84 (1)|Deception Island|WGS 84|35|533|260 12 -147|0 0 0|0|
15813|South Georgia 1968 to WGS 84 (1)|South Georgia 1968|WGS 84|44|534|-794 119 -298|0 0 0|0|
15814|SIGD61 to WGS 84 (1)|SIGD61|WGS 84|44|407|42 124 147|0 0 0|0|
15815|PN84 to WGS 84 (1)|PN84|WGS 84|44|535|-307 -92 127|0 0 0|0|
15816|Tristan 1968 to WGS 84 (1)|Tristan 1968|WGS 84|44|536|-632 438 -609|0 0 0|0|
15817|Midway 1961 to WGS 84 (1)|Midway 1961|WGS 84|44|537|912 -58 1227|0 0 0|0|
15818|Midway 1961 to WGS 84 (2)|Midway 1961|WGS 84|44|537|403 -81 277|0 0 0|0|
15819|Pitcairn 1967 to WGS 84 (1)|Pitcairn 1967|WGS 84|44|538|185 165 42|0 0 0|0|
15820|Santo 1965 to WGS 84 (1)|Santo 1965|WGS 84|44|539|170 42 84|0 0 0|0|
15822|Marshall Islands 1960 to WGS 84 (1)|Marshall Islands 1960|WGS 84|6|540|102 52 -38|0 0 0|0|
15823|Wake Island 1952 to WGS 84 (1)|Wake Island 1952|WGS 84|44|541|276 -57 149|0 0 0|0|
15824|Old Hawaiian to WGS 84 (3)|Old Hawaiian|WGS 84|38|542|61 -285 -181|0 0 0|0|
15825|Old Hawaiian to WGS 84 (4)|Old Hawaiian|WGS 84|44|543|89 -279 -183|0 0 0|0|
15826|Old Hawaiian to WGS 84 (5)|Old Hawaiian|WGS 84|35|544|45 -290 -172|0 0 0|0|
15827|Old Hawaiian to WGS 84 (6)|Old Hawaiian|WGS 84|44|545|65 -290 -190|0 0 0|0|
15828|Old Hawaiian to WGS 84 (7)|Old Hawaiian|WGS 84|14|546|58 -283 -182|0 0 0|0|
15829|SIGD61 to WGS 84 (2)|SIGD61|WGS 84|1|407|44.4 109 151.7|0 0 0|0|
15830|GCGD59 to WGS 84 (1)|GCGD59|WGS 84|1|406|67.8 106.1 138.8|0 0 0|0|
15831|Korea 2000 to WGS 84 (1)|Korea 2000|WGS 84|1|547|0 0 0|0 0 0|0|
15833|RGPF to WGS 84 (2)|RGPF|WGS 84|1|454|0 0 0|0 0 0|0|
15842|Hong Kong 1963(67) to WGS 84 (1)|Hong Kong 1963(67)|WGS 84|1|275|-156 -271 -189|0 0 0|0|
15843|PZ-90 to WGS 84 (1)|PZ-90|WGS 84|1.5|131|0 0 1.5|0 0 0.076|0|
15844|Pulkovo 1942 to PZ-90 (1)|Pulkovo 1942|PZ-90|4|548|25 -141 -80|0 0.35 0.66|0|
15846|Egypt Gulf of Suez S-650 TL to WGS 84 (2)|Egypt Gulf of Suez S-650 TL|WGS 84|5|516|-146.21 112.63 4.05|0 0 0|0|
15847|MOP78 to WGS 84 (2)|MOP78|WGS 84|10|549|253 -132 -127|0 0 0|0|
15848|ST84 Ile des Pins to WGS 84 (2)|ST84 Ile des Pins|WGS 84|10|550|-13 -348 292|0 0 0|0|
15849|Beduaram to WGS 84 (2)|Beduaram|WGS 84|15|279|-106 -87 188|0 0 0|0|
15850|IGN 1962 Kerguelen to WGS 84 (1)|IGN 1962 Kerguelen|WGS 84|10|551|145 -187 103|0 0 0|0|
15852|NAD27 to WGS 84 (80)|NAD27|WGS 84|5|552|-3 154 177|0 0 0|0|
15853|NAD27 to WGS 84 (81)|NAD27|WGS 84|5|553|-7 151 175|0 0 0|0|
15854|NAD27 to WGS 84 (82)|NAD27|WGS 84|5|554|-7 151 178|0 0 0|0|
15855|NAD27 to WGS 84 (83)|NAD27|WGS 84|5|555|-8 125 190|0 0 0|0|
15856|NAD27 to WGS 84 (84)|NAD27|WGS 84|8|466|-7 158 172|0 0 0|0|
15860|Mauritania 1999 to WGS 84 (1)|Mauritania 1999|WGS 84|1|556|0 0 0|0 0 0|0|
15865|Pulkovo 1942 to WGS 84 (16)|Pulkovo 1942|WGS 84|4.5|548|25 -141 -78.5|0 0.35 0.736|0|
15866|FD54 to ED50 (1)|FD54|ED50|0|557|-153.33 -169.41 86.39|0 0 0|0|
15867|PD/83 to ETRS89 (1)|PD/83|ETRS89|1|558|599.4 72.4 419.2|-0.062 -0.022 -2.723|6.46|
15868|RD/83 to ETRS89 (1)|RD/83|ETRS89|1|559|612.4 77 440.2|-0.054 0.057 -2.797|2.55|
15869|DHDN to WGS 84 (3)|DHDN|WGS 84|2|246|612.4 77 440.2|-0.054 0.057 -2.797|2.55|
15870|Jouik 1961 to WGS 84 (1)|Jouik 1961|WGS 84|1|560|-80.01 253.26 291.19|0 0 0|0|
15872|Karbala 1979 to WGS 84 (1)|Karbala 1979|WGS 84|5|561|84.1 -320.1 218.7|0 0 0|0|
15873|Douala 1948 to WGS 84 (1)|Douala 1948|WGS 84|10|253|-206.1 -174.7 -87.7|0 0 0|0|
15874|Nord Sahara 1959 to WGS 84 (7)|Nord Sahara 1959|WGS 84|5|562|-169.559 -72.34 303.102|0 0 0|0|
15875|Fiji 1956 to WGS 84 (1)|Fiji 1956|WGS 84|7|563|265.025 384.929 -194.046|0 0 0|0|
15876|Fiji 1986 to WGS 84 (1)|Fiji 1986|WGS 84|2|564|0 0 4.5|0 0 0.554|0.2263|
15877|Fiji 1986 to WGS 84 (2)|Fiji 1986|WGS 84|40|563|-35.173 136.571 -36.964|-1.37 0.842 4.718|-1.537|
15878|Vanua Levu 1915 to WGS 84 (1)|Vanua Levu 1915|WGS 84|50|565|51 391 -36|0 0 0|0|
15879|GR96 to WGS 84 (1)|GR96|WGS 84|1|566|0 0 0|0 0 0|0|
15880|RGNC91-93 to WGS 84 (1)|RGNC91-93|WGS 84|1|567|0 0 0|0 0 0|0|
15881|ST87 Ouvea to WGS 84 (2)|ST87 Ouvea|WGS 84|1|568|-56.263 16.136 -22.856|0 0 0|0|
15882|IGN72 Grande Terre to RGNC91-93 (1)|IGN72 Grande Terre|RGNC91-93|2|329|-11.64 -348.6 291.98|0 0 0|0|
15883|IGN56 Lifou to RGNC91-93 (1)|IGN56 Lifou|RGNC91-93|1|314|335.47 222.58 -230.94|0 0 0|0|
15884|IGN53 Mare to RGNC91-93 (1)|IGN53 Mare|RGNC91-93|2|320|287.58 177.78 -135.41|0 0 0|0|
15885|ST87 Ouvea to RGNC91-93 (1)|ST87 Ouvea|RGNC91-93|0.5|568|-56.263 16.136 -22.856|0 0 0|0|
15886|NEA74 Noumea to RGNC91-93 (1)|NEA74 Noumea|RGNC91-93|1|569|-10.18 -350.43 291.37|0 0 0|0|
15887|IGN72 Grande Terre to RGNC91-93 (2)|IGN72 Grande Terre|RGNC91-93|0.3|329|97.297 -263.243 310.879|-1.5999 0.8387 3.1409|13.326|
15888|IGN72 Grande Terre to RGNC91-93 (3)|IGN72 Grande Terre|RGNC91-93|0.1|569|48.812 -205.932 343.993|-3.4427 -0.4999 4.0878|6.5215|
15889|NEA74 Noumea to RGNC91-93 (2)|NEA74 Noumea|RGNC91-93|0.1|569|-166.0684 -154.7826 254.8282|-37.546 7.7018 -10.2029|-30.84|
15890|IGN56 Lifou to RGNC91-93 (2)|IGN56 Lifou|RGNC91-93|0.1|314|137.092 131.675 91.478|-1.9435 -11.5995 -4.3316|-7.4801|
15891|IGN53 Mare to RGNC91-93 (2)|IGN53 Mare|RGNC91-93|0.1|320|-408.809 366.857 -412.987|1.8843 -0.5308 2.1657|-121.0994|
15892|ST87 Ouvea to RGNC91-93 (2)|ST87 Ouvea|RGNC91-93|0.1|568|-122.386 -188.707 103.334|3.511 -4.9665 -5.7048|4.4799|
15893|ST84 Ile des Pins to RGNC91-93 (1)|ST84 Ile des Pins|RGNC91-93|0.1|550|244.42 85.352 168.129|-8.936 7.752 12.5952|14.2723|
15894|SIRGAS 2000 to WGS 84 (1)|SIRGAS 2000|WGS 84|1|570|0 0 0|0 0 0|0|
15896|Kertau (RSO) to Kertau 1968 (1)|Kertau (RSO)|Kertau 1968|0|571|0 0 0|0 0 0|0|
15897|Viti Levu 1912 to WGS 84 (1)|Viti Levu 1912|WGS 84|44|418|51 391 -36|0 0 0|0|
15899|Scoresbysund 1952 to GR96 (1)|Scoresbysund 1952|GR96|1|255|105 326 -102.5|0 0 0.814|-0.6|
15900|Ammassalik 1958 to GR96 (1)|Ammassalik 1958|GR96|1|256|-45 417 -3.5|0 0 0.814|-0.6|
15901|IGN53 Mare to WGS 84 (3)|IGN53 Mare|WGS 84|2|320|287.58 177.78 -135.41|0 0 0|0|
15902|IGN56 Lifou to WGS 84 (3)|IGN56 Lifou|WGS 84|1|314|335.47 222.58 -230.94|0 0 0|0|
15903|IGN72 Grande Terre to WGS 84 (3)|IGN72 Grande Terre|WGS 84|2|329|-11.64 -348.6 291.98|0 0 0|0|
15904|NEA74 Noumea to WGS 84 (2)|NEA74 Noumea|WGS 84|1|569|-10.18 -350.43 291.37|0 0 0|0|
15908|LGD2006 to WGS 84 (1)|LGD2006|WGS 84|0.1|572|-208.4058 -109.8777 -2.5764|0 0 0|0|
15909|ELD79 to WGS 84 (8)|ELD79|WGS 84|5|573|-115.8543 -99.0583 -152.4616|0 0 0|0|
15911|ID74 to DGN95 (1)|ID74|DGN95|3|135|-1.977 -13.06 -9.993|0.364 0.254 0.689|-1.037|
15912|DGN95 to WGS 84 (1)|DGN95|WGS 84|1|474|0 0 0|0 0 0|0|
15913|NAD27 to WGS 84 (86)|NAD27|WGS 84|5|574|0 125 196|0 0 0|0|
15918|Beijing 1954 to WGS 84 (1)|Beijing 1954|WGS 84|1|575|12.646 -155.176 -80.863|0 0 0|0|
15919|Beijing 1954 to WGS 84 (2)|Beijing 1954|WGS 84|15|576|15.53 -113.82 -41.38|0 0 0.814|-0.38|
15920|Beijing 1954 to WGS 84 (3)|Beijing 1954|WGS 84|15|577|31.4 -144.3 -74.8|0 0 0.814|-0.38|
15921|Beijing 1954 to WGS 84 (4)|Beijing 1954|WGS 84|1|578|15.8 -154.4 -82.3|0 0 0|0|
15923|ELD79 to WGS 84 (9)|ELD79|WGS 84|2|579|-117.7 -100.3 -152.4|0 0 0|0|
15924|ELD79 to LGD2006 (1)|ELD79|LGD2006|5|573|92.5515 10.8194 -149.8852|0 0 0|0|
15925|JAD2001 to WGS 84 (1)|JAD2001|WGS 84|0|580|0 0 0|0 0 0|0|
15926|JAD69 to JAD2001 (1)|JAD69|JAD2001|0.5|11|-33.722 153.789 94.959|-8.581 -4.478 4.54|8.95|
15927|JAD69 to WGS 84 (3)|JAD69|WGS 84|1|11|-33.722 153.789 94.959|-8.581 -4.478 4.54|8.95|
15928|BD72 to ETRS89 (2)|BD72|ETRS89|0.2|225|-106.8686 52.2978 -103.7239|0.3366 -0.457 1.8422|-1.2747|
15929|BD72 to WGS 84 (3)|BD72|WGS 84|1|225|-106.8686 52.2978 -103.7239|0.3366 -0.457 1.8422|-1.2747|
15931|NAD83(NSRS2007) to WGS 84 (1)|NAD83(NSRS2007)|WGS 84|2|414|0 0 0|0 0 0|0|
15934|Amersfoort to WGS 84 (3)|Amersfoort|WGS 84|1|33|565.2369 50.0087 465.658|-0.406857330322 0.350732676543 -1.87034738361|4.0812|
15935|Beijing 1954 to WGS 84 (5)|Beijing 1954|WGS 84|10|581|18 -136.8 -73.7|0 0 0.814|-0.38|
15936|Beijing 1954 to WGS 84 (6)|Beijing 1954|WGS 84|1|575|11.911 -154.833 -80.079|0 0 0|0|
15937|Nahrwan 1967 to WGS 84 (7)|Nahrwan 1967|WGS 84|2|582|-245.8 -152.2 382.9|0 0 0|0|
15938|Nahrwan 1967 to WGS 84 (8)|Nahrwan 1967|WGS 84|5|582|-225.4 -158.7 380.8|0 0 0.814|-0.38|
15952|Nahrwan 1967 to WGS 84 (9)|Nahrwan 1967|WGS 84|5|583|-244.2 -149.8 379.3|0 0 0|0|
15953|Nahrwan 1967 to WGS 84 (10)|Nahrwan 1967|WGS 84|5|584|-250.7 -157.9 380.4|0 0 0|0|
15957|Qornoq 1927 to GR96 (1)|Qornoq 1927|GR96|1|254|163.511 127.533 -159.789|0 0 0.814|-0.6|
15964|ED50 to WGS 84 (42)|ED50|WGS 84|5|585|-86.277 -108.879 -120.181|0 0 0|0|
15965|S-JTSK to WGS 84 (3)|S-JTSK|WGS 84|6|586|589 76 480|0 0 0|0|
15966|HTRS96 to ETRS89 (1)|HTRS96|ETRS89|0|587|0 0 0|0 0 0|0|
15967|HTRS96 to WGS 84 (1)|HTRS96|WGS 84|1|587|0 0 0|0 0 0|0|
15969|Bermuda 1957 to BDA2000 (1)|Bermuda 1957|BDA2000|1|42|-292.295 248.758 429.447|4.9971 2.99 6.6906|1.0289|
15970|Bermuda 1957 to WGS 84 (2)|Bermuda 1957|WGS 84|1|42|-292.295 248.758 429.447|4.9971 2.99 6.6906|1.0289|
15971|BDA2000 to WGS 84 (1)|BDA2000|WGS 84|1|588|0 0 0|0 0 0|0|
15972|Pitcairn 2006 to WGS 84 (1)|Pitcairn 2006|WGS 84|1|538|0 0 0|0 0 0|0|
15974|RSRGD2000 to WGS 84 (1)|RSRGD2000|WGS 84|1|589|0 0 0|0 0 0|0|
15975|NZGD49 to WGS 84 (4)|NZGD49|WGS 84|5|66|54.4 -20.1 183.1|0 0 0|0|
15976|Slovenia 1996 to WGS 84 (1)|Slovenia 1996|WGS 84|1|590|0 0 0|0 0 0|0|
15977|Slovenia 1996 to ETRS89 (1)|Slovenia 1996|ETRS89|0|590|0 0 0|0 0 0|0|
15978|NAD27 to WGS 84 (88)|NAD27|WGS 84|1|194|2.478 149.752 197.726|0.526 0.498 -0.501|0.685|
15979|AGD66 to GDA94 (12)|AGD66|GDA94|3|591|-117.808 -51.536 137.784|0.303 0.446 0.234|-0.29|
15980|AGD66 to WGS 84 (18)|AGD66|WGS 84|3|591|-117.808 -51.536 137.784|0.303 0.446 0.234|-0.29|
15993|Pulkovo 1942(58) to ETRS89 (3)|Pulkovo 1942(58)|ETRS89|10|489|68.1564 32.7756 80.2249|-2.20333014 -2.19256447 2.54166911|-0.14155333|
15994|Pulkovo 1942(58) to ETRS89 (4)|Pulkovo 1942(58)|ETRS89|3|489|2.3287 -147.0425 -92.0802|-0.3092483 0.32482185 0.49729934|5.68906266|
15995|Pulkovo 1942(58) to WGS 84 (19)|Pulkovo 1942(58)|WGS 84|3|489|2.329 -147.042 -92.08|-0.309 0.325 0.497|5.69|
15996|Pulkovo 1942(83) to WGS 84 (3)|Pulkovo 1942(83)|WGS 84|4|133|28 -121 -77|0 0 0|0|
15997|Pulkovo 1942(58) to WGS 84 (4)|Pulkovo 1942(58)|WGS 84|6|241|23 -124 -82|0 0 0|0|
15998|Pulkovo 1942(83) to WGS 84 (5)|Pulkovo 1942(83)|WGS 84|5|586|26 -121 -78|0 0 0|0|
15999|Pulkovo 1942(58) to WGS 84 (8)|Pulkovo 1942(58)|WGS 84|6|445|24 -130 -92|0 0 0|0|
`;
