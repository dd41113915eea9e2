package asfound.sample.kestrel;

/** The directories of the floors, 208Y/120 V, as drawn in 2019. */
final class FloorPanels {

    private FloorPanels() {}

    static final String LP_1A = """
            LP-1A | ELEC RM 106 | LDP-1 | 208Y/120 | 225 | MLO | 22 | SURFACE | 42
            1  20/1  720  RECEPT RM 101 NORTH WALL
            2  20/1  900  RECEPT RM 102 TOOL LIBRARY EAST
            3  20/1  720  RECEPT RM 101 SOUTH WALL
            4  20/1  900  RECEPT RM 102 TOOL LIBRARY WEST
            5  20/1  1080 RECEPT CORRIDOR 100
            6  20/1  600  LTG RM 101 ENTRY HALL
            7  20/1  540  RECEPT RM 106 ELEC ROOM
            8  20/1  480  LTG RM 102 TOOL LIBRARY
            9  20/1  1200 DRINKING FOUNTAIN DF-1
            10 20/1  360  LTG CORRIDOR 100
            11 20/1  800  AUTOMATIC DOOR OPERATOR RM 101
            12 20/1  500  SIGN LTG NORTH FACADE
            13 20/1  900  RECEPT RM 112 STORE
            14 20/1  300  LTG RM 112 STORE
            15 20/1  1500 HAND DRYER RM 113 TOILET
            16 20/1  1500 HAND DRYER RM 114 TOILET
            17 20/1  240  LTG RM 113 AND RM 114
            18 20/1  180  RECEPT GFCI RM 113
            19 20/1  180  RECEPT GFCI RM 114
            20 20/1  1000 RECEPT RM 115 FRONT DESK
            21 20/1  720  RECEPT RM 116 FIRST AID
            22 20/1  1200 COPIER RM 115
            23 30/2  4500 WATER HEATER WH-2 RM 113
            24 20/1  600  VENDING MACHINE RM 101 NO 1
            26 20/1  600  VENDING MACHINE RM 101 NO 2
            27 20/1  360  RECEPT EXTERIOR NORTH WALL
            28 20/1  360  RECEPT EXTERIOR EAST WALL
            29 20/1  400  IRRIGATION CONTROLLER IC-1
            30 20/1  800  EXHAUST FAN EF-1 RM 113
            31 20/1  800  EXHAUST FAN EF-2 RM 114
            32 20/1  1000 DATA RACK DR-1 RM 106
            33 20/1  1000 DATA RACK DR-1 RM 106 SECOND CORD
            34 20/1  300  BAS CONTROL PANEL BCP-1
            35 20/1  500  LTG RM 106 ELEC ROOM
            36 20/1  -    SPARE
            37 20/1  -    SPARE
            38 20/1  -    SPARE
            39 20/1  -    SPARE
            40 -     -    SPACE
            41 -     -    SPACE
            42 -     -    SPACE
            """;

