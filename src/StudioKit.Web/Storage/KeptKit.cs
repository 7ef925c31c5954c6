namespace StudioKit.Web.Storage;

/// <summary>A kit as it is kept on this device.</summary>
/// <param name="Id">What it is kept under.</param>
/// <param name="Name">Its file name; kits on one device have different ones.</param>
/// <param name="Text">Its text.</param>
public sealed record KeptKit(string Id, string Name, string Text)
{
    /// <summary>What lies beside it, as it is written; empty for nothing.</summary>
    public string Beside { get; init; } = "";
}
