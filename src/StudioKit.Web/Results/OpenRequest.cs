namespace StudioKit.Web.Results;

/// <summary>Asks whether a file can be a kit's.</summary>
/// <param name="Base64">Its bytes, or as many as tell that they are too many.</param>
/// <param name="FileName">Its name, as errors name it.</param>
public sealed record OpenRequest(string Base64, string FileName);
