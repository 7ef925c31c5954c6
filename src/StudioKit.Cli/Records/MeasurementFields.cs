using StudioKit.Field.Log;

namespace StudioKit.Cli.Records;

/// <summary>The fields of a measurement as options.</summary>
internal static class MeasurementFields
{
    public static RecordFields<FieldMeasurement> Create(CommandHost host) => new RecordFields<FieldMeasurement>(host)
        .Words("--unit", "SI unit, e.g. mm.", (measurement, value) => measurement with { Unit = value })
        .Value("--accuracy", "Accuracy in the same unit, e.g. 0.2.", (measurement, value) => measurement with { Accuracy = value })
        .Words("--method", "How it was measured, e.g. \"from a scaled picture\".", (measurement, value) => measurement with { Method = value });

    /// <summary>With what a new measurement is given without an option.</summary>
    public static RecordFields<FieldMeasurement> ForEdit(CommandHost host) => Create(host)
        .Words("--type", "What was measured, e.g. \"body length\".", (measurement, value) => measurement with { Type = value }, canBeEmpty: false)
        .Value("--value", "Its value, e.g. 18.5.", (measurement, value) => measurement with { Value = value }, canBeEmpty: false);
}
