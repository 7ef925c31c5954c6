namespace StudioKit.Kits.Triggers;

/// <summary>Groups of flashes that a radio tells apart, named by capital letters.</summary>
public static class TriggerGroup
{
    /// <summary>Most groups that a radio may have [1].</summary>
    public const int Most = 16;

    /// <summary>The group of a flash where the kit names none.</summary>
    public const string First = "A";

    /// <summary>The letter of a group.</summary>
    /// <param name="place">Its place, from 0 [1]; under <see cref="Most"/>.</param>
    public static string Letter(int place) => ((char)('A' + place)).ToString();

    /// <summary>The place of a letter, from 0; none where it names no group.</summary>
    /// <param name="letter">The letter.</param>
    public static int? Place(string letter) => letter is [>= 'A' and < (char)('A' + Most) and var found] ? found - 'A' : null;
}
