using StudioKit.Kits.Quantities;
using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Kits.Description;

/// <summary>Keys that take quantities: read as numbers, made into the quantity here, where nothing is generic over its type.</summary>
internal static class QuantityKeys
{
    public static Section<T> Length<T>(this OpenKey<T> key, Func<T, Length, T> set, Func<T, Length>? get = null)
        where T : class => key.Value(Kinds.Length, (owner, number) => set(owner, OwnUnits.Length(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Mass<T>(this OpenKey<T> key, Func<T, Mass, T> set, Func<T, Mass>? get = null)
        where T : class => key.Value(Kinds.Mass, (owner, number) => set(owner, OwnUnits.Mass(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Angle<T>(this OpenKey<T> key, Func<T, Angle, T> set, Func<T, Angle>? get = null)
        where T : class => key.Value(Kinds.Angle, (owner, number) => set(owner, OwnUnits.Angle(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Duration<T>(this OpenKey<T> key, Func<T, Duration, T> set, Func<T, Duration>? get = null)
        where T : class => key.Value(Kinds.Duration, (owner, number) => set(owner, OwnUnits.Duration(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Speed<T>(this OpenKey<T> key, Func<T, Speed, T> set, Func<T, Speed>? get = null)
        where T : class => key.Value(Kinds.Speed, (owner, number) => set(owner, OwnUnits.Speed(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Wind<T>(this OpenKey<T> key, Func<T, Speed, T> set, Func<T, Speed>? get = null)
        where T : class => key.Value(Kinds.Wind, (owner, number) => set(owner, OwnUnits.Speed(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Temperature<T>(this OpenKey<T> key, Func<T, Temperature, T> set, Func<T, Temperature>? get = null)
        where T : class => key.Value(Kinds.Temperature, (owner, number) => set(owner, OwnUnits.Temperature(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> TemperatureDifference<T>(this OpenKey<T> key, Func<T, TemperatureDelta, T> set, Func<T, TemperatureDelta>? get = null)
        where T : class => key.Value(Kinds.TemperatureDifference, (owner, number) => set(owner, OwnUnits.TemperatureDifference(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Force<T>(this OpenKey<T> key, Func<T, Force, T> set, Func<T, Force>? get = null)
        where T : class => key.Value(Kinds.Force, (owner, number) => set(owner, OwnUnits.Force(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> JointStiffness<T>(this OpenKey<T> key, Func<T, RotationalStiffness, T> set, Func<T, RotationalStiffness>? get = null)
        where T : class => key.Value(Kinds.JointStiffness, (owner, number) => set(owner, OwnUnits.JointStiffness(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Energy<T>(this OpenKey<T> key, Func<T, Energy, T> set, Func<T, Energy>? get = null)
        where T : class => key.Value(Kinds.Energy, (owner, number) => set(owner, OwnUnits.Energy(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Density<T>(this OpenKey<T> key, Func<T, Density, T> set, Func<T, Density>? get = null)
        where T : class => key.Value(Kinds.Density, (owner, number) => set(owner, OwnUnits.Density(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> AreaDensity<T>(this OpenKey<T> key, Func<T, AreaDensity, T> set, Func<T, AreaDensity>? get = null)
        where T : class => key.Value(Kinds.AreaDensity, (owner, number) => set(owner, OwnUnits.AreaDensity(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> LinearDensity<T>(this OpenKey<T> key, Func<T, LinearDensity, T> set, Func<T, LinearDensity>? get = null)
        where T : class => key.Value(Kinds.LinearDensity, (owner, number) => set(owner, OwnUnits.LinearDensity(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Pressure<T>(this OpenKey<T> key, Func<T, Pressure, T> set, Func<T, Pressure>? get = null)
        where T : class => key.Value(Kinds.Pressure, (owner, number) => set(owner, OwnUnits.Pressure(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> OpticalPower<T>(this OpenKey<T> key, Func<T, ReciprocalLength, T> set, Func<T, ReciprocalLength>? get = null)
        where T : class => key.Value(Kinds.OpticalPower, (owner, number) => set(owner, OwnUnits.OpticalPower(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Voltage<T>(this OpenKey<T> key, Func<T, ElectricPotential, T> set, Func<T, ElectricPotential>? get = null)
        where T : class => key.Value(Kinds.Voltage, (owner, number) => set(owner, OwnUnits.Voltage(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Charge<T>(this OpenKey<T> key, Func<T, ElectricCharge, T> set, Func<T, ElectricCharge>? get = null)
        where T : class => key.Value(Kinds.Charge, (owner, number) => set(owner, OwnUnits.Charge(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> Expansion<T>(this OpenKey<T> key, Func<T, CoefficientOfThermalExpansion, T> set, Func<T, CoefficientOfThermalExpansion>? get = null)
        where T : class => key.Value(Kinds.Expansion, (owner, number) => set(owner, OwnUnits.Expansion(number)), get is null ? null : owner => OwnUnits.Of(get(owner)));

    public static Section<T> TypeSize<T>(this OpenKey<T> key, Func<T, Length, T> set, Func<T, Length> get)
        where T : class => key.Value(Kinds.TypeSize, (owner, points) => set(owner, UnitsNet.Length.FromDtpPoints(points)), owner => get(owner).DtpPoints);

    public static Section<T> Lengths<T>(this OpenKey<T> key, Func<T, ValueList<Length>, T> set)
        where T : class => key.Values(Kinds.Length, (owner, numbers) => set(owner, ValueList.From(numbers, OwnUnits.Length)), null);

    public static Section<T> Angles<T>(this OpenKey<T> key, Func<T, ValueList<Angle>, T> set, Func<T, ValueList<Angle>> get)
        where T : class => key.Values(Kinds.Angle, (owner, numbers) => set(owner, ValueList.From(numbers, OwnUnits.Angle)), owner => Degrees(get(owner)));

    // A loop, as an enumerator of another assembly's values would have to be compiled at every start.
    private static double[] Degrees(ValueList<Angle> angles)
    {
        var degrees = new double[angles.Count];
        for (var i = 0; i < degrees.Length; i++)
        {
            degrees[i] = OwnUnits.Of(angles[i]);
        }

        return degrees;
    }
}
