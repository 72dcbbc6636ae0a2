#include "core/job/words.h"

namespace wg {

template <>
const std::vector<Word<Occasion>>& words<Occasion>() {
    static const std::vector<Word<Occasion>> list = {{Occasion::fitting, "fitting", "fitting"},
                                                     {Occasion::repair, "repair", "repair"},
                                                     {Occasion::service, "service", "service"}};
    return list;
}

template <>
const std::vector<Word<PlateState>>& words<PlateState>() {
    static const std::vector<Word<PlateState>> list = {{PlateState::not_told, "not_told", "not told"},
                                                       {PlateState::in_shade, "in_shade", "in shade"},
                                                       {PlateState::in_sun, "in_sun", "in the sun"},
                                                       {PlateState::frosted, "frosted", "frosted"}};
    return list;
}

template <>
const std::vector<Word<ReadingKind>>& words<ReadingKind>() {
    using K = ReadingKind;
    static const std::vector<Word<K>> list = {
        {K::pressure_hold_start, "pressure_hold_start", "pressure hold, start"},
        {K::pressure_hold_end, "pressure_hold_end", "pressure hold, end"},
        {K::vacuum_level, "vacuum_level", "evacuation, level reached"},
        {K::vacuum_after_rise, "vacuum_after_rise", "evacuation, level after closing the valve"},
        {K::charge_added, "charge_added", "charge added"},
        {K::suction_temperature, "suction_temperature", "suction temperature"},
        {K::discharge_temperature, "discharge_temperature", "discharge temperature"},
        {K::supply_current, "supply_current", "supply current"},
        {K::water_temperature, "water_temperature", "water temperature"},
        {K::outdoor_temperature, "outdoor_temperature", "outdoor temperature"},
        {K::insulation_resistance, "insulation_resistance", "insulation resistance"},
        {K::earth_resistance, "earth_resistance", "earth resistance"},
        {K::residual_current_trip, "residual_current_trip", "residual-current device, trip time"},
        {K::remark, "remark", "remark"},
        {K::suction_pressure, "suction_pressure", "suction pressure"},
        {K::discharge_pressure, "discharge_pressure", "discharge pressure"},
        {K::superheat, "superheat", "superheat"},
        {K::irradiance, "irradiance", "irradiance on the plate"},
        {K::wind_speed, "wind_speed", "wind at the plate"},
        {K::heating_start, "heating_start", "first heating, start"},
        {K::heating_end, "heating_end", "first heating, end"},
        {K::wall_contact, "wall_contact", "condenser to cylinder wall, resistance"},
        {K::protective_conductor, "protective_conductor", "protective conductor, continuity"},
        {K::loop_impedance, "loop_impedance", "loop impedance"},
        {K::supply_voltage, "supply_voltage", "supply voltage"},
        {K::cold_pressure, "cold_pressure", "cold water pressure"},
        {K::water_vented, "water_vented", "cylinder full, vented and tight"},
        {K::safety_valve_lift, "safety_valve_lift", "safety valve lifted by hand"},
        {K::tap_temperature, "tap_temperature", "hot water at the tap"},
        {K::set_point, "set_point", "set-point as set"},
        {K::hygiene_setting, "hygiene_setting", "hygiene run as set"},
        {K::refrigerant_recovered, "refrigerant_recovered", "refrigerant recovered"},
        {K::refrigerant_lost, "refrigerant_lost", "refrigerant lost"},
        {K::electricity_meter, "electricity_meter", "electricity meter"},
        {K::heat_meter, "heat_meter", "heat meter"},
        {K::water_meter, "water_meter", "hot water meter"},
        {K::serial_number, "serial_number", "serial number"},
        {K::signature, "signature", "signature"},
        {K::photograph, "photograph", "photograph"},
        {K::hold_point, "hold_point", "hold point"},
        {K::service_done, "service_done", "service done"},
    };
    return list;
}

}  // namespace wg
