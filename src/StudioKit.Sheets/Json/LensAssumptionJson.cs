using StudioKit.Kits;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Sheets.Json;

/// <summary>An assumption of a lens as JSON.</summary>
public static class LensAssumptionJson
{
    /// <summary>Writes its kind, value and uncertainty, the unit in the keys.</summary>
    /// <param name="json">The document, inside an item of a list.</param>
    /// <param name="assumption">The assumption.</param>
    public static void Write(JsonReport json, LensAssumption assumption)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.Text("kind", MemberText.Of(assumption.Kind));
        switch (assumption.Kind)
        {
            case LensAssumptionKind.PupilRatio:
                json.Number("value", assumption.Value).Number("uncertainty", assumption.Uncertainty);
                break;
            case LensAssumptionKind.PupilWhileFocusing:
                json.Number("valueStops", assumption.Value).Number("uncertaintyStops", assumption.Uncertainty);
                break;
            default:
                json.Millimetres("value", Length.FromMeters(assumption.Value)).Millimetres("uncertainty", Length.FromMeters(assumption.Uncertainty));
                break;
        }
    }
}
