namespace StudioKit.Web.Results;

/// <summary>Asks for the pixels of a picture to be read.</summary>
/// <param name="Picture">The picture's key, under which its file was handed to the worker.</param>
/// <param name="Name">Its file's name.</param>
/// <param name="IsBare">Whether it shows the bare panel, no subject.</param>
/// <param name="KitName">Kit whose camera took it, for the tone curve that is kept of it; empty for the standard curve, which a ladder needs.</param>
public sealed record PictureRequest(string Picture, string Name, bool IsBare, string KitName);
