namespace StudioKit.Web.Storage;

/// <summary>Names of kits' files.</summary>
public static class KitName
{
    private const string Ending = ".yaml";

    /// <summary>A name with a kit's ending, by which an archive's kits are told from what else is in it when it comes in again.</summary>
    /// <param name="name">The name as somebody gave it.</param>
    public static string Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return IsOfKit(name) ? name : name + Ending;
    }

    /// <summary>Whether a name has a kit's ending.</summary>
    /// <param name="name">The name.</param>
    public static bool IsOfKit(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) || name.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);
    }
}
