using StudioKit.Field.Log;

namespace StudioKit.Cli.Records;

/// <summary>The fields of a measurement as options.</summary>
internal static class MeasurementFields
{
    public static RecordFields<FieldMeasurement> Create(CommandHost host) => new RecordFields<FieldMeasurement>(host)
        .Words("--unit", "SI unit, e.g. mm.", (measurement, value) => measurement with { Unit = value })
        .Words("--accuracy", "Accuracy in the same unit, e.g. 0.2.", (measurement, value) => measurement with { Accuracy = value })
        .Words("--method", "How it was measured, e.g. \"from a scaled picture\".", (measurement, value) => measurement with { Method = value });
}