    static final String LP_1B = """
            LP-1B | RM 108 DUST ROOM | LDP-2 | 208Y/120 | 225 | MLO | 22 | SURFACE | 42
            1  20/1  900  RECEPT RM 103 WOOD SHOP BENCH 1
            2  20/1  900  RECEPT RM 104 METAL SHOP BENCH 1
            3  20/1  900  RECEPT RM 103 WOOD SHOP BENCH 2
            4  20/1  900  RECEPT RM 104 METAL SHOP BENCH 2
            5  20/1  900  RECEPT RM 103 WOOD SHOP BENCH 3
            6  20/1  900  RECEPT RM 104 METAL SHOP BENCH 3
            7  20/1  1100 CORD REEL CR-1 RM 103
            8  20/1  1100 CORD REEL CR-2 RM 104
            9  20/1  1100 CORD REEL CR-3 RM 103
            10 20/1  1100 CORD REEL CR-4 RM 104
            11 30/2  4160 TABLE SAW TS-1 RM 103
            12 30/2  3600 BENCH GRINDER BG-1 RM 104
            15 30/2  4160 TABLE SAW TS-2 RM 103
            16 30/2  3600 BENCH GRINDER BG-2 RM 104
            19 20/2  2880 BAND SAW BS-1 RM 103
            20 20/2  2400 PARTS WASHER PW-1 RM 104
            23 20/1  700  MITER SAW MS-1 RM 103
            24 20/1  700  BELT SANDER SD-1 RM 104
            25 20/1  700  SCROLL SAW SS-1 RM 103
            26 20/1  600  EYE WASH HEATER RM 104
            27 20/1  500  MISC
            28 20/1  800  DOCK DOOR OPERATOR RM 107
            29 20/1  800  DOCK LEVELER RM 107
            30 20/1  540  RECEPT RM 107 LOADING DOCK
            31 20/1  400  LTG RM 107 LOADING DOCK
            32 20/1  540  RECEPT RM 108 DUST ROOM
            33 20/1  400  LTG RM 108 DUST ROOM
            34 20/1  600  SPARK DETECTION PANEL SDP-1
            35 20/1  720  RECEPT RM 105 WELDING BAY WEST
            36 20/1  720  RECEPT RM 105 WELDING BAY EAST
            37 20/1  -    SPARE
            38 20/1  -    SPARE
            39 20/1  -    SPARE
            40 -     -    SPACE
            41 -     -    SPACE
            42 -     -    SPACE
            """;

    static final String LP_2A = """
            LP-2A | CLOSET 209 | LDP-7 | 208Y/120 | 225 | 200 | 10 | FLUSH | 42
            1  20/1  720  RECEPT RM 201 TEXTILE NORTH WALL
            2  20/1  720  RECEPT RM 207 CLASSROOM NORTH WALL
            3  20/1  720  RECEPT RM 201 TEXTILE SOUTH WALL
            4  20/1  720  RECEPT RM 207 CLASSROOM SOUTH WALL
            5  20/1  1100 RECEPT RM 201 IRONING STATION
            6  20/1  900  PROJECTOR RM 207
            7  20/1  900  SEWING TABLES 1-4 RM 201
            8  20/1  500  LTG RM 207 CLASSROOM
            9  20/1  900  SEWING TABLES 5-8 RM 201
            10 20/1  720  RECEPT RM 212 MEETING
            11 20/1  500  LTG RM 201 TEXTILE
            12 20/1  720  RECEPT RM 214
            13 20/1  720  RECEPT RM 202 PRINT STUDIO EAST WALL
            14 20/1  400  LTG RM 212 MEETING
            15 20/1  720  RECEPT RM 202 PRINT STUDIO WEST WALL
            16 20/1  300  LTG RM 214 OFFICE
            17 30/2  4800 SCREEN PRINT DRYER SPD-1 RM 202
            18 20/1  900  RECEPT RM 208 CLASSROOM NORTH WALL
            20 20/1  1000 PROJECTOR RM 208
            21 20/1  600  EXPOSURE UNIT EX-1 RM 202
            22 20/1  720  RECEPT RM 208 CLASSROOM SOUTH WALL
            23 20/1  500  LTG RM 202 PRINT STUDIO
            24 20/1  500  LTG RM 208 CLASSROOM
            25 20/1  540  RECEPT RM 206 DARKROOM
            26 20/1  540  RECEPT CORRIDOR 210 EAST
            27 20/1  300  LTG RM 206 DARKROOM
            28 20/1  540  RECEPT CORRIDOR 210 WEST
            29 20/1  600  EXHAUST FAN EF-5 RM 206
            30 20/1  600  LTG CORRIDOR 210
            31 20/1  1500 HAND DRYER RM 211
            32 20/1  360  RECEPT GFCI RM 211
            33 20/1  400  LTG RM 211 TOILETS
            34 20/1  1200 DRINKING FOUNTAIN DF-2
            35 20/1  180  RECEPT CLOSET 209
            36 20/1  900  DATA RACK DR-2 CLOSET 209
            37 20/1  -    SPARE
            38 20/1  -    SPARE
            39 -     -    SPACE
            40 -     -    SPACE
            41 -     -    SPACE
            42 -     -    SPACE
            """;

