using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Expected;

namespace StudioKit.Field.Calibration;

/// <summary>Puts beside each reading what the plan expects there.</summary>
/// <param name="plan">Plan of the kit as written, without corrections.</param>
public sealed class PlannedReadings(Plan plan)
{
    private readonly ExpectedLight _expected = new(plan);

    /// <summary>The readings with what is planned, or every name that the kit does not have.</summary>
    /// <param name="readings">Readings as noted.</param>
    public FieldResult<IReadOnlyList<CalibrationReading>> Of(IReadOnlyList<FieldReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var results = readings.Select(Of).ToList();
        var faults = results.SelectMany(result => result.Diagnostics).ToList();
        return faults.Count > 0
            ? FieldResult<IReadOnlyList<CalibrationReading>>.Refused(faults)
            : FieldResult<IReadOnlyList<CalibrationReading>>.Sound([.. results.Select(result => result.Value!)], []);
    }

    private FieldResult<CalibrationReading> Of(FieldReading reading)
    {
        var found = Find(reading);
        if (!found.IsSound)
        {
            return FieldResult<CalibrationReading>.Refused(found.Diagnostics);
        }

        var planned = reading.Kind switch
        {
            CalibrationReadingKind.FlashMeter => Math.Log2(_expected.InBeam(found.Value.Light, reading.Shot)),
            CalibrationReadingKind.PanelMeter => _expected.OnPanel(found.Value.SetUp, reading.Shot) is { } light ? Math.Log2(light) : double.NaN,
            CalibrationReadingKind.WhiteMargin => Margin(found.Value, reading)?.Value ?? double.NaN,
            _ => _expected.OfCard(found.Value.SetUp, found.Value.Framing, found.Value.Light, reading.Reflectance, reading.Shot).Value,
        };
        return double.IsNaN(planned)
            ? new FieldDiagnostic("FLD209", reading.Place, "The plan has no light map for this: its geometry is impossible, or the frame misses the panel.") { Help = FieldHelp.Plan }
            : new CalibrationReading(reading.Name, reading.Kind, found.Value.Light.Flash, planned, reading.Measured, reading.Uncertainty) { Modifier = found.Value.Light.Modifier ?? "" };
    }

    private Stops? Margin(PlanPlace place, FieldReading reading) =>
        _expected.OnSensor(place.SetUp, place.Framing, place.Pitch, isUpright: false, reading.Shot)?.Darkest;

    private FieldResult<PlanPlace> Find(FieldReading reading)
    {
        var search = new PlanSearch(plan, reading.Place);
        return reading.Kind switch
        {
            CalibrationReadingKind.FlashMeter => search.Flash(reading.SetUp, reading.Flash),
            CalibrationReadingKind.PanelMeter => search.Panel(reading.SetUp),
            CalibrationReadingKind.WhiteMargin => search.Frame(reading.SetUp, reading.Framing, reading.Pitch),
            _ => search.Card(reading.SetUp, reading.Framing, reading.Flash),
        };
    }
}
