package dev.sunthread.access.web;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.access.Words;
import dev.sunthread.access.machine.Devices;
import dev.sunthread.access.signin.StationDevice;
import dev.sunthread.kernel.Refused;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Chooses, once for a device, the station it stands at. */
@Controller
@Needs(Right.SET_UP)
class DeviceController {

    private final Devices devices;
    private final StationDevice device;
    private final StationChoice stations;
    private final Words words;

    DeviceController(Devices devices, StationDevice device, StationChoice stations, Words words) {
        this.devices = devices;
        this.device = device;
        this.stations = stations;
        this.words = words;
    }

    @GetMapping("/device")
    String device(HttpServletRequest request, Model model) {
        model.addAttribute("station", device.station(request).orElse(null));
        model.addAttribute("stations", stations.all());
        return "access/device";
    }

    @PostMapping("/device")
    String choose(
            @RequestParam String station,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes told) {
        try {
            stations.exists(station);
            String secret = devices.choose(station);
            response.addHeader(
                    HttpHeaders.SET_COOKIE, device.cookie(secret, request).toString());
            told.addFlashAttribute("done", words.of("done.device", station));
        } catch (Refused e) {
            told.addFlashAttribute("refused", e);
        }
        return "redirect:/device";
    }
}
