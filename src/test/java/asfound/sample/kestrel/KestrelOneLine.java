package asfound.sample.kestrel;

import java.util.Map;

/** The one-line diagram of 2019 as the drafting office exported it. */
final class KestrelOneLine {

    private KestrelOneLine() {}

    static Map<String, String> files() {
        return Map.of("equipment.csv", EQUIPMENT, "feeders.csv", FEEDERS);
    }

    private static final String EQUIPMENT = """
            name,kind,voltage,bus_a,main_a,fed_from,location,sheet,note
            SVC-1,utility,480Y/277,,,,Service vault,E-501,Utility service
            GEN-1,generator,480Y/277,,,,Generator yard,E-501,125 kW diesel
            INV-1,inverter,480,,,,Roof east,E-501,50 kW solar array
            MSB,switchboard,480Y/277,1200,1200,SVC-1 S1,Elec rm 106,E-501,
            ATS-1,transfer switch,480Y/277,200,,,Elec rm 106,E-501,
            T-1,transformer,480,,,MSB F2,Elec rm 106,E-501,225 kVA to 208Y/120
            T-E1,transformer,480,,,EDP 1-3-5,Elec rm 106,E-501,45 kVA to 208Y/120
            HDP,panel,480Y/277,400,,MSB F1,Elec rm 106,E-501,
            HP-1A,panel,480Y/277,225,,HDP 1-3-5,Rm 104 metal shop,E-501,
            HP-1B,panel,480Y/277,225,,HDP 2-4-6,Rm 103 wood shop,E-501,
            HL-1,panel,480Y/277,100,,MSB F5,Elec rm 106,E-501,
            RP-1,panel,480Y/277,100,,HDP 25-27-29,Roof penthouse 401,E-501,
            LDP,panel,208Y/120,800,800,T-1,Elec rm 106,E-501,
            LP-1A,panel,208Y/120,225,,LDP 1-3-5,Elec rm 106,E-501,
            LP-1B,panel,208Y/120,225,,LDP 2-4-6,Rm 108 dust room,E-501,
            LP-1C,panel,208Y/120,225,,LDP 20-22-24,Laser room 109,E-501,
            LP-2A,panel,208Y/120,225,200,LDP 7-9-11,Closet 209,E-501,
            LP-2B,panel,208Y/120,225,200,LDP 8-10-12,Closet 220,E-501,
            LP-3A,panel,208Y/120,225,200,LDP 13-15-17,Closet 309,E-501,
            KP-1,panel,208Y/120,225,225,LDP 14-16-18,Kitchen 111,E-501,
            EDP,panel,480Y/277,225,200,ATS-1,Elec rm 106,E-501,
            ELP-1,panel,208Y/120,225,150,T-E1,Elec rm 106,E-501,
            DC-1,motor,480,,,HDP 7-9-11,Rm 108 dust room,E-501,Dust collector
            FE-1,motor,480,,,HDP 8-10-12,Elevator machine room,E-501,Freight elevator
            AC-1,motor,480,,,HDP 14-16-18,Rm 108 dust room,E-501,Air compressor
            RTU-1,load,480,,,HDP 19-21-23,Roof east,E-501,Rooftop unit
            RTU-2,load,480,,,HDP 20-22-24,Roof west,E-501,Rooftop unit
            """;

    private static final String FEEDERS = """
            from,device,to,rating_a,poles,voltage,wire,length_ft,normally,sheet,note
            SVC-1,S1,MSB,1200,3,480Y/277,,40,closed,E-501,Service disconnect in the vault
            INV-1,D1,MSB,80,3,480,#4 Cu,210,closed,E-501,Solar array to MSB F6
            GEN-1,G1,ATS-1,200,3,480Y/277,3/0 Cu,95,closed,E-501,Emergency source
            MSB,F1,HDP,400,3,480Y/277,500 kcmil Cu,25,closed,E-501,
            MSB,F2,T-1,350,3,480,500 kcmil Cu,20,closed,E-501,
            MSB,F3,ATS-1,200,3,480Y/277,3/0 Cu,30,closed,E-501,Normal source
            MSB,F5,HL-1,100,3,480Y/277,#3 Cu,35,closed,E-501,
            MSB,F6,INV-1,80,3,480,#4 Cu,210,closed,E-501,Backfed from the solar array
            T-1,,LDP,,,208Y/120,,15,closed,E-501,To the main of LDP
            ATS-1,,EDP,,,480Y/277,3/0 Cu,12,closed,E-501,To the main of EDP
            HDP,1-3-5,HP-1A,225,3,480Y/277,4/0 Cu,140,closed,E-501,
            HDP,2-4-6,HP-1B,225,3,480Y/277,4/0 Cu,160,closed,E-501,
            HDP,7-9-11,DC-1,70,3,480,#4 Cu,110,closed,E-501,
            HDP,8-10-12,FE-1,70,3,480,#4 Cu,190,closed,E-501,
            HDP,14-16-18,AC-1,60,3,480,#6 Cu,110,closed,E-501,
            HDP,19-21-23,RTU-1,40,3,480,#8 Cu,230,closed,E-501,
            HDP,20-22-24,RTU-2,40,3,480,#8 Cu,245,closed,E-501,
            HDP,25-27-29,RP-1,60,3,480Y/277,#6 Cu,220,closed,E-501,
            LDP,1-3-5,LP-1A,225,3,208Y/120,4/0 Cu,20,closed,E-501,
            LDP,2-4-6,LP-1B,225,3,208Y/120,4/0 Cu,120,closed,E-501,
            LDP,7-9-11,LP-2A,200,3,208Y/120,3/0 Cu,130,closed,E-501,
            LDP,8-10-12,LP-2B,200,3,208Y/120,3/0 Cu,150,closed,E-501,
            LDP,13-15-17,LP-3A,200,3,208Y/120,3/0 Cu,170,closed,E-501,
            LDP,14-16-18,KP-1,225,3,208Y/120,4/0 Cu,90,closed,E-501,
            LDP,20-22-24,LP-1C,225,3,208Y/120,4/0 Cu,60,closed,E-501,
            EDP,1-3-5,T-E1,70,3,480,#4 Cu,15,closed,E-501,
            T-E1,,ELP-1,,,208Y/120,1/0 Cu,10,closed,E-501,To the main of ELP-1
            """;
}
