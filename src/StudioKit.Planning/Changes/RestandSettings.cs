using System.Globalization;
using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Changes;

/// <summary>How changes of what holds an upright sheet are written into a kit's text.</summary>
internal static class RestandSettings
{
    /// <summary>What a change writes and takes away.</summary>
    /// <param name="change">The change.</param>
    /// <param name="place">Place of the sheet in the kit's list, from 0 [1].</param>
    public static ValueList<KitSetting> Of(KitChange.Restand change, int place)
    {
        var path = $"uprights[{KitSettings.Text(place)}]";
        return
        [
            .. Set("cord-pegs", change.CordPegs is { } pegs ? KitSettings.Text(pegs) : null),
            .. Set("peg-hold", Text(change.PegHold)),
            .. Set("ballast", Text(change.Ballast)),
            .. Set("foot-length", Text(change.FootLength)),
            .. Set("width", Text(change.Width)),
            .. Set("height", Text(change.Height)),
            .. Set("sheet.thickness", Text(change.Thickness)),
            .. change is { Thickness: null, Width: null, Height: null } ? [] : new[] { KitSettings.Gone($"{path}.sheet.mass") },
            .. change.Straight ? [KitSettings.Gone($"{path}.lean")] : Array.Empty<KitSetting>(),
        ];

        IEnumerable<KitSetting> Set(string key, string? value) => value is null ? [] : [KitSettings.Of($"{path}.{key}", value)];
    }

    private static string? Text(Length? length) => length is { } given ? KitSettings.Text(given) : null;

    // In whole tenths, as the changes are.
    private static string? Text(Mass? mass) => mass is { } given ? string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling((given.Kilograms * 10) - 1e-6) / 10:0.#} kg") : null;
}
