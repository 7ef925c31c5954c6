using UnitsNet;

namespace StudioKit.Kits.Quantities;

/// <summary>Quantities from and to numbers in the unit table's own units, so that the numbers people write survive unchanged.</summary>
internal static class OwnUnits
{
    public static Length Length(double number) => UnitsNet.Length.FromMillimeters(number);

    public static double Of(Length value) => value.Millimeters;

    public static Mass Mass(double number) => UnitsNet.Mass.FromGrams(number);

    public static double Of(Mass value) => value.Grams;

    public static Angle Angle(double number) => UnitsNet.Angle.FromDegrees(number);

    public static double Of(Angle value) => value.Degrees;

    public static Duration Duration(double number) => UnitsNet.Duration.FromSeconds(number);

    public static double Of(Duration value) => value.Seconds;

    public static Speed Speed(double number) => UnitsNet.Speed.FromMetersPerSecond(number);

    public static double Of(Speed value) => value.MetersPerSecond;

    public static Temperature Temperature(double number) => UnitsNet.Temperature.FromDegreesCelsius(number);

    public static double Of(Temperature value) => value.DegreesCelsius;

    public static TemperatureDelta TemperatureDifference(double number) => TemperatureDelta.FromKelvins(number);

    public static double Of(TemperatureDelta value) => value.Kelvins;

    public static Force Force(double number) => UnitsNet.Force.FromNewtons(number);

    public static double Of(Force value) => value.Newtons;

    public static RotationalStiffness JointStiffness(double number) => RotationalStiffness.FromNewtonMetersPerRadian(number);

    public static double Of(RotationalStiffness value) => value.NewtonMetersPerRadian;

    public static Energy Energy(double number) => UnitsNet.Energy.FromJoules(number);

    public static double Of(Energy value) => value.Joules;

    public static Density Density(double number) => UnitsNet.Density.FromKilogramsPerCubicMeter(number);

    public static double Of(Density value) => value.KilogramsPerCubicMeter;

    public static AreaDensity AreaDensity(double number) => UnitsNet.AreaDensity.FromKilogramsPerSquareMeter(number);

    public static double Of(AreaDensity value) => value.KilogramsPerSquareMeter;

    public static LinearDensity LinearDensity(double number) => UnitsNet.LinearDensity.FromKilogramsPerMeter(number);

    public static double Of(LinearDensity value) => value.KilogramsPerMeter;

    public static Pressure Pressure(double number) => UnitsNet.Pressure.FromPascals(number);

    public static double Of(Pressure value) => value.Pascals;

    public static ReciprocalLength OpticalPower(double number) => ReciprocalLength.FromInverseMeters(number);

    public static double Of(ReciprocalLength value) => value.InverseMeters;

    public static ElectricPotential Voltage(double number) => ElectricPotential.FromVolts(number);

    public static double Of(ElectricPotential value) => value.Volts;

    public static ElectricCharge Charge(double number) => ElectricCharge.FromMilliampereHours(number);

    public static double Of(ElectricCharge value) => value.MilliampereHours;

    public static CoefficientOfThermalExpansion Expansion(double number) => CoefficientOfThermalExpansion.FromPerKelvin(number);

    public static double Of(CoefficientOfThermalExpansion value) => value.PerKelvin;
}
