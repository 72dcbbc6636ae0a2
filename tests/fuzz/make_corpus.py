#!/usr/bin/env python3
"""Writes the small corpus of the fuzz targets: weather as patches on made files ('@') and heads of files, exchange files
as '@' and their entries, jobs, climates, gauge logs, price lists and tables of prices, rule sets. All invented.

Usage: make_corpus.py [FOLDER]; default: corpus beside this script. See weather_claims.h for what a patch is.
"""
import hashlib
import json
import pathlib
import sys

target = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else pathlib.Path(__file__).parent / "corpus"


def put(reader: str, name: str, text: str) -> None:
    folder = target / reader
    folder.mkdir(parents=True, exist_ok=True)
    (folder / name).write_bytes(text.encode("utf-8"))


def patch(header: int, *lines: str, **replaced: str) -> str:
    head = [replaced.get(f"line{i + 1}", "=") for i in range(header)]
    return "@" + "\n".join([*head, *lines]) + "\n"


# EPW: 8 lines, then rows.
epw_row = "2001,6,21,13,60,?9,24.00,20.00,70,100000,9999,9999,300.00,801.250,700.000,112.000,999999,999999,999999,9999,180,3.0,6,4,20.0,420,9,999999999,0,0.05,0,88,0,0,0"
put("epw", "head", "LOCATION,Made Up,-,XXX,made,000000,47.400,9.200,1.0,520.0\nDATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\n2001,1,1,1,60,?9,0.0,-4.0,70,100000\n")
put("epw", "whole", patch(8))
put("epw", "place", patch(8, line1="LOCATION,South,-,XXX,made,0,-35.0,149.1,10.5,600"))
put("epw", "row", patch(8, "4116 " + epw_row))
put("epw", "gap", patch(8, *[f"{4116 + i} " + epw_row.replace("21,13", f"21,{13 + i}").replace("801.250", "9999").replace("700.000", "9999") for i in range(2)]))
put("epw", "doubled", patch(8, "4116 " + epw_row.replace("21,13", "21,12")))
put("epw", "missing", patch(8, "2090 "))
put("epw", "marks", patch(8, "100 2001,1,5,5,60,?9,99.9,99.9,999,999999,9999,9999,9999,9999,9999,9999,0,0,0,9999,180,999,99,99"))

# TMY3: 2 lines; the stamp goes to the first comma, the time follows.
put("tmy3", "head", '000000,"MADE, UP",XX,1.0,47.400,9.200,520\nDate (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),Dry-bulb (C),RHum (%),Wspd (m/s)\n01/01/2001,01:00,0,5,70,3\n')
put("tmy3", "whole", patch(2))
put("tmy3", "columns", patch(2, line2="Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),x,y,OpqCld (tenths),Dry-bulb (C),z,RHum (%),p,Wspd (m/s)"))
put("tmy3", "row", patch(2, "4116 *13:00,800.0,700,110,4,24,20,70,1000.00,3.0", "23 01/02/2001,00:00,0,0,0,4,-1,-5,70,1000,3"))
put("tmy3", "marks", patch(2, "5 *06:00,-9900,-9900,-9900,-9900,-9900,-9900,-9900,-9900,-9900"))
put("tmy3", "bad", patch(2, "5 02/30/2001,06:00,1e999,0x1,nan,,,,,,"))

# PVGIS: 7 lines.
put("pvgis", "head", "Latitude (decimal degrees): 47.400\r\nLongitude (decimal degrees): 9.200\r\nElevation (m): 520.0\r\ntime(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP\r\n20010101:0000,1,70,0,0,0,300,3,180,100000\r\n")
put("pvgis", "whole", patch(7))
put("pvgis", "east", patch(7, line2="Longitude (decimal degrees): 133.9"))
put("pvgis", "offset", patch(7, line4="Irradiance Time Offset (h): -0.1761"))
put("pvgis", "row", patch(7, "4116 20010621:1200,24.00,70.00,800.0,700,110.0,300.0,3.0,180,100000", "9 *1,2"))
put("pvgis", "minute", patch(7, "0 20010101:0010,1,70,0,0,0,300,3,180,100000"))

# Plain: 7 lines (source, place, stamp, names).
put("plain", "head", "# latitude_deg: 47.4\n# longitude_deg: 9.2\n# altitude_m: 520\n# utc_offset_h: 1\n# stamp: end\ntime;global_w_m2;air_c\n2027-01-01 01:00;0;1,5\n")
put("plain", "whole", patch(7))
put("plain", "zone", patch(7, line5="# utc_offset_h: 5.75", line3="# longitude_deg: 85.3"))
put("plain", "keys", patch(7, line1="# sun_minute: 10\n# invented: yes\n# from_format: EPW\n# remark: one"))
put("plain", "columns", patch(7, line7="time,global_w_m2,x,cloud_cover_percent,air_c,relative_humidity_percent,wind_m_s,pressure_pa"))
put("plain", "row", patch(7, "4116 *800.5,700,110,24.5,20,3,100000", "3000 ", "3001 ", "3002 *,,,,,,"))
put("plain", "stamps", patch(7, "0 2027-01-01T00:00:00,0,0,0,1,0,3,100000", "23 2027-01-01 24:00,0,0,0,1,0,3,100000", "9 2028-02-29 09:00,,,,,,"))
put("plain", "clock", patch(7, "2090 ", "7200 2027-10-28 01:00,0,0,0,1,0,3,100000"))

