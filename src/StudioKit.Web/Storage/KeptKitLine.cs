namespace StudioKit.Web.Storage;

/// <summary>A kit in the list of those on this device.</summary>
/// <param name="Id">What it is kept under.</param>
/// <param name="Name">Its file name.</param>
/// <param name="ChangedText">When it was changed last, by the clock of the device.</param>
/// <param name="Kilobytes">Size of its text [kB].</param>
/// <param name="IsThrownAway">Whether it was thrown away, and can be taken back still.</param>
public sealed record KeptKitLine(string Id, string Name, string ChangedText, int Kilobytes, bool IsThrownAway);
