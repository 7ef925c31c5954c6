namespace StudioKit.Web.Storage;

/// <summary>What room the browser gives.</summary>
/// <param name="UsedMegabytes">What the page and its kits take [MB].</param>
/// <param name="GivenMegabytes">What they may take [MB]; 0 where the browser does not say.</param>
/// <param name="IsPromised">Whether the browser promised to clear nothing away by itself.</param>
public sealed record StorageRoom(double UsedMegabytes, double GivenMegabytes, bool IsPromised);