for text, name in ((" ", "blank"), ("\ufeff", "mark"), ("\"", "quote"), (",,,\n;;;\n", "separators"), ("\0\0\n", "zeros")):
    put("any", name, text)
# Jobs: the demonstration without spaces, and little ones; the same within an exchange file; versions.
project = pathlib.Path(__file__).parents[2]
demo = json.loads((project / "resources/demo/job.json").read_text(encoding="utf-8"))
whole = json.dumps(demo, separators=(",", ":"), ensure_ascii=False)
put("job", "demo", whole)
put("exchange", "demo", "@job.json\n" + whole)
little = {"schema": 1, "id": "00000000-0000-4000-8000-000000000001", "title": "Made", "client": {"name": "Made"}}
put("job", "little", json.dumps(little))
plan = '{"heat": 1}'
quote = {"id": "00000000-0000-4000-8000-000000000003", "job_revision": 1, "number": "Q1", "issued_at": "2027-06-20T08:00:00Z",
         "plan": plan, "plan_sha256": hashlib.sha256(plan.encode()).hexdigest(), "gross_minor": 100, "currency": "EUR", "paper_sha256": "", "answers": []}
text = json.dumps(little)
put("exchange", "whole", f"@job.json\n{text}\n@base.json\n{text}\n@versions.json\n{{}}\n@quotes/{quote['id']}.json\n{json.dumps(quote)}")
put("exchange", "zip", "PK\x03\x04")
seat = ["00000000-0000-4000-8000-00000000005e", "Office", 2]
put("versions", "little", json.dumps({
    "format": "warmgable-versions", "schema": 1, "job": little["id"], "seats": [seat], "edits": [[0, 1, 1804583700], [0, 2, 1804583800]],
    "fields": {"": {"title": [[0, "Made"]], "notes": [[1, "Ring first"]]}}}, separators=(",", ":")))
put("climates", "table", "\n".join((project / "resources/climates/places.csv").read_text(encoding="utf-8").splitlines()[:12]) + "\n")
put("gauge_log", "log", "time,pressure [mbar]\n10:00:00,12.5\n10:00:10,8.1\n10:00:20,5.0\n")
prices = json.loads((project / "resources/prices/invented.json").read_text(encoding="utf-8"))
prices["items"], prices["tasks"] = prices["items"][:3], prices["tasks"][:2]
put("prices", "list", json.dumps(prices, separators=(",", ":"), ensure_ascii=False))
put("prices", "ours", "id,text,unit,price,cost,supplier_price,discount_group,pack,waste_percent,supplier,supplier_number,tax_class\n"
    "t,T,m,7.40,,7.80,a,5,,P,1,s\nn,\"'=1+2\",pc,1234.50,1.00,,,,2.5,,'-x,s\n")
put("prices", "many", "id,text,unit,price,tax_class,from_quantity\nt,T,m,7.40,s,\nt,,,6.90,,50\nn,N,pc,2,s,1\nn,,,1.50,,10\nu,,,1,,25\n")
put("prices", "german", "Pellow;;;\nArtikelnummer;Bezeichnung;ME;VK netto (EUR)\n1;Rohr;lfm;1.234,50\n2;Bogen;Stk;3,40 \u20ac\n")
put("prices", "spanish", "Referencia\tPrecio de tarifa\tGrupo de descuento\tMerma %\tProveedor\n1\t8'100.25\ta\t4 %\tP\n")
put("prices", "wrong", "id,price,unit\nt,1.234,m\nt,x,m\n,1,m\nu,1,roll\nz,1,2,3\n")
rules = json.loads((project / "resources/rules/assumed.json").read_text(encoding="utf-8"))
put("rules", "assumed", json.dumps(rules, separators=(",", ":"), ensure_ascii=False))
rules.update(assumed=False, source="annex", market=rules["market"][:1], service=rules["service"][:2])
rules["tax"]["source"] = "act"
rules["actions"].update(source="annex", net_pressure="coefficients", net_pressure_source="guide", sources={"k_mod": "table"})
put("rules", "with_sources", json.dumps(rules, separators=(",", ":"), ensure_ascii=False))
print(sum(len(p.read_bytes()) for p in target.rglob("*") if p.is_file()), "bytes")
