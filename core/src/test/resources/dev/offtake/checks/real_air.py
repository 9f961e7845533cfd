"""Writes real_air.csv: dry air as a real gas, to hold the ideal gas against.

Oracle: iapws.humidAir.Air (equation of state of Lemmon et al. 2000, transport of Lemmon and
Jacobsen 2004). On Debian:

    apt-get install -y --no-install-recommends python3-iapws
    /usr/bin/python3 real_air.py > real_air.csv

The file in this folder came from version 1.5.3 (the module calls itself 1.5.2).
Enthalpy is relative to 300 K and 0.1 MPa.
"""

from iapws.humidAir import Air

reference = Air(T=300, P=0.1).h
print("T K,p Pa,rho kg/m3,Z,cp J/kgK,gamma,h J/kg,mu Pa s,k W/mK")
for kelvin in range(250, 1001, 50):
    for megapascal in (0.1, 0.5, 1, 2, 4):
        air = Air(T=kelvin, P=megapascal)
        values = (
            air.rho,
            air.Z,
            1e3 * air.cp,
            air.cp / air.cv,
            1e3 * (air.h - reference),
            air.mu,
            air.k,
        )
        row = [str(kelvin), str(round(1e6 * megapascal))] + ["%.7g" % v for v in values]
        print(",".join(row))
