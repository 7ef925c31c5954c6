using System.Globalization;
using StudioKit.Field.Plates;

namespace StudioKit.Cli.Tables;

/// <summary>Says in words what plates do not show.</summary>
internal static class PlateNotes
{
    /// <summary>One sentence a reason; none where everything is shown.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<PlateOmission> leftOut, int placesKept)
    {
        var notes = leftOut.GroupBy(omission => omission.Reason).OrderBy(group => group.Key)
            .Select(group => string.Create(CultureInfo.InvariantCulture, $"Left out, {Reason(group.Key)}: {string.Join(", ", group.Select(omission => omission.FileName))}."))
            .ToList();
        if (placesKept > 0)
        {
            notes.Add(placesKept == 1 ? "The place of 1 sensitive subject is not named." : string.Create(CultureInfo.InvariantCulture, $"The places of {placesKept} sensitive subjects are not named."));
        }

        return notes;
    }

    private static string Reason(PlateOmissionReason reason) => reason switch
    {
        PlateOmissionReason.NoFile => "no such file in the folder",
        PlateOmissionReason.Unreadable => "unreadable",
        _ => "no scale in the log or beside the picture",
    };
}