    static final String LP_2B = """
            LP-2B | CLOSET 220 | LDP-8 | 208Y/120 | 225 | 200 | 10 | FLUSH | 42
            1  20/1  900  RECEPT RM 203 ELECTRONICS BENCH 1
            2  20/1  720  RECEPT RM 204 CERAMICS NORTH WALL
            3  20/1  900  RECEPT RM 203 ELECTRONICS BENCH 2
            4  20/1  720  RECEPT RM 204 CERAMICS SOUTH WALL
            5  20/1  400  LTG RM 221
            6  20/1  1200 POTTERY WHEELS RM 204
            7  20/1  400  LTG RM 223
            8  20/1  500  LTG RM 204 CERAMICS
            9  20/1  900  RECEPT RM 203 ELECTRONICS BENCH 3
            10 60/3  15000 KILN KN-1 RM 205
            11 20/1  900  RECEPT RM 203 ELECTRONICS BENCH 4
            13 20/1  500  LTG RM 203 ELECTRONICS
            15 20/1  1500 REFLOW OVEN RO-1 RM 203
            16 60/3  15000 KILN KN-2 RM 205
            17 20/1  1200 FUME EXTRACTOR FX-1 RM 203
            19 20/1  720  RECEPT RM 221
            21 20/1  720  RECEPT RM 223
            22 20/1  600  EXHAUST FAN EF-6 RM 205
            23 20/1  720  RECEPT RM 225
            24 20/1  300  LTG RM 205 KILN ROOM
            25 20/1  400  LTG RM 225
            26 20/1  540  RECEPT RM 205 KILN ROOM
            27 20/1  720  RECEPT RM 227
            28 20/1  900  CLAY MIXER CM-1 RM 204
            29 20/1  400  LTG RM 227
            30 20/1  540  RECEPT STAIR 2 LANDING
            31 20/1  900  3D PRINTERS 1-4 RM 222
            32 20/1  900  3D PRINTERS 5-8 RM 222
            33 20/1  400  LTG RM 222 PRINT FARM
            34 20/1  720  RECEPT RM 222 PRINT FARM
            35 20/1  180  RECEPT CLOSET 220
            36 20/1  -    SPARE
            37 20/1  -    SPARE
            38 20/1  -    SPARE
            39 -     -    SPACE
            40 -     -    SPACE
            41 -     -    SPACE
            42 -     -    SPACE
            """;

    static final String LP_3A = """
            LP-3A | CLOSET 309 | LDP-13 | 208Y/120 | 225 | 200 | 10 | FLUSH | 42
            1  20/1  720  RECEPT RM 301 HALL NORTH WALL
            2  20/1  400  LTG RM 303 STUDIO
            3  20/1  720  RECEPT RM 301 HALL SOUTH WALL
            4  20/1  400  LTG RM 305 STUDIO
            5  20/1  1200 STAGE LTG RM 301 NORTH BATTEN
            6  20/1  400  LTG RM 307 STUDIO
            7  20/1  1200 STAGE LTG RM 301 SOUTH BATTEN
            8  20/1  720  RECEPT RM 303 STUDIO
            9  20/1  1000 AV RACK RM 314
            10 20/1  720  RECEPT RM 305 STUDIO
            11 20/1  500  LTG RM 301 HALL
            12 20/1  720  RECEPT RM 307 STUDIO
            13 20/1  540  RECEPT RM 314 AV BOOTH
            14 20/1  1500 HAND DRYER RM 311
            15 20/1  720  RECEPT RM 302
            16 20/1  360  RECEPT GFCI RM 311
            17 20/1  720  RECEPT RM 304
            18 20/1  400  LTG RM 311 TOILETS
            19 20/1  720  RECEPT RM 306
            20 20/1  1200 DRINKING FOUNTAIN DF-3
            21 20/1  720  RECEPT RM 308
            22 20/1  800  PROJECTION SCREEN RM 301
            23 20/1  720  RECEPT RM 310
            24 20/1  600  LTG CORRIDOR 300
            25 20/1  -    SPARE
            26 20/1  540  RECEPT CORRIDOR 300
            27 20/1  360  RECEPT RM 313 ROOF DECK
            28 20/1  400  LTG RM 313 ROOF DECK
            29 20/1  360  RECEPT ROOF AT RTU-1
            30 20/1  600
            31 20/1  360  RECEPT ROOF AT RTU-2
            32 20/1  400  HEAT TRACE ROOF DRAINS
            33 20/1  180  RECEPT CLOSET 309
            34 20/1  900  DATA RACK DR-3 CLOSET 309
            35 30/2  3600 SPLIT SYSTEM AC-3 CLOSET 309
            36 20/1  -    SPARE
            38 40/3  -    SPARE
            39 -     -    SPACE
            41 -     -    SPACE
            """;

