using Microsoft.AspNetCore.Components;

namespace Orlop.App.Shell;

/// <summary>Events of the browser that pages hear beside the usual ones; wwwroot/start.js makes what they tell.</summary>
[EventHandler("onunfold", typeof(UnfoldEventArgs), enableStopPropagation: false, enablePreventDefault: false)]
public static class EventHandlers;