    static final String KP_1 = """
            KP-1 | KITCHEN 111 | LDP-14 | 208Y/120 | 225 | 225 | 22 | FLUSH | 30
            1  50/3  13800 RANGE RG-1 KITCHEN 111
            2  40/3  10500 COMBI OVEN CO-1 KITCHEN 111
            7  30/2  5000 DISHWASHER DW-1 KITCHEN 111
            8  30/2  4200 FRYER FR-1 KITCHEN 111
            11 20/1  1400 WALK-IN COOLER EVAPORATOR
            12 20/1  1500 COFFEE BREWER CB-1 CAFE 110
            13 30/2  3800 WALK-IN COOLER CONDENSER
            14 20/1  1500 COFFEE BREWER CB-2 CAFE 110
            16 20/1  1200 ESPRESSO GRINDERS CAFE 110
            17 20/1  900  EXHAUST HOOD KEF-1 CONTROLS
            18 20/1  720  RECEPT CAFE 110 NORTH WALL
            19 20/1  1000 REACH-IN FREEZER KITCHEN 111
            20 20/1  720  RECEPT CAFE 110 SOUTH WALL
            21 20/1  900  RECEPT KITCHEN 111 PREP TABLE
            22 20/1  500  LTG CAFE 110
            23 20/1  900  MICROWAVE KITCHEN 111
            24 20/1  500  LTG KITCHEN 111
            25 20/1  600  POINT OF SALE CAFE 110
            26 20/1  -    SPARE
            27 20/1  -    SPARE
            28 20/1  -    SPARE
            29 -     -    SPACE
            30 -     -    SPACE
            """;

    static final String ELP_1 = """
            ELP-1 | ELEC RM 106 | T-E1 | 208Y/120 | 225 | 150 | 10 | SURFACE | 24
            1  20/1  500  EXIT SIGNS GROUND FLOOR
            2  20/1  600  FIRE ALARM PANEL FACP
            3  20/1  500  EXIT SIGNS SECOND FLOOR
            4  20/1  400  SPRINKLER AIR COMPRESSOR
            5  20/1  500  EXIT SIGNS THIRD FLOOR
            6  20/1  600  AREA OF REFUGE PHONES
            7  20/1  800  GENERATOR BATTERY CHARGER
            8  20/1  1500 GENERATOR BLOCK HEATER
            9  20/1  900  ELEVATOR FE-1 CAB LTG
            10 20/1  700  ELEVATOR FE-1 PIT LTG AND RECEPT
            11 20/1  900  SUMP PUMP SP-1 ELEVATOR PIT
            12 20/1  600  SECURITY PANEL SEC-1
            13 20/1  1000 EMERGENCY RADIO REPEATER
            14 20/1  500  SMOKE DAMPER CONTROLS
            15 30/3  6000 SERVER ROOM COOLING CU-1
            16 20/1  900  DATA RACK DR-1 EMERGENCY CORD
            18 20/1  -    SPARE
            20 20/1  -    SPARE
            21 20/1  -    SPARE
            22 -     -    SPACE
            23 -     -    SPACE
            24 -     -    SPACE
            """;
}
